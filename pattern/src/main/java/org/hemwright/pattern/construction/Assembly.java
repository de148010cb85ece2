package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Step;

/**
 * One view of a garment put together in one size, step by step.
 *
 * <p>Followed only where the size has all the pieces of the view; else there are no steps and no
 * troubles, since what could not be drawn is told elsewhere.
 *
 * @param view its name
 * @param steps what each step did, in order
 * @param troubles what stands in the way, in the order in which it shows
 */
public record Assembly(String view, List<Done> steps, List<Trouble> troubles) {
  public Assembly {
    steps = List.copyOf(steps);
    troubles = List.copyOf(troubles);
  }

  /** Follows the steps of a view in one size. */
  public static Assembly of(Pattern pattern, View view, SizedPattern sized) {
    boolean all =
        pattern.pieces().stream()
            .filter(card -> view.pieces().contains(card.name()))
            .filter(card -> card.sizes().stream().allMatch(range -> range.contains(sized.size())))
            .allMatch(card -> sized.piece(card.name()).isPresent());
    List<Step> steps = pattern.making().steps(view.name(), sized.size());
    if (!all || steps.isEmpty()) {
      return new Assembly(view.name(), List.of(), List.of());
    }
    Follower follower = new Follower(new CutCloth(pattern, view, sized), steps, pattern.making());
    List<Done> done = follower.follow();
    return new Assembly(view.name(), done, follower.troubles());
  }

  /** Every view of a pattern in one size, in its order. */
  public static List<Assembly> all(Pattern pattern, SizedPattern sized) {
    List<Assembly> all = new ArrayList<>();
    pattern.views().forEach(view -> all.add(of(pattern, view, sized)));
    return all;
  }

  /** Of the troubles, those that answer one question, in order. */
  public List<Trouble> troubles(Trouble.Question question) {
    return troubles.stream().filter(trouble -> trouble.kind().question() == question).toList();
  }
}
