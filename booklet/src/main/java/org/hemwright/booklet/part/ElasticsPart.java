package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.quantity.LengthKind;

/** The elastics: how wide, how long to cut, how long sewn. */
public final class ElasticsPart {
  private final Given given;
  private final Telling telling;

  ElasticsPart(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  /** The table of elastics to cut, by size. */
  public static Optional<Block.Table> table(Telling telling) {
    List<Measurements.OfElastic> elastics = telling.measured().elastics();
    if (elastics.isEmpty()) {
      return Optional.empty();
    }
    List<List<Inline>> head = new ArrayList<>();
    head.add(telling.say("table.size"));
    for (Measurements.OfElastic elastic : elastics) {
      Slots named = Slots.of("elastic", telling.name(elastic.name()));
      head.add(telling.words().capital(telling.say("elastic.width", named)));
      head.add(telling.words().capital(telling.say("elastic.cut", named)));
      head.add(telling.words().capital(telling.say("elastic.finished", named)));
    }
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (String size : telling.sizeNames()) {
      List<List<Inline>> row = new ArrayList<>();
      row.add(List.of(Telling.size(size)));
      for (Measurements.OfElastic elastic : elastics) {
        row.add(elastic(telling, elastic, elastic.width(), "width", LengthKind.NOTION, size));
        row.add(elastic(telling, elastic, elastic.cut(), "cut", LengthKind.FINISHED, size));
        row.add(
            elastic(telling, elastic, elastic.finished(), "finished", LengthKind.FINISHED, size));
      }
      rows.add(row);
    }
    return Optional.of(new Block.Table(telling.say("elastic.caption"), head, rows));
  }

  private static List<Inline> elastic(
      Telling telling,
      Measurements.OfElastic elastic,
      Map<String, Double> values,
      String what,
      LengthKind kind,
      String size) {
    return Optional.ofNullable(values.get(size))
        .map(
            mm ->
                List.<Inline>of(
                    telling
                        .words()
                        .length(
                            mm, kind, Provenance.of(Source.ELASTIC, elastic.name(), what, size))))
        .orElseGet(() -> telling.say("table.none"));
  }

  Optional<Section> elastics() {
    return table(telling)
        .map(
            table -> {
              List<Block> blocks = new ArrayList<>();
              blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("elastic.lead")));
              blocks.addAll(given.prose().part("elastics"));
              blocks.add(table);
              return new Section("elastics", given.say("part.elastics"), false, blocks);
            });
  }
}
