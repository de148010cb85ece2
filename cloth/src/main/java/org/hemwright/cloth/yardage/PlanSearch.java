package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.LayBudget;
import org.hemwright.cloth.laying.LayWatcher;
import org.hemwright.cloth.laying.Laying;
import org.hemwright.cloth.laying.Layout;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.laying.StripProblem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.Section;

/**
 * Lays the sections of plans and keeps the shortest laying.
 *
 * @param work how many places are looked at for each section
 * @param seed where the random numbers start
 * @param shapes what is known of the pieces' shapes; changes nothing but the time
 */
record PlanSearch(long work, long seed, NoFitStore shapes) {
  /** A section this near to the least length that it can have is as short as any (a share). */
  private static final double AS_SHORT = 1e-9;

  /** A plan and the layouts of its sections. */
  record Laid(ClothPlan plan, List<Layout> layouts, ClothLaying laying) {
    Laid {
      layouts = List.copyOf(layouts);
    }

    /** Whether no laying by this plan can be shorter. */
    boolean isShortest() {
      double least = 0;
      for (Section section : plan.sections()) {
        least += section.times(plan.sheet()) * section.leastLength();
      }
      double gaps = (plan.sections().size() - 1) * plan.sheet().settings().gap();
      return laying.length() <= (least + gaps) * (1 + AS_SHORT);
    }

    static Laid of(ClothPlan plan, List<Layout> layouts) {
      return new Laid(plan, layouts, ClothLaying.of(plan, layouts));
    }
  }

  /**
   * The shortest laying of plans that fit; the first of equals.
   *
   * @param like a laying of like pieces to begin from
   */
  Optional<Laid> lay(List<ClothPlan> plans, Optional<Laid> like) {
    Laid best = null;
    for (ClothPlan plan : plans) {
      if (plan.fits()) {
        List<Layout> layouts = new ArrayList<>();
        for (int i = 0; i < plan.sections().size(); i++) {
          layouts.add(lay(plan.sections().get(i), hint(like, i)));
        }
        Laid laid = Laid.of(plan, layouts);
        best = best == null || laid.laying.length() < best.laying.length() ? laid : best;
      }
    }
    return Optional.ofNullable(best);
  }

  private static Optional<Layout> hint(Optional<Laid> like, int section) {
    return like.filter(laid -> section < laid.layouts.size())
        .map(laid -> laid.layouts.get(section));
  }

  private Layout lay(Section section, Optional<Layout> like) {
    StripProblem problem = section.problem().orElseThrow();
    double least = section.leastLength() + 2 * section.gap();
    LayWatcher enough =
        progress ->
            progress.length() > least * (1 + AS_SHORT)
                ? LayWatcher.Wish.GO_ON
                : LayWatcher.Wish.STOP;
    LayBudget budget = new LayBudget(work, seed);
    Laying laying = Laying.onOneThread(problem, shapes);
    Layout found =
        like.map(start -> laying.lay(budget, enough, start))
            .orElseGet(() -> laying.lay(budget, enough))
            .layout();
    return laying.tidied(found);
  }
}
