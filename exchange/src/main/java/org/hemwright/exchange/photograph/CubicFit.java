package org.hemwright.exchange.photograph;

import java.util.Arrays;
import java.util.List;
import org.hemwright.exchange.photograph.FewCurves.Fit;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.jspecify.annotations.Nullable;

/** One cubic through many places, from the first to the last. */
final class CubicFit {
  private final List<Point> places;
  private final @Nullable Vector out;
  private final @Nullable Vector back;
  private final double[] parameters;

  /**
   * What the cubic has to pass.
   *
   * @param places the first and last are its ends
   * @param out the direction in which it leaves, free where null
   * @param back the direction from its end back into it, free where null
   */
  CubicFit(List<Point> places, @Nullable Vector out, @Nullable Vector back) {
    this.places = places;
    this.out = out;
    this.back = back;
    this.parameters = new double[places.size()];
    double length = 0;
    for (int k = 1; k < places.size(); k++) {
      length += places.get(k).distanceTo(places.get(k - 1));
      parameters[k] = length;
    }
    for (int k = 1; k < places.size(); k++) {
      parameters[k] /= length;
    }
  }

  /** Handles and parameters found in turn, so many times. */
  Fit fit(int rounds) {
    Cubic cubic = handles();
    for (int round = 0; round < rounds; round++) {
      closeIn(cubic);
      cubic = handles();
    }
    double worst = 0;
    int worstAt = places.size() / 2;
    for (int k = 1; k < places.size() - 1; k++) {
      double off = cubic.at(parameters[k]).distanceTo(places.get(k));
      if (off > worst) {
        worst = off;
        worstAt = k;
      }
    }
    return new Fit(cubic, worst, worstAt);
  }

  /**
   * The handles with the least sum of squares: a free one has two numbers, one with a direction has
   * its length.
   */
  private Cubic handles() {
    int first = out == null ? 2 : 1;
    int unknown = first + (back == null ? 2 : 1);
    Point start = places.get(0);
    Point end = places.get(places.size() - 1);
    RealMatrix sums = new Array2DRowRealMatrix(unknown, unknown);
    RealVector answers = new ArrayRealVector(unknown);
    double[] row = new double[unknown];
    for (int k = 1; k < places.size() - 1; k++) {
      double t = parameters[k];
      double s = 1 - t;
      double b1 = 3 * s * s * t;
      double b2 = 3 * s * t * t;
      double near = s * s * s + b1;
      double far = t * t * t + b2;
      double[] rest = {
        places.get(k).x() - near * start.x() - far * end.x(),
        places.get(k).y() - near * start.y() - far * end.y()
      };
      for (int axis = 0; axis < 2; axis++) {
        Arrays.fill(row, 0);
        if (out == null) {
          row[axis] = b1;
        } else {
          row[0] = b1 * (axis == 0 ? out.dx() : out.dy());
        }
        if (back == null) {
          row[first + axis] = b2;
        } else {
          row[first] = b2 * (axis == 0 ? back.dx() : back.dy());
        }
        for (int i = 0; i < unknown; i++) {
          answers.addToEntry(i, row[i] * rest[axis]);
          for (int j = 0; j < unknown; j++) {
            sums.addToEntry(i, j, row[i] * row[j]);
          }
        }
      }
    }
    double third = start.distanceTo(end) / 3;
    double[] found;
    try {
      found = new QRDecomposition(sums).getSolver().solve(answers).toArray();
    } catch (MathRuntimeException tooFew) {
      return Cubic.straight(start, end);
    }
    Vector one =
        out == null
            ? new Vector(found[0], found[1])
            : out.times(found[0] > third / 100 ? found[0] : third);
    Vector two =
        back == null
            ? new Vector(found[first], found[first + 1])
            : back.times(found[first] > third / 100 ? found[first] : third);
    return new Cubic(start, start.plus(one), end.plus(two), end);
  }

  /** Each parameter moved to where the cubic comes nearest its place, by one step of Newton. */
  private void closeIn(Cubic cubic) {
    for (int k = 1; k < places.size() - 1; k++) {
      double t = parameters[k];
      Vector off = cubic.at(t).minus(places.get(k));
      Vector slope = cubic.derivative(t);
      double steep = slope.dot(slope) + off.dot(cubic.secondDerivative(t));
      if (steep > 0) {
        double better = t - off.dot(slope) / steep;
        parameters[k] = Math.max(0, Math.min(1, better));
      }
    }
  }
}
