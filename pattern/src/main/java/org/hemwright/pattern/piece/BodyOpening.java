package org.hemwright.pattern.piece;

import java.util.Optional;
import org.hemwright.pattern.finding.Origin;

/**
 * An edge that goes over the body, and what it must pass (handbook section 4).
 *
 * @param edge the edge's name
 * @param over the measurement of the chart that it must pass, {@code hip}; nothing where the
 *     document does not say
 * @param closure what closes a slit beside it; nothing where it is a plain round
 * @param origin where the document says so
 */
public record BodyOpening(
    String edge, Optional<String> over, Optional<Closure> closure, Origin origin) {
  /**
   * A slit that is closed once the garment is on.
   *
   * @param kind by what
   * @param length how far the slit reaches from the edge (mm), more than 0
   */
  public record Closure(Kind kind, double length) {
    public Closure {
      if (!(length > 0)) {
        throw new IllegalArgumentException("a closure has a length, not " + length);
      }
    }
  }

  /** What closes a slit. */
  public enum Kind {
    ZIP,
    BUTTONS,
    HOOKS,
    SNAPS,
    TIES
  }
}
