package org.hemwright.cloth.yardage;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.pattern.SizeRun;

/**
 * What a table is to show.
 *
 * @param settings what is lost of the cloth besides the pieces
 * @param folds which ways of folding
 * @param views only these views, by name; all where none is named
 * @param fabrics only these fabrics, by name; all where none is named
 * @param widths these widths (mm) in place of those that a fabric is sold in; none: its own
 * @param sizes only these sizes, by name; all where none is named
 * @param shrinkAlong how much the cloth shrinks along before it is cut, as a share from 0, below 1
 * @param shrinkAcross the same across
 * @param owned a length of cloth that is there already (mm, before it shrinks), from which as many
 *     sizes as can be are to be cut; nothing where the cloth is bought
 * @param work how many places the search looks at for one laying
 * @param threads how many layings are searched at once; changes nothing but the time
 */
public record YardageRequest(
    ClothSettings settings,
    Set<Fold> folds,
    List<String> views,
    List<String> fabrics,
    List<Double> widths,
    List<String> sizes,
    double shrinkAlong,
    double shrinkAcross,
    OptionalDouble owned,
    long work,
    int threads) {
  private static final long USUAL_WORK = 800_000;
  private static final int CORES = 2;

  public YardageRequest {
    folds = Collections.unmodifiableSet(EnumSet.copyOf(folds));
    views = List.copyOf(views);
    fabrics = List.copyOf(fabrics);
    widths = widths.stream().sorted().distinct().toList();
    sizes = List.copyOf(sizes);
    if (!(shrinkAlong >= 0 && shrinkAlong < 1) || !(shrinkAcross >= 0 && shrinkAcross < 1)) {
      throw new IllegalArgumentException("cloth shrinks by a share from 0 to below 1");
    }
    if (threads < 1 || work < 1) {
      throw new IllegalArgumentException("a table needs work and a thread to do it");
    }
  }

  /** Every fabric in the widths it is sold in, every fold, every size. */
  public static YardageRequest everything() {
    return new YardageRequest(
        ClothSettings.HANDBOOK,
        EnumSet.allOf(Fold.class),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        0,
        0,
        OptionalDouble.empty(),
        USUAL_WORK,
        CORES);
  }

  /** The same for some sizes only, by name; for all where none is named. */
  public YardageRequest inSizes(List<String> names) {
    Change change = new Change(this);
    change.sizes = names;
    return change.made();
  }

  /** The same on these widths (mm) in place of those that a fabric is sold in. */
  public YardageRequest onWidths(List<Double> others) {
    Change change = new Change(this);
    change.widths = others;
    return change.made();
  }

  /** The same in these folds, at least one. */
  public YardageRequest inFolds(Set<Fold> some) {
    Change change = new Change(this);
    change.folds = some;
    return change.made();
  }

  /**
   * The same in every fold on which the answer hangs. Single cloth takes the layings of all others
   * where they are shorter; a fold takes those of its own kind only. But where a piece is cut apart
   * on one width and whole on another, what is said to be needed goes by single cloth as well.
   *
   * @see CarryOver#least
   */
  public YardageRequest inFoldsThatCount(SizeRun run) {
    boolean all =
        folds.contains(Fold.SINGLE)
            || GarmentCloth.of(run, settings.gap()).stream()
                .filter(cloth -> fabrics.isEmpty() || fabrics.contains(cloth.fabric().name()))
                .anyMatch(this::isCutDifferently);
    return all ? inFolds(EnumSet.allOf(Fold.class)) : this;
  }

  /** Whether some size is cut otherwise on one width than on another. */
  private boolean isCutDifferently(GarmentCloth cloth) {
    List<ClothSheet> sheets =
        Stream.concat(cloth.fabric().widths().stream(), widths.stream())
            .map(width -> ClothSheet.flat(width * (1 - shrinkAcross), settings))
            .toList();
    return IntStream.range(0, cloth.pieces().size())
        .anyMatch(
            size -> sheets.stream().map(flat -> ids(cloth, flat, size)).distinct().count() > 1);
  }

  private static List<String> ids(GarmentCloth cloth, ClothSheet flat, int size) {
    return cloth.on(flat, size).stream().map(ClothPiece::id).toList();
  }

  /** The same for some views only, by name; for all where none is named. */
  public YardageRequest ofViews(List<String> names) {
    Change change = new Change(this);
    change.views = names;
    return change.made();
  }

  /** The same of some fabrics only, by name; of all where none is named. */
  public YardageRequest ofFabrics(List<String> names) {
    Change change = new Change(this);
    change.fabrics = names;
    return change.made();
  }

  /** The same of cloth that shrinks along by a share from 0, below 1. */
  public YardageRequest shrinking(double along) {
    Change change = new Change(this);
    change.shrinkAlong = along;
    return change.made();
  }

  /** The same with so many places looked at for one laying. */
  public YardageRequest working(long places) {
    Change change = new Change(this);
    change.work = places;
    return change.made();
  }

  /** The same, so many layings searched at once. */
  public YardageRequest onThreads(int count) {
    Change change = new Change(this);
    change.threads = count;
    return change.made();
  }

  /** A request of which one thing becomes another. */
  private static final class Change {
    private final YardageRequest from;
    private Set<Fold> folds;
    private List<String> views;
    private List<String> fabrics;
    private List<Double> widths;
    private List<String> sizes;
    private double shrinkAlong;
    private long work;
    private int threads;

    Change(YardageRequest from) {
      this.from = from;
      folds = from.folds;
      views = from.views;
      fabrics = from.fabrics;
      widths = from.widths;
      sizes = from.sizes;
      shrinkAlong = from.shrinkAlong;
      work = from.work;
      threads = from.threads;
    }

    YardageRequest made() {
      return new YardageRequest(
          from.settings,
          folds,
          views,
          fabrics,
          widths,
          sizes,
          shrinkAlong,
          from.shrinkAcross,
          from.owned,
          work,
          threads);
    }
  }
}
