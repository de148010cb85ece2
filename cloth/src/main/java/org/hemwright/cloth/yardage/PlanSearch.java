package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
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
 * Lays the sections of plans and keeps the shortest laying; then tidies that.
 *
 * @param work how many places are looked at for each section, at most
 * @param seed where the random numbers start
 * @param shapes what is known of the pieces' shapes; changes nothing but the time
 */
record PlanSearch(long work, long seed, NoFitStore shapes) {
  /** A section this near to the least length that it can have is as short as any (a share). */
  private static final double AS_SHORT = 1e-9;

  /** So many places are looked at for a section that is only shown beside another. */
  private static final long ROUGH = 2_000;

  /** By so much (a share) a laying may become longer for the sake of tidiness; no source. */
  private static final double LONGER = 0.005;

  /** What a length is rounded by on the way to a shop's unit (mm). */
  private static final double ROUNDING = 0.1;

  /** A plan and the layouts of its sections. */
  record Laid(ClothPlan plan, List<Layout> layouts, ClothLaying laying) {
    Laid {
      layouts = List.copyOf(layouts);
    }

    static Laid of(ClothPlan plan, List<Layout> layouts) {
      return new Laid(plan, layouts, ClothLaying.of(plan, layouts));
    }
  }

  /** The shortest laying of plans that fit; the first of equals. */
  Optional<Laid> lay(List<ClothPlan> plans) {
    return lay(plans, Optional.empty(), LayingFollower.NOBODY);
  }

  /**
   * The same, while someone looks on.
   *
   * @param like a laying of the same pieces to begin from
   */
  Optional<Laid> lay(List<ClothPlan> plans, Optional<Laid> like, LayingFollower follower) {
    Laid best = null;
    Shown shown = new Shown(follower);
    for (ClothPlan plan : plans) {
      if (plan.fits()) {
        List<Layout> layouts = new ArrayList<>();
        while (layouts.size() < plan.sections().size()) {
          layouts.add(lay(plan, layouts, hint(like, layouts.size()), shown));
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

  /** Lays the section that follows those which are laid. */
  private Layout lay(ClothPlan plan, List<Layout> laid, Optional<Layout> like, Shown shown) {
    Section section = plan.sections().get(laid.size());
    StripProblem problem = section.problem().orElseThrow();
    double least = section.leastLength() + 2 * section.gap();
    Patience patience = Patience.with(problem, work, least * (1 + AS_SHORT));
    LayWatcher enough =
        shown.follower == LayingFollower.NOBODY ? patience : shown.beside(patience, plan, laid);
    LayBudget budget = new LayBudget(patience.work(), seed);
    Laying laying = Laying.byOneWorker(problem, shapes);
    return like.map(start -> laying.lay(budget, enough, start))
        .orElseGet(() -> laying.lay(budget, enough))
        .layout();
  }

  /** What was shown to a follower so far: over all plans only what is shorter. */
  private final class Shown {
    private final LayingFollower follower;
    private double shortest = Double.POSITIVE_INFINITY;

    Shown(LayingFollower follower) {
      this.follower = follower;
    }

    /** Shows every layout of a section with what is laid before and, roughly, after it. */
    LayWatcher beside(LayWatcher patience, ClothPlan plan, List<Layout> before) {
      List<Layout> known = List.copyOf(before);
      List<Layout> after = new ArrayList<>();
      for (Section each : plan.sections().subList(before.size() + 1, plan.sections().size())) {
        after.add(roughly(each));
      }
      return new LayWatcher() {
        @Override
        public Wish follow(Progress progress) {
          return follower.hasEnough() ? Wish.STOP : patience.follow(progress);
        }

        @Override
        public void shorter(Supplier<Layout> layout) {
          List<Layout> all = new ArrayList<>(known);
          all.add(layout.get());
          all.addAll(after);
          ClothLaying laying = ClothLaying.of(plan, all);
          if (laying.length() < shortest) {
            shortest = laying.length();
            follower.shorter(laying);
          }
        }
      };
    }
  }

  private Layout roughly(Section section) {
    return Laying.byOneWorker(section.problem().orElseThrow(), shapes)
        .lay(new LayBudget(ROUGH, seed), LayWatcher.PATIENT)
        .layout();
  }

  /**
   * How much longer a laying may become where that makes it tidier (mm on the table): half a
   * percent, where that buys no more in either unit of a shop and still comes out of the length
   * that is there, if the laying itself does.
   *
   * @param length of the laying on the table (mm)
   * @param shrink by what share the cloth shrinks along before it is cut
   * @param owned the length that is there (mm, before it shrinks), if one is
   */
  static double roomToTidy(double length, double shrink, OptionalDouble owned) {
    double bought = length / (1 - shrink);
    double most = BuyingLength.of(bought).longest();
    if (owned.isPresent() && bought <= owned.getAsDouble()) {
      most = Math.min(most, owned.getAsDouble());
    }
    double room = (most - bought - ROUNDING) * (1 - shrink);
    return Math.min(LONGER * length, Math.max(0, room));
  }

  /**
   * A laying to cut by: its pieces are moved about where that makes it tidier.
   *
   * @param longer by how much it may become longer (mm), as {@link #roomToTidy} says
   */
  Laid tidied(Laid laid, double longer) {
    List<Layout> layouts = new ArrayList<>(laid.layouts);
    double room = longer;
    for (int i = 0; i < layouts.size(); i++) {
      Section section = laid.plan.sections().get(i);
      Laying laying = Laying.byOneWorker(section.problem().orElseThrow(), shapes);
      Layout found = layouts.get(i);
      int times = section.times(laid.plan.sheet());
      Layout tidy = laying.tidied(found, found.length());
      Layout roomy = laying.tidied(found, found.length() + room / times);
      if (laying.tidiness(roomy) > laying.tidiness(tidy)) {
        room = Math.max(0, room - times * Math.max(0, roomy.length() - found.length()));
        tidy = roomy;
      }
      layouts.set(i, tidy);
    }
    return Laid.of(laid.plan, layouts);
  }
}
