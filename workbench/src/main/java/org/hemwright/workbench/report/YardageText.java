package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.SizeRun;

/** How much cloth to buy, as tables for a person: sizes that buy the same share a row. */
public final class YardageText {
  private final OwnCloth own;
  private final ClothWords words;
  private final YardageNotes notes;
  private final StringBuilder text = new StringBuilder();

  private YardageText(SizeRun run, OwnCloth own, LeftOvers left) {
    this.own = own;
    words = new ClothWords(run, false);
    notes = new YardageNotes(run, own, left, words);
  }

  /**
   * The tables, one below the other.
   *
   * @param own a cloth that is there already, or in the shop: its length and its price
   * @param left what is left of the cloth
   */
  public static String of(SizeRun run, YardageTable table, OwnCloth own, LeftOvers left) {
    YardageText text = new YardageText(run, own, left);
    YardageNotes.shrinks(table).ifPresent(said -> text.text.append(said).append('\n'));
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
      List<String> said = new ArrayList<>(notes.of(groups, i));
      notes.exact(groups, i).ifPresent(exact -> said.add(0, exact));
      for (String note : said) {
        text.append("  ").append(words.length(widths.get(i))).append(": ").append(note);
        text.append('\n');
      }
    }
  }

  /** What to buy, and what it costs where a price is said. */
  private String buy(YardageGroup group, int width) {
    String buy = words.buy(group.buy(width));
    Optional<YardageRow> row = group.best().get(width).get(0);
    OptionalDouble cost = row.map(own::cost).orElse(OptionalDouble.empty());
    return cost.isPresent() ? buy + " for " + ClothWords.money(cost.getAsDouble()) : buy;
  }

  private void addCutFrom(YardageTable table, double owned) {
    text.append("\nFrom a length of ").append(words.length(owned)).append(":\n");
    notes
        .cutFrom(table)
        .forEach(
            (heading, sizes) ->
                text.append("  ").append(heading).append(": ").append(sizes).append('\n'));
  }
}
