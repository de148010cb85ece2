package org.hemwright.draft.plan.name;

import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.finding.Argument;

/**
 * A drawn thing that has a name.
 *
 * @param what what it is
 * @param slot where its value is
 * @param span where it is named, or brought in
 * @param given where it was first named
 */
public record Drawn(What what, int slot, Span span, Span given) {
  /** What a drawn thing is. */
  public enum What {
    POINT("point", true),
    LEVEL("level", true),
    PATH("path", false),
    EDGE("edge", false),
    INNER("inner-line", false),
    PLACEMENT("placement-line", false);

    private final String key;
    private final boolean point;

    What(String key, boolean point) {
      this.key = key;
      this.point = point;
    }

    /** For people: "a point". */
    public Argument words() {
      return new Argument.Term(key);
    }

    /** Whether it can stand where a point is wanted; where not, it is a path. */
    public boolean isPoint() {
      return point;
    }
  }
}
