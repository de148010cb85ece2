package org.hemwright.draft.plan.shape;

import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/** How one side of a cut moves away from the other, all at once or in part. */
sealed interface Opening {
  /** A share of the whole movement; less than 0 the other way. */
  Motion motion(double share);

  /** The same movement of a piece that lies elsewhere; the motion does not mirror. */
  Opening carried(Motion motion);

  /** The movement that closes it again. */
  Opening inverse();

  /** A turn about a point, counter-clockwise (radians). */
  record Turned(Point centre, double angle) implements Opening {
    @Override
    public Motion motion(double share) {
      return Motion.turn(centre, angle * share);
    }

    @Override
    public Opening carried(Motion motion) {
      return new Turned(motion.apply(centre), angle);
    }

    @Override
    public Opening inverse() {
      return new Turned(centre, -angle);
    }
  }

  /** A move by a step. */
  record Shifted(Vector step) implements Opening {
    @Override
    public Motion motion(double share) {
      return Motion.move(step.times(share));
    }

    @Override
    public Opening carried(Motion motion) {
      return new Shifted(motion.apply(step));
    }

    @Override
    public Opening inverse() {
      return new Shifted(step.negated());
    }
  }

  /**
   * A cut from one point to another that opens at both (handbook section 1, "Slash and spread"):
   * the part to the right of the way from the first to the second moves away to the right.
   *
   * @param atFirst how far it opens at the first point (mm)
   * @param atSecond how far at the second (mm)
   */
  static Opening ofCut(Point first, Point second, double atFirst, double atSecond) {
    Vector along = second.minus(first).unit();
    double length = first.distanceTo(second);
    if (atFirst == atSecond) {
      return new Shifted(along.right().times(atFirst));
    }
    double angle = 2 * StrictMath.asin((atFirst - atSecond) / (2 * length));
    double beyond = length * atFirst / (atFirst - atSecond);
    return new Turned(first.plus(along.times(beyond)), angle);
  }
}
