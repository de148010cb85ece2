package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.booklet.figure.KeyFigures;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.fabric.Fabric;

/** Glossary, key, care, version, licence. */
final class BackParts {
  private final Given given;
  private final Telling telling;

  BackParts(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  /**
   * The glossary of the terms that some texts use, and only those.
   *
   * @param texts all other text of the booklet
   */
  Section glossary(List<List<Inline>> texts) {
    Set<String> used = new TreeSet<>();
    Set<String> told = new TreeSet<>();
    texts.forEach(text -> collect(text, used));
    List<Block.Glossary.Entry> entries = new ArrayList<>();
    // A meaning may itself use a term: go on until none is left.
    while (!told.containsAll(used)) {
      for (String key : List.copyOf(used)) {
        if (told.add(key)) {
          collect(telling.say("glossary." + key), used);
        }
      }
    }
    for (String key : told) {
      entries.add(
          new Block.Glossary.Entry(
              "term-" + key,
              telling.words().capital(telling.say("term." + key)),
              telling.say("glossary." + key)));
    }
    entries.sort(Comparator.comparing(entry -> Inline.plain(entry.word())));
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(given.prose().part("glossary"));
    blocks.add(new Block.Glossary(entries));
    return new Section("glossary", given.say("part.glossary"), false, blocks);
  }

  private static void collect(List<Inline> text, Set<String> used) {
    for (Inline inline : Inline.all(text)) {
      if (inline instanceof Inline.Term term) {
        used.add(term.key());
      }
    }
  }

  Section key() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("key.lead")));
    blocks.addAll(given.prose().part("key"));
    blocks.add(new Block.Gallery(KeyFigures.of(telling)));
    return new Section("key", given.say("part.key"), false, blocks);
  }

  Section care() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("care.lead")));
    List<List<Inline>> fabrics = new ArrayList<>();
    for (Fabric fabric : telling.run().pattern().fabrics()) {
      if (!telling.fused().contains(fabric.name())) {
        fabrics.add(
            given.say(
                fabric.kind() == Fabric.Kind.KNIT ? "care.knit" : "care.woven",
                Slots.of("fabric", telling.fabric(fabric.name()))));
      }
    }
    if (!telling.fused().isEmpty()) {
      fabrics.add(given.say("care.fused"));
    }
    blocks.add(new Block.Listing(false, fabrics));
    blocks.addAll(given.prose().part("care"));
    return new Section("care", given.say("part.care"), false, blocks);
  }

  Section version() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            Block.Tone.PLAIN,
            given.say(
                "version.lead",
                Slots.of("title", telling.detail("title"))
                    .and("version", telling.detail("version"))
                    .and("dated", telling.detail("dated"))
                    .and("by", telling.detail("by")))));
    blocks.addAll(given.prose().part("version"));
    return new Section("version", given.say("part.version"), false, blocks);
  }

  Section licence() {
    List<Block> blocks = new ArrayList<>();
    List<Block> own = given.prose().part("licence");
    if (own.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              Block.Tone.PLAIN, given.say("licence.plain", Slots.of("by", telling.detail("by")))));
    }
    blocks.addAll(own);
    return new Section("licence", given.say("part.licence"), false, blocks);
  }
}
