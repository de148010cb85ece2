package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.hemwright.pattern.fabric.Fabric;

/**
 * How pieces are to be laid on a cloth that is folded in one way: one strip to lay, or two, one
 * after the other: first what is cut from the folded cloth, then, the cloth opened out, what must
 * be cut from one layer.
 *
 * @param sheet the cloth and its fold
 * @param sections in their order along the cloth, at least one
 */
public record ClothPlan(ClothSheet sheet, List<Section> sections) {
  /** So many depths of a partial fold are tried. */
  private static final int DEPTHS = 3;

  public ClothPlan {
    sections = List.copyOf(sections);
    if (sections.isEmpty()) {
      throw new IllegalArgumentException("a plan has something to lay");
    }
  }

  /**
   * The plans for one way of folding, several where the fold's depth is open; none where it makes
   * no sense: nothing could be cut from two layers, a crosswise fold would turn the nap, checks
   * would have to lie alike at two folds, or uneven ones at one.
   *
   * @param width of the cloth as sold (mm)
   */
  public static List<ClothPlan> of(
      List<ClothPiece> pieces, Fold fold, double width, ClothSettings settings, Fabric.Nap nap) {
    return Matching.starts(pieces).stream()
        .flatMap(start -> ofStart(start, fold, width, settings, nap).stream())
        .toList();
  }

  private static List<ClothPlan> ofStart(
      List<ClothPiece> pieces, Fold fold, double width, ClothSettings settings, Fabric.Nap nap) {
    ClothSheet sheet = new ClothSheet(fold, width, 0, settings);
    if (fold != Fold.SINGLE && !pieces.stream().allMatch(ClothPiece::liesFolded)) {
      return List.of();
    }
    return switch (fold) {
      case SINGLE -> List.of(single(LaidItems.onSingle(pieces, nap), sheet, nap));
      case LENGTHWISE -> {
        ClothSheet half = sheet.foldedAt(width / 2);
        yield folded(LaidItems.onLengthwiseFold(pieces, nap), half, nap).stream().toList();
      }
      case DOUBLE -> {
        LaidItems items = LaidItems.onLengthwiseFold(pieces, nap);
        boolean onBars = pieces.stream().anyMatch(ClothPiece::heldAcross);
        boolean two = !onBars && items.folded().stream().mapToInt(ClothPlan::onFold).sum() > 1;
        yield two ? folded(items, sheet.foldedAt(width / 4), nap).stream().toList() : List.of();
      }
      case CROSSWISE ->
          nap == Fabric.Nap.ONE_WAY
              ? List.of()
              : folded(LaidItems.onCrosswiseFold(pieces, nap), sheet, nap).stream().toList();
      case PARTIAL -> partial(LaidItems.onLengthwiseFold(pieces, nap), sheet, nap);
    };
  }

  private static int onFold(ClothItem item) {
    return item.layers() == ClothItem.Layers.ON_FOLD ? item.demand() : 0;
  }

  private static ClothPlan single(LaidItems items, ClothSheet sheet, Fabric.Nap nap) {
    return new ClothPlan(sheet, List.of(Section.open(items.single(), sheet, nap)));
  }

  private static Optional<ClothPlan> folded(LaidItems items, ClothSheet sheet, Fabric.Nap nap) {
    if (items.folded().isEmpty()) {
      return Optional.empty();
    }
    List<Section> sections = new ArrayList<>();
    sections.add(Section.folded(items.folded(), List.of(), sheet, nap));
    if (!items.single().isEmpty()) {
      sections.add(Section.open(items.single(), sheet, nap));
    }
    return Optional.of(new ClothPlan(sheet, sections));
  }

  /**
   * Partly folded, with the single layer beside the doubled one: as deep as one of the doubled
   * shapes, as two of them, never as deep as a whole fold; the depths that promise most.
   */
  private static List<ClothPlan> partial(LaidItems items, ClothSheet sheet, Fabric.Nap nap) {
    if (items.folded().isEmpty() || items.single().isEmpty()) {
      return List.of();
    }
    double selvedge = sheet.settings().selvedge();
    double gap = sheet.settings().gap();
    TreeSet<Double> depths = new TreeSet<>();
    for (ClothItem one : items.folded()) {
      depths.add(reach(one, gap) + selvedge);
      for (ClothItem other : items.folded()) {
        boolean twice = one.equals(other) && one.demand() == 1;
        boolean bothOnFold = onFold(one) > 0 && onFold(other) > 0;
        if (!twice && !bothOnFold) {
          depths.add(reach(one, gap) + reach(other, gap) + gap / 2 + selvedge);
        }
      }
    }
    List<ClothPlan> plans = new ArrayList<>();
    for (double depth : depths) {
      if (depth < sheet.width() / 2 - selvedge) {
        ClothSheet folded = sheet.foldedAt(depth);
        Section section = Section.folded(items.folded(), items.single(), folded, nap);
        if (section.misfits().isEmpty()) {
          plans.add(new ClothPlan(folded, List.of(section)));
        }
      }
    }
    plans.sort(
        (a, b) ->
            Double.compare(a.sections().get(0).leastLength(), b.sections().get(0).leastLength()));
    return plans.subList(0, Math.min(DEPTHS, plans.size()));
  }

  /** How deep a fold takes it (mm); a pair keeps half of the gap to the fold. */
  private static double reach(ClothItem item, double gap) {
    return onFold(item) > 0 ? item.shape().high() : item.shape().height() + gap / 2;
  }

  /** The pieces that the cloth cannot take in this way. */
  public List<Misfit> misfits() {
    return sections.stream().flatMap(section -> section.misfits().stream()).toList();
  }

  /** From bar to bar along the cloth (mm), where pieces are held to them. */
  OptionalDouble repeat() {
    return sections.stream()
        .flatMap(section -> section.items().stream())
        .flatMap(item -> item.piece().striped().stream())
        .map(striped -> striped.repeat().along())
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  /** Whether every piece finds room. */
  public boolean fits() {
    return misfits().isEmpty();
  }
}
