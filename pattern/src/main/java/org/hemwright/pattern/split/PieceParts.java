package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;

/**
 * A piece in parts.
 *
 * @param whole the piece
 * @param split how it is cut
 * @param parts in order, two or more; one where a piece drawn as a half is cut along its fold
 * @param stretches where each stretch of the whole piece's edges and placement lines now is
 * @param joins which new edges are sewn together, one for each line of the cut
 */
public record PieceParts(
    Piece whole, Mark.Split split, List<Piece> parts, List<Stretch> stretches, List<Join> joins) {
  public PieceParts {
    parts = List.copyOf(parts);
    stretches = List.copyOf(stretches);
    joins = List.copyOf(joins);
  }

  /**
   * A stretch of an edge of the whole piece, or of a placement line.
   *
   * @param edge its name on the whole piece
   * @param from where it begins along the edge's path there (mm)
   * @param to where it ends (mm)
   * @param part on which part it is, from 0
   * @param name its name there
   */
  public record Stretch(String edge, double from, double to, int part, String name) {}

  /**
   * Two new edges, one along each side of a cut.
   *
   * @param seam the name of the seam, which both edges bear too
   * @param first the part on the one side
   * @param second the part on the other; the same where a piece is cut along its fold
   */
  public record Join(String seam, int first, int second) {}

  /** Whether a part is drawn as a half, as the whole piece is. */
  boolean isHalf(int part) {
    return parts.get(part).foldEdge().isPresent();
  }

  /**
   * The copy of a part that comes of a half of a copy of the whole piece. Where a piece is drawn as
   * a half and its part is not, the part is cut once for each half.
   */
  String copy(int part, String copy, EdgePlace.Half half) {
    if (whole.foldEdge().isEmpty() || isHalf(part)) {
      return copy;
    }
    return copyOfHalf(copy, half == EdgePlace.Half.MIRRORED);
  }

  /** Which half of a part comes of a half of the whole piece. */
  EdgePlace.Half half(int part, EdgePlace.Half half) {
    return whole.foldEdge().isPresent() && !isHalf(part) ? EdgePlace.Half.WHOLE : half;
  }

  private static String copyOfHalf(String copy, boolean mirrored) {
    if (copy.chars().allMatch(Character::isDigit)) {
      int number = Integer.parseInt(copy);
      return Integer.toString(mirrored ? 2 * number : 2 * number - 1);
    }
    return mirrored ? copy + "_mirrored" : copy + "_drawn";
  }

  /** The copies of a part that is cut once for each half of the whole piece's copies. */
  static List<Copy> copiesOfHalves(List<Copy> copies) {
    List<Copy> halves = new ArrayList<>();
    for (Copy copy : copies) {
      halves.add(new Copy(copyOfHalf(copy.name(), false), copy.mirrored()));
      halves.add(new Copy(copyOfHalf(copy.name(), true), !copy.mirrored()));
    }
    return halves;
  }

  /** The part that bears a name. */
  public Optional<Piece> part(String name) {
    return parts.stream().filter(part -> part.name().equals(name)).findFirst();
  }
}
