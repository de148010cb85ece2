package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.Layout;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.laying.Placement;
import org.hemwright.cloth.laying.Turn;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.LayingRules;

/**
 * Looks longer for a shorter laying of one row of the table, for whoever waits and looks on. What
 * it finds depends on the work alone unless its follower has enough of it earlier.
 *
 * @param pieces what is cut of the cloth
 * @param plans how it can be laid
 * @param row what is to be bettered
 */
public record FurtherSearch(List<ClothPiece> pieces, List<ClothPlan> plans, YardageRow row) {
  /** What is shorter by less cannot be told on cloth (mm); common practice, no source. */
  private static final double WORTH = 1;

  public FurtherSearch {
    pieces = List.copyOf(pieces);
    plans = List.copyOf(plans);
  }

  /**
   * A search for a row, as the table of a run has it.
   *
   * @return absent where the row does not fit or is none of the run's
   */
  public static Optional<FurtherSearch> of(
      org.hemwright.pattern.SizeRun run, YardageRow row, ClothSettings settings) {
    int size = run.sizes().stream().map(sized -> sized.size()).toList().indexOf(row.size());
    if (size < 0 || !row.fits()) {
      return Optional.empty();
    }
    return GarmentCloth.of(run, settings.gap()).stream()
        .filter(each -> each.fabric().equals(row.fabric()) && each.views().contains(row.view()))
        .findFirst()
        .map(
            cloth -> {
              List<ClothPiece> pieces = cloth.on(ClothSheet.flat(row.width(), settings), size);
              List<ClothPlan> plans =
                  ClothPlan.of(pieces, row.fold(), row.width(), settings, row.nap());
              return new FurtherSearch(
                  pieces, plans.stream().filter(ClothPlan::fits).toList(), row);
            });
  }

  /**
   * The shortest laying found, if it is shorter than the row's own by a millimetre and within every
   * rule.
   *
   * @param work how many places are looked at in all
   * @param seed where the random numbers start
   * @param follower is shown what is shorter than the row's own
   */
  public Optional<ClothLaying> lay(long work, long seed, LayingFollower follower) {
    double own = row.need().orElseThrow().laying().length() - WORTH;
    int strips = plans.stream().mapToInt(plan -> plan.sections().size()).sum();
    if (strips == 0) {
      return Optional.empty();
    }
    PlanSearch search = new PlanSearch(Math.max(1, work / strips), seed, new NoFitStore());
    LayingFollower shorter =
        new LayingFollower() {
          @Override
          public void shorter(ClothLaying laying) {
            if (laying.length() < own) {
              follower.shorter(laying);
            }
          }

          @Override
          public boolean hasEnough() {
            return follower.hasEnough();
          }
        };
    return search
        .lay(plans, Optional.of(like()), shorter)
        .map(PlanSearch.Laid::laying)
        .filter(laying -> laying.length() < own)
        .filter(
            laying ->
                new LayingRules(pieces, row.nap(), row.fabric().repeat())
                    .objections(laying)
                    .isEmpty());
  }

  /** The row's own laying, as a hint of where pieces may lie. */
  private PlanSearch.Laid like() {
    ClothLaying laying = row.need().orElseThrow().laying();
    ClothPlan plan =
        plans.stream()
            .filter(each -> each.sheet().equals(laying.sheet()))
            .findFirst()
            .orElse(plans.get(0));
    List<Layout> layouts = new ArrayList<>();
    for (int i = 0; i < plan.sections().size(); i++) {
      var section = plan.sections().get(i);
      double start = i == 0 ? 0 : laying.openFrom() + laying.sheet().settings().gap();
      double atStart = section.times(plan.sheet()) > 1 ? 0 : section.gap();
      List<Placement> placements = new ArrayList<>();
      for (LaidPiece laid : laying.pieces()) {
        if (laid.open() == section.open()) {
          boolean mirrored = laid.motion().isMirror() != laid.item().mirrored();
          placements.add(
              new Placement(
                  laid.item().id(),
                  new Turn(laid.turned() ? 180 : 0, mirrored),
                  laid.origin().x() - start + atStart,
                  laid.origin().y() - section.shift()));
        }
      }
      layouts.add(new Layout(laying.tableLength(), placements));
    }
    return new PlanSearch.Laid(plan, layouts, laying);
  }
}
