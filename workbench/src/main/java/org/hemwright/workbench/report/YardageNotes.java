package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hemwright.cloth.rule.BarsAside;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.LeftOver;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.pattern.quantity.DecimalText;

/**
 * What is said below a table of cloth to buy, for one width each: how it is folded, what is cut
 * apart, what stripes take, what is left and what finds room in it. In sentences that a page and a
 * terminal both show.
 */
public final class YardageNotes {
  /** So many lengths are told one by one. */
  private static final int FEW = 4;

  /** Room for less than this (mm) is none. */
  private static final double LEAST_ASIDE = 1;

  private final SizeRun run;
  private final OwnCloth own;
  private final LeftOvers left;
  private final ClothWords words;
  private final SizeWords chart;

  /**
   * The notes of a run.
   *
   * @param own a cloth that is there already, or in the shop
   * @param left what is left of the cloth
   */
  public YardageNotes(SizeRun run, OwnCloth own, LeftOvers left, ClothWords words) {
    this.run = run;
    this.own = own;
    this.left = left;
    this.words = words;
    chart = new SizeWords(run.sizes().stream().map(sized -> sized.size().name()).toList());
  }

  /**
   * The notes of one width, each without its full stop.
   *
   * @param groups of one view, cloth and nap
   * @param width which of their widths
   */
  public List<String> of(List<YardageGroup> groups, int width) {
    List<String> notes = new ArrayList<>();
    List<YardageRow> best = best(groups, width).toList();
    addFolds(best, notes);
    Map<String, List<String>> apart = words.variants(groups, width);
    if (!apart.isEmpty()) {
      notes.add(words.cutApart(apart));
    }
    addStripes(best, notes);
    addBars(best, notes);
    addArea(best, notes);
    addRoom(best, notes);
    return notes;
  }

  /**
   * How long the laying of each size is, from which what to buy is rounded up: the sizes by
   * themselves where they are few, else from least to most; empty where nothing fits.
   *
   * @param groups of one view, cloth and nap
   * @param width which of their widths
   */
  public Optional<String> exact(List<YardageGroup> groups, int width) {
    Map<String, List<String>> sizes = new LinkedHashMap<>();
    List<Double> lengths = new ArrayList<>();
    for (YardageRow row : best(groups, width).filter(YardageRow::fits).toList()) {
      double bought = row.need().orElseThrow().bought();
      lengths.add(bought);
      sizes.computeIfAbsent(words.length(bought), none -> new ArrayList<>()).add(row.size().name());
    }
    if (sizes.size() <= FEW) {
      List<String> parts = new ArrayList<>();
      sizes.forEach((length, own) -> parts.add(length + " in " + chart.of(own)));
      return parts.isEmpty()
          ? Optional.empty()
          : Optional.of("exact length " + String.join(", ", parts));
    }
    double least = lengths.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double most = lengths.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    return Optional.of("exact length " + words.length(least) + " to " + words.length(most));
  }

  /** By how much the cloth shrinks before it is cut: a sentence, where it does. */
  public static Optional<String> shrinks(YardageTable table) {
    return table.rows().stream()
        .filter(YardageRow::fits)
        .findFirst()
        .flatMap(
            row -> {
              Need need = row.need().orElseThrow();
              double along = 1 - need.length() / need.bought();
              double across = 1 - need.laying().sheet().width() / row.width();
              List<String> ways = new ArrayList<>();
              addShare(along, "along", ways);
              addShare(across, "across", ways);
              return ways.isEmpty()
                  ? Optional.empty()
                  : Optional.of(
                      "What to buy is of cloth that shrinks by "
                          + String.join(" and ", ways)
                          + " before it is cut.");
            });
  }

  private static void addShare(double share, String way, List<String> ways) {
    String percent = DecimalText.of(100 * share, 2);
    if (!percent.equals("0")) {
      ways.add(percent + "% " + way);
    }
  }

  private static Stream<YardageRow> best(List<YardageGroup> groups, int width) {
    return groups.stream()
        .flatMap(group -> group.best().get(width).stream())
        .flatMap(Optional::stream);
  }

  /** Which fold each size is best cut from. */
  private void addFolds(List<YardageRow> best, List<String> notes) {
    Map<Fold, List<String>> folds = new LinkedHashMap<>();
    for (YardageRow row : best) {
      folds.computeIfAbsent(row.fold(), unused -> new ArrayList<>()).add(row.size().name());
    }
    if (!folds.isEmpty()) {
      List<String> parts = new ArrayList<>();
      folds.forEach((fold, sizes) -> parts.add(ClothWords.fold(fold) + " in " + chart.of(sizes)));
      notes.add(String.join("; ", parts));
    }
  }

  /** About how much more the stripes of a cloth take, the most over all sizes. */
  private void addStripes(List<YardageRow> best, List<String> notes) {
    OptionalDouble most =
        best.stream().map(own::extraForStripes).flatMapToDouble(OptionalDouble::stream).max();
    if (most.isPresent()) {
      notes.add(
          "for its stripes about "
              + words.length(most.getAsDouble())
              + " more, a repeat for each of the pieces that lie one behind another");
    }
  }

  /** What the laying of a cloth with stripes takes for granted, and what it does not match. */
  private void addBars(List<YardageRow> best, List<String> notes) {
    List<ClothLaying> layings =
        best.stream()
            .filter(row -> row.fabric().repeat().isPresent())
            .flatMap(row -> row.need().stream())
            .map(Need::laying)
            .toList();
    if (layings.isEmpty()) {
      return;
    }
    if (!best.get(0).fabric().liesFolded()) {
      Set<String> whole = titles(layings, ClothPiece::onFold);
      notes.add(
          "uneven across, so never folded"
              + (whole.isEmpty()
                  ? ""
                  : "; laid whole, though drawn as a half: " + String.join(", ", whole)));
    }
    OptionalDouble aside =
        layings.stream().map(BarsAside::of).flatMapToDouble(OptionalDouble::stream).min();
    if (aside.isPresent()) {
      notes.add(aside(best.get(0).fabric().repeat().orElseThrow(), aside.getAsDouble()));
    }
    Set<String> free = titles(layings, piece -> piece.striped().isEmpty());
    if (!free.isEmpty()) {
      notes.add(
          "without a notch to match, and so laid where there is room: " + String.join(", ", free));
    }
  }

  private static Set<String> titles(List<ClothLaying> layings, Predicate<ClothPiece> which) {
    Set<String> titles = new LinkedHashSet<>();
    for (ClothLaying laying : layings) {
      laying.pieces().stream()
          .map(LaidPiece::piece)
          .filter(which)
          .forEach(piece -> titles.add(piece.piece().card().title()));
    }
    return titles;
  }

  /** Where the layouts have a bar, and how far beside it that of a real cloth may run. */
  private String aside(Fabric.Repeat repeat, double aside) {
    String taken =
        "the layouts have a bar in the fold, or down the middle of single " + words.cloth();
    if (!repeat.liesFolded()) {
      return "the layouts have a bar down the middle of the "
          + words.cloth()
          + "; where it runs beside that, all bars lie elsewhere on the pieces, and meet as before";
    }
    if (aside >= repeat.across().orElseThrow() / 2) {
      return taken + ", and hold wherever the bars run";
    }
    return aside < LEAST_ASIDE
        ? taken
        : taken + ", and hold where it runs up to " + words.length(aside) + " beside the middle";
  }

  /** The area that is left of the exact length, and the largest rectangle of the cloth. */
  private void addArea(List<YardageRow> best, List<String> notes) {
    List<Double> areas =
        best.stream().flatMap(row -> row.need().stream()).map(Need::areaLeft).sorted().toList();
    if (areas.isEmpty()) {
      return;
    }
    String least = words.area(areas.get(0));
    String most = words.area(areas.get(areas.size() - 1));
    String all = least.equals(most) ? most : least + " to " + most;
    Optional<LeftOver> smallest = Optional.empty();
    Optional<LeftOver> largest = Optional.empty();
    for (YardageRow row : best) {
      Optional<LeftOver> rest = left.of(row);
      if (rest.isPresent()) {
        double area = rest.get().along() * rest.get().across();
        smallest = smallest.filter(l -> l.along() * l.across() <= area).or(() -> rest);
        largest = largest.filter(l -> l.along() * l.across() >= area).or(() -> rest);
      }
    }
    String rectangle = "";
    if (smallest.isPresent() && largest.isPresent()) {
      String small = rectangle(smallest.get());
      String large = rectangle(largest.get());
      rectangle =
          (own.length().isPresent()
                  ? "; the largest rectangle that is left of your length is "
                  : "; of what is bought, the largest rectangle that is left is ")
              + (small.equals(large) ? large : small + ", up to " + large);
    }
    notes.add(all + " of the exact length is left over" + rectangle);
  }

  /** "30 cm by 1.1 m", along the cloth and across it. */
  private String rectangle(LeftOver rest) {
    return words.length(rest.along()) + " by " + words.length(rest.across());
  }

  /** Which pieces of other cloths find room in what is left, and in which sizes. */
  private void addRoom(List<YardageRow> best, List<String> notes) {
    Map<String, List<String>> sizes = new LinkedHashMap<>();
    for (YardageRow row : best) {
      for (String what : room(row)) {
        sizes.computeIfAbsent(what, unused -> new ArrayList<>()).add(row.size().name());
      }
    }
    if (!sizes.isEmpty()) {
      List<String> parts = new ArrayList<>();
      sizes.forEach((what, in) -> parts.add(what + " in " + chart.of(in)));
      notes.add("what is left has room, if the cloth is the same, for " + String.join("; ", parts));
    }
  }

  /** What finds room in what one row leaves: "all of rib", "pocket, tab of interfacing". */
  public List<String> room(YardageRow row) {
    List<String> room = new ArrayList<>();
    Optional<LeftOver> rest = left.of(row);
    rest.map(LeftOver::fits)
        .orElse(Map.of())
        .forEach(
            (fabric, pieces) ->
                room.add(
                    (rest.get().takesAll(run, row, fabric) ? "all" : String.join(", ", pieces))
                        + " of "
                        + fabric));
    return room;
  }

  /** What is left in one row as its largest rectangle; blank where that is not known. */
  public String rectangle(YardageRow row) {
    return left.of(row).map(this::rectangle).orElse("");
  }

  /**
   * Which sizes can be cut from the length that is there, under the heading of each cloth and
   * width; empty where no length is said.
   */
  public Map<String, String> cutFrom(YardageTable table) {
    Map<String, List<String>> enough = new LinkedHashMap<>();
    if (own.length().isPresent()) {
      for (YardageRow row : table.rows()) {
        String heading =
            words.heading(row.view(), row.fabric(), row.nap())
                + ", "
                + words.length(row.width())
                + " wide";
        List<String> sizes = enough.computeIfAbsent(heading, unused -> new ArrayList<>());
        String size = row.size().name();
        if (row.isCutFrom(own.length().getAsDouble()) && !sizes.contains(size)) {
          sizes.add(size);
        }
      }
    }
    Map<String, String> said = new LinkedHashMap<>();
    enough.forEach(
        (heading, sizes) -> said.put(heading, sizes.isEmpty() ? "no size" : chart.of(sizes)));
    return said;
  }
}
