package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Tolerance;

/**
 * By how much a value in one size sticks out of the line that the sizes beside it draw.
 *
 * <p>The steps of a chart may change from some size on, and so may a stepped number: after such a
 * break the line goes on. What sticks out comes back after one to three sizes, or stands at the end
 * of the run. Second differences tell the two apart: a break leaves one bend or two, a stray value
 * three. Of all ways to explain the bends the one is taken that leaves the fewest.
 *
 * @param chart the body's measurements, one array for each, over the same sizes
 */
record Stray(List<double[]> chart) {
  /** Sizes that stick out together. */
  private static final int MOST_TOGETHER = 3;

  /** Fewer sizes draw no line. */
  private static final int FEWEST_SIZES = 5;

  /** How much of the bends must go with one stray size: three in the open, fewer beside a step. */
  private static final double BENDS_OF_ONE = 0.9;

  /** How many with several that stray together. */
  private static final double BENDS_OF_SEVERAL = 2.6;

  /** How many with a stray size at the end of the run. */
  private static final double BENDS_AT_END = 0.3;

  /** A measurement explains a value when this share of its bends is left, or less. */
  private static final double EXPLAINS = 0.8;

  /** A bend of so much (mm) counts for half of a large one. */
  private static final double SMALL = 0.3;

  /** How much of a new bend a stray value may leave, as a share of it. */
  private static final double NEW_BEND = 0.25;

  Stray {
    chart = List.copyOf(chart);
  }

  /** For each size, how far it sticks out beyond what the chart's own values do; 0 where not. */
  double[] of(double[] values) {
    int count = values.length;
    if (count < FEWEST_SIZES) {
      return new double[count];
    }
    double[] own = secondDifferences(values);
    double grown = values[count - 1] - values[0];
    double[] out = new double[count];
    double least = EXPLAINS * takenOut(own.clone(), out);
    for (double[] column : chart) {
      double body = column[count - 1] - column[0];
      double[] its = secondDifferences(column);
      double[] left = own.clone();
      for (int i = 0; body != 0 && i < count; i++) {
        left[i] -= its[i] * grown / body;
      }
      double[] strays = new double[count];
      double remaining = takenOut(left, strays);
      if (remaining < least) {
        least = remaining;
        out = strays;
      }
    }
    for (double[] column : chart) {
      takeOffChart(secondDifferences(column), out);
    }
    return out;
  }

  /** What sticks out in the chart too is the chart's. */
  private static void takeOffChart(double[] bends, double[] out) {
    int last = bends.length - 1;
    double[] strays = new double[bends.length];
    double first = bends[1] / 2;
    double end = bends[last - 1] / 2;
    takenOut(bends, strays);
    for (int i = 0; i <= last; i++) {
      double own = i == 0 ? first : i == last ? end : 0;
      out[i] = less(out[i], Math.max(Math.abs(own), Math.abs(strays[i])));
    }
  }

  private static double less(double value, double by) {
    return Math.abs(value) <= by ? 0 : value - Math.copySign(by, value);
  }

  /** How many bends a line has, large ones counting for one and small ones for less. */
  static double bends(double[] values) {
    return bent(secondDifferences(values));
  }

  /** The second differences; 0 at both ends, where there is none. */
  private static double[] secondDifferences(double[] values) {
    double[] bends = new double[values.length];
    for (int i = 1; i + 1 < values.length; i++) {
      bends[i] = values[i + 1] - 2 * values[i] + values[i - 1];
    }
    return bends;
  }

  /** Takes all that sticks out off the bends; how much they and it count for. */
  private static double takenOut(double[] bends, double[] out) {
    for (int together = 1; together <= MOST_TOGETHER; together++) {
      for (int round = 0; round < bends.length && takeOut(bends, together, out); round++) {}
    }
    return bent(bends) + bent(out);
  }

  /** How many bends a line has; those too small to matter count for little. */
  private static double bent(double[] bends) {
    double sum = 0;
    for (double bend : bends) {
      sum += counted(bend);
    }
    return sum;
  }

  private static double counted(double bend) {
    return Math.abs(bend) / (Math.abs(bend) + SMALL);
  }

  /** Takes out so many sizes that stick out together, those with which most bends go. */
  private static boolean takeOut(double[] bends, int together, double[] out) {
    double most = 0;
    int first = -1;
    double amount = 0;
    for (int i = 0; i + together <= bends.length; i++) {
      boolean atEnd = i == 0 || i + together == bends.length;
      if (together > 1 && atEnd) {
        continue;
      }
      double toGo = atEnd ? BENDS_AT_END : together == 1 ? BENDS_OF_ONE : BENDS_OF_SEVERAL;
      for (double by : atEnd ? atEnd(bends, i == 0) : amounts(bends, i, together)) {
        if (Math.abs(by) > Tolerance.DRAWN_LENGTH) {
          double gone = gone(bends, i, together, by);
          if (gone > most && gone >= toGo * counted(by)) {
            most = gone;
            first = i;
            amount = by;
          }
        }
      }
    }
    if (first < 0) {
      return false;
    }
    for (int i = first; i < first + together; i++) {
      out[i] += amount;
    }
    for (int i = first - 1; i <= first + together; i++) {
      if (isBend(bends, i)) {
        bends[i] += without(i, first, together, amount);
      }
    }
    return true;
  }

  /** How much of the bends goes when so many sizes are put back by an amount; 0 if others come. */
  private static double gone(double[] bends, int first, int together, double by) {
    double gone = 0;
    for (int i = first - 1; i <= first + together; i++) {
      if (isBend(bends, i)) {
        double after = bends[i] + without(i, first, together, by);
        double straight = NEW_BEND * Math.abs(by);
        if (Math.abs(bends[i]) <= straight && Math.abs(after) > straight) {
          return 0;
        }
        gone += counted(bends[i]) - counted(after);
      }
    }
    return gone;
  }

  private static boolean isBend(double[] bends, int i) {
    return i > 0 && i + 1 < bends.length;
  }

  /** What putting sizes back by an amount does to one bend. */
  private static double without(int bend, int first, int together, double by) {
    int last = first + together - 1;
    double change = 0;
    change += bend >= first && bend <= last ? 2 * by : 0;
    change -= bend - 1 >= first && bend - 1 <= last ? by : 0;
    change -= bend + 1 >= first && bend + 1 <= last ? by : 0;
    return change;
  }

  /** What the last size but one bends by, unless it is that size that sticks out. */
  private static double[] atEnd(double[] bends, boolean first) {
    int last = bends.length - 1;
    double near = bends[first ? 1 : last - 1];
    double far = bends[first ? 2 : last - 2];
    return new double[] {less(near, 2 * Math.abs(far))};
  }

  /** By how much sizes may stick out: each bend at their ends names an amount. */
  private static double[] amounts(double[] bends, int first, int together) {
    int last = first + together - 1;
    double share = together == 1 ? 2 : 1;
    return new double[] {
      bends[first - 1], -bends[first] / share, -bends[last] / share, bends[last + 1]
    };
  }

  /** The sizes that stick out by more than a limit. */
  static List<Integer> beyond(double[] strays, double limit) {
    List<Integer> sizes = new ArrayList<>();
    for (int i = 0; i < strays.length; i++) {
      if (Math.abs(strays[i]) > limit) {
        sizes.add(i);
      }
    }
    return sizes;
  }
}
