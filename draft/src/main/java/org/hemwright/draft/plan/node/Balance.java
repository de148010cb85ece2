package org.hemwright.draft.plan.node;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Tolerance;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver.Interval;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds the one place at which two sides balance.
 *
 * <p>Their difference is tried at 33 even places and must change sign once; that place is then
 * closed in with a bracketing solver of Brent's kind (Hipparchus), which never leaves the bracket.
 */
final class Balance {
  private static final int PLACES = 33;
  private static final int MOST_TRIALS = 200;
  private static final int ORDER = 5;

  private final SolveNode.Trial trial;
  private final double width;

  /**
   * Sides to be tried.
   *
   * @param kind what the number is, which decides how closely it is found
   */
  Balance(SolveNode.Trial trial, Kind kind) {
    this.trial = trial;
    this.width = kind == Kind.LENGTH ? Tolerance.SOLVED_LENGTH : Tolerance.SOLVED_SHARE;
  }

  /** The place at which the sides balance. */
  double place() {
    double low = trial.low();
    double high = trial.high();
    if (!(low < high)) {
      throw new Failure(trial.cause("solve-range-empty"));
    }
    double[] places = new double[PLACES];
    double[] over = new double[PLACES];
    double leftLow = 0;
    double rightLow = 0;
    for (int i = 0; i < PLACES; i++) {
      double share = (double) i / (PLACES - 1);
      places[i] = i == PLACES - 1 ? high : low + (high - low) * share;
      over[i] = trial.difference(places[i]);
      if (i == 0) {
        leftLow = trial.left();
        rightLow = trial.right();
      }
    }
    List<Integer> changes = changes(over);
    if (changes.isEmpty()) {
      throw new Failure(
          trial
              .cause("solve-never")
              .with("leftLow", trial.side(leftLow))
              .with("rightLow", trial.side(rightLow))
              .with("leftHigh", trial.side(trial.left()))
              .with("rightHigh", trial.side(trial.right())));
    }
    if (changes.size() > 1) {
      List<Double> found = new ArrayList<>();
      for (int change : changes) {
        found.add(closedIn(places, over, change));
      }
      throw new Failure(trial.cause("solve-several").with("places", trial.at(found)));
    }
    return closedIn(places, over, changes.get(0));
  }

  /** The places at which the difference is nothing, or after which its sign is another. */
  private static List<Integer> changes(double[] over) {
    List<Integer> changes = new ArrayList<>();
    for (int i = 0; i < over.length; i++) {
      boolean next = i + 1 < over.length && over[i] != 0 && over[i + 1] != 0;
      if (over[i] == 0 || (next && (over[i] < 0) != (over[i + 1] < 0))) {
        changes.add(i);
      }
    }
    return changes;
  }

  private double closedIn(double[] places, double[] over, int change) {
    if (over[change] == 0) {
      return places[change];
    }
    double from = places[change];
    double to = places[change + 1];
    double guess = from + (to - from) * over[change] / (over[change] - over[change + 1]);
    Interval bracket =
        new BracketingNthOrderBrentSolver(0, width, Double.MIN_NORMAL, ORDER)
            .solveInterval(MOST_TRIALS, trial::difference, from, to, guess);
    boolean leftIsNearer = Math.abs(bracket.getLeftValue()) <= Math.abs(bracket.getRightValue());
    double left = leftIsNearer ? bracket.getLeftValue() : bracket.getRightValue();
    double allowed = trial.sideKind() == Kind.LENGTH ? Tolerance.JUMP_LENGTH : Tolerance.JUMP_SHARE;
    double place = leftIsNearer ? bracket.getLeftAbscissa() : bracket.getRightAbscissa();
    if (Math.abs(left) > allowed) {
      throw new Failure(
          trial
              .cause("solve-jump")
              .with("place", trial.at(place))
              .with("before", trial.side(bracket.getLeftValue()))
              .with("after", trial.side(bracket.getRightValue())));
    }
    return place;
  }
}
