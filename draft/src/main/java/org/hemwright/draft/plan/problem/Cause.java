package org.hemwright.draft.plan.problem;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Argument;

/**
 * One reason why a value could not be worked out, before it is known in which sizes.
 *
 * @param code the finding's code
 * @param arguments what its wording names, in order
 * @param span where in the text, if not where the value stands
 * @param point where on the piece, if it is one place
 */
public record Cause(
    String code, Map<String, Argument> arguments, Optional<Span> span, Optional<Point> point) {
  public Cause {
    arguments = new LinkedHashMap<>(arguments);
  }

  /** A reason that names nothing yet. */
  public static Cause of(String code) {
    return new Cause(code, Map.of(), Optional.empty(), Optional.empty());
  }

  @Override
  public Map<String, Argument> arguments() {
    return new LinkedHashMap<>(arguments);
  }

  /** The same reason, naming one thing more. */
  public Cause with(String name, Argument argument) {
    Map<String, Argument> more = arguments();
    more.put(name, argument);
    return new Cause(code, more, span, point);
  }

  /** The same reason, naming one word more. */
  public Cause with(String name, String text) {
    return with(name, Argument.of(text));
  }

  /** The same reason at its own place in the text. */
  public Cause at(Span place) {
    return new Cause(code, arguments, Optional.of(place), point);
  }

  /** The same reason at a place on the piece. */
  public Cause at(Point place) {
    return new Cause(code, arguments, span, Optional.of(place));
  }
}
