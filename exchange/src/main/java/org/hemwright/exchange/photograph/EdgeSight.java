package org.hemwright.exchange.photograph;

import java.util.Arrays;
import java.util.Optional;
import org.hemwright.exchange.photograph.Picture.Look;

/**
 * Sees where an edge truly lies between pixels: along a line across it, where the brightness passes
 * half way between what lies on either side. In linear light that is right whatever the blur.
 */
final class EdgeSight {
  /** How far along the line is looked, either way (pixels). */
  private static final double REACH = 6;

  private static final double STEP = 0.5;
  private static final int SAMPLES = (int) (2 * REACH / STEP) + 1;

  /** The last of these samples at either end tell how bright the sides are. */
  private static final int SIDE = 6;

  /** A weaker edge is not trusted. */
  private static final double FAINTEST = 0.02;

  private final Picture picture;
  private final Look look;

  EdgeSight(Picture picture, Look look) {
    this.picture = picture;
    this.look = look;
  }

  /**
   * The edge near a place.
   *
   * @param dx of a unit step across the edge; the first side is whence it comes
   * @param dy of the same
   * @return empty where the picture ends, or no edge is clear
   */
  Optional<Pixel> near(Pixel place, double dx, double dy) {
    double[] along = new double[SAMPLES];
    for (int k = 0; k < SAMPLES; k++) {
      double reach = -REACH + k * STEP;
      double value = value(place.x() + reach * dx, place.y() + reach * dy);
      if (Double.isNaN(value)) {
        return Optional.empty();
      }
      along[k] = value;
    }
    double first = median(along, 0);
    double last = median(along, SAMPLES - SIDE);
    if (Math.abs(first - last) < FAINTEST) {
      return Optional.empty();
    }
    double half = (first + last) / 2;
    double nearest = Double.POSITIVE_INFINITY;
    for (int k = 0; k + 1 < SAMPLES; k++) {
      boolean passes = (along[k] - half) * (along[k + 1] - half) <= 0 && along[k] != along[k + 1];
      if (passes && (along[k + 1] > along[k]) == (last > first)) {
        double reach = -REACH + (k + (half - along[k]) / (along[k + 1] - along[k])) * STEP;
        if (Math.abs(reach) < Math.abs(nearest)) {
          nearest = reach;
        }
      }
    }
    return Double.isInfinite(nearest)
        ? Optional.empty()
        : Optional.of(new Pixel(place.x() + nearest * dx, place.y() + nearest * dy));
  }

  /** Between the middles of four pixels, straight both ways. */
  private double value(double x, double y) {
    double left = x - 0.5;
    double top = y - 0.5;
    int column = (int) Math.floor(left);
    int row = (int) Math.floor(top);
    if (column < 0 || row < 0 || column + 1 >= picture.width() || row + 1 >= picture.height()) {
      return Double.NaN;
    }
    double u = left - column;
    double v = top - row;
    return (1 - v) * ((1 - u) * at(column, row) + u * at(column + 1, row))
        + v * ((1 - u) * at(column, row + 1) + u * at(column + 1, row + 1));
  }

  private double at(int x, int y) {
    return look.of(picture.colour(x, y));
  }

  private static double median(double[] along, int from) {
    double[] side = Arrays.copyOfRange(along, from, from + SIDE);
    Arrays.sort(side);
    return (side[SIDE / 2 - 1] + side[SIDE / 2]) / 2;
  }
}
