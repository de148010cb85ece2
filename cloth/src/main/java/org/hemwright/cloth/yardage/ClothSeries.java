package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
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
 * The same pieces in all sizes on one cloth, folded in one way. Each size is laid from nothing;
 * then it is tried whether the arrangement of a near size, found from nothing too, does better. So
 * a changed size leaves all but its near ones as they were.
 */
final class ClothSeries {
  /** How far away sizes are near, in sizes. */
  private static final int NEAR = 2;

  /** What share of the work goes into trying the arrangement of a near size. */
  private static final int SHARE = 5;

  /** So much denser a near size's laying is where trying its arrangement promises something. */
  private static final double DENSER = 0.002;

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
  private final double shrink;
  private final List<Answer> answers;
  private final List<Optional<OfSize>> sizes;

  /**
   * A series, nothing laid yet.
   *
   * @param width as sold (mm)
   */
  ClothSeries(GarmentCloth cloth, Fabric.Nap nap, double width, Fold fold, YardageRequest request) {
    this.cloth = cloth;
    this.nap = nap;
    this.width = width;
    this.fold = fold;
    this.settings = request.settings();
    this.work = request.work();
    this.shrink = request.shrinkAlong();
    this.onTable = width * (1 - request.shrinkAcross());
    int count = cloth.pieces().size();
    answers = new ArrayList<>(Collections.nCopies(count, Answer.NONE));
    sizes = new ArrayList<>(Collections.nCopies(count, Optional.empty()));
  }

  /** What one size asks for, and the laying of it that was found from nothing. */
  private record OfSize(
      List<ClothPlan> plans, LayingRules rules, Optional<PlanSearch.Laid> fromNothing) {}

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

  /** Lays one size from nothing, whatever other sizes come to. */
  void lay(int size, LayingStore store, NoFitStore shapes, LayingFollower follower) {
    List<ClothPiece> pieces = cloth.on(ClothSheet.flat(onTable, settings), size);
    List<ClothPlan> plans =
        pieces.isEmpty() ? List.of() : ClothPlan.of(pieces, fold, onTable, settings, nap);
    LayingRules rules = new LayingRules(pieces, nap);
    Optional<PlanSearch.Laid> laid = Optional.empty();
    if (plans.stream().anyMatch(ClothPlan::fits)) {
      PlanSearch search = new PlanSearch(work, 1, shapes);
      laid = Optional.of(keptOrLaid(plans, rules, search, Optional.empty(), store, follower));
    }
    sizes.set(size, Optional.of(new OfSize(plans, rules, laid)));
  }

  /** Whether a size, laid from nothing, may become shorter as a near size is arranged. */
  boolean leansOnNear(int size) {
    return fromNothing(size).filter(laid -> !laid.isShortest()).isPresent();
  }

  /** Whether a size is there, and was laid from nothing or found not to fit. */
  boolean isLaid(int size) {
    return sizes.get(size).isPresent();
  }

  /** The near sizes of one, the nearest first. */
  List<Integer> nearOf(int size) {
    List<Integer> near = new ArrayList<>();
    for (int step = 1; step <= NEAR; step++) {
      for (int other : new int[] {size - step, size + step}) {
        if (other >= 0 && other < sizes.size()) {
          near.add(other);
        }
      }
    }
    return near;
  }

  /** Settles what a size comes to, once it and its near sizes are laid from nothing. */
  void settle(int size, LayingStore store, NoFitStore shapes) {
    OfSize own = sizes.get(size).orElseThrow();
    if (own.fromNothing().isEmpty()) {
      List<Misfit> misfits = own.plans().isEmpty() ? List.of() : own.plans().get(0).misfits();
      answers.set(size, new Answer(Optional.empty(), misfits));
    } else {
      List<PlanSearch.Laid> found = withNearSizes(size, own, store, shapes);
      answers.set(size, Answer.of(tidiest(found, own, store, shapes).laying()));
    }
  }

  private Optional<PlanSearch.Laid> fromNothing(int size) {
    return sizes.get(size).flatMap(OfSize::fromNothing);
  }

  /** A size's own laying, and those that begin as near sizes are arranged. */
  private List<PlanSearch.Laid> withNearSizes(
      int size, OfSize own, LayingStore store, NoFitStore shapes) {
    PlanSearch.Laid best = own.fromNothing().orElseThrow();
    List<PlanSearch.Laid> found = new ArrayList<>(List.of(best));
    for (int near : nearOf(size)) {
      Optional<PlanSearch.Laid> like = fromNothing(near);
      if (!best.isShortest()
          && like.isPresent()
          && like.get().laying().density() > best.laying().density() * (1 + DENSER)) {
        PlanSearch quick = new PlanSearch(Math.max(1, work / SHARE), 1, shapes);
        PlanSearch.Laid tried =
            keptOrLaid(own.plans(), own.rules(), quick, like, store, LayingFollower.NOBODY);
        found.add(tried);
        best = tried.laying().length() < best.laying().length() ? tried : best;
      }
    }
    return found;
  }

  private PlanSearch.Laid tidiest(
      List<PlanSearch.Laid> found, OfSize own, LayingStore store, NoFitStore shapes) {
    PlanSearch search = new PlanSearch(work, 1, shapes);
    List<String> texts = found.stream().map(KeptLayouts::layouts).toList();
    String key = KeptLayouts.tidyKey(own.plans(), texts, shrink);
    return kept(key, own.plans(), own.rules(), store, () -> search.tidiest(found, shrink));
  }

  private static PlanSearch.Laid keptOrLaid(
      List<ClothPlan> plans,
      LayingRules rules,
      PlanSearch search,
      Optional<PlanSearch.Laid> like,
      LayingStore store,
      LayingFollower follower) {
    String key = KeptLayouts.key(plans, search, like.map(KeptLayouts::layouts).orElse(""));
    return kept(key, plans, rules, store, () -> search.lay(plans, like, follower).orElseThrow());
  }

  private static PlanSearch.Laid kept(
      String key,
      List<ClothPlan> plans,
      LayingRules rules,
      LayingStore store,
      Supplier<PlanSearch.Laid> otherwise) {
    return store
        .get(key)
        .flatMap(line -> KeptLayouts.read(plans, line))
        .filter(kept -> rules.objections(kept.laying()).isEmpty())
        .orElseGet(
            () -> {
              PlanSearch.Laid anew = otherwise.get();
              List<String> objections = rules.objections(anew.laying());
              if (!objections.isEmpty()) {
                throw new IllegalStateException("a laying breaks the rules: " + objections);
              }
              store.put(key, KeptLayouts.text(plans, anew));
              return anew;
            });
  }
}
