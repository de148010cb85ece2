package org.hemwright.paper.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.arrange.SpotSearch.Spot;
import org.jspecify.annotations.Nullable;

/** Finds where things lie on a sheet of pages. */
public final class Arranger {
  /** The side of a cell that the search moves by, about (mm): on pages, and on large paper. */
  private static final double CELL = 5;

  private static final double LARGE_CELL = 12;
  private static final double LARGE = 500;

  private static final double HANDY = 1.7;
  private static final int MORE_COLUMNS = 6;
  private static final int MOST_ROWS = 40;
  private static final int MOST_ORDERS = 24;

  private final TileGrid grid;
  private final Rules rules;
  private final List<List<Integer>> sets;
  private final int cellsAcross;
  private final int cellsDown;
  private final List<List<Laid>> things = new ArrayList<>();

  /**
   * What else an arrangement must keep to.
   *
   * @param whole whether what fits on one page must lie on one page
   * @param mostColumns how wide the sheet may be
   */
  public record Rules(boolean whole, int mostColumns) {}

  private Arranger(
      TileGrid grid, Rules rules, List<List<Footprint>> footprints, List<List<Integer>> sets) {
    this.grid = grid;
    this.rules = rules;
    this.sets = sets;
    double cell = grid.width() > LARGE ? LARGE_CELL : CELL;
    cellsAcross = Math.max(1, (int) Math.round(grid.stepAcross() / cell));
    cellsDown = Math.max(1, (int) Math.round(grid.stepDown() / cell));
    for (List<Footprint> turns : footprints) {
      List<Laid> laid = new ArrayList<>();
      for (int turn = 0; turn < turns.size(); turn++) {
        CellMask mask = new CellMask(turns.get(turn), cellWidth(), cellHeight());
        laid.add(new Laid(mask, turn, cellsAcross, cellsDown));
      }
      things.add(List.copyOf(laid));
    }
  }

  private double cellWidth() {
    return grid.stepAcross() / cellsAcross;
  }

  private double cellHeight() {
    return grid.stepDown() / cellsDown;
  }

  /**
   * The best arrangement found, or none where something is wider than the widest sheet.
   *
   * @param footprints for each thing its paper at no turn, a quarter, a half and three quarters, or
   *     only the first of these
   */
  public static Optional<Arrangement> arrange(
      List<List<Footprint>> footprints, TileGrid grid, Rules rules) {
    return arrange(footprints, grid, rules, List.of());
  }

  /**
   * The best arrangement found, or none where something is wider than the widest sheet.
   *
   * @param sets things that are also wanted alone, by their places in the list: of arrangements
   *     that are equally good the one is best in which these need the fewest pages
   */
  public static Optional<Arrangement> arrange(
      List<List<Footprint>> footprints, TileGrid grid, Rules rules, List<List<Integer>> sets) {
    return new Arranger(grid, rules, footprints, sets).best();
  }

  /** An attempt: how good it is, and where things lie. */
  private record Attempt(
      int pages, int alone, int turned, int area, int height, List<Spot> spots) {}

  private Optional<Arrangement> best() {
    Comparator<Attempt> better =
        Comparator.comparingInt(Attempt::pages)
            .thenComparingInt(Attempt::height)
            .thenComparingInt(Attempt::area)
            .thenComparingInt(Attempt::turned);
    if (rules.mostColumns() > 1) {
      better =
          Comparator.comparingInt(Attempt::pages)
              .thenComparingInt(Attempt::alone)
              .thenComparingInt(attempt -> slender(attempt))
              .thenComparingInt(Attempt::turned)
              .thenComparingInt(Attempt::area);
    }
    Attempt best = null;
    for (boolean quarters : new boolean[] {false, true}) {
      int fewest = fewestColumns(quarters);
      int most = Math.min(rules.mostColumns(), fewest + MORE_COLUMNS);
      for (int columns = fewest; columns <= most; columns++) {
        for (List<Integer> order : orders()) {
          int limit = best == null ? Integer.MAX_VALUE : best.pages();
          Attempt attempt = attempt(order, columns, quarters, limit);
          if (attempt != null && (best == null || better.compare(attempt, best) < 0)) {
            best = attempt;
          }
        }
      }
    }
    return Optional.ofNullable(best).map(this::arrangement);
  }

  /** How much longer than wide a sheet is, in coarse steps; a handy one is 0. */
  private int slender(Attempt attempt) {
    double wide = (double) attempt.area() / rows(attempt) * grid.stepAcross();
    double high = rows(attempt) * grid.stepDown();
    double ratio = Math.max(wide / high, high / wide);
    return (int) (Math.max(0, ratio - HANDY) * 2);
  }

  private int rows(Attempt attempt) {
    return Math.max(1, (attempt.height() + cellsDown - 1) / cellsDown);
  }

  private int fewestColumns(boolean quarters) {
    int fewest = 1;
    for (List<Laid> turns : things) {
      int own = Integer.MAX_VALUE;
      for (Laid laid : allowed(turns, quarters)) {
        own = Math.min(own, (laid.mask().columns() + cellsAcross - 1) / cellsAcross);
      }
      fewest = Math.max(fewest, own);
    }
    return fewest;
  }

  private static List<Laid> allowed(List<Laid> turns, boolean quarters) {
    if (turns.size() < 4) {
      return turns.subList(0, 1);
    }
    return quarters ? turns : List.of(turns.get(0), turns.get(2));
  }

  /**
   * Orders of laying: by area, by the longer side, by height, by width, each from the largest; then
   * the same with two neighbours exchanged, and so on. Of four things or fewer these are all.
   */
  private List<List<Integer>> orders() {
    List<Comparator<Integer>> sorts =
        List.of(
            Comparator.comparingInt(thing -> -first(thing).count()),
            Comparator.comparingInt(
                thing -> -Math.max(first(thing).columns(), first(thing).rows())),
            Comparator.comparingInt(thing -> -first(thing).rows()),
            Comparator.comparingInt(thing -> -first(thing).columns()));
    List<List<Integer>> orders = new ArrayList<>();
    for (Comparator<Integer> sort : sorts) {
      List<Integer> order = IntStream.range(0, things.size()).boxed().sorted(sort).toList();
      if (!orders.contains(order)) {
        orders.add(order);
      }
    }
    for (int i = 0; i < orders.size() && orders.size() < MOST_ORDERS; i++) {
      for (int k = 1; k < things.size() && orders.size() < MOST_ORDERS; k++) {
        List<Integer> other = new ArrayList<>(orders.get(i));
        Collections.swap(other, k - 1, k);
        if (!orders.contains(other)) {
          orders.add(List.copyOf(other));
        }
      }
    }
    return orders;
  }

  private CellMask first(int thing) {
    return things.get(thing).get(0).mask();
  }

  /** An attempt, or none where it cannot be, or needs more than the most pages. */
  private @Nullable Attempt attempt(List<Integer> order, int columns, boolean quarters, int most) {
    CellSheet sheet = new CellSheet(columns * cellsAcross, MOST_ROWS * cellsDown);
    int[] used = new int[MOST_ROWS];
    List<Spot> spots = new ArrayList<>();
    int reached = 0;
    int pages = 0;
    for (int thing : order) {
      Spot spot = lay(thing, sheet, used, reached, quarters);
      if (spot == null) {
        return null;
      }
      spots.add(spot);
      sheet.take(spot.laid().mask(), spot.column(), spot.row());
      pages += spot.fresh();
      if (pages > most) {
        return null;
      }
      spot.use(used, cellsAcross, cellsDown);
      reached = Math.max(reached, spot.row() + spot.laid().mask().rows());
    }
    int turned = (int) spots.stream().filter(spot -> spot.laid().turn() != 0).count();
    int rows = (reached + cellsDown - 1) / cellsDown;
    return new Attempt(pages, alone(spots), turned, rows * columns, reached, spots);
  }

  /** How many pages the sets need, each by itself. */
  private int alone(List<Spot> spots) {
    int alone = 0;
    for (List<Integer> set : sets) {
      int[] used = new int[MOST_ROWS];
      for (Spot spot : spots) {
        if (set.contains(spot.thing())) {
          spot.use(used, cellsAcross, cellsDown);
        }
      }
      alone += Arrays.stream(used).map(Integer::bitCount).sum();
    }
    return alone;
  }

  /** The place that needs the fewest new pages; of equals the highest, then the leftmost. */
  private @Nullable Spot lay(
      int thing, CellSheet sheet, int[] used, int reached, boolean quarters) {
    List<Laid> turns = allowed(things.get(thing), quarters);
    boolean whole = rules.whole() && turns.stream().anyMatch(Laid::fitsOnePage);
    SpotSearch search = new SpotSearch(thing, sheet, used, whole, cellsAcross, cellsDown);
    for (Laid laid : turns) {
      search.among(laid, reached + cellsDown);
    }
    return search.best();
  }

  private Arrangement arrangement(Attempt attempt) {
    Arrangement.Place[] places = new Arrangement.Place[things.size()];
    int rows = 1;
    int columns = 1;
    for (Spot spot : attempt.spots()) {
      CellMask mask = spot.laid().mask();
      places[spot.thing()] =
          new Arrangement.Place(
              spot.laid().turn(),
              new Vector(
                  spot.column() * cellWidth() + mask.originRight(),
                  -(spot.row() * cellHeight() + mask.originDown())));
      rows = Math.max(rows, (spot.row() + mask.rows() - 1) / cellsDown + 1);
      columns = Math.max(columns, (spot.column() + mask.columns() - 1) / cellsAcross + 1);
    }
    return new Arrangement(List.of(places), rows, columns);
  }
}
