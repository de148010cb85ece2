package org.hemwright.booklet.post;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.part.ClothParts;
import org.hemwright.booklet.part.ElasticsPart;
import org.hemwright.booklet.part.Given;
import org.hemwright.booklet.part.Parts;
import org.hemwright.booklet.part.SizeParts;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.paper.PrintedFile;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.LengthKind;

/** The text of a shop's listing (handbook section 8, "Listing text"). */
record Listing(Given given) {
  List<Block> blocks() {
    Telling telling = given.telling();
    List<Block> blocks = new ArrayList<>(given.prose().part("cover"));
    heading(blocks, "listing.level");
    blocks.addAll(given.prose().part("level"));
    heading(blocks, "part.sizes");
    blocks.add(SizeParts.bodyTable(telling));
    heading(blocks, "part.finished");
    blocks.addAll(SizeParts.finishedTables(telling));
    blocks.addAll(
        given.prose().part("finished").stream().filter(Block.Table.class::isInstance).toList());
    heading(blocks, "part.supplies");
    Parts.part(Parts.booklet(given), "supplies")
        .ifPresent(section -> blocks.addAll(section.blocks()));
    heading(blocks, "part.cloth");
    blocks.addAll(ClothParts.cloths(given));
    ElasticsPart.table(telling).ifPresent(blocks::add);
    heading(blocks, "listing.files");
    List<List<Inline>> items = new ArrayList<>();
    for (PrintedFile file : given.printed()) {
      if (!file.paper().isBlank()) {
        items.add(
            telling.say(
                "listing.file",
                Slots.of("file", value(file.name(), file.name()))
                    .and("paper", value(file.paper(), file.name(), "paper"))
                    .and("pages", value(Integer.toString(file.pages()), file.name(), "pages"))));
      }
    }
    items.add(telling.say("listing.booklet"));
    blocks.add(new Block.Listing(false, items));
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, allowances(telling)));
    blocks.add(
        new Block.Paragraph(
            Block.Tone.PLAIN,
            telling.say(
                "cover.version",
                Slots.of("version", telling.detail("version"))
                    .and("dated", telling.detail("dated"))
                    .and("by", telling.detail("by")))));
    return blocks;
  }

  private static Inline.Value value(String text, String... keys) {
    return new Inline.Value(text, new Provenance(Source.PRINTED, List.of(keys)));
  }

  private void heading(List<Block> blocks, String key) {
    blocks.add(new Block.Heading(2, "", given.telling().say(key)));
  }

  /** Which allowances are included, each width once. */
  private static List<Inline> allowances(Telling telling) {
    TreeMap<Double, Provenance> widths = new TreeMap<>();
    for (Piece piece : telling.drawn().pieces()) {
      for (Edge edge : piece.edges()) {
        if (edge.allowance() instanceof Allowance.Plain plain && plain.width() > 0) {
          widths.putIfAbsent(
              plain.width(), Provenance.of(Source.ALLOWANCE, piece.name(), edge.name(), "whole"));
        }
      }
    }
    List<List<Inline>> said = new ArrayList<>();
    widths.forEach(
        (mm, from) -> said.add(List.of(telling.words().length(mm, LengthKind.ALLOWANCE, from))));
    return said.isEmpty()
        ? telling.say("listing.no-allowance")
        : telling.say("listing.allowance", Slots.of("widths", telling.words().listed(said)));
  }
}
