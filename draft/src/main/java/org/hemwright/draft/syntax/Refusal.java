package org.hemwright.draft.syntax;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/** The slots of a form are filled, yet what they say does not go together. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String code;
  private final transient Span span;
  private final transient Map<String, Argument> arguments = new LinkedHashMap<>();
  private transient Optional<String> replacement = Optional.empty();

  Refusal(String code, Span span) {
    super(code, null, false, false);
    this.code = code;
    this.span = span;
  }

  Refusal with(String name, String text) {
    return with(name, Argument.of(text));
  }

  Refusal with(String name, Argument argument) {
    arguments.put(name, argument);
    return this;
  }

  /** What would mend it, in place of the span. */
  Refusal mendedBy(String text) {
    replacement = Optional.of(text);
    return this;
  }

  Finding finding(Source source) {
    Finding.Builder finding = new Slips(source).fail(code, span);
    arguments.forEach(finding::with);
    replacement.ifPresent(text -> finding.mendedBy(source.replace(span, text)));
    return finding.build();
  }
}
