package org.hemwright.exchange.photograph;

import java.util.Arrays;
import java.util.List;
import org.hemwright.geometry.Point;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * How a flat thing and its picture belong together: a plane seen by a camera is a projective map
 * with eight numbers; a ninth is how much its lens bends.
 *
 * <p>The eight are found by linear equations; then all are closed in on the places seen, by least
 * squares (Hartley and Zisserman, <i>Multiple View Geometry</i>, 2nd edition, chapters 4 and 7.4).
 * A lens is taken for straight until the places seen say otherwise. What they are off by says how
 * far any other place may be off, to first order (the same book, chapter 5).
 */
public final class Straightening {
  /** No place in a picture is seen better than this (pixels, one standard deviation). */
  static final double BEST_SIGHT = 0.02;

  /** How well a person points at a place in a picture (pixels, one standard deviation). */
  static final double POINTED = 0.7;

  /**
   * How much lenses bend: by this share of its distance from the middle the picture's corner moves
   * (one standard deviation). From memory of what cameras leave after their own correction.
   */
  static final double USUAL_BEND = 0.005;

  /** The eight numbers of the map, then the bend. */
  private static final int NUMBERS = 9;

  private static final int BEND = 8;

  private final double[] map;
  private final Lens lens;
  private final RealMatrix spread;
  private final double residual;

  private Straightening(double[] map, Lens lens, RealMatrix spread, double residual) {
    this.map = map;
    this.lens = lens;
    this.spread = spread;
    this.residual = residual;
  }

  /** The middle of a picture and how far its corners are from it (pixels). */
  private record Lens(double x, double y, double corner) {
    static Lens of(int width, int height) {
      double x = width / 2.0;
      double y = height / 2.0;
      return new Lens(x, y, Math.sqrt(x * x + y * y));
    }

    /** How what is seen would move for a bend of 1. */
    double[] slope(Pixel seen) {
      double dx = seen.x() - x;
      double dy = seen.y() - y;
      double share = (dx * dx + dy * dy) / (corner * corner);
      return new double[] {dx * share, dy * share};
    }

    /** Where a straight lens would show what is seen. */
    Pixel straight(Pixel seen, double bend) {
      double[] slope = slope(seen);
      return new Pixel(seen.x() + bend * slope[0], seen.y() + bend * slope[1]);
    }

    /** Where this lens shows what a straight one would show at a place. */
    Pixel bent(Pixel straight, double bend) {
      Pixel seen = straight;
      // Each round is closer by the bend, a few hundredths at most.
      for (int round = 0; round < 12; round++) {
        double[] slope = slope(seen);
        seen = new Pixel(straight.x() - bend * slope[0], straight.y() - bend * slope[1]);
      }
      return seen;
    }
  }

  /**
   * From points whose true places are known.
   *
   * @param sightings four or more, no three of the first four in a row
   * @param width of the picture (pixels)
   * @param height of the picture (pixels)
   * @throws IllegalArgumentException when they do not fix the picture
   */
  public static Straightening of(List<Sighting> sightings, int width, int height) {
    return fitted(sightings, Lens.of(width, height), sightings.size() == 4 ? POINTED : BEST_SIGHT);
  }

  /**
   * Of a picture that is straight already, as a scan is: from two places and the length between
   * them. The picture's upright is kept; the middle of the two places is the origin.
   *
   * @param length between the two (mm), more than 0
   * @throws IllegalArgumentException when the two are one place or the length is nothing
   */
  public static Straightening byRuler(Pixel from, Pixel to, double length) {
    double pixels = from.distanceTo(to);
    if (!(length > 0) || !(pixels > 1)) {
      throw new IllegalArgumentException("a ruler has two ends and a length");
    }
    double scale = pixels / length;
    // Both ends pointed at: the scale is off by that share, all else is exact by agreement.
    double share = POINTED * Math.sqrt(2) / pixels;
    double variance = scale * scale * share * share;
    RealMatrix spread = new Array2DRowRealMatrix(NUMBERS, NUMBERS);
    spread.setEntry(0, 0, variance);
    spread.setEntry(0, 4, -variance);
    spread.setEntry(4, 0, -variance);
    spread.setEntry(4, 4, variance);
    double[] map = {scale, 0, (from.x() + to.x()) / 2, 0, -scale, (from.y() + to.y()) / 2, 0, 0, 0};
    return new Straightening(map, new Lens(0, 0, 1), spread, 0);
  }

  /** Where a true place is seen. */
  public Pixel pixel(Point place) {
    return lens.bent(seen(map, place.x(), place.y()), map[BEND]);
  }

  /** The true place of what is seen (mm). */
  public Point place(Pixel bent) {
    Pixel seen = lens.straight(bent, map[BEND]);
    // The three-by-three map turned round: adjugate over determinant, the latter cancels.
    double[] m = map;
    double a = m[4] - m[5] * m[7];
    double b = m[2] * m[7] - m[1];
    double c = m[1] * m[5] - m[2] * m[4];
    double d = m[5] * m[6] - m[3];
    double e = m[0] - m[2] * m[6];
    double f = m[2] * m[3] - m[0] * m[5];
    double g = m[3] * m[7] - m[4] * m[6];
    double h = m[1] * m[6] - m[0] * m[7];
    double i = m[0] * m[4] - m[1] * m[3];
    double w = g * seen.x() + h * seen.y() + i;
    return new Point((a * seen.x() + b * seen.y() + c) / w, (d * seen.x() + e * seen.y() + f) / w);
  }

  /**
   * How far a place may be off because the straightening is (mm): two standard deviations in the
   * worst direction. Not counted is how well the place itself was seen.
   */
  public double doubt(Point place) {
    double[] byPlace = new double[4];
    double[][] byMap = new double[2][NUMBERS];
    derivatives(map, place.x(), place.y(), byPlace, byMap);
    double[] slope = lens.slope(pixel(place));
    byMap[0][BEND] = -slope[0];
    byMap[1][BEND] = -slope[1];
    double determinant = byPlace[0] * byPlace[3] - byPlace[1] * byPlace[2];
    RealMatrix back =
        new Array2DRowRealMatrix(
            new double[][] {
              {byPlace[3] / determinant, -byPlace[1] / determinant},
              {-byPlace[2] / determinant, byPlace[0] / determinant}
            });
    RealMatrix step = back.multiply(new Array2DRowRealMatrix(byMap));
    RealMatrix off = step.multiply(spread).multiplyTransposed(step);
    double mean = (off.getEntry(0, 0) + off.getEntry(1, 1)) / 2;
    double half = (off.getEntry(0, 0) - off.getEntry(1, 1)) / 2;
    double cross = off.getEntry(0, 1);
    return 2 * Math.sqrt(Math.max(0, mean + Math.sqrt(half * half + cross * cross)));
  }

  /** How far the known points are seen from where the map puts them (pixels, root mean square). */
  public double residual() {
    return residual;
  }

  /** How many pixels a millimetre covers at a place, in the direction in which it covers fewest. */
  public double pixelsPerMm(Point place) {
    double[] j = new double[4];
    derivatives(map, place.x(), place.y(), j, new double[2][NUMBERS]);
    double mean = (j[0] * j[0] + j[1] * j[1] + j[2] * j[2] + j[3] * j[3]) / 2;
    double determinant = j[0] * j[3] - j[1] * j[2];
    return Math.sqrt(
        Math.max(0, mean - Math.sqrt(Math.max(0, mean * mean - determinant * determinant))));
  }

  private static Straightening fitted(List<Sighting> sightings, Lens lens, double sight) {
    int count = sightings.size();
    if (count < 4) {
      throw new IllegalArgumentException("four known points straighten a picture");
    }
    double[] start = Arrays.copyOf(linear(sightings), NUMBERS);
    double[] target = new double[2 * count + 1];
    for (int k = 0; k < count; k++) {
      target[2 * k] = sightings.get(k).seen().x();
      target[2 * k + 1] = sightings.get(k).seen().y();
    }
    // The bend is held to what is usual as one more thing seen.
    double usual = sight / USUAL_BEND;
    MultivariateJacobianFunction seen =
        parameters -> {
          RealVector values = new ArrayRealVector(2 * count + 1);
          RealMatrix slopes = new Array2DRowRealMatrix(2 * count + 1, NUMBERS);
          double[] m = parameters.toArray();
          double[][] byMap = new double[2][NUMBERS];
          for (int k = 0; k < count; k++) {
            Point place = sightings.get(k).place();
            Pixel pixel = seen(m, place.x(), place.y());
            double[] slope = lens.slope(sightings.get(k).seen());
            values.setEntry(2 * k, pixel.x() - m[BEND] * slope[0]);
            values.setEntry(2 * k + 1, pixel.y() - m[BEND] * slope[1]);
            derivatives(m, place.x(), place.y(), new double[4], byMap);
            byMap[0][BEND] = -slope[0];
            byMap[1][BEND] = -slope[1];
            slopes.setRow(2 * k, byMap[0]);
            slopes.setRow(2 * k + 1, byMap[1]);
          }
          values.setEntry(2 * count, usual * m[BEND]);
          slopes.setEntry(2 * count, BEND, usual);
          return new Pair<>(values, slopes);
        };
    try {
      Optimum best =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .model(seen)
                      .target(target)
                      .maxEvaluations(200)
                      .maxIterations(200)
                      .build());
      double squares = best.getResiduals().dotProduct(best.getResiduals());
      double variance = Math.max(sight * sight, squares / Math.max(1, 2 * count + 1 - NUMBERS));
      RealMatrix slopes = best.getJacobian();
      RealMatrix spread =
          new LUDecomposition(slopes.transposeMultiply(slopes))
              .getSolver()
              .getInverse()
              .scalarMultiply(variance);
      return new Straightening(
          best.getPoint().toArray(), lens, spread, Math.sqrt(squares / (2 * count)));
    } catch (MathRuntimeException unsolvable) {
      throw new IllegalArgumentException("the known points lie in a row", unsolvable);
    }
  }

  /**
   * The map by linear least squares. The ninth number is set to 1, which only a camera that looks
   * along the paper's plane through its origin could not bear; places are measured in shares of
   * their spread, for the sake of the rounding.
   */
  private static double[] linear(List<Sighting> sightings) {
    double size = 1;
    double width = 1;
    for (Sighting each : sightings) {
      size = Math.max(size, Math.max(Math.abs(each.place().x()), Math.abs(each.place().y())));
      width = Math.max(width, Math.max(Math.abs(each.seen().x()), Math.abs(each.seen().y())));
    }
    RealMatrix equations = new Array2DRowRealMatrix(2 * sightings.size(), 8);
    RealVector answers = new ArrayRealVector(2 * sightings.size());
    int row = 0;
    for (Sighting each : sightings) {
      double x = each.place().x() / size;
      double y = each.place().y() / size;
      double u = each.seen().x() / width;
      double v = each.seen().y() / width;
      equations.setRow(row, new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y});
      answers.setEntry(row++, u);
      equations.setRow(row, new double[] {0, 0, 0, x, y, 1, -v * x, -v * y});
      answers.setEntry(row++, v);
    }
    try {
      double[] m = new QRDecomposition(equations).getSolver().solve(answers).toArray();
      return new double[] {
        m[0] * width / size,
        m[1] * width / size,
        m[2] * width,
        m[3] * width / size,
        m[4] * width / size,
        m[5] * width,
        m[6] / size,
        m[7] / size
      };
    } catch (MathRuntimeException unsolvable) {
      throw new IllegalArgumentException("the known points lie in a row", unsolvable);
    }
  }

  private static Pixel seen(double[] m, double x, double y) {
    double w = m[6] * x + m[7] * y + 1;
    return new Pixel((m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w);
  }

  /**
   * How what a straight lens shows moves with the place (du/dx, du/dy, dv/dx, dv/dy) and the map.
   */
  private static void derivatives(
      double[] m, double x, double y, double[] byPlace, double[][] byMap) {
    double w = m[6] * x + m[7] * y + 1;
    double u = (m[0] * x + m[1] * y + m[2]) / w;
    double v = (m[3] * x + m[4] * y + m[5]) / w;
    byPlace[0] = (m[0] - u * m[6]) / w;
    byPlace[1] = (m[1] - u * m[7]) / w;
    byPlace[2] = (m[3] - v * m[6]) / w;
    byPlace[3] = (m[4] - v * m[7]) / w;
    byMap[0] = new double[] {x / w, y / w, 1 / w, 0, 0, 0, -u * x / w, -u * y / w, 0};
    byMap[1] = new double[] {0, 0, 0, x / w, y / w, 1 / w, -v * x / w, -v * y / w, 0};
  }
}
