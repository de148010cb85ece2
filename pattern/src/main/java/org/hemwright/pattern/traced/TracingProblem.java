package org.hemwright.pattern.traced;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hemwright.pattern.finding.Argument;

/**
 * Why an outline could not be taken from a drawing: the code of a finding and what its wording
 * names. Whoever asked for the outline knows where in the document that was, and tells it there.
 */
public final class TracingProblem extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final String code;
  private final transient Map<String, Argument> arguments = new LinkedHashMap<>();

  /** A problem that names nothing yet. */
  public TracingProblem(String code) {
    super(code, null, false, false);
    this.code = code;
  }

  /** The same, naming one thing more. */
  public TracingProblem with(String name, Argument argument) {
    arguments.put(name, argument);
    return this;
  }

  /** The same, naming one word more. */
  public TracingProblem with(String name, String text) {
    return with(name, Argument.of(text));
  }

  /** The finding's code. */
  public String code() {
    return code;
  }

  /** What its wording names, in order. */
  public Map<String, Argument> arguments() {
    return new LinkedHashMap<>(arguments);
  }
}
