package org.hemwright.draft.syntax;

import java.util.Optional;
import org.hemwright.pattern.make.Stitch;

/** A stitch as written, or that none is needed. */
public sealed interface StitchRule {
  /** Where it stands. */
  Span span();

  /** {@code stretch stitch 3 mm}, {@code zigzag 2.5 mm by 2.5 mm}. */
  record Made(
      Stitch.Kind kind,
      Optional<Expression.Literal> length,
      Optional<Expression.Literal> width,
      Span span)
      implements StitchRule {}

  /** {@code raw}, {@code raw "on cloth that does not fray"}. */
  record Raw(Optional<String> when, Span span) implements StitchRule {}
}
