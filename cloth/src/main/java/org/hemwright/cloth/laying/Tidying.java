package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Moves copies of a layout about within a length, so that a person can follow it: box sides on the
 * edges of the strip or of their lane, on its two ends, and in line with one another.
 *
 * <p>Each copy has a place along the strip and one across it. A place counts 1 where the box stands
 * at an end of the strip or at an edge of its lane, so that nothing need be measured, {@link
 * #IN_LINE} where a side of the box is in line with a side of another copy's, and 0 otherwise. The
 * tidiness is the mean over all copies, weighed by their extent along the strip: long shapes matter
 * most.
 */
final class Tidying {
  /** What being in line with another copy counts for. */
  private static final double IN_LINE = 0.75;

  private static final int MOST_ROUNDS = 4;
  private static final double BETTER = 1e-9;

  private final LayTask task;
  private final CuttingTable table;
  private final int[] cut;
  private final double[] x;
  private final double[] y;
  private final double length;

  private Tidying(LayTask task, Places layout, double length) {
    this.task = task;
    table = new CuttingTable(task);
    cut = layout.cut;
    x = layout.x.clone();
    y = layout.y.clone();
    this.length = length;
  }

  /**
   * The layout tidied.
   *
   * @param length how long it may become, in grid steps; at least as long as it is
   */
  static Places tidy(LayTask task, Places layout, double length) {
    Tidying tidying = new Tidying(task, layout, length);
    tidying.improve();
    return new Places(length, 0, layout.cut, tidying.x, tidying.y);
  }

  /** How tidy a layout is, 0 to 1. */
  static double tidiness(LayTask task, Places layout) {
    return new Tidying(task, layout, layout.length).tidiness();
  }

  private void improve() {
    Integer[] order = new Integer[cut.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        (a, b) ->
            width(a) != width(b) ? Double.compare(width(b), width(a)) : Integer.compare(a, b));
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean moved = false;
      for (int copy : order) {
        moved |= improve(copy);
      }
      if (!moved) {
        return;
      }
    }
  }

  /** A place that one copy may be moved to. */
  private record Move(double x, double y, double tidiness, double way) {}

  /** Moves one copy to the tidiest place that it finds free, the nearest of equals. */
  private boolean improve(int copy) {
    double oldX = x[copy];
    double oldY = y[copy];
    double now = tidiness();
    List<Move> moves = new ArrayList<>();
    for (double newX : placesAlong(copy)) {
      for (double newY : placesAcross(copy)) {
        x[copy] = newX;
        y[copy] = newY;
        double then = tidiness();
        if (then > now + BETTER) {
          moves.add(new Move(newX, newY, then, Math.abs(newX - oldX) + Math.abs(newY - oldY)));
        }
      }
    }
    x[copy] = oldX;
    y[copy] = oldY;
    moves.sort(
        (a, b) ->
            a.tidiness != b.tidiness
                ? Double.compare(b.tidiness, a.tidiness)
                : Double.compare(a.way, b.way));
    table.clear();
    for (int other = 0; other < cut.length; other++) {
      if (other != copy) {
        table.lay(cut[other], x[other], y[other]);
      }
    }
    for (Move move : moves) {
      if (table.clear(cut[copy], move.x, move.y)) {
        x[copy] = move.x;
        y[copy] = move.y;
        return true;
      }
    }
    return false;
  }

  private Set<Double> placesAlong(int copy) {
    Set<Double> places = new TreeSet<>(List.of(x[copy], 0.0, length - width(copy)));
    for (int other = 0; other < cut.length; other++) {
      if (other != copy) {
        double right = x[other] + width(other);
        places.addAll(List.of(x[other], right, x[other] - width(copy), right - width(copy)));
      }
    }
    places.removeIf(place -> place < 0 || place > length - width(copy));
    if (task.room.onBars(cut[copy])) {
      places.removeIf(place -> task.room.nearestX(cut[copy], length, place) != place);
    }
    return places;
  }

  private Set<Double> placesAcross(int copy) {
    Set<Double> places = new TreeSet<>(List.of(y[copy]));
    for (LaneRange lane : own(copy).lanes()) {
      places.addAll(List.of((double) lane.low(), (double) lane.high()));
    }
    for (int other = 0; other < cut.length; other++) {
      if (other != copy) {
        double top = y[other] + height(other);
        places.addAll(List.of(y[other], top, y[other] - height(copy), top - height(copy)));
      }
    }
    places.removeIf(
        place ->
            own(copy).lanes().stream()
                .noneMatch(lane -> place >= (double) lane.low() && place <= (double) lane.high()));
    return places;
  }

  private double tidiness() {
    double all = 0;
    double tidy = 0;
    for (int copy = 0; copy < cut.length; copy++) {
      all += 2 * width(copy);
      tidy += width(copy) * (along(copy) + across(copy));
    }
    return tidy / all;
  }

  private double along(int copy) {
    double left = x[copy];
    double right = left + width(copy);
    if (left == 0 || right == length) {
      return 1;
    }
    for (int other = 0; other < cut.length; other++) {
      double start = x[other];
      double end = start + width(other);
      if (other != copy && (left == start || left == end || right == start || right == end)) {
        return IN_LINE;
      }
    }
    return 0;
  }

  private double across(int copy) {
    double low = y[copy];
    double high = low + height(copy);
    for (LaneRange lane : own(copy).lanes()) {
      if (low == (double) lane.low() || low == (double) lane.high()) {
        return 1;
      }
    }
    for (int other = 0; other < cut.length; other++) {
      double foot = y[other];
      double top = foot + height(other);
      if (other != copy && (low == foot || low == top || high == foot || high == top)) {
        return IN_LINE;
      }
    }
    return 0;
  }

  private Cut own(int copy) {
    return task.forms.cuts().get(cut[copy]);
  }

  private double width(int copy) {
    return (double) own(copy).width();
  }

  private double height(int copy) {
    return (double) own(copy).height();
  }
}
