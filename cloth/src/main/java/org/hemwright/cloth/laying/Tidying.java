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
 * most. Copies in line are moved together too, where one of them thereby comes to an edge. What a
 * place counts and where it may be moved follow from the same places, so both are here.
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
  private final double[] wide;
  private final double[] high;
  private final double[][] lows;
  private final double[][] highs;
  private final double all;
  private final double length;

  private Tidying(LayTask task, Places layout, double length) {
    this.task = task;
    table = new CuttingTable(task);
    cut = layout.cut;
    x = layout.x.clone();
    y = layout.y.clone();
    this.length = length;
    wide = new double[cut.length];
    high = new double[cut.length];
    lows = new double[cut.length][];
    highs = new double[cut.length][];
    double sum = 0;
    for (int copy = 0; copy < cut.length; copy++) {
      Cut own = task.forms.cuts().get(cut[copy]);
      wide[copy] = (double) own.width();
      high[copy] = (double) own.height();
      lows[copy] = own.lanes().stream().mapToDouble(lane -> (double) lane.low()).toArray();
      highs[copy] = own.lanes().stream().mapToDouble(lane -> (double) lane.high()).toArray();
      sum += 2 * wide[copy];
    }
    all = sum;
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
        (a, b) -> wide[a] != wide[b] ? Double.compare(wide[b], wide[a]) : Integer.compare(a, b));
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean moved = false;
      for (int copy : order) {
        moved |= improve(copy);
      }
      for (int copy : order) {
        moved |= shift(copy, false);
        moved |= shift(copy, true);
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
    double[] stillAlong = new double[cut.length];
    double[] stillAcross = new double[cut.length];
    for (int other = 0; other < cut.length; other++) {
      stillAlong[other] = along(other, copy);
      stillAcross[other] = across(other, copy);
    }
    List<Move> moves = new ArrayList<>();
    double[] across = placesAcross(copy);
    List<double[]> acrossOf = across(copy, across, stillAcross);
    boolean first = true;
    for (double newX : placesAlong(copy)) {
      x[copy] = newX;
      double[] along = along(copy, stillAlong);
      for (int i = 0; i < across.length; i++) {
        double then = tidiness(along, acrossOf.get(i));
        if (then > now + BETTER) {
          double way = Math.abs(newX - oldX) + Math.abs(across[i] - oldY);
          moves.add(new Move(newX, across[i], then, way));
        }
      }
      if (first && across.length > 0) {
        y[copy] = across[across.length - 1];
        across = placesAcross(copy);
        acrossOf = across(copy, across, stillAcross);
        first = false;
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

  /**
   * Moves all copies that are in line with one another, and at no edge or end, until one of them
   * comes to stand at one; none of them would go there alone, as it left the line.
   *
   * @param along whether they move along the strip, else across it
   */
  private boolean shift(int copy, boolean along) {
    List<Integer> line = inLine(copy, along);
    if (line.size() < 2) {
      return false;
    }
    double now = tidiness();
    double[] from = along ? x : y;
    double[] old = from.clone();
    double best = 0;
    double bestTidiness = now + BETTER;
    for (double step : steps(line, along)) {
      for (int member : line) {
        from[member] = old[member] + step;
      }
      double then = tidiness();
      boolean nearer = then == bestTidiness && Math.abs(step) < Math.abs(best);
      if ((then > bestTidiness || nearer) && isClear(line)) {
        best = step;
        bestTidiness = then;
      }
    }
    for (int member : line) {
      from[member] = old[member] + best;
    }
    return best != 0;
  }

  /** The copies that are in line with one, with those, and so on; none that stands at an edge. */
  private List<Integer> inLine(int copy, boolean along) {
    double[] from = along ? x : y;
    double[] extent = along ? wide : high;
    boolean[] member = new boolean[cut.length];
    List<Integer> line = new ArrayList<>();
    if (standsAlone(copy, along)) {
      return line;
    }
    line.add(copy);
    member[copy] = true;
    for (int i = 0; i < line.size(); i++) {
      for (int other = 0; other < cut.length; other++) {
        if (!member[other]
            && !standsAlone(other, along)
            && meet(from, extent, line.get(i), other)) {
          member[other] = true;
          line.add(other);
        }
      }
    }
    return line;
  }

  /** Whether a copy is where it is for another reason than to be in line. */
  private boolean standsAlone(int copy, boolean along) {
    return along
        ? task.room.onBars(cut[copy]) || along(copy, copy) != IN_LINE
        : across(copy, copy) != IN_LINE;
  }

  /** How far copies may move together so that one of them comes to an edge or an end. */
  private Set<Double> steps(List<Integer> line, boolean along) {
    Set<Double> steps = new TreeSet<>();
    for (int member : line) {
      if (along) {
        steps.addAll(List.of(-x[member], length - wide[member] - x[member]));
      } else {
        for (int lane = 0; lane < lows[member].length; lane++) {
          steps.addAll(List.of(lows[member][lane] - y[member], highs[member][lane] - y[member]));
        }
      }
    }
    for (int member : line) {
      steps.removeIf(
          step ->
              along
                  ? x[member] + step < 0 || x[member] + step > length - wide[member]
                  : !inLane(member, y[member] + step));
    }
    return steps;
  }

  /** Whether copies that moved together lie clear of all others. */
  private boolean isClear(List<Integer> moved) {
    table.clear();
    for (int other = 0; other < cut.length; other++) {
      if (!moved.contains(other)) {
        table.lay(cut[other], x[other], y[other]);
      }
    }
    return moved.stream().allMatch(each -> table.clear(cut[each], x[each], y[each]));
  }

  private Set<Double> placesAlong(int copy) {
    Set<Double> places = new TreeSet<>(List.of(x[copy], 0.0, length - wide[copy]));
    for (int other = 0; other < cut.length; other++) {
      if (other != copy) {
        double right = x[other] + wide[other];
        places.addAll(List.of(x[other], right, x[other] - wide[copy], right - wide[copy]));
      }
    }
    places.removeIf(place -> place < 0 || place > length - wide[copy]);
    if (task.room.onBars(cut[copy])) {
      places.removeIf(place -> task.room.nearestX(cut[copy], length, place) != place);
    }
    return places;
  }

  private double[] placesAcross(int copy) {
    Set<Double> places = new TreeSet<>(List.of(y[copy]));
    for (int lane = 0; lane < lows[copy].length; lane++) {
      places.addAll(List.of(lows[copy][lane], highs[copy][lane]));
    }
    for (int other = 0; other < cut.length; other++) {
      if (other != copy) {
        double top = y[other] + high[other];
        places.addAll(List.of(y[other], top, y[other] - high[copy], top - high[copy]));
      }
    }
    return places.stream()
        .mapToDouble(place -> place)
        .filter(place -> inLane(copy, place))
        .toArray();
  }

  private boolean inLane(int copy, double place) {
    for (int lane = 0; lane < lows[copy].length; lane++) {
      if (place >= lows[copy][lane] && place <= highs[copy][lane]) {
        return true;
      }
    }
    return false;
  }

  /** What each copy counts along the strip with one of them where it now stands. */
  private double[] along(int moved, double[] still) {
    double[] along = still.clone();
    along[moved] = along(moved, moved);
    for (int other = 0; other < cut.length; other++) {
      if (other != moved && still[other] == 0 && meet(x, wide, other, moved)) {
        along[other] = IN_LINE;
      }
    }
    return along;
  }

  /** What each copy counts across the strip, with one of them at each of some places. */
  private List<double[]> across(int moved, double[] places, double[] still) {
    List<double[]> all = new ArrayList<>();
    double stands = y[moved];
    for (double place : places) {
      y[moved] = place;
      double[] across = still.clone();
      across[moved] = across(moved, moved);
      for (int other = 0; other < cut.length; other++) {
        if (other != moved && still[other] == 0 && meet(y, high, other, moved)) {
          across[other] = IN_LINE;
        }
      }
      all.add(across);
    }
    y[moved] = stands;
    return all;
  }

  private double tidiness() {
    double[] along = new double[cut.length];
    double[] across = new double[cut.length];
    for (int copy = 0; copy < cut.length; copy++) {
      along[copy] = along(copy, copy);
      across[copy] = across(copy, copy);
    }
    return tidiness(along, across);
  }

  private double tidiness(double[] along, double[] across) {
    double tidy = 0;
    for (int copy = 0; copy < cut.length; copy++) {
      tidy += wide[copy] * (along[copy] + across[copy]);
    }
    return tidy / all;
  }

  /** What a copy counts along the strip, another left out of account. */
  private double along(int copy, int without) {
    if (x[copy] == 0 || x[copy] + wide[copy] == length) {
      return 1;
    }
    return inLine(x, wide, copy, without) ? IN_LINE : 0;
  }

  /** What a copy counts across the strip, another left out of account. */
  private double across(int copy, int without) {
    for (int lane = 0; lane < lows[copy].length; lane++) {
      if (y[copy] == lows[copy][lane] || y[copy] == highs[copy][lane]) {
        return 1;
      }
    }
    return inLine(y, high, copy, without) ? IN_LINE : 0;
  }

  private static boolean inLine(double[] from, double[] extent, int copy, int without) {
    for (int other = 0; other < from.length; other++) {
      if (other != copy && other != without && meet(from, extent, copy, other)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a side of one box is in line with a side of another. */
  private static boolean meet(double[] from, double[] extent, int one, int other) {
    double low = from[one];
    double high = low + extent[one];
    double foot = from[other];
    double top = foot + extent[other];
    return low == foot || low == top || high == foot || high == top;
  }
}
