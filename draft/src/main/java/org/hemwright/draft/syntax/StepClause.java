package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Sewing;

/** What follows a comma in a step. */
public sealed interface StepClause {
  /** Where it stands. */
  Span span();

  /** {@code press toward back}. */
  record Pressed(StepRule.PressRule way, Span span) implements StepClause {}

  /** {@code leaving feed 6 cm open ["at the centre back"]}. */
  record Leaving(Name name, Expression length, Optional<String> where, Span span)
      implements StepClause {}

  /** {@code in 2 rows [6 mm apart]}. */
  record Rows(int count, Optional<Expression> apart, Span span) implements StepClause {}

  /** {@code at 3 mm from the raw edge}. */
  record Distance(Expression amount, Sewing.Distance.From from, Span span) implements StepClause {}

  /** {@code needle twin stretch 75}. */
  record WithNeedle(StepRule.NeedleRule needle, Span span) implements StepClause {}

  /** {@code in one pass}. */
  record OnePass(Span span) implements StepClause {}

  /** {@code sold in 18 cm and 20 cm}. */
  record Sold(List<Expression.Literal> lengths, Span span) implements StepClause {
    public Sold {
      lengths = List.copyOf(lengths);
    }
  }

  /** {@code sewing cuff_seam and sleeve.slit}. */
  record Dealing(Act.Dealing.How how, List<WorkName> work, Span span) implements StepClause {
    public Dealing {
      work = List.copyOf(work);
    }
  }

  /** {@code in view A and B}. */
  record InView(List<Name> views, Span span) implements StepClause {
    public InView {
      views = List.copyOf(views);
    }
  }

  /** {@code in sizes 8 to 16}. */
  record InSizes(Statement.Sizes sizes, Span span) implements StepClause {}

  /** {@code note "words"}. */
  record Note(String words, Span span) implements StepClause {}

  /** {@code see that "both notches meet"}. */
  record See(String words, Span span) implements StepClause {}

  /** {@code as attach_band}. */
  record As(Name name, Span span) implements StepClause {}
}
