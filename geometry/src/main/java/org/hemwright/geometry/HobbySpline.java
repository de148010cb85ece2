package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.SmoothCurve.Knot;
import org.jspecify.annotations.Nullable;

/**
 * Chooses the headings and the control points of a smooth curve.
 *
 * <p>With θ the angle from a chord to the heading at its start and φ the angle from the heading at
 * its end to the chord, the "mock curvature" of both sides is made equal at every knot (Hobby 1986;
 * "The METAFONTbook" pages 275 and 276). That is one linear equation a knot; the handles then
 * follow from Hobby's velocity function.
 */
final class HobbySpline {
  private static final double SQRT2 = Math.sqrt(2);
  private static final double SQRT5 = Math.sqrt(5);

  /** METAFONT lets neither a handle nor the ratio of a curl grow beyond this. */
  private static final double LARGEST = 4;

  private final List<Knot> knots;
  private final int count;
  private final Vector[] chords;

  /** How far the way turns at each knot, from chord to chord. */
  private final double[] turns;

  private HobbySpline(List<Knot> knots) {
    this.knots = knots;
    this.count = knots.size() - 1;
    this.chords = new Vector[count];
    this.turns = new double[count + 1];
    for (int k = 0; k < count; k++) {
      chords[k] = knots.get(k + 1).point.minus(knots.get(k).point);
      turns[k] = k == 0 ? 0 : chords[k - 1].angleTo(chords[k]);
    }
  }

  /** The curves through two knots or more. */
  static List<Curve> open(List<Knot> knots) {
    List<Curve> curves = new ArrayList<>();
    int from = 0;
    for (int k = 1; k < knots.size(); k++) {
      if (k == knots.size() - 1 || knots.get(k).isBreak()) {
        HobbySpline section = new HobbySpline(knots.subList(from, k + 1));
        section.draw(section.openAngles(), curves);
        from = k;
      }
    }
    return curves;
  }

  /** The curves through two knots or more and back to the first. */
  static List<Curve> closed(List<Knot> knots) {
    int first = 0;
    while (first < knots.size() && !knots.get(first).isBreak()) {
      first++;
    }
    List<Knot> round = new ArrayList<>();
    for (int k = 0; k <= knots.size(); k++) {
      round.add(knots.get((first + k) % knots.size()));
    }
    if (first == knots.size()) {
      HobbySpline ring = new HobbySpline(round);
      List<Curve> curves = new ArrayList<>();
      ring.draw(ring.ringAngles(), curves);
      return curves;
    }
    List<Curve> curves = open(round);
    List<Curve> fromFirst = new ArrayList<>(curves.subList(curves.size() - first, curves.size()));
    fromFirst.addAll(curves.subList(0, curves.size() - first));
    return fromFirst;
  }

  /** θ at every knot of an open section; at the last, −φ. */
  private double[] openAngles() {
    double[] theta = new double[count + 1];
    Knot first = knots.get(0);
    Knot last = knots.get(count);
    Vector leaving = heading(first, first.leaving, first.arriving);
    Vector arriving = heading(last, last.arriving, last.leaving);
    if (count == 1 && leaving == null && arriving == null) {
      return theta;
    }
    Equations rows = new Equations(count + 1);
    if (leaving != null) {
      rows.set(0, 0, 1, 0, chords[0].angleTo(leaving));
    } else {
      double ratio = curlRatio(curl(first), alpha(0), beta(1));
      rows.set(0, 0, 1, ratio, -ratio * turns[1]);
    }
    for (int k = 1; k < count; k++) {
      balance(rows, k, k, k - 1);
    }
    if (arriving != null) {
      rows.set(count, 0, 1, 0, chords[count - 1].angleTo(arriving));
    } else {
      rows.set(count, curlRatio(curl(last), beta(count), alpha(count - 1)), 1, 0, 0);
    }
    return rows.solved();
  }

  /** θ at every knot of a ring; the last is the first. */
  private double[] ringAngles() {
    turns[0] = chords[count - 1].angleTo(chords[0]);
    turns[count] = turns[0];
    Equations rows = new Equations(count);
    for (int k = 0; k < count; k++) {
      balance(rows, k, k, k == 0 ? count - 1 : k - 1);
    }
    double[] theta = rows.solvedAsRing();
    double[] withLast = new double[count + 1];
    System.arraycopy(theta, 0, withLast, 0, count);
    withLast[count] = theta[0];
    return withLast;
  }

  /** Mock curvature arriving at a knot equals mock curvature leaving it. */
  private void balance(Equations rows, int row, int out, int in) {
    double alphaBefore = alpha(in);
    double betaHere = beta(in + 1);
    double alphaHere = alpha(out);
    double betaAfter = beta(out + 1);
    double before = betaHere * betaHere * chords[in].length();
    double after = alphaHere * alphaHere * chords[out].length();
    double a = alphaBefore / before;
    double b = (3 - alphaBefore) / before;
    double c = (3 - betaAfter) / after;
    double d = betaAfter / after;
    rows.set(row, a, b + c, d, -b * turns[out] - d * turns[out + 1]);
  }

  private double alpha(int knot) {
    return 1 / knots.get(knot).tensionOut;
  }

  private double beta(int knot) {
    return 1 / knots.get(knot - 1).tensionIn;
  }

  private static @Nullable Vector heading(
      Knot knot, @Nullable Vector own, @Nullable Vector ofOtherSide) {
    if (own != null) {
      return own;
    }
    return Double.isNaN(knot.curl) ? ofOtherSide : null;
  }

  private static double curl(Knot knot) {
    return Double.isNaN(knot.curl) ? 1 : knot.curl;
  }

  private static double curlRatio(double curl, double near, double far) {
    double ratio =
        ((3 - near) * curl * near * near + far * far * far)
            / (curl * near * near * near + (3 - far) * far * far);
    return Math.min(LARGEST, ratio);
  }

  private void draw(double[] theta, List<Curve> curves) {
    for (int k = 0; k < count; k++) {
      double leave = theta[k];
      double arrive = -theta[k + 1] - turns[k + 1];
      Vector handle1 = chords[k].turned(leave).times(velocity(leave, arrive, alpha(k)));
      Vector handle2 = chords[k].turned(-arrive).times(velocity(arrive, leave, beta(k + 1)));
      Point start = knots.get(k).point;
      Point end = knots.get(k + 1).point;
      curves.add(new Cubic(start, start.plus(handle1), end.minus(handle2), end));
    }
  }

  /** The length of the first handle as a share of the chord; slack is one over the tension. */
  private static double velocity(double theta, double phi, double slack) {
    double sinTheta = StrictMath.sin(theta);
    double cosTheta = StrictMath.cos(theta);
    double sinPhi = StrictMath.sin(phi);
    double cosPhi = StrictMath.cos(phi);
    double above =
        2 + SQRT2 * (sinTheta - sinPhi / 16) * (sinPhi - sinTheta / 16) * (cosTheta - cosPhi);
    double below = 3 * (1 + (SQRT5 - 1) / 2 * cosTheta + (3 - SQRT5) / 2 * cosPhi);
    return slack * above >= LARGEST * below ? LARGEST : slack * above / below;
  }

  /** Equations of which each holds one unknown and its neighbours before and after. */
  private static final class Equations {
    private final double[] before;
    private final double[] own;
    private final double[] after;
    private final double[] right;

    Equations(int count) {
      before = new double[count];
      own = new double[count];
      after = new double[count];
      right = new double[count];
    }

    void set(int row, double a, double b, double c, double answer) {
      before[row] = a;
      own[row] = b;
      after[row] = c;
      right[row] = answer;
    }

    double[] solved() {
      return eliminated(own, right);
    }

    /** The same where the first and last are neighbours: the formula of Sherman and Morrison. */
    double[] solvedAsRing() {
      int n = own.length;
      double corner = -own[0];
      double[] diagonal = own.clone();
      diagonal[0] -= corner;
      diagonal[n - 1] -= after[n - 1] * before[0] / corner;
      double[] edge = new double[n];
      edge[0] = corner;
      edge[n - 1] += after[n - 1];
      double[] x = eliminated(diagonal, right);
      double[] z = eliminated(diagonal, edge);
      double share = before[0] / corner;
      double factor = (x[0] + share * x[n - 1]) / (1 + z[0] + share * z[n - 1]);
      for (int i = 0; i < n; i++) {
        x[i] -= factor * z[i];
      }
      return x;
    }

    private double[] eliminated(double[] diagonal, double[] answers) {
      int n = diagonal.length;
      double[] ratio = new double[n];
      double[] x = new double[n];
      for (int i = 0; i < n; i++) {
        double pivot = diagonal[i] - (i == 0 ? 0 : before[i] * ratio[i - 1]);
        ratio[i] = i == n - 1 ? 0 : after[i] / pivot;
        x[i] = (answers[i] - (i == 0 ? 0 : before[i] * x[i - 1])) / pivot;
      }
      for (int i = n - 2; i >= 0; i--) {
        x[i] -= ratio[i] * x[i + 1];
      }
      return x;
    }
  }
}
