package org.hemwright.draft.syntax;

import java.util.function.UnaryOperator;
import org.hemwright.pattern.finding.Finding;

/** The slots of a form are filled, yet what they say does not go together. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String code;
  private final Span span;
  private final transient UnaryOperator<Finding.Builder> details;

  Refusal(String code, Span span, UnaryOperator<Finding.Builder> details) {
    super(code, null, false, false);
    this.code = code;
    this.span = span;
    this.details = details;
  }

  Refusal(String code, Span span) {
    this(code, span, builder -> builder);
  }

  Finding finding(Slips slips) {
    return details.apply(slips.fail(code, span)).build();
  }
}
