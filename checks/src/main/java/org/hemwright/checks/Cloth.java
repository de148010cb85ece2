package org.hemwright.checks;

import java.util.Optional;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Piece;

/** The cloth that a piece is cut from, and how far it gives. */
final class Cloth {
  private Cloth() {}

  /** The first fabric of a piece. */
  static Optional<Fabric> of(Piece piece, Pattern pattern) {
    return piece.card().cuts().stream()
        .limit(1)
        .flatMap(cut -> pattern.fabric(cut.fabric()).stream())
        .findFirst();
  }

  /** Whether it is a knit. */
  static boolean isKnit(Piece piece, Pattern pattern) {
    return of(piece, pattern).filter(fabric -> fabric.kind() == Fabric.Kind.KNIT).isPresent();
  }

  /**
   * How far a piece stretches in a direction of its drawing, as a share: by its cloth's stretch
   * across or along, whichever the direction is nearer to. A woven, and a knit of unsaid stretch,
   * 0.
   */
  static double stretch(Piece piece, Vector direction, Pattern pattern) {
    Optional<Fabric> fabric = of(piece, pattern);
    if (fabric.isEmpty()) {
      return 0;
    }
    return way(piece, direction) == BodyTable.Way.ALONG
        ? fabric.get().stretchAlong().orElse(0)
        : fabric.get().stretchAcross().orElse(0);
  }

  /** Which way of its cloth a direction of a piece's drawing is nearer to. */
  static BodyTable.Way way(Piece piece, Vector direction) {
    return piece
            .grain()
            .filter(grain -> between(grain.direction(), direction) < Math.PI / 4)
            .isPresent()
        ? BodyTable.Way.ALONG
        : BodyTable.Way.ACROSS;
  }

  /** The angle between two lines, whichever way they point (radians, 0 to π/2). */
  static double between(Vector one, Vector other) {
    double angle = Math.abs(one.angleTo(other));
    return Math.min(angle, Math.PI - angle);
  }
}
