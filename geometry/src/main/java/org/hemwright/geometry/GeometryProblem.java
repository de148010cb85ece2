package org.hemwright.geometry;

/**
 * Says in plain words why a shape cannot be. The reason is one clause without a full stop, with its
 * values in millimetres, so that a caller can set it into a finding that names the place.
 */
public final class GeometryProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String reason;

  /** Takes the reason, as in "the two points lie on one another at (3, 4)". */
  public GeometryProblem(String reason) {
    super(reason);
    this.reason = reason;
  }

  /** The reason, never empty. */
  public String reason() {
    return reason;
  }
}
