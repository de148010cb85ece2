package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Finding;

/**
 * How much cloth each view takes of each fabric, in every size, width and fold.
 *
 * @param rows by view, fabric, nap, width and size; of each of these the best fold first
 * @param findings what is to be told of layings arranged by hand
 */
public record YardageTable(List<YardageRow> rows, List<Finding> findings) {
  public YardageTable {
    rows = List.copyOf(rows);
    findings = List.copyOf(findings);
  }

  /** A table of which there is nothing to find. */
  public YardageTable(List<YardageRow> rows) {
    this(rows, List.of());
  }

  /** The same of some widths (mm) only. */
  public YardageTable on(List<Double> widths) {
    return new YardageTable(
        rows.stream().filter(row -> widths.contains(row.width())).toList(), findings);
  }

  /**
   * The same in the folds of a request only. What a fold needs is no other for that, though a
   * laying of it was handed on from one that is not shown. Cloth that cannot be folded is shown
   * single whatever was asked.
   */
  public YardageTable inFoldsOf(YardageRequest request) {
    Map<List<Object>, List<YardageRow>> cloths = new LinkedHashMap<>();
    for (YardageRow row : rows) {
      if (request.folds().contains(row.fold()) || !row.fabric().liesFolded()) {
        cloths
            .computeIfAbsent(
                List.of(row.view(), row.fabric(), row.nap(), row.width(), row.size()),
                none -> new ArrayList<>())
            .add(row);
      }
    }
    List<YardageRow> shown = new ArrayList<>();
    for (List<YardageRow> folds : cloths.values()) {
      boolean drawn = folds.stream().anyMatch(YardageRow::best);
      shown.addAll(drawn ? folds : bestFirst(folds, request.owned()));
    }
    return new YardageTable(shown, findings);
  }

  /** Is told how far the work has come; by several threads. */
  @FunctionalInterface
  public interface Watcher {
    /** Tells nobody. */
    Watcher SILENT = (done, of) -> {};

    /**
     * One more laying is done.
     *
     * @param done how many
     * @param of how many there are
     */
    void laid(int done, int of);

    /**
     * A shorter laying was found of a cloth that is being laid.
     *
     * @param laying as the search has it: the exact rules have not been asked
     */
    default void shorter(Cloth cloth, ClothLaying laying) {}
  }

  /**
   * A cloth that is being laid.
   *
   * @param views the garments that take just these pieces of it
   * @param size the size's place in the run
   * @param width as sold (mm)
   */
  public record Cloth(
      List<View> views, Fabric fabric, Fabric.Nap nap, int size, double width, Fold fold) {
    public Cloth {
      views = List.copyOf(views);
    }
  }

  /**
   * Lays everything that a request asks for.
   *
   * @param run every size of the pattern, also where only some are asked for
   * @param store where layings are kept
   */
  public static YardageTable of(
      SizeRun run, YardageRequest request, LayingStore store, Watcher watcher) {
    List<Integer> wanted = new ArrayList<>();
    for (int i = 0; i < run.sizes().size(); i++) {
      String name = run.sizes().get(i).size().name();
      if (request.sizes().isEmpty() || request.sizes().contains(name)) {
        wanted.add(i);
      }
    }
    List<ClothSeries> all = series(run, request);
    lay(all, wanted, request.threads(), store, watcher);
    CarryOver.among(all);
    return new YardageTable(rows(run, request, all, wanted));
  }

  private static List<ClothSeries> series(SizeRun run, YardageRequest request) {
    List<ClothSeries> all = new ArrayList<>();
    for (GarmentCloth cloth : GarmentCloth.of(run, request.settings().gap())) {
      Fabric fabric = cloth.fabric();
      if (request.fabrics().isEmpty() || request.fabrics().contains(fabric.name())) {
        for (Fabric.Nap nap : fabric.naps()) {
          for (double width : widths(fabric, request)) {
            for (Fold fold : folds(fabric, request)) {
              all.add(new ClothSeries(cloth, nap, width, fold, request));
              if (fabric.sidesAlike()) {
                all.add(ClothSeries.onRightSide(cloth, nap, width, fold, request));
              }
            }
          }
        }
      }
    }
    return all;
  }

  private static List<Double> widths(Fabric fabric, YardageRequest request) {
    List<Double> widths = new ArrayList<>(fabric.widths());
    widths.addAll(request.widths());
    return widths.stream().sorted().distinct().toList();
  }

  /** The folds that are asked for; single cloth for one that cannot be folded. */
  private static List<Fold> folds(Fabric fabric, YardageRequest request) {
    return fabric.liesFolded() ? new ArrayList<>(request.folds()) : List.of(Fold.SINGLE);
  }

  /** Lays every series, a size at a time, since its shapes are the same on every width and fold. */
  private static void lay(
      List<ClothSeries> all,
      List<Integer> wanted,
      int threads,
      LayingStore store,
      Watcher watcher) {
    int of = all.size() * wanted.size();
    AtomicInteger done = new AtomicInteger();
    ExecutorService pool = Executors.newFixedThreadPool(threads, YardageTable::thread);
    try {
      each(
          wanted,
          pool,
          (size, shapes) ->
              all.forEach(
                  series -> {
                    lay(series, size, store, shapes, watcher);
                    watcher.laid(done.incrementAndGet(), of);
                  }));
    } finally {
      pool.shutdownNow();
    }
  }

  private static void lay(
      ClothSeries series, int size, LayingStore store, NoFitStore shapes, Watcher watcher) {
    Cloth cloth =
        new Cloth(
            series.cloth().views(),
            series.cloth().fabric(),
            series.nap(),
            size,
            series.width(),
            series.fold());
    LayingFollower follower =
        watcher == Watcher.SILENT
            ? LayingFollower.NOBODY
            : laying -> watcher.shorter(cloth, laying);
    series.lay(size, store, shapes, follower);
  }

  /** Does something for each size, several of them at once. */
  private static void each(
      List<Integer> sizes, ExecutorService pool, BiConsumer<Integer, NoFitStore> job) {
    List<Future<?>> running = new ArrayList<>();
    for (int size : sizes) {
      running.add(pool.submit(() -> job.accept(size, new NoFitStore())));
    }
    try {
      for (Future<?> one : running) {
        one.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the table was interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a laying failed: " + e.getCause(), e.getCause());
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "yardage");
    thread.setDaemon(true);
    return thread;
  }

  private static List<YardageRow> rows(
      SizeRun run, YardageRequest request, List<ClothSeries> all, List<Integer> sizes) {
    List<YardageRow> rows = new ArrayList<>();
    for (View view : run.pattern().views()) {
      if (!request.views().isEmpty() && !request.views().contains(view.name())) {
        continue;
      }
      for (Fabric fabric : run.pattern().fabrics()) {
        for (Fabric.Nap nap : fabric.naps()) {
          List<ClothSeries> own =
              all.stream()
                  .filter(each -> each.isShown() && each.cloth().views().contains(view))
                  .filter(each -> each.cloth().fabric().equals(fabric) && each.nap() == nap)
                  .toList();
          for (double width : shown(fabric, request)) {
            for (int size : sizes) {
              rows.addAll(
                  bestFirst(folds(run, request, all, own, view, width, size), request.owned()));
            }
          }
        }
      }
    }
    return rows;
  }

  private static List<Double> shown(Fabric fabric, YardageRequest request) {
    return request.widths().isEmpty() ? fabric.widths() : request.widths();
  }

  private static List<YardageRow> folds(
      SizeRun run,
      YardageRequest request,
      List<ClothSeries> all,
      List<ClothSeries> own,
      View view,
      double width,
      int size) {
    List<YardageRow> rows = new ArrayList<>();
    for (ClothSeries each : own) {
      ClothSeries.Answer answer = each.answer(size);
      if (each.width() == width && answer.isOfUse()) {
        double least = CarryOver.least(all, each, size);
        Optional<Need> need =
            answer.laying().map(laying -> Need.of(laying, least, request.shrinkAlong()));
        rows.add(
            new YardageRow(
                view,
                each.cloth().fabric(),
                each.nap(),
                run.sizes().get(size).size(),
                width,
                each.fold(),
                need,
                answer.misfits(),
                answer
                    .laying()
                    .map(laying -> each.cloth().choices(laying.ids(), size))
                    .orElse(List.of()),
                false));
      }
    }
    return rows;
  }

  /**
   * Rows that differ in nothing but the fold, in order: what buys least first, of equals what is
   * easier to cut, what does not fit last; the first is the one to be drawn.
   */
  public static List<YardageRow> bestFirst(List<YardageRow> folds) {
    return bestFirst(folds, OptionalDouble.empty());
  }

  /**
   * The same, what can be cut from a length of cloth first.
   *
   * @param owned that length (mm, before it shrinks); nothing where the cloth is bought
   */
  private static List<YardageRow> bestFirst(List<YardageRow> folds, OptionalDouble owned) {
    List<YardageRow> sorted = new ArrayList<>(folds);
    sorted.sort(
        Comparator.comparing((YardageRow row) -> row.fits() ? 0 : 1)
            .thenComparing(row -> owned.isEmpty() || row.isCutFrom(owned.getAsDouble()) ? 0 : 1)
            .thenComparing(row -> row.need().map(need -> need.buy().tenths()).orElse(0))
            .thenComparing(row -> row.need().map(need -> need.buy().eighths()).orElse(0))
            .thenComparing(YardageRow::fold));
    sorted.replaceAll(YardageRow::asOther);
    if (!sorted.isEmpty() && sorted.get(0).fits()) {
      sorted.set(0, sorted.get(0).asBest());
    }
    return sorted;
  }
}
