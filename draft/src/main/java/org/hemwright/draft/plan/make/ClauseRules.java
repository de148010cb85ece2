package org.hemwright.draft.plan.make;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.StepClause;
import org.hemwright.draft.syntax.StepRule;

/** Which clauses a step may add, and how often. */
final class ClauseRules {
  private final Problems problems;
  private final String word;

  ClauseRules(Problems problems, String word) {
    this.problems = problems;
    this.word = word;
  }

  void check(Statement.Step step) {
    Map<Class<?>, StepClause> said = new LinkedHashMap<>();
    for (StepClause clause : step.clauses()) {
      if (!fits(step.rule(), clause)) {
        problems.add(
            problems
                .at(clause.span(), "clause-out-of-place")
                .with("clause", problems.text(clause.span()))
                .with("word", word));
      }
      boolean many =
          clause instanceof StepClause.Note
              || clause instanceof StepClause.See
              || clause instanceof StepClause.Leaving
              || clause instanceof StepClause.Dealing;
      if (!many && said.putIfAbsent(clause.getClass(), clause) != null) {
        problems.add(
            problems
                .at(clause.span(), "step-clause-twice")
                .with("clause", problems.text(clause.span())));
      }
    }
  }

  private static boolean fits(StepRule rule, StepClause clause) {
    if (clause instanceof StepClause.Sold) {
      return rule instanceof StepRule.InsertZip;
    } else if (clause instanceof StepClause.Dealing) {
      return rule instanceof StepRule.Own;
    } else if (clause instanceof StepClause.OnePass) {
      return rule instanceof StepRule.Sew;
    } else if (clause instanceof StepClause.Pressed) {
      return !(rule instanceof StepRule.Press);
    } else if (clause instanceof StepClause.Leaving) {
      return rule instanceof StepRule.Sew
          || rule instanceof StepRule.Attach
          || rule instanceof StepRule.SetIn
          || rule instanceof StepRule.HandSew
          || rule instanceof StepRule.FormCasing
          || rule instanceof StepRule.Hem
          || rule instanceof StepRule.Own;
    } else if (clause instanceof StepClause.Rows || clause instanceof StepClause.Distance) {
      return ActReader.stitches(rule) || rule instanceof StepRule.Own;
    }
    return true;
  }
}
