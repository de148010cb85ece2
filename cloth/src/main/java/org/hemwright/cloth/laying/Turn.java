package org.hemwright.cloth.laying;

/**
 * How a shape lies: reflected or not, then turned about its own origin.
 *
 * @param degrees the turn, counter-clockwise, 0 ≤ degrees &lt; 360
 * @param mirrored whether the shape is reflected y → −y before it is turned; for cloth that has no
 *     right side
 */
public record Turn(double degrees, boolean mirrored) {

  /** As drawn. */
  public static final Turn AS_DRAWN = new Turn(0, false);

  /** Head to foot. */
  public static final Turn HALF = new Turn(180, false);

  public Turn {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("a turn needs a finite number of degrees, not " + degrees);
    }
    degrees = degrees % 360;
    if (degrees < 0) {
      degrees += 360;
    }
    if (degrees == 0 || degrees == 360) {
      degrees = 0;
    }
  }

  /** A turn without reflection; any finite number of degrees. */
  public static Turn of(double degrees) {
    return new Turn(degrees, false);
  }

  /** Where a corner of the shape lies after this turn; quarter turns are exact. */
  Spot apply(Spot corner) {
    double x = corner.x();
    double y = mirrored ? -corner.y() : corner.y();
    if (degrees == 0) {
      return new Spot(x, y);
    }
    if (degrees == 90) {
      return new Spot(-y, x);
    }
    if (degrees == 180) {
      return new Spot(-x, -y);
    }
    if (degrees == 270) {
      return new Spot(y, -x);
    }
    double angle = StrictMath.toRadians(degrees);
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    return new Spot(x * cos - y * sin, x * sin + y * cos);
  }
}
