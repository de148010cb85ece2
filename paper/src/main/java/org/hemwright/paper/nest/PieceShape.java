package org.hemwright.paper.nest;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/**
 * A piece of one size where it lies on paper: its stack point at the origin, its grain upward or
 * turned from there by quarters, a fold piece opened if the designer wants it whole.
 *
 * @param size which
 * @param piece as drafted
 * @param drafted its cut line as drafted
 * @param cut the whole area cut out of paper, fold edge included
 * @param cutLine the line to cut: all round, or from fold to fold
 * @param stitchLine the line to sew: all round, or from fold to fold
 * @param fold the edge that lies on the fold of the cloth; none when the piece is opened
 * @param edges the edges other than the fold, each once, or twice when the piece is opened
 * @param notches on the cut line
 * @param marks moved with the piece, those of an opened piece mirrored too where they come in pairs
 * @param grain upward along the grain, where the designer laid it
 */
public record PieceShape(
    Size size,
    Piece piece,
    CutLine drafted,
    Outline cut,
    Path cutLine,
    Path stitchLine,
    Optional<Path> fold,
    List<EdgeShape> edges,
    List<NotchShape> notches,
    List<Mark> marks,
    Optional<Path> grain) {
  public PieceShape {
    edges = List.copyOf(edges);
    notches = List.copyOf(notches);
    marks = List.copyOf(marks);
  }

  /** An edge on paper, counter-clockwise unless mirrored. */
  public record EdgeShape(String name, Path path, Allowance allowance, boolean mirrored) {}

  /**
   * A notch on paper.
   *
   * @param edge the edge's name
   * @param kind single or double
   * @param ticks a short line for each stroke of the sign, from the cut line inward
   */
  public record NotchShape(String edge, Notch.Kind kind, List<Tick> ticks) {
    public NotchShape {
      ticks = List.copyOf(ticks);
    }
  }

  /** One stroke of a notch. */
  public record Tick(Point from, Point to) {}

  /** The marks of one kind, in order. */
  public <M extends Mark> List<M> marks(Class<M> kind) {
    return marks.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
