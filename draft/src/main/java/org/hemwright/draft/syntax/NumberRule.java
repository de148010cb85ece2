package org.hemwright.draft.syntax;

import java.util.List;

/** The right side of {@code let}, or an amount that may be stepped or chosen. */
public sealed interface NumberRule {
  /** Where it stands. */
  Span span();

  /** One expression for every size. */
  record Plain(Expression value) implements NumberRule {
    @Override
    public Span span() {
      return value.span();
    }
  }

  /** {@code 1 cm, then 1.3 cm from size 22, then 1.5 cm from size 30}. */
  record Stepped(Expression first, List<Step> steps, Span span) implements NumberRule {
    public Stepped {
      steps = List.copyOf(steps);
    }
  }

  /** {@code then VALUE from size SIZE}. */
  record Step(Expression value, SizeWord from) {}

  /** {@code A when hip > 110 cm, B when …, otherwise C}. */
  record Chosen(List<Choice> choices, Expression otherwise, Span span) implements NumberRule {
    public Chosen {
      choices = List.copyOf(choices);
    }
  }

  /** {@code VALUE when CONDITION}. */
  record Choice(Expression value, Condition when) {}

  /** A size as written: {@code 14} or {@code "2T"}. */
  record SizeWord(String name, Span span) {}
}
