package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.finding.Argument;

/**
 * Counts the work of one size, so that no document keeps a machine busy for ever. It counts and
 * never looks at a clock: the same document ends the same way on every machine.
 */
public final class Work {
  /**
   * What all sizes together may take: a second or two, and some hundred times what the examples
   * take.
   */
  public static final long MOST = 50_000_000;

  private final long most;
  private final Failure tooMuch;
  private long done;

  /** None done, and no more than this allowed. */
  public Work(long most) {
    this.most = most;
    this.tooMuch = new Failure(Cause.of("work-exceeded").with("most", Argument.of(most)));
  }

  /** Counts some work; refuses it when too much has been done. */
  void spend(long amount) {
    done += amount;
    if (done > most) {
      throw tooMuch;
    }
  }

  /** What has been done. */
  public long done() {
    return done;
  }
}
