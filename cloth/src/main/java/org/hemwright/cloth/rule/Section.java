package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.Bars;
import org.hemwright.cloth.laying.Lane;
import org.hemwright.cloth.laying.LooseShape;
import org.hemwright.cloth.laying.StripProblem;
import org.hemwright.cloth.laying.Turn;
import org.hemwright.pattern.fabric.Fabric;

/**
 * A stretch of the cloth that is laid by itself, as a strip problem in millimetres.
 *
 * @param open whether the cloth lies opened out here, in one layer
 * @param items what is laid
 * @param problem the strip; absent where there are misfits
 * @param misfits what finds no room
 * @param shift from the strip to the table: what is added to y (mm)
 * @param gap half of the least distance between pieces (mm), which the strip adds at its start
 */
public record Section(
    boolean open,
    List<ClothItem> items,
    Optional<StripProblem> problem,
    List<Misfit> misfits,
    double shift,
    double gap) {
  public Section {
    items = List.copyOf(items);
    misfits = List.copyOf(misfits);
  }

  /** Cloth opened out, or never folded. */
  static Section open(List<ClothItem> items, ClothSheet sheet, Fabric.Nap nap) {
    Strip strip = new Strip(sheet, sheet.open(), nap);
    items.forEach(item -> strip.add(item, List.of(sheet.open()), false));
    return strip.section(true);
  }

  /**
   * Folded cloth.
   *
   * @param items what is cut through two layers
   * @param beside what is cut from the single layer beside them, on cloth that is partly folded
   */
  static Section folded(
      List<ClothItem> items, List<ClothItem> beside, ClothSheet sheet, Fabric.Nap nap) {
    Strip strip = new Strip(sheet, sheet.folded(), nap);
    items.forEach(item -> strip.add(item, sheet.doubled(), true));
    beside.forEach(item -> strip.add(item, List.of(sheet.beside()), true));
    return strip.section(false);
  }

  /** How many times its length on the table it takes of the cloth. */
  public int times(ClothSheet sheet) {
    return !open && sheet.fold() == Fold.CROSSWISE ? 2 : 1;
  }

  /** No laying is shorter than this on the table (mm): the longest piece, or all their area. */
  public double leastLength() {
    double longest = 0;
    double area = 0;
    double onFold = 0;
    for (ClothItem item : items) {
      Silhouette shape = item.shape();
      longest = Math.max(longest, shape.length());
      area += item.demand() * shape.area();
      if (item.layers() == ClothItem.Layers.ON_FOLD) {
        onFold += item.demand() * foldEdge(shape);
      }
    }
    double width = problem.map(StripProblem::stripWidth).orElse(Double.MAX_VALUE);
    boolean oneFold = problem.isPresent() && !hasTwoFolds();
    return Math.max(longest, Math.max(area / width, oneFold ? onFold : 0));
  }

  private boolean hasTwoFolds() {
    return problem.stream()
        .flatMap(strip -> strip.shapes().stream())
        .anyMatch(
            shape -> shape.lanes().stream().filter(lane -> lane instanceof Lane.Line).count() > 1);
  }

  /** How much of the fold a half takes (mm). */
  private static double foldEdge(Silhouette half) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (var corner : half.corners()) {
      if (corner.y() == 0) {
        least = Math.min(least, corner.x());
        most = Math.max(most, corner.x());
      }
    }
    return Math.max(0, most - least);
  }

  /** Collects what goes on one strip. */
  private static final class Strip {
    private final ClothSheet sheet;
    private final Fabric.Nap nap;
    private final double margin;
    private final double start;
    private final double end;
    private final List<ClothItem> items = new ArrayList<>();
    private final List<LooseShape> shapes = new ArrayList<>();
    private final List<Misfit> misfits = new ArrayList<>();

    Strip(ClothSheet sheet, ClothSheet.Reach reach, Fabric.Nap nap) {
      this.sheet = sheet;
      this.nap = nap;
      margin = sheet.settings().gap() / 2;
      start = sheet.folds().contains(reach.low()) ? reach.low() : reach.low() - margin;
      end = sheet.folds().contains(reach.high()) ? reach.high() : reach.high() + margin;
    }

    void add(ClothItem item, List<ClothSheet.Reach> parts, boolean folded) {
      items.add(item);
      List<Lane> lanes = new ArrayList<>();
      boolean onFold = item.layers() == ClothItem.Layers.ON_FOLD;
      double widest = 0;
      for (int i = 0; i < parts.size(); i++) {
        ClothSheet.Reach part = parts.get(i);
        boolean byFold = !onFold && folded && isByFold(part);
        double needed = needed(item) + (byFold ? margin : 0);
        boolean fits = ClothSheet.rounded(part.width()) >= ClothSheet.rounded(needed);
        widest = Math.max(widest, part.width());
        if (fits && onFold) {
          lanes.add(new Lane.Line(ClothSheet.rounded(sheet.folds().get(i) - start)));
        } else if (fits && item.piece().heldAcross()) {
          lanes.addAll(onBars(item, part, folded));
        } else if (fits) {
          lanes.add(ClothSheet.lane(part, margin, start, end));
        }
      }
      if (lanes.isEmpty()) {
        double room = Math.max(0, onFold ? 2 * widest : widest);
        misfits.add(new Misfit(item.piece().name(), item.across(), room));
        return;
      }
      boolean farFold = folded && onFold && sheet.fold() == Fold.DOUBLE;
      List<Turn> turns = item.turns(nap, farFold);
      Optional<Bars> bars =
          item.piece()
              .striped()
              .filter(striped -> striped.repeat().along().isPresent())
              .map(striped -> new Bars(striped.along(), striped.repeat().along().getAsDouble()));
      shapes.add(
          new LooseShape(item.id(), item.demand(), turns, item.room().corners(), lanes, bars));
    }

    /**
     * Where a piece may lie across bars of which one lies on the fold, or in the cloth's middle.
     */
    private List<Lane> onBars(ClothItem item, ClothSheet.Reach part, boolean folded) {
      Striped striped = item.piece().striped().orElseThrow();
      double repeat = striped.repeat().across().orElseThrow();
      double behind = striped.across().orElseThrow().of(item.mirrored());
      double middle = folded && sheet.foldsAlong() ? 0 : sheet.width() / 2;
      double bar = middle + behind;
      double half = item.shape().high();
      List<Lane> lanes = new ArrayList<>();
      for (double steps = Math.ceil((part.low() + half - bar) / repeat);
          bar + steps * repeat + half <= part.high();
          steps++) {
        lanes.add(new Lane.Line(ClothSheet.rounded(bar + steps * repeat - start)));
      }
      return lanes;
    }

    /** Whether one side of a part is a fold, which a pair keeps clear of by half the gap. */
    private boolean isByFold(ClothSheet.Reach part) {
      return sheet.folds().contains(part.low()) || sheet.folds().contains(part.high());
    }

    private static double needed(ClothItem item) {
      return item.layers() == ClothItem.Layers.ON_FOLD
          ? item.shape().high()
          : item.shape().height();
    }

    Section section(boolean open) {
      Optional<StripProblem> problem =
          misfits.isEmpty()
              ? Optional.of(
                  new StripProblem(sheet.fold().word(), ClothSheet.rounded(end - start), shapes))
              : Optional.empty();
      return new Section(open, items, problem, misfits, start, margin);
    }
  }
}
