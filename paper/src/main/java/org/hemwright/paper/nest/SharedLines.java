package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.body.Size;

/**
 * Where the lines of several sizes lie on one another, so that they are drawn once: each line is
 * cut into runs, and a run says which sizes it serves.
 *
 * <p>Stations a few millimetres apart are asked which other lines pass within {@link
 * Tolerance#PRINTED_AS_ONE}; where the answer changes the place is found by halving. Lines that
 * only cross share no run.
 */
final class SharedLines {
  /** From station to station, and the shortest stretch that counts as shared (mm). */
  private static final double STATION = 2;

  private static final double SHORTEST = 4;
  private static final double PLACE = 0.01;

  /** A line this near to a run that serves it is drawn by that run (mm). */
  private static final double COVERED = 1.5 * Tolerance.PRINTED_AS_ONE;

  /** How far runs reach over their ends, since lines that part slowly part at no one place (mm). */
  private static final double LAP = 1;

  /** A stretch of line and the sizes it serves, in the chart's order. */
  record Run(Path path, List<Size> sizes) {
    Run {
      sizes = List.copyOf(sizes);
    }
  }

  private final List<SizedPath> lines;
  private final List<NearLine> near = new ArrayList<>();
  private final List<Emitted> emitted = new ArrayList<>();

  private SharedLines(List<SizedPath> lines) {
    this.lines = lines;
    lines.forEach(line -> near.add(new NearLine(line.path())));
  }

  /** The runs of some lines, each size's line once or more, in the chart's order. */
  static List<Run> of(List<SizedPath> lines) {
    if (lines.size() == 1) {
      return List.of(new Run(lines.get(0).path(), List.of(lines.get(0).size())));
    }
    SharedLines shared = new SharedLines(lines);
    for (int i = 0; i < lines.size(); i++) {
      shared.cut(i);
    }
    return shared.emitted.stream().map(Emitted::run).toList();
  }

  /** A run, the lines that it serves, and where it passes. */
  private record Emitted(Run run, BitSet served, NearLine near) {}

  /**
   * A stretch from here to the next one's start, with the lines that run together on it; none where
   * an earlier run serves this line already.
   */
  private record Stretch(double from, BitSet served) {}

  private void cut(int line) {
    double length = lines.get(line).path().length();
    List<Stretch> stretches = new ArrayList<>();
    int count = Math.max(1, (int) Math.ceil(length / STATION));
    BitSet before = new BitSet();
    for (int i = 0; i <= count; i++) {
      double at = length * i / count;
      BitSet here = servedAt(line, at);
      if (i == 0) {
        stretches.add(new Stretch(0, here));
      } else if (!here.equals(before)) {
        stretches.add(new Stretch(change(line, length * (i - 1) / count, at, before), here));
      }
      before = here;
    }
    emit(line, merged(line, stretches, length));
  }

  private double change(int line, double from, double to, BitSet before) {
    double low = from;
    double high = to;
    while (high - low > PLACE) {
      double middle = (low + high) / 2;
      if (servedAt(line, middle).equals(before)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Stretches too short to be shared are the line's own; neighbours alike become one. */
  private static List<Stretch> merged(int line, List<Stretch> stretches, double length) {
    List<Stretch> merged = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      Stretch stretch = stretches.get(i);
      double to = i + 1 < stretches.size() ? stretches.get(i + 1).from() : length;
      BitSet served = stretch.served();
      if (to - stretch.from() < SHORTEST) {
        served = new BitSet();
        served.set(line);
      }
      if (merged.isEmpty() || !merged.get(merged.size() - 1).served().equals(served)) {
        merged.add(new Stretch(stretch.from(), served));
      }
    }
    return merged;
  }

  private void emit(int line, List<Stretch> stretches) {
    Path path = lines.get(line).path();
    List<Emitted> fresh = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      Stretch stretch = stretches.get(i);
      if (stretch.served().isEmpty()) {
        continue;
      }
      double to = i + 1 < stretches.size() ? stretches.get(i + 1).from() : path.length();
      boolean whole = stretch.from() == 0 && i + 1 == stretches.size();
      List<Size> sizes =
          stretch.served().stream()
              .mapToObj(served -> lines.get(served).size())
              .distinct()
              .toList();
      double begin = Math.max(0, stretch.from() - LAP);
      double end = Math.min(path.length(), to + LAP);
      Path part = whole ? path : path.part(begin, end);
      fresh.add(new Emitted(new Run(part, sizes), stretch.served(), new NearLine(part)));
    }
    emitted.addAll(fresh);
  }

  private BitSet servedAt(int line, double distance) {
    BitSet served = new BitSet();
    Point point = lines.get(line).path().at(distance).point();
    for (Emitted earlier : emitted) {
      if (earlier.served().get(line) && earlier.near().passes(point, COVERED)) {
        return served;
      }
    }
    served.set(line);
    for (int other = line + 1; other < lines.size(); other++) {
      if (near.get(other).passes(point, Tolerance.PRINTED_AS_ONE)) {
        served.set(other);
      }
    }
    return served;
  }
}
