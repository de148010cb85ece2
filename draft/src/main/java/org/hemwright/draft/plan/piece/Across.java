package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * Where an endless straight line lies inside an outline.
 *
 * <p>A curve's distance from the line is a cubic polynomial in Bernstein form: its sign changes
 * bound its roots (Descartes' rule), halving parts them, and each is closed in by Newton's steps
 * held in a bracket. What only touches the line counts as lying to its left; where that leaves
 * nothing, to its right.
 */
public final class Across {
  private static final int DEEPEST = 48;
  private static final int MOST_STEPS = 60;

  private final Point on;
  private final Vector along;
  private double side = 1;
  private double[] found = new double[8];
  private int count;

  private Across(Point on, Vector along) {
    this.on = on;
    this.along = along;
  }

  /**
   * A stretch of the line inside the outline.
   *
   * @param from how far along the line from the point it starts (mm)
   * @param to how far it ends; more than from
   */
  public record Stretch(double from, double to) {
    /** How long it is (mm). */
    public double length() {
      return to - from;
    }
  }

  /**
   * The stretches inside, in the order of the line.
   *
   * @param on a point of the line
   * @param along its direction, of length 1
   */
  public static List<Stretch> of(Outline outline, Point on, Vector along) {
    Across across = new Across(on, along);
    List<Stretch> inside = across.inside(outline);
    if (inside.isEmpty()) {
      across.side = -1;
      across.count = 0;
      inside = across.inside(outline);
    }
    return inside;
  }

  private List<Stretch> inside(Outline outline) {
    for (Curve curve : outline.path().curves()) {
      if (curve instanceof Cubic cubic) {
        double[] b = {
          aside(cubic.start()), aside(cubic.control1()), aside(cubic.control2()), aside(cubic.end())
        };
        roots(cubic, b, 0, 1, 0);
      } else {
        double start = aside(curve.start());
        double end = aside(curve.end());
        if (start >= 0 != end >= 0) {
          add(curve.at(start / (start - end)));
        }
      }
    }
    Arrays.sort(found, 0, count);
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < count; i += 2) {
      if (found[i + 1] - found[i] > Tolerance.SAME_POINT) {
        stretches.add(new Stretch(found[i], found[i + 1]));
      }
    }
    return stretches;
  }

  /** How far a point lies to the left of the line; a point on it counts to its side. */
  private double aside(Point point) {
    double distance = side * along.cross(point.minus(on));
    return Math.abs(distance) <= Tolerance.PLACE ? 0 : distance;
  }

  private void add(Point place) {
    if (count == found.length) {
      found = Arrays.copyOf(found, 2 * count);
    }
    found[count++] = along.dot(place.minus(on));
  }

  private void roots(Cubic cubic, double[] b, double t0, double t1, int depth) {
    int changes = 0;
    for (int i = 0; i < 3; i++) {
      changes += b[i] >= 0 != b[i + 1] >= 0 ? 1 : 0;
    }
    if (changes == 0) {
      return;
    }
    if (changes == 1) {
      add(cubic.at(root(b, t0, t1)));
      return;
    }
    if (depth == DEEPEST) {
      return;
    }
    double b01 = (b[0] + b[1]) / 2;
    double b12 = (b[1] + b[2]) / 2;
    double b23 = (b[2] + b[3]) / 2;
    double b012 = (b01 + b12) / 2;
    double b123 = (b12 + b23) / 2;
    double middle = (b012 + b123) / 2;
    double t = (t0 + t1) / 2;
    roots(cubic, new double[] {b[0], b01, b012, middle}, t0, t, depth + 1);
    roots(cubic, new double[] {middle, b123, b23, b[3]}, t, t1, depth + 1);
  }

  /** The one root of a polynomial between 0 and 1, as a parameter from t0 to t1. */
  private static double root(double[] b, double t0, double t1) {
    double low = 0;
    double high = 1;
    boolean rising = b[0] < 0;
    double t = 0.5;
    for (int step = 0; step < MOST_STEPS && high - low > Tolerance.PARAMETER; step++) {
      double s = 1 - t;
      double value =
          s * s * s * b[0] + 3 * s * s * t * b[1] + 3 * s * t * t * b[2] + t * t * t * b[3];
      if (value >= 0 == rising) {
        high = t;
      } else {
        low = t;
      }
      double slope =
          3 * (s * s * (b[1] - b[0]) + 2 * s * t * (b[2] - b[1]) + t * t * (b[3] - b[2]));
      double next = t - value / slope;
      if (Math.abs(next - t) <= Tolerance.PARAMETER) {
        break;
      }
      t = next > low && next < high ? next : (low + high) / 2;
    }
    return t0 + (t1 - t0) * t;
  }
}
