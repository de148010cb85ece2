package org.hemwright.pattern.quantity;

/** What came of reading a number that a person typed. */
public sealed interface Reading<T> {
  /** It could be read. */
  record Read<T>(T value) implements Reading<T> {}

  /**
   * It could not.
   *
   * @param reason why
   * @param text the part that stands in the way, as typed; the whole where no part does
   */
  record Unread<T>(Reason reason, String text) implements Reading<T> {}

  /** Why a number could not be read. */
  enum Reason {
    /** Nothing is written. */
    NOTHING("number-nothing"),
    /** What is written is no number. */
    NO_NUMBER("number-unclear"),
    /** A comma stands where a point belongs. */
    DECIMAL_COMMA("number-decimal-comma"),
    /** A fraction has 0 below the bar. */
    ZERO_BELOW_BAR("number-zero-below-bar"),
    /** Only 0 may lack a unit. */
    UNIT_MISSING("number-unit-missing"),
    /** The unit is none that is known here. */
    UNIT_UNKNOWN("number-unit-unknown"),
    /** More digits than any body or cloth has. */
    TOO_LARGE("number-too-large");

    private final String code;

    Reason(String code) {
      this.code = code;
    }

    /** The code of its wording; it names {@code {text}}. */
    public String code() {
      return code;
    }
  }
}
