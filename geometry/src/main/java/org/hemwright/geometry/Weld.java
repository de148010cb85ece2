package org.hemwright.geometry;

import java.util.List;

/** Joins curves end to start, so that the joint is one point to the last bit. */
final class Weld {
  private Weld() {}

  /** Adds a curve to a chain; a speck without length is left out, a gap is refused. */
  static void add(List<Curve> chain, Curve curve) {
    if (isSpeck(curve)) {
      return;
    }
    if (chain.isEmpty()) {
      chain.add(curve);
      return;
    }
    Point joint = chain.get(chain.size() - 1).end();
    if (!joint.isAt(curve.start())) {
      throw new GeometryProblem(
          "a path breaks off at (%s, %s) mm and goes on at (%s, %s) mm"
              .formatted(joint.x(), joint.y(), curve.start().x(), curve.start().y()));
    }
    if (!(curve instanceof Line && joint.equals(curve.end()))) {
      chain.add(startingAt(curve, joint));
    }
  }

  /** Lets a chain whose end lies at its start end there exactly. */
  static void close(List<Curve> chain) {
    Point start = chain.get(0).start();
    int last = chain.size() - 1;
    Curve curve = chain.get(last);
    boolean back =
        start.isAt(curve.end()) && !(last == 0 && curve.length() <= Tolerance.SAME_POINT);
    if (back) {
      chain.set(last, startingAt(curve.reversed(), start).reversed());
    }
  }

  /** Whether a curve is too short to count. */
  static boolean isSpeck(Curve curve) {
    double size = curve instanceof Cubic cubic ? cubic.size() : curve.length();
    return size <= Tolerance.NO_LENGTH;
  }

  /** The curve drawn from a joint a hair away from its start. */
  static Curve startingAt(Curve curve, Point joint) {
    if (joint.equals(curve.start())) {
      return curve;
    }
    if (curve instanceof Cubic cubic) {
      Vector shift = joint.minus(cubic.start());
      return new Cubic(joint, cubic.control1().plus(shift), cubic.control2(), cubic.end());
    }
    return new Line(joint, curve.end());
  }
}
