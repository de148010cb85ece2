package org.hemwright.pattern.construction;

import org.hemwright.geometry.Path;
import org.hemwright.geometry.Vector;

/**
 * How an edge bends, seen from outside the piece.
 *
 * @param outward by how much it turns round the cloth, as a hem does (radians)
 * @param inward by how much it turns into the cloth, as a neckline does (radians)
 */
record Bend(double outward, double inward) {
  /** An edge that turns by less than this is straight to whoever cuts into it. */
  private static final double STRAIGHT = StrictMath.toRadians(3);

  /** Places along an edge at which its bend is looked at: one each few centimetres. */
  private static final int PLACES = 32;

  /** How a path bends that has the cloth on its left. */
  static Bend of(Path path) {
    double outward = 0;
    double inward = 0;
    Vector before = path.startDirection();
    for (int i = 1; i <= PLACES; i++) {
      Vector here =
          i == PLACES ? path.endDirection() : path.at(path.length() * i / PLACES).tangent();
      double turn = StrictMath.atan2(before.cross(here), before.dot(here));
      outward += StrictMath.max(turn, 0);
      inward += StrictMath.max(-turn, 0);
      before = here;
    }
    return new Bend(outward, inward);
  }

  boolean isOutward() {
    return outward > STRAIGHT && inward < STRAIGHT;
  }

  boolean isInward() {
    return inward > STRAIGHT && outward < STRAIGHT;
  }
}
