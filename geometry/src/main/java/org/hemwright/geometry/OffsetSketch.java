package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A path set off stretch by stretch, before anything is trimmed. Curves that are never part of the
 * answer are marked as overrun: those that run backward, where the source bends more tightly than
 * the distance allows, and the links across inward corners. An inward corner between straight
 * stretches that are long enough is trimmed at once.
 */
final class OffsetSketch {
  private final double distance;
  private final List<Curve> curves = new ArrayList<>();
  private final List<Boolean> overrun = new ArrayList<>();
  private boolean clean = true;

  /** How much of the next straight stretch an inward corner took away (mm). */
  private double trimmedAhead;

  private OffsetSketch(double distance) {
    this.distance = distance;
  }

  static OffsetSketch of(Path source, double distance) {
    OffsetSketch sketch = new OffsetSketch(distance);
    List<Curve> sources = source.curves();
    for (int i = 0; i < sources.size(); i++) {
      if (i > 0) {
        sketch.join(sources.get(i - 1), sources.get(i), false);
      }
      sketch.addBeside(sources.get(i));
    }
    if (source.isClosed()) {
      sketch.join(sources.get(sources.size() - 1), sources.get(0), true);
      sketch.close();
    }
    if (sketch.curves.isEmpty()) {
      throw OffsetChains.nothingLeft(distance);
    }
    return sketch;
  }

  /** Whether no curve is overrun. */
  boolean isClean() {
    return clean;
  }

  /** Whether a curve of the path is overrun. */
  boolean isOverrun(int index) {
    return overrun.get(index);
  }

  /** All curves as a path, in the order of the source. */
  Path path() {
    Path path = Path.of(curves);
    if (path.curves().size() != curves.size()) {
      throw new IllegalStateException("a curve of an offset was lost");
    }
    return path;
  }

  private void addBeside(Curve curve) {
    if (curve instanceof Cubic cubic) {
      OffsetFit.addBeside(cubic, distance, this);
    } else {
      Vector along = curve.direction(0);
      Vector aside = along.left().times(distance);
      Point start = curve.start().plus(aside).plus(along.times(trimmedAhead));
      trimmedAhead = 0;
      add(new Line(start, curve.end().plus(aside)), false);
    }
  }

  /** Adds a curve; one that starts a hair away from the last is drawn from there. */
  void add(Curve curve, boolean isOverrun) {
    Curve next = curve;
    if (!curves.isEmpty()) {
      Point end = curves.get(curves.size() - 1).end();
      if (Weld.isSpeck(curve) || (curve instanceof Line && end.equals(curve.end()))) {
        return;
      }
      next = Weld.startingAt(curve, end);
    } else if (Weld.isSpeck(curve)) {
      return;
    }
    curves.add(next);
    overrun.add(isOverrun);
    clean &= !isOverrun;
  }

  private void close() {
    if (curves.isEmpty()) {
      return;
    }
    Point start = curves.get(0).start();
    int last = curves.size() - 1;
    if (start.distanceTo(curves.get(last).end()) <= Tolerance.OFFSET_FIT) {
      curves.set(last, Weld.startingAt(curves.get(last).reversed(), start).reversed());
    }
  }

  /** Trims two straight stretches to their crossing, where both are long enough for it. */
  private boolean trimmed(double run, Curve after, boolean last) {
    int index = curves.size() - 1;
    Curve ahead = last ? curves.get(0) : after;
    if (!(curves.get(index) instanceof Line back
        && ahead instanceof Line
        && back.length() > run + Tolerance.SAME_POINT
        && ahead.length() > run + Tolerance.SAME_POINT)) {
      return false;
    }
    Point crossing = back.end().plus(back.direction(1).times(-run));
    curves.set(index, new Line(back.start(), crossing));
    if (last) {
      curves.set(0, new Line(crossing, ahead.end()));
    } else {
      trimmedAhead = run;
    }
    return true;
  }

  /** Goes on round a corner; the last joint of a closed source is that at its start. */
  private void join(Curve before, Curve after, boolean last) {
    Vector in = before.direction(1);
    Vector out = after.direction(0);
    Point corner = before.end();
    Point from = corner.plus(in.left().times(distance));
    Point to = corner.plus(out.left().times(distance));
    if (from.distanceTo(to) <= Tolerance.OFFSET_FIT) {
      return;
    }
    double turn = in.angleTo(out);
    double side = Math.signum(distance);
    boolean straightBack = Math.PI - Math.abs(turn) <= Tolerance.SAME_DIRECTION;
    double half = Math.abs(turn) / 2;
    if (turn * side > 0 && !straightBack) {
      double run = Math.abs(distance) * StrictMath.tan(half);
      if (!(before instanceof Line && after instanceof Line && trimmed(run, after, last))) {
        add(new Line(from, to), true);
      }
      return;
    }
    double cos = StrictMath.cos(half);
    double sin = StrictMath.sin(half);
    double offset = Math.abs(distance);
    if (cos * Tolerance.MITRE_LIMIT >= 1) {
      Point tip = from.plus(in.times(offset * sin / cos));
      add(new Line(from, tip), false);
      add(new Line(tip, to), false);
    } else {
      double reach = offset * (Tolerance.MITRE_LIMIT - cos) / sin;
      Point first = from.plus(in.times(reach));
      Point second = to.plus(out.times(-reach));
      add(new Line(from, first), false);
      add(new Line(first, second), false);
      add(new Line(second, to), false);
    }
  }
}
