package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.cutting.LayingPrint;
import org.hemwright.paper.cutting.LayingSheets;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.pattern.fabric.Fabric;

/** How the pieces are laid on the cloth. */
final class LayingsPart {
  private final Given given;
  private final Telling telling;

  LayingsPart(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  /** Of each view, fabric and width the laying of the drawn size. */
  Optional<Section> layings() {
    List<Figure> figures = new ArrayList<>();
    List<YardageRow> shown = new ArrayList<>();
    for (YardageRow row : given.yardage().map(YardageTable::rows).orElse(List.of())) {
      if (row.best()
          && row.fits()
          && row.nap() == row.fabric().laidWith()
          && row.size().equals(telling.drawn().size())) {
        shown.add(row);
        figures.add(laying(row));
      }
    }
    if (figures.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("layings.lead")));
    if (telling.run().sizes().size() > 1) {
      blocks.add(
          new Block.Paragraph(
              Block.Tone.PLAIN,
              given.say(
                  "layings.size", Slots.of("size", Telling.size(telling.drawn().size().name())))));
    }
    if (shown.stream().anyMatch(row -> telling.fused().contains(row.fabric().name()))) {
      blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("layings.fused")));
    }
    blocks.addAll(given.prose().part("layings"));
    figures.add(
        0,
        drawn(
            "layings-key",
            Inline.plain(given.say("layings.key")),
            print -> LayingSheets.key(shown, new LayingTelling(telling), print)));
    blocks.add(new Block.Gallery(figures));
    return Optional.of(new Section("layings", given.say("part.layings"), false, blocks));
  }

  private Figure laying(YardageRow row) {
    Slots slots =
        Slots.of("view", telling.views(List.of(row.view().name())))
            .and("fabric", telling.fabric(row.fabric().name()))
            .and("width", ClothParts.width(telling, row.fabric(), row.width()))
            .and("size", Telling.size(row.size().name()));
    String id =
        "laying-%s-%s-%s-%d"
            .formatted(
                row.view().name(),
                row.fabric().name(),
                row.nap() == Fabric.Nap.ONE_WAY ? "nap" : "plain",
                Math.round(row.width()));
    String views = telling.severalViews() ? ".view" : "";
    return drawn(
        id,
        Inline.plain(given.say("layings.alt" + views, slots)),
        print -> LayingSheets.withoutKey(telling.run(), row, new LayingTelling(telling), print));
  }

  private static Figure drawn(String id, String alt, Function<LayingPrint, Sheet> sheets) {
    LayingPrint large = LayingPrint.LARGE;
    return new Figure(id, sheets.apply(LayingPrint.USUAL), alt, List.of())
        .enlarged(new Figure.Enlarged(sheets.apply(large), large.enlarged()));
  }
}
