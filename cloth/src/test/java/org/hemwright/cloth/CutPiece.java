package org.hemwright.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/** Pieces without allowances for tests of laying; the grain runs up the drawing. */
public final class CutPiece {
  private static final Origin ORIGIN = new Origin("pattern.hem", 9, 1);

  private final String name;
  private final List<Path> paths;
  private final List<Notch> notches = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private int count = 1;
  private boolean mirrored;
  private boolean onFold;
  private boolean rightSideUp;
  private Point grainTo = new Point(0, 1);

  private CutPiece(String name, List<Path> paths) {
    this.name = name;
    this.paths = paths;
  }

  /** A polygon, counter-clockwise. */
  public static CutPiece polygon(String name, double... xy) {
    List<Path> paths = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      int next = (i + 2) % xy.length;
      paths.add(Path.straight(new Point(xy[i], xy[i + 1]), new Point(xy[next], xy[next + 1])));
    }
    return new CutPiece(name, paths);
  }

  /** So wide across the grain and so high along it; its first edge is the left one. */
  public static CutPiece rectangle(String name, double wide, double high) {
    return polygon(name, 0, high, 0, 0, wide, 0, wide, high);
  }

  /** A quarter of a ring, its straight edges along x = 0 and y = 0, to be cut on the fold x = 0. */
  public static CutPiece quarterRing(String name, double inner, double outer) {
    Point centre = Point.ORIGIN;
    Path fold = Path.straight(new Point(0, outer), new Point(0, inner));
    Path waist = CircularArc.about(centre, new Point(0, inner), -Math.PI / 2);
    Path side = Path.straight(new Point(inner, 0), new Point(outer, 0));
    Path hem = CircularArc.about(centre, new Point(outer, 0), Math.PI / 2);
    return new CutPiece(name, List.of(fold, waist, side, hem)).onFold();
  }

  /** So many of it. */
  public CutPiece times(int copies) {
    count = copies;
    return this;
  }

  /** Every second one mirrored. */
  public CutPiece pairs(int copies) {
    mirrored = true;
    return times(copies);
  }

  /** Cut on the fold, which is its first edge. */
  public CutPiece onFold() {
    onFold = true;
    return this;
  }

  /** With a notch on an edge, so far from its start, counter-clockwise (mm). */
  public CutPiece notch(String notch, int edge, double distance) {
    notches.add(new Notch("e" + edge, distance, Notch.Kind.SINGLE, Optional.of(notch), ORIGIN));
    return this;
  }

  /** To be cut with its printed side up on the right side of the cloth. */
  public CutPiece rightSideUp() {
    rightSideUp = true;
    return this;
  }

  /** Its grain runs from the origin to a point. */
  public CutPiece grainTo(double x, double y) {
    grainTo = new Point(x, y);
    return this;
  }

  /** With something drawn on it. */
  public CutPiece mark(Mark mark) {
    marks.add(mark);
    return this;
  }

  /** The piece. */
  public Piece draw() {
    List<Edge> edges = new ArrayList<>();
    List<Corner> corners = new ArrayList<>();
    Path round = paths.get(0);
    for (int i = 0; i < paths.size(); i++) {
      Path path = paths.get(i);
      round = i == 0 ? round : round.then(path);
      edges.add(new Edge("e" + i, path, onFold && i == 0, Allowance.NONE, false, ORIGIN));
      String before = "e" + (i + paths.size() - 1) % paths.size();
      corners.add(new Corner(before, "e" + i, path.start(), CornerFinish.USUAL));
    }
    List<Copy> copies = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      copies.add(new Copy(Integer.toString(i), mirrored && i % 2 == 0));
    }
    PieceCard card =
        new PieceCard(name, name, 1, List.of(cut()), copies, rightSideUp, Optional.empty(), ORIGIN);
    return new Piece(
        card,
        Outline.of(round),
        edges,
        corners,
        notches,
        Optional.of(new Grain(Point.ORIGIN, grainTo, ORIGIN)),
        marks,
        List.of(),
        Point.ORIGIN);
  }

  private Cut cut() {
    return new Cut(count, "main", onFold, mirrored, ORIGIN);
  }

  /** As a cloth sees it. */
  public ClothPiece onCloth() {
    return onCloth(0);
  }

  /** As a cloth sees it, with a gap to its neighbours (mm). */
  public ClothPiece onCloth(double gap) {
    return ClothPiece.of(name, draw(), cut(), gap).orElseThrow();
  }
}
