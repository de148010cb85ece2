package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.node.Program;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Place;
import org.jspecify.annotations.Nullable;

/**
 * Tells why values are missing: the first cause only, where it arose. A failure in a choice that is
 * not taken is none, and so is a solve that has nothing to decide in a size, unless its number is
 * needed there. What fails because a statement was read as if mended is not told: the statement
 * was.
 */
final class FailureReport {
  private static final String IDLE = "solve-idle";

  private final Program program;
  private final Source source;

  /** The words of the first finding of a cause; they stand for all sizes. */
  private final Map<String, Map<String, Argument>> words = new LinkedHashMap<>();

  /** The slots whose values rest on a guess. */
  private final BitSet guessed = new BitSet();

  FailureReport(Plan plan) {
    this.program = plan.program();
    this.source = Source.of(plan.document());
    Doubt doubt = Doubt.of(plan.document());
    if (!doubt.isNone()) {
      for (int slot : program.affected(each -> doubt.holds(program.span(each)))) {
        guessed.set(slot);
      }
    }
  }

  /** A finding for each cause in each size. */
  List<Finding> findings(List<Values> sizes) {
    List<Finding> findings = new ArrayList<>();
    for (Values values : sizes) {
      add(values, findings);
    }
    return findings;
  }

  private void add(Values values, List<Finding> findings) {
    IdentityHashMap<Failure, Integer> arose = new IdentityHashMap<>();
    IdentityHashMap<Failure, Boolean> told = new IdentityHashMap<>();
    for (int slot : program.all()) {
      @Nullable Failure failure = values.failure(slot);
      if (failure == null || !program.isIn(slot, values.size().position())) {
        continue;
      }
      Integer first = arose.putIfAbsent(failure, slot);
      boolean counts =
          !program.isBranch(slot) && !guessed.get(slot) && !(first == null && isIdle(failure));
      if (counts && told.put(failure, true) == null) {
        int origin = first == null ? slot : first;
        for (int i = 0; i < failure.causes().size(); i++) {
          findings.add(finding(values, origin, failure.causes().get(i), i));
        }
      }
    }
  }

  private static boolean isIdle(Failure failure) {
    return failure.causes().size() == 1 && failure.causes().get(0).code().equals(IDLE);
  }

  private Finding finding(Values values, int slot, Cause cause, int index) {
    Span span = cause.span().orElse(program.span(slot));
    Origin origin = source.origin(span);
    String owner = program.owner(slot);
    Place place =
        cause
            .point()
            .filter(point -> !owner.isEmpty())
            .map(point -> Place.on(origin, owner, point))
            .orElse(
                new Place(
                    Optional.of(origin),
                    owner.isEmpty() ? Optional.empty() : Optional.of(owner),
                    Optional.empty()));
    Finding.Builder finding =
        Finding.fail(cause.code(), program.subject(slot))
            .sizes(List.of(values.size().name()))
            .at(place);
    Map<String, Argument> first =
        words.computeIfAbsent(slot + " " + cause.code() + " " + index, key -> cause.arguments());
    cause
        .arguments()
        .forEach(
            (name, argument) ->
                finding.with(
                    name,
                    argument instanceof Argument.Measured
                        ? argument
                        : shortened(first.getOrDefault(name, argument), owner)));
    return finding.build();
  }

  private static Argument shortened(Argument argument, String owner) {
    return argument instanceof Argument.Text text
        ? Argument.of(NodeList.shortened(text.text(), owner))
        : argument;
  }
}
