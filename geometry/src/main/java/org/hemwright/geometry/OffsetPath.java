package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** The path that runs beside another at an even distance. */
public final class OffsetPath {
  private static final int DEEPEST = 12;
  private static final int SAMPLES = 8;

  private OffsetPath() {}

  /**
   * The path at a distance (mm) from another, to its left when positive and to its right when
   * negative; within {@link Tolerance#OFFSET}.
   */
  public static Path of(Path path, double distance) {
    if (distance == 0) {
      return path;
    }
    List<Curve> beside = new ArrayList<>();
    Curve previous = null;
    for (Curve curve : path.curves()) {
      if (previous != null) {
        join(beside, previous, curve, distance);
      }
      add(beside, curve, distance, 0);
      previous = curve;
    }
    return Path.of(beside);
  }

  private static void join(List<Curve> beside, Curve before, Curve after, double distance) {
    Vector in = before.direction(1);
    Vector out = after.direction(0);
    double turn = in.angleTo(out);
    Point from = before.end().plus(in.left().times(distance));
    Point to = after.start().plus(out.left().times(distance));
    if (from.isAt(to)) {
      return;
    }
    double reach = 1 / StrictMath.cos(turn / 2);
    if (turn * distance < 0 && reach <= Tolerance.MITRE_LIMIT) {
      double run = Math.abs(distance) * StrictMath.tan(Math.abs(turn) / 2);
      Point tip = from.plus(in.times(run));
      beside.add(new Line(from, tip));
      beside.add(new Line(tip, to));
    } else {
      beside.add(new Line(from, to));
    }
  }

  private static void add(List<Curve> beside, Curve curve, double distance, int depth) {
    if (curve instanceof Line line) {
      Vector aside = line.direction(0).left().times(distance);
      beside.add(new Line(line.start().plus(aside), line.end().plus(aside)));
      return;
    }
    Point from = beside(curve, 0, distance);
    Point to = beside(curve, 1, distance);
    Vector leave = curve.derivative(0).times((1 - curve.curvature(0) * distance) / 3);
    Vector arrive = curve.derivative(1).times((1 - curve.curvature(1) * distance) / 3);
    Cubic fit = new Cubic(from, from.plus(leave), to.minus(arrive), to);
    boolean close = true;
    for (int i = 1; i < SAMPLES && close; i++) {
      double t = (double) i / SAMPLES;
      close = fit.at(t).distanceTo(beside(curve, t, distance)) <= Tolerance.OFFSET_FIT;
    }
    if (close || depth == DEEPEST) {
      beside.add(fit);
    } else {
      add(beside, curve.part(0, 0.5), distance, depth + 1);
      add(beside, curve.part(0.5, 1), distance, depth + 1);
    }
  }

  private static Point beside(Curve curve, double t, double distance) {
    return curve.at(t).plus(curve.direction(t).left().times(distance));
  }
}
