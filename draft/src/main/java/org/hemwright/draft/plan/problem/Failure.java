package org.hemwright.draft.plan.problem;

import java.util.List;

/**
 * Says that a value could not be worked out, and why. It is thrown where the value is worked out
 * and kept in the value's place, so that all that depends on it is unknown for the same reason.
 */
public final class Failure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Cause> causes;

  /** For these reasons; for none when they have been told already. */
  public Failure(List<Cause> causes) {
    super(causes.isEmpty() ? "told already" : causes.get(0).code(), null, false, false);
    this.causes = List.copyOf(causes);
  }

  /** For one reason. */
  public Failure(Cause cause) {
    this(List.of(cause));
  }

  /** For reasons that were told when the document was planned. */
  public static Failure told() {
    return new Failure(List.of());
  }

  /** The reasons; empty when they have been told already. */
  public List<Cause> causes() {
    return causes;
  }
}
