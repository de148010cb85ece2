package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.hemwright.pattern.make.Step;

/**
 * Which step of the old version is which of the new. A step is found again by its name; one whose
 * name is gone by what it does, and else by the step before it that does the same kind of thing.
 */
final class StepPairs {
  private final List<Step> was;
  private final List<Step> is;
  private final Map<Step, Step> matched = new LinkedHashMap<>();
  private final Set<Step> free;

  /**
   * The pairs of two versions' steps.
   *
   * @param before words for what the old steps do, in the new names
   * @param after words for what the new ones do
   */
  StepPairs(List<Step> was, List<Step> is, StepText before, StepText after) {
    this.was = was;
    this.is = is;
    free = new LinkedHashSet<>(was);
    pair((then, step) -> then.id().equals(step.id()));
    pair(
        (then, step) ->
            then.act().word().equals(step.act().word())
                && before.work(then).equals(after.work(step)));
    pair(
        (then, step) ->
            then.act().word().equals(step.act().word())
                && earlier(was, then).equals(earlier(is, step).map(matched::get)));
  }

  private void pair(BiPredicate<Step, Step> same) {
    for (Step step : is) {
      if (!matched.containsKey(step)) {
        free.stream()
            .filter(then -> same.test(then, step))
            .findFirst()
            .ifPresent(
                then -> {
                  matched.put(step, then);
                  free.remove(then);
                });
      }
    }
  }

  /** The step before another; nothing before the first. */
  static Optional<Step> earlier(List<Step> steps, Step step) {
    int at = steps.indexOf(step);
    return at > 0 ? Optional.of(steps.get(at - 1)) : Optional.empty();
  }

  /** What a step of the new version was. */
  Optional<Step> then(Step step) {
    return Optional.ofNullable(matched.get(step));
  }

  /** The old steps that are none of the new. */
  Set<Step> gone() {
    return free;
  }

  /** The steps that follow each other as they did: of all such sequences one of the longest. */
  Set<Step> inOrder() {
    List<Step> steps = is.stream().filter(matched::containsKey).toList();
    int count = steps.size();
    int[] longest = new int[count];
    int[] previous = new int[count];
    int best = -1;
    for (int i = 0; i < count; i++) {
      longest[i] = 1;
      previous[i] = -1;
      for (int j = 0; j < i; j++) {
        if (position(steps.get(j)) < position(steps.get(i)) && longest[j] + 1 > longest[i]) {
          longest[i] = longest[j] + 1;
          previous[i] = j;
        }
      }
      if (best < 0 || longest[i] > longest[best]) {
        best = i;
      }
    }
    Set<Step> kept = new LinkedHashSet<>();
    for (int i = best; i >= 0; i = previous[i]) {
      kept.add(steps.get(i));
    }
    return kept;
  }

  private int position(Step step) {
    return was.indexOf(matched.get(step));
  }
}
