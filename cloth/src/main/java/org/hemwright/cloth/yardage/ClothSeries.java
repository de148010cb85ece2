package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.cloth.rule.Misfit;
import org.hemwright.pattern.fabric.Fabric;

/**
 * The same pieces in all sizes on one cloth, folded in one way. Every fourth size is laid from
 * nothing; those between begin from the nearest of these, so that a changed size leaves all but its
 * neighbours as they were.
 */
final class ClothSeries {
  private static final int STRIDE = 4;

  /** So much more work goes into the sizes that the others begin from. */
  private static final int ANCHOR_WORK = 2;

  /** What a size comes to: a laying, or what does not fit, or neither where the fold is no use. */
  record Answer(Optional<ClothLaying> laying, List<Misfit> misfits) {
    static final Answer NONE = new Answer(Optional.empty(), List.of());

    Answer {
      misfits = List.copyOf(misfits);
    }

    static Answer of(ClothLaying laying) {
      return new Answer(Optional.of(laying), List.of());
    }

    boolean isOfUse() {
      return laying.isPresent() || !misfits.isEmpty();
    }
  }

  private final GarmentCloth cloth;
  private final Fabric.Nap nap;
  private final double width;
  private final Fold fold;
  private final ClothSettings settings;
  private final long work;
  private final double onTable;
  private final int base;
  private final List<Answer> answers;
  private final List<Optional<PlanSearch.Laid>> laid;
  private final List<String> keys;

  /**
   * A series, nothing laid yet.
   *
   * @param width as sold (mm)
   * @param base the place of the base size among the sizes
   */
  ClothSeries(
      GarmentCloth cloth,
      Fabric.Nap nap,
      double width,
      Fold fold,
      YardageRequest request,
      int base) {
    this.cloth = cloth;
    this.nap = nap;
    this.width = width;
    this.fold = fold;
    this.settings = request.settings();
    this.work = request.work();
    this.onTable = width * (1 - request.shrinkAcross());
    this.base = base;
    int sizes = cloth.pieces().size();
    answers = new ArrayList<>(Collections.nCopies(sizes, Answer.NONE));
    laid = new ArrayList<>(Collections.nCopies(sizes, Optional.empty()));
    keys = new ArrayList<>(Collections.nCopies(sizes, ""));
  }

  GarmentCloth cloth() {
    return cloth;
  }

  Fabric.Nap nap() {
    return nap;
  }

  /** Whether the fabric is sold in this width. */
  boolean sold() {
    return cloth.fabric().widths().contains(width);
  }

  double width() {
    return width;
  }

  double onTable() {
    return onTable;
  }

  Fold fold() {
    return fold;
  }

  Answer answer(int size) {
    return answers.get(size);
  }

  void improve(int size, ClothLaying laying) {
    answers.set(size, Answer.of(laying));
  }

  /**
   * Lays some sizes.
   *
   * @param sizes their places, rising
   * @param done is told after each of them
   */
  void lay(List<Integer> sizes, LayingStore store, IntConsumer done) {
    for (int size : sizes) {
      int anchor = anchor(size);
      if (anchor != size && keys.get(anchor).isEmpty()) {
        layOne(anchor, Optional.empty(), "", store);
      }
      if (keys.get(size).isEmpty()) {
        boolean self = anchor == size;
        layOne(
            size, self ? Optional.empty() : laid.get(anchor), self ? "" : keys.get(anchor), store);
      }
      done.accept(size);
    }
  }

  /** The place of the size that a size begins from. */
  private int anchor(int size) {
    int last = cloth.pieces().size() - 1;
    int nearest = base + Math.floorDiv(size - base + STRIDE / 2, STRIDE) * STRIDE;
    return nearest < 0 || nearest > last ? size : nearest;
  }

  private void layOne(int size, Optional<PlanSearch.Laid> like, String likeKey, LayingStore store) {
    List<ClothPiece> pieces = cloth.pieces().get(size);
    List<ClothPlan> plans =
        pieces.isEmpty() ? List.of() : ClothPlan.of(pieces, fold, onTable, settings, nap);
    keys.set(size, "none");
    if (plans.stream().noneMatch(ClothPlan::fits)) {
      answers.set(
          size, new Answer(Optional.empty(), plans.isEmpty() ? List.of() : plans.get(0).misfits()));
      return;
    }
    PlanSearch search = new PlanSearch(like.isPresent() ? work : ANCHOR_WORK * work, 1);
    String key = KeptLayouts.key(plans, search, likeKey);
    LayingRules rules = new LayingRules(pieces, nap);
    Optional<PlanSearch.Laid> kept =
        store
            .get(key)
            .flatMap(line -> KeptLayouts.read(plans, line))
            .filter(each -> rules.objections(each.laying()).isEmpty());
    PlanSearch.Laid found =
        kept.orElseGet(
            () -> {
              PlanSearch.Laid anew = search.lay(plans, like).orElseThrow();
              List<String> objections = rules.objections(anew.laying());
              if (!objections.isEmpty()) {
                throw new IllegalStateException("a laying breaks the rules: " + objections);
              }
              store.put(key, KeptLayouts.text(plans, anew));
              return anew;
            });
    keys.set(size, key);
    laid.set(size, Optional.of(found));
    answers.set(size, Answer.of(found.laying()));
  }
}
