package org.hemwright.geometry;

/**
 * A cubic Bézier curve: it leaves the start toward the first control point and reaches the end from
 * the second.
 *
 * @param start where it starts
 * @param control1 where it heads on leaving
 * @param control2 where it comes from on arriving
 * @param end where it ends; may be the start, when the control points lie elsewhere
 */
public record Cubic(Point start, Point control1, Point control2, Point end) implements Curve {
  /** The times that an integral is halved before a cusp is taken as it is. */
  private static final int DEEPEST = 40;

  private static final int MOST_STEPS = 80;

  /** Refuses four points in one place. */
  public Cubic {
    if (start.equals(control1) && start.equals(control2) && start.equals(end)) {
      throw new GeometryProblem(
          "a curve has all its points at (" + start.x() + ", " + start.y() + ") mm");
    }
  }

  /** The straight curve between two points, walked at an even pace. */
  public static Cubic straight(Point start, Point end) {
    return new Cubic(start, start.toward(end, 1.0 / 3), start.toward(end, 2.0 / 3), end);
  }

  @Override
  public Point at(double t) {
    double s = 1 - t;
    double b0 = s * s * s;
    double b1 = 3 * s * s * t;
    double b2 = 3 * s * t * t;
    double b3 = t * t * t;
    return new Point(
        b0 * start.x() + b1 * control1.x() + b2 * control2.x() + b3 * end.x(),
        b0 * start.y() + b1 * control1.y() + b2 * control2.y() + b3 * end.y());
  }

  @Override
  public Vector derivative(double t) {
    double s = 1 - t;
    double b0 = 3 * s * s;
    double b1 = 6 * s * t;
    double b2 = 3 * t * t;
    return new Vector(
        b0 * (control1.x() - start.x())
            + b1 * (control2.x() - control1.x())
            + b2 * (end.x() - control2.x()),
        b0 * (control1.y() - start.y())
            + b1 * (control2.y() - control1.y())
            + b2 * (end.y() - control2.y()));
  }

  @Override
  public Vector secondDerivative(double t) {
    double s = 6 * (1 - t);
    double u = 6 * t;
    return new Vector(
        s * (control2.x() - 2 * control1.x() + start.x())
            + u * (end.x() - 2 * control2.x() + control1.x()),
        s * (control2.y() - 2 * control1.y() + start.y())
            + u * (end.y() - 2 * control2.y() + control1.y()));
  }

  private Vector thirdDerivative() {
    return new Vector(
        6 * (end.x() - start.x() + 3 * (control1.x() - control2.x())),
        6 * (end.y() - start.y() + 3 * (control1.y() - control2.y())));
  }

  @Override
  public Vector direction(double t) {
    Vector first = derivative(t);
    double speed = first.length();
    if (speed > Tolerance.PLACE * reach()) {
      return first.unit();
    }
    double still = Tolerance.PLACE * size();
    if (speed > still) {
      return first.unit();
    }
    Vector second = secondDerivative(t);
    if (second.length() > still) {
      return t >= 1 ? second.negated().unit() : second.unit();
    }
    return thirdDerivative().unit();
  }

  @Override
  public double curvature(double t) {
    Vector first = derivative(t);
    double speed = first.length();
    if (speed > Tolerance.PLACE * size()) {
      return first.cross(secondDerivative(t)) / (speed * speed * speed);
    }
    double bend = secondDerivative(t).cross(thirdDerivative());
    if (bend == 0) {
      return 0;
    }
    return Math.copySign(Double.POSITIVE_INFINITY, t >= 1 ? -bend : bend);
  }

  /** The length of the control polygon (mm), never less than the length of the curve. */
  double size() {
    return start.distanceTo(control1) + control1.distanceTo(control2) + control2.distanceTo(end);
  }

  /** No less than the size, and quicker. */
  private double reach() {
    return Math.abs(control1.x() - start.x())
        + Math.abs(control1.y() - start.y())
        + Math.abs(control2.x() - control1.x())
        + Math.abs(control2.y() - control1.y())
        + Math.abs(end.x() - control2.x())
        + Math.abs(end.y() - control2.y());
  }

  @Override
  public double length() {
    return length(0, 1);
  }

  @Override
  public double length(double t0, double t1) {
    return length(t0, t1, Tolerance.LENGTH_SHARE * size(), 0);
  }

  private double length(double t0, double t1, double tolerance, int depth) {
    double fine = length(t0, t1, GaussRule.FINE);
    if (depth >= DEEPEST || Math.abs(fine - length(t0, t1, GaussRule.COARSE)) <= tolerance) {
      return fine;
    }
    double middle = (t0 + t1) / 2;
    return length(t0, middle, tolerance, depth + 1) + length(middle, t1, tolerance, depth + 1);
  }

  private double length(double t0, double t1, GaussRule rule) {
    double ax = control1.x() - start.x();
    double ay = control1.y() - start.y();
    double bx = 2 * (control2.x() - control1.x());
    double by = 2 * (control2.y() - control1.y());
    double cx = end.x() - control2.x();
    double cy = end.y() - control2.y();
    double span = t1 - t0;
    double sum = 0;
    for (int i = 0; i < rule.places.length; i++) {
      double t = t0 + span * rule.places[i];
      double s = 1 - t;
      double dx = s * (s * ax + t * bx) + t * t * cx;
      double dy = s * (s * ay + t * by) + t * t * cy;
      sum += rule.weights[i] * Math.sqrt(dx * dx + dy * dy);
    }
    return 3 * span * sum;
  }

  /** Newton's steps, held in a bracket that halves whenever a step would leave it. */
  @Override
  public double parameterAt(double distance) {
    return parameterAt(distance, length());
  }

  /** The same, where the whole length is known already. */
  double parameterAt(double distance, double whole) {
    if (!(distance > 0)) {
      return 0;
    }
    if (distance >= whole) {
      return 1;
    }
    double low = 0;
    double high = 1;
    double t = distance / whole;
    double walked = length(0, t);
    for (int step = 0; step < MOST_STEPS; step++) {
      double over = walked - distance;
      if (Math.abs(over) <= Tolerance.PLACE || high - low <= Tolerance.PARAMETER) {
        return t;
      }
      if (over > 0) {
        high = t;
      } else {
        low = t;
      }
      double next = t - over / derivative(t).length();
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      walked += length(t, next);
      t = next;
    }
    return t;
  }

  @Override
  public Cubic part(double t0, double t1) {
    Point from = at(t0);
    Point to = at(t1);
    double third = (t1 - t0) / 3;
    return new Cubic(
        from, from.plus(derivative(t0).times(third)), to.minus(derivative(t1).times(third)), to);
  }

  @Override
  public Cubic reversed() {
    return new Cubic(end, control2, control1, start);
  }

  @Override
  public Cubic moved(Motion motion) {
    return new Cubic(
        motion.apply(start), motion.apply(control1), motion.apply(control2), motion.apply(end));
  }

  @Override
  public Box bounds() {
    Box box = Box.of(start, end);
    if (box.contains(control1) && box.contains(control2)) {
      return box;
    }
    double[] turns = new double[4];
    int count = turnsAt(start.x(), control1.x(), control2.x(), end.x(), turns, 0);
    count = turnsAt(start.y(), control1.y(), control2.y(), end.y(), turns, count);
    for (int i = 0; i < count; i++) {
      Point turn = at(turns[i]);
      box = box.union(Box.of(turn, turn));
    }
    return box;
  }

  /** The box round all four points: wider than the bounds, and quicker. */
  Box hull() {
    return new Box(
        Math.min(Math.min(start.x(), end.x()), Math.min(control1.x(), control2.x())),
        Math.min(Math.min(start.y(), end.y()), Math.min(control1.y(), control2.y())),
        Math.max(Math.max(start.x(), end.x()), Math.max(control1.x(), control2.x())),
        Math.max(Math.max(start.y(), end.y()), Math.max(control1.y(), control2.y())));
  }

  /** Where one coordinate stands still inside 0 to 1: the roots of a quadratic. */
  private static int turnsAt(
      double p0, double p1, double p2, double p3, double[] turns, int count) {
    double a = p3 - p0 + 3 * (p1 - p2);
    double b = 2 * (p2 - 2 * p1 + p0);
    double c = p1 - p0;
    double square = b * b - 4 * a * c;
    if (square < 0) {
      return count;
    }
    double q = -(b + Math.copySign(Math.sqrt(square), b)) / 2;
    double first = a == 0 ? -1 : q / a;
    double second = q == 0 ? -1 : c / q;
    int found = count;
    if (first > 0 && first < 1) {
      turns[found++] = first;
    }
    if (second > 0 && second < 1) {
      turns[found++] = second;
    }
    return found;
  }
}
