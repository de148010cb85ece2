package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.LeftOver;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.pattern.quantity.DecimalText;

/** How much cloth to buy, as tables for a person: sizes that buy the same share a row. */
public final class YardageText {
  private final SizeRun run;
  private final OwnCloth own;
  private final LeftOvers left;
  private final ClothWords words;
  private final StringBuilder text = new StringBuilder();

  private YardageText(SizeRun run, OwnCloth own, LeftOvers left) {
    this.run = run;
    this.own = own;
    this.left = left;
    words = new ClothWords(run, false);
  }

  /**
   * The tables, one below the other.
   *
   * @param own a cloth that is there already, or in the shop: its length and its price
   * @param left what is left of the cloth
   */
  public static String of(SizeRun run, YardageTable table, OwnCloth own, LeftOvers left) {
    YardageText text = new YardageText(run, own, left);
    YardageGroup.of(table).forEach(text::add);
    own.length().ifPresent(length -> text.addCutFrom(table, length));
    return text.text.toString();
  }

  private void add(YardageGroup.Heading heading, List<YardageGroup> groups) {
    if (!text.isEmpty()) {
      text.append('\n');
    }
    text.append(words.heading(heading.view(), heading.fabric(), heading.nap())).append('\n');
    List<Double> widths = groups.get(0).widths();
    List<TextTable.Column> columns = new ArrayList<>();
    for (int i = 0; i < widths.size(); i++) {
      int width = i;
      columns.add(
          new TextTable.Column(
              words.length(widths.get(i)),
              groups.stream().map(group -> buy(group, width)).toList()));
    }
    List<String> sizes = groups.stream().map(g -> ClothWords.sizes(g.sizes())).toList();
    text.append(new TextTable("size", sizes, columns).text());
    for (int i = 0; i < widths.size(); i++) {
      addFolds(groups, i);
      addVariants(groups, i);
      addStripes(groups, i);
      addLeft(groups, i);
    }
  }

  /** Which pieces of other cloths find room in what is left of one width, and in which sizes. */
  private void addLeft(List<YardageGroup> groups, int width) {
    Map<String, List<String>> sizes = new LinkedHashMap<>();
    for (YardageGroup group : groups) {
      for (Optional<YardageRow> row : group.best().get(width)) {
        Optional<LeftOver> rest = row.flatMap(left::of);
        rest.map(LeftOver::fits)
            .orElse(Map.of())
            .forEach(
                (fabric, pieces) -> {
                  String size = row.map(best -> best.size().name()).orElse("");
                  boolean all = rest.get().takesAll(run, row.get(), fabric);
                  String what =
                      all ? "all of " + fabric : String.join(", ", pieces) + " of " + fabric;
                  sizes.computeIfAbsent(what, unused -> new ArrayList<>()).add(size);
                });
      }
    }
    if (!sizes.isEmpty()) {
      SizeWords chart =
          new SizeWords(run.sizes().stream().map(sized -> sized.size().name()).toList());
      List<String> parts = new ArrayList<>();
      sizes.forEach((what, in) -> parts.add(what + " in " + chart.of(in)));
      text.append("  ")
          .append(words.length(groups.get(0).widths().get(width)))
          .append(": what is left has room, if the cloth is the same, for ")
          .append(String.join("; ", parts))
          .append('\n');
    }
  }

  /** About how much more the stripes of a cloth take, the most over all sizes of one width. */
  private void addStripes(List<YardageGroup> groups, int width) {
    OptionalDouble most =
        groups.stream()
            .flatMap(group -> group.best().get(width).stream())
            .flatMap(Optional::stream)
            .map(own::extraForStripes)
            .flatMapToDouble(OptionalDouble::stream)
            .max();
    if (most.isPresent()) {
      text.append("  ")
          .append(words.length(groups.get(0).widths().get(width)))
          .append(": for its stripes about ")
          .append(words.length(most.getAsDouble()))
          .append(" more, a repeat for each of the pieces that lie one behind another\n");
    }
  }

  /** What to buy, and what it costs where a price is said. */
  private String buy(YardageGroup group, int width) {
    String buy = words.buy(group.buy(width));
    Optional<YardageRow> row = group.best().get(width).get(0);
    OptionalDouble cost = row.map(own::cost).orElse(OptionalDouble.empty());
    return cost.isPresent() ? buy + " for " + DecimalText.of(cost.getAsDouble(), 2) : buy;
  }

  /** Which fold each size of one width is best cut from. */
  private void addFolds(List<YardageGroup> groups, int width) {
    Map<Fold, List<String>> folds = new LinkedHashMap<>();
    for (YardageGroup group : groups) {
      for (Optional<YardageRow> row : group.best().get(width)) {
        row.ifPresent(
            best ->
                folds
                    .computeIfAbsent(best.fold(), unused -> new ArrayList<>())
                    .add(best.size().name()));
      }
    }
    if (!folds.isEmpty()) {
      List<String> parts = new ArrayList<>();
      SizeWords chart =
          new SizeWords(run.sizes().stream().map(sized -> sized.size().name()).toList());
      folds.forEach((fold, sizes) -> parts.add(ClothWords.fold(fold) + " in " + chart.of(sizes)));
      text.append("  ")
          .append(words.length(groups.get(0).widths().get(width)))
          .append(": ")
          .append(String.join("; ", parts))
          .append('\n');
    }
  }

  /** Which pieces are cut apart on one width, and in which sizes. */
  private void addVariants(List<YardageGroup> groups, int width) {
    Map<String, List<String>> sizes = words.variants(groups, width);
    if (!sizes.isEmpty()) {
      text.append("  ")
          .append(words.length(groups.get(0).widths().get(width)))
          .append(": ")
          .append(words.cutApart(sizes))
          .append('\n');
    }
  }

  private void addCutFrom(YardageTable table, double owned) {
    Map<String, List<String>> enough = new LinkedHashMap<>();
    for (YardageRow row : table.rows()) {
      String heading =
          words.heading(row.view(), row.fabric(), row.nap())
              + ", "
              + words.length(row.width())
              + " wide";
      List<String> sizes = enough.computeIfAbsent(heading, unused -> new ArrayList<>());
      if (row.best() && row.isCutFrom(owned)) {
        sizes.add(row.size().name());
      }
    }
    SizeWords chart =
        new SizeWords(run.sizes().stream().map(sized -> sized.size().name()).toList());
    text.append("\nFrom a length of ").append(words.length(owned)).append(":\n");
    enough.forEach(
        (heading, sizes) ->
            text.append("  ")
                .append(heading)
                .append(": ")
                .append(sizes.isEmpty() ? "no size" : chart.of(sizes))
                .append('\n'));
  }
}
