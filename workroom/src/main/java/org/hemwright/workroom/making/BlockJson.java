package org.hemwright.workroom.making;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.workroom.keep.TextHash;

/**
 * Blocks of the booklet as JSON, each with its kind; figures by a key of what they show.
 *
 * @param facts what pictures say of themselves
 * @param pictures takes {@code {"key", "type"}} of each figure that is not known, and it as text or
 *     in base 64
 * @param known the keys of figures that the window has
 * @param keys the keys of all figures that were written
 */
record BlockJson(DocumentFacts facts, ArrayNode pictures, Set<String> known, Set<String> keys) {
  BlockJson(DocumentFacts facts, ArrayNode pictures, Set<String> known) {
    this(facts, pictures, known, new HashSet<>());
  }

  void write(ArrayNode to, List<Block> blocks) {
    blocks.forEach(block -> write(to.addObject(), block));
  }

  private void write(ObjectNode to, Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      to.put("kind", "paragraph").put("tone", paragraph.tone().name().toLowerCase(Locale.ROOT));
      words(to.putArray("words"), paragraph.text());
    } else if (block instanceof Block.Heading heading) {
      to.put("kind", "heading").put("level", heading.level());
      words(to.putArray("words"), heading.text());
    } else if (block instanceof Block.Listing listing) {
      to.put("kind", "list").put("numbered", listing.numbered());
      ArrayNode items = to.putArray("items");
      listing.items().forEach(item -> words(items.addArray(), item));
    } else if (block instanceof Block.Glossary glossary) {
      to.put("kind", "glossary");
      ArrayNode entries = to.putArray("entries");
      for (Block.Glossary.Entry entry : glossary.entries()) {
        ObjectNode one = entries.addObject();
        words(one.putArray("word"), entry.word());
        words(one.putArray("meaning"), entry.meaning());
      }
    } else if (block instanceof Block.Table table) {
      table(to, table);
    } else if (block instanceof Block.Drawing drawing) {
      to.put("kind", "gallery");
      figure(to.putArray("figures").addObject(), drawing.figure());
    } else if (block instanceof Block.Gallery gallery) {
      to.put("kind", "gallery");
      ArrayNode figures = to.putArray("figures");
      gallery.figures().forEach(figure -> figure(figures.addObject(), figure));
    } else if (block instanceof Block.Step step) {
      to.put("kind", "step").put("id", step.id());
      words(to.putArray("title"), step.title());
      step.figure().ifPresent(figure -> figure(to.putObject("figure"), figure));
      write(to.putArray("blocks"), step.words());
    }
  }

  private void table(ObjectNode to, Block.Table table) {
    to.put("kind", "table");
    words(to.putArray("caption"), table.caption());
    ArrayNode head = to.putArray("head");
    table.head().forEach(cell -> words(head.addArray(), cell));
    ArrayNode rows = to.putArray("rows");
    table
        .rows()
        .forEach(
            row -> {
              ArrayNode cells = rows.addArray();
              row.forEach(cell -> words(cells.addArray(), cell));
            });
  }

  private void figure(ObjectNode to, Figure figure) {
    to.put("id", figure.id()).put("alt", figure.alt());
    words(to.putArray("caption"), figure.caption());
    Optional<Picture> own = figure.own();
    String data =
        own.map(picture -> Base64.getEncoder().encodeToString(picture.bytes()))
            .orElseGet(
                () -> new String(SvgWriter.write(facts, figure.sheet()), StandardCharsets.UTF_8));
    String key = TextHash.of(data);
    to.put("picture", key).put("own", own.isPresent());
    if (own.isEmpty()) {
      to.put("wide", figure.sheet().frame().width()).put("high", figure.sheet().frame().height());
    }
    if (keys.add(key) && !known.contains(key)) {
      ObjectNode picture = pictures.addObject().put("key", key);
      picture.put("type", own.map(each -> each.kind().mime()).orElse("image/svg+xml"));
      picture.put(own.isPresent() ? "base64" : "text", data);
    }
  }

  /**
   * Running text: a string for plain words, {@code ["strong", …]} and {@code ["emphasis", …]}
   * around others.
   */
  void words(ArrayNode to, List<Inline> inlines) {
    for (Inline inline : inlines) {
      if (inline instanceof Inline.Strong strong) {
        words(to.addArray().add("strong"), strong.parts());
      } else if (inline instanceof Inline.Emphasis emphasis) {
        words(to.addArray().add("emphasis"), emphasis.parts());
      } else if (inline instanceof Inline.Break) {
        to.addArray().add("break");
      } else {
        to.add(Inline.plain(List.of(inline)));
      }
    }
  }
}
