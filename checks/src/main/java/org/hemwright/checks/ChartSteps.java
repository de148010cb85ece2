package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.body.SizeChart;

/**
 * One column of a chart from size to size: which cells do not follow from those beside them.
 *
 * @param rows the positions of the sizes whose cell is known
 * @param values theirs (mm)
 */
record ChartSteps(List<Integer> rows, List<Double> values) {
  private static final double INCH = 2.54;
  private static final double NEAR = 0.06;

  /** With fewer cells it cannot be told which of them is out of line. */
  private static final int LEAST = 5;

  /** How much of the unrest of a column one cell must account for to be the one that is wrong. */
  private static final double ACCOUNTS = 0.7;

  /** A step at an end is a slip from so many times the largest of the next ones. */
  private static final double END = 3;

  /** How many next ones. */
  private static final int NEXT = 3;

  /** What is finer than this no tape tells (mm). */
  private static final double FINEST = 0.6;

  /** How finely charts are written (mm), coarsest first. */
  private static final double[] GRAINS = {
    12.7, 10, 6.35, 5, 3.175, 2.5, 2, 1.5875, 1, 0.79375, 0.5, 0.2, 0.1
  };

  ChartSteps {
    rows = List.copyOf(rows);
    values = List.copyOf(values);
  }

  static ChartSteps of(SizeChart.Column column) {
    List<Integer> rows = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < column.cells().size(); i++) {
      if (column.cells().get(i).value().isPresent()) {
        rows.add(i);
        values.add(column.cells().get(i).value().getAsDouble());
      }
    }
    return new ChartSteps(rows, values);
  }

  /** What is amiss with a cell. */
  enum Slip {
    /** It is the size beside it, or about, in the other unit. */
    OTHER_UNIT,
    /** It is smaller than in the size before. */
    BACKWARDS,
    /** It lies off the line of the cells beside it. */
    OFF_LINE
  }

  /**
   * One cell that is amiss.
   *
   * @param row the size's position
   * @param beside the cell that it is held against (mm)
   * @param expected what the cells beside lead to (mm)
   */
  record Cell(Slip slip, int row, double value, double beside, double expected) {}

  /** The cells that are amiss, those told first that account for others. */
  List<Cell> slips(GradeLimits limits) {
    List<Cell> slips = new ArrayList<>();
    ChartSteps rest = this;
    for (Optional<Integer> at = rest.otherUnit(); at.isPresent(); at = rest.otherUnit()) {
      slips.add(rest.cell(Slip.OTHER_UNIT, at.get()));
      rest = rest.without(at.get());
    }
    for (Optional<Integer> at = rest.offLine(limits); at.isPresent(); at = rest.offLine(limits)) {
      slips.add(rest.cell(rest.goesBack(at.get()) ? Slip.BACKWARDS : Slip.OFF_LINE, at.get()));
      rest = rest.without(at.get());
    }
    for (int i = 1; i < rest.values.size(); i++) {
      if (rest.goesBack(i)) {
        slips.add(rest.cell(Slip.BACKWARDS, i));
      }
    }
    return slips;
  }

  private boolean goesBack(int i) {
    return i > 0 && values.get(i) < values.get(i - 1);
  }

  private Cell cell(Slip slip, int i) {
    double beside = values.get(i > 0 ? i - 1 : Math.min(1, values.size() - 1));
    return new Cell(slip, rows.get(i), values.get(i), beside, expected(i));
  }

  private ChartSteps without(int i) {
    List<Integer> otherRows = new ArrayList<>(rows);
    List<Double> others = new ArrayList<>(values);
    otherRows.remove(i);
    others.remove(i);
    return new ChartSteps(otherRows, others);
  }

  /** A cell that reads like its neighbours in the other unit, if those agree with each other. */
  private Optional<Integer> otherUnit() {
    for (int i = 0; i < values.size(); i++) {
      int beside = i > 0 ? i - 1 : 1;
      boolean neighboursAgree =
          i == 0 || i + 1 >= values.size() || !isOtherUnit(values.get(i - 1), values.get(i + 1));
      if (beside < values.size()
          && isOtherUnit(values.get(i), values.get(beside))
          && neighboursAgree) {
        boolean firstIsOdd =
            i == 1 && values.size() > 2 && !isOtherUnit(values.get(1), values.get(2));
        return Optional.of(firstIsOdd ? 0 : i);
      }
    }
    return Optional.empty();
  }

  private static boolean isOtherUnit(double value, double beside) {
    double times = Math.max(value, beside) / Math.min(value, beside);
    return value > 0 && beside > 0 && Math.abs(times / INCH - 1) <= NEAR;
  }

  /** What the cells beside a cell lead to: their middle, or the step before once more. */
  private double expected(int i) {
    int count = values.size();
    if (count < 2) {
      return values.get(i);
    } else if (i == 0) {
      return count > 2 ? 2 * values.get(1) - values.get(2) : values.get(1);
    } else if (i == count - 1) {
      return count > 2 ? 2 * values.get(i - 1) - values.get(i - 2) : values.get(i - 1);
    }
    return (values.get(i - 1) + values.get(i + 1)) / 2;
  }

  /** The one cell without which the column runs evenly, where one is. */
  private Optional<Integer> offLine(GradeLimits limits) {
    int count = values.size();
    if (count < LEAST) {
      return Optional.empty();
    }
    double least = Math.max(FINEST, Math.max(1.05 * grain(), limits.chartOff() * usual()));
    double most = 0;
    double second = 0;
    int at = -1;
    for (int i = 1; i < count - 1; i++) {
      double off = Math.abs(values.get(i) - expected(i));
      double gain = unrest(values) - unrest(with(i, expected(i)));
      double whole = (i == 1 || i == count - 2 ? 3 : 4) * off;
      boolean accounts = gain >= ACCOUNTS * whole;
      if (accounts && off > least) {
        if (gain > most) {
          second = most;
          most = gain;
          at = i;
        } else {
          second = Math.max(second, gain);
        }
      }
    }
    if (at >= 0) {
      return second < 0.9 * most ? Optional.of(at) : Optional.empty();
    }
    return end(0, 1).or(() -> end(count - 1, -1));
  }

  /** How finely the column is written (mm): all but one of its cells lie on that grid. */
  private double grain() {
    for (double grain : GRAINS) {
      long off =
          values.stream()
              .filter(v -> Math.abs(v / grain - Math.rint(v / grain)) * grain > 1e-4)
              .count();
      if (off <= 1) {
        return grain;
      }
    }
    return 0;
  }

  /**
   * How far a cell usually lies from the middle of those beside it (mm): half of them no farther,
   * the three that one slip would set off left out.
   */
  private double usual() {
    List<Double> off = new ArrayList<>();
    for (int i = 1; i < values.size() - 1; i++) {
      off.add(Math.abs(values.get(i) - expected(i)));
    }
    off.sort(Double::compare);
    return off.size() > 3 ? off.get((off.size() - 4) / 2) : 0;
  }

  /**
   * An end whose step is none like the next ones, or goes against them.
   *
   * @param inward to the next cell: 1 or -1
   */
  private Optional<Integer> end(int end, int inward) {
    double own = inward * (values.get(end + inward) - values.get(end));
    double largest = 0;
    boolean rising = true;
    for (int i = 1; i <= NEXT; i++) {
      double step = inward * (values.get(end + inward * (i + 1)) - values.get(end + inward * i));
      largest = Math.max(largest, Math.abs(step));
      rising &= step >= 0;
    }
    double least = Math.max(FINEST, 1.05 * grain());
    boolean back = rising && own < -least;
    boolean far = Math.abs(own) > END * largest + least;
    return back || far ? Optional.of(end) : Optional.empty();
  }

  private List<Double> with(int i, double value) {
    List<Double> others = new ArrayList<>(values);
    others.set(i, value);
    return others;
  }

  /** How much the steps of a column change, all together (mm). */
  private static double unrest(List<Double> values) {
    double sum = 0;
    for (int i = 1; i < values.size() - 1; i++) {
      sum += Math.abs(values.get(i + 1) - 2 * values.get(i) + values.get(i - 1));
    }
    return sum;
  }
}
