package org.hemwright.draft.plan.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.StepRule;
import org.hemwright.draft.syntax.StitchRule;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Stitch;

/** Turns stitches and needles as written into values. */
final class StitchReader {
  private StitchReader() {}

  static List<Stitch> stitches(List<StitchRule> rules) {
    List<Stitch> stitches = new ArrayList<>();
    for (StitchRule rule : rules) {
      if (rule instanceof StitchRule.Made made) {
        stitches.add(new Stitch(made.kind(), mm(made.length()), mm(made.width())));
      }
    }
    return stitches;
  }

  /** That it may be left raw, where the stitches say so. */
  static Optional<Sewing.Raw> raw(List<StitchRule> rules) {
    return rules.stream()
        .filter(StitchRule.Raw.class::isInstance)
        .map(rule -> new Sewing.Raw(((StitchRule.Raw) rule).when()))
        .findFirst();
  }

  static Needle needle(StepRule.NeedleRule rule) {
    return new Needle(
        rule.point(),
        rule.from(),
        rule.to().orElse(rule.from()),
        rule.twin(),
        rule.apart().map(StitchReader::mm));
  }

  static double mm(Expression.Literal literal) {
    return literal.value() * literal.unit().factor();
  }

  private static OptionalDouble mm(Optional<Expression.Literal> literal) {
    return literal.stream().mapToDouble(StitchReader::mm).findFirst();
  }
}
