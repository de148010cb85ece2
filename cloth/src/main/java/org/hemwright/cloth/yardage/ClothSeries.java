package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.cloth.rule.Misfit;
import org.hemwright.pattern.fabric.Fabric;

/**
 * The same pieces in all sizes on one cloth, folded in one way. Each size is laid from nothing,
 * whatever others come to, so that a changed size leaves them as they were.
 */
final class ClothSeries {
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
  private final boolean eitherFace;
  private final Fabric.Nap nap;
  private final double width;
  private final Fold fold;
  private final ClothSettings settings;
  private final long work;
  private final double onTable;
  private final double shrink;
  private final OptionalDouble owned;
  private final List<Answer> answers;

  /**
   * A series, nothing laid yet.
   *
   * @param width as sold (mm)
   */
  ClothSeries(GarmentCloth cloth, Fabric.Nap nap, double width, Fold fold, YardageRequest request) {
    this(cloth, cloth.fabric().sidesAlike(), nap, width, fold, request);
  }

  private ClothSeries(
      GarmentCloth cloth,
      boolean eitherFace,
      Fabric.Nap nap,
      double width,
      Fold fold,
      YardageRequest request) {
    this.cloth = cloth;
    this.eitherFace = eitherFace;
    this.nap = nap;
    this.width = width;
    this.fold = fold;
    this.settings = request.settings();
    this.work = request.work();
    this.shrink = request.shrinkAlong();
    this.owned = request.owned();
    this.onTable = width * (1 - request.shrinkAcross());
    answers = new ArrayList<>(Collections.nCopies(cloth.pieces().size(), Answer.NONE));
  }

  /** The same of cloth with a right side; what is laid of it holds on cloth alike on both. */
  static ClothSeries onRightSide(
      GarmentCloth cloth, Fabric.Nap nap, double width, Fold fold, YardageRequest request) {
    return new ClothSeries(cloth.onRightSide(), false, nap, width, fold, request);
  }

  /** Whether it is what was asked, and not only laid to be handed on. */
  boolean isShown() {
    return eitherFace == cloth.fabric().sidesAlike();
  }

  /** Whether pieces may be laid face down, the cloth being alike on both sides. */
  boolean eitherFace() {
    return eitherFace;
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

  /** The ids of what is cut in one size, the same on every fold. */
  Set<String> cut(int size) {
    Set<String> ids = new LinkedHashSet<>();
    cloth.on(ClothSheet.flat(onTable, settings), size).forEach(piece -> ids.add(piece.id()));
    return ids;
  }

  Answer answer(int size) {
    return answers.get(size);
  }

  void improve(int size, ClothLaying laying) {
    answers.set(size, Answer.of(laying));
  }

  /** Lays one size, while someone may look on. */
  void lay(int size, LayingStore store, NoFitStore shapes, LayingFollower follower) {
    List<ClothPiece> pieces = cloth.on(ClothSheet.flat(onTable, settings), size);
    boolean none = pieces.isEmpty() || (fold != Fold.SINGLE && !cloth.fabric().liesFolded());
    List<ClothPlan> plans = none ? List.of() : ClothPlan.of(pieces, fold, onTable, settings, nap);
    if (plans.stream().anyMatch(ClothPlan::fits)) {
      LayingRules rules = new LayingRules(pieces, nap, cloth.fabric().repeat());
      answers.set(size, Answer.of(laid(plans, rules, store, shapes, follower).laying()));
    } else if (!plans.isEmpty()) {
      answers.set(size, new Answer(Optional.empty(), plans.get(0).misfits()));
    }
  }

  private PlanSearch.Laid laid(
      List<ClothPlan> plans,
      LayingRules rules,
      LayingStore store,
      NoFitStore shapes,
      LayingFollower follower) {
    PlanSearch search = new PlanSearch(work, 1, shapes);
    String key = KeptLayouts.key(plans, search);
    // What is cut by is the tidied laying: where both are kept, only that is held to the rules.
    return read(key, plans, store)
        .flatMap(found -> read(tidyKey(plans, found), plans, store))
        .filter(tidy -> rules.objections(tidy.laying()).isEmpty())
        .orElseGet(
            () -> {
              PlanSearch.Laid found =
                  kept(
                      key,
                      plans,
                      rules,
                      store,
                      () -> search.lay(plans, Optional.empty(), follower).orElseThrow());
              return kept(
                  tidyKey(plans, found),
                  plans,
                  rules,
                  store,
                  () -> search.tidied(found, roomToTidy(found)));
            });
  }

  private String tidyKey(List<ClothPlan> plans, PlanSearch.Laid found) {
    return KeptLayouts.tidyKey(plans, KeptLayouts.layouts(found), roomToTidy(found));
  }

  private double roomToTidy(PlanSearch.Laid found) {
    return PlanSearch.roomToTidy(found.laying().length(), shrink, owned);
  }

  private static Optional<PlanSearch.Laid> read(
      String key, List<ClothPlan> plans, LayingStore store) {
    return store.get(key).flatMap(line -> KeptLayouts.read(key, plans, line));
  }

  private static PlanSearch.Laid kept(
      String key,
      List<ClothPlan> plans,
      LayingRules rules,
      LayingStore store,
      Supplier<PlanSearch.Laid> otherwise) {
    return read(key, plans, store)
        .filter(kept -> rules.objections(kept.laying()).isEmpty())
        .orElseGet(
            () -> {
              PlanSearch.Laid anew = otherwise.get();
              List<String> objections = rules.objections(anew.laying());
              if (!objections.isEmpty()) {
                throw new IllegalStateException("a laying breaks the rules: " + objections);
              }
              store.put(key, KeptLayouts.text(key, plans, anew));
              return anew;
            });
  }
}
