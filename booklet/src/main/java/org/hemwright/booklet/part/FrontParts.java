package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.figure.PieceFigures;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Wearers;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.quantity.LengthKind;

/** What stands before the tables: cover, skill, printing, cautions. */
public final class FrontParts {
  private final Given given;
  private final Telling telling;

  FrontParts(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  List<Block> cover() {
    List<Block> blocks = new ArrayList<>();
    Slots slots =
        Slots.of("sizes", allSizes())
            .and("version", telling.detail("version"))
            .and("dated", telling.detail("dated"))
            .and("by", telling.detail("by"));
    blocks.add(
        new Block.Paragraph(
            Block.Tone.LEAD, telling.words().capital(telling.say("cover.sizes", slots))));
    blocks.addAll(given.prose().part("cover"));
    List<Figure> figures = new ArrayList<>();
    given
        .picture("cover")
        .ifPresent(
            picture ->
                figures.add(
                    own(
                        "cover",
                        picture,
                        given.say("cover.picture", Slots.of("title", telling.detail("title"))))));
    for (View view : telling.run().pattern().views()) {
      figures.addAll(view(view));
    }
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, telling.say("cover.version", slots)));
    blocks.add(new Block.Gallery(figures));
    return blocks;
  }

  private List<Inline> allSizes() {
    List<String> names = telling.sizeNames();
    return names.size() == 1
        ? telling.sizes(names)
        : telling.say(
            "sizes.many",
            Slots.of(
                "sizes",
                telling.say(
                    "sizes.range",
                    Slots.of("first", Telling.size(names.get(0)))
                        .and("last", Telling.size(names.get(names.size() - 1))))));
  }

  /** Her technical drawing of a view, front and back; else its pieces. */
  private List<Figure> view(View view) {
    List<Figure> figures = new ArrayList<>();
    for (String side : List.of("front", "back")) {
      given
          .picture("view-" + view.name() + "-" + side)
          .ifPresent(
              picture ->
                  figures.add(
                      own(
                          "view-" + view.name() + "-" + side,
                          picture,
                          telling.severalViews()
                              ? telling
                                  .words()
                                  .capital(
                                      given.say(
                                          "cover.view-" + side,
                                          Slots.of("view", telling.view(view))))
                              : given.say("cover." + side))));
    }
    if (figures.isEmpty()) {
      PieceFigures.view(telling, view).ifPresent(figures::add);
    }
    return figures;
  }

  private static Figure own(String id, Picture picture, List<Inline> caption) {
    return new Figure(
        id,
        new Sheet(new Box(0, 0, 80, 80), List.of()),
        Inline.plain(caption),
        caption,
        Optional.of(picture));
  }

  Section level() {
    List<Block> blocks = new ArrayList<>(given.prose().part("level"));
    Set<String> acts = new LinkedHashSet<>();
    for (Step step : telling.run().pattern().making().steps()) {
      acts.add(step.act().word().replace(' ', '-'));
    }
    List<List<Inline>> skills =
        acts.stream()
            .filter(act -> telling.words().has("skill." + act))
            .map(act -> telling.say("skill." + act))
            .toList();
    if (!skills.isEmpty()) {
      blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("level.lead")));
      blocks.add(new Block.Listing(false, skills));
    }
    return new Section("level", given.say("part.level"), false, blocks);
  }

  Section printing() {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(given.prose().part("printing"));
    Slots slots =
        Slots.of(
                "large",
                telling
                    .words()
                    .length(
                        100,
                        LengthKind.DIFFERENCE,
                        Provenance.of(Source.SETTING, "test-square", "large")))
            .and(
                "small",
                telling
                    .words()
                    .length(
                        25.4,
                        LengthKind.NOTION,
                        Provenance.of(Source.SETTING, "test-square", "small")));
    List<List<Inline>> items = new ArrayList<>();
    items.add(given.say("print.layers"));
    items.add(given.say("print.scale"));
    items.add(given.say("print.square", slots));
    items.add(given.say("print.join"));
    items.add(given.say("print.shop"));
    blocks.add(new Block.Listing(true, items));
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (PrintedFile file : given.printed()) {
      if (!file.paper().isBlank() && !file.name().contains("/")) {
        rows.add(
            List.of(
                List.of(new Inline.Value(file.name(), Provenance.of(Source.PRINTED, file.name()))),
                paper(file),
                List.of(
                    new Inline.Value(
                        Integer.toString(file.pages()),
                        Provenance.of(Source.PRINTED, file.name(), "pages")))));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              given.say("print.caption"),
              List.of(given.say("print.file"), given.say("print.paper"), given.say("print.pages")),
              rows));
    }
    return new Section("printing", given.say("part.printing"), false, blocks);
  }

  private static List<Inline> paper(PrintedFile file) {
    return List.of(
        new Inline.Value(file.paper(), Provenance.of(Source.PRINTED, file.name(), "paper")));
  }

  Section safety() {
    List<Block> blocks = new ArrayList<>();
    List<List<Inline>> items = new ArrayList<>();
    for (String key : telling.words().keys("safety.always.")) {
      items.add(telling.say(key));
    }
    blocks.add(new Block.Listing(false, items));
    Making making = telling.run().pattern().making();
    boolean children =
        telling.run().pattern().details().wearers().filter(FrontParts::isYoung).isPresent();
    if (children) {
      for (String key : telling.words().keys("safety.children.")) {
        blocks.add(new Block.Paragraph(Block.Tone.CAUTION, telling.say(key)));
      }
    }
    if (children && !making.cords().isEmpty()) {
      blocks.add(new Block.Paragraph(Block.Tone.CAUTION, telling.say("safety.cords")));
    }
    if (children && making.sleepwear()) {
      blocks.add(new Block.Paragraph(Block.Tone.CAUTION, telling.say("safety.sleepwear")));
    }
    blocks.addAll(given.prose().part("safety"));
    return new Section("safety", given.say("part.safety"), false, blocks);
  }

  private static boolean isYoung(Wearers wearers) {
    return wearers.people() == Wearers.People.CHILDREN || wearers.people() == Wearers.People.BABIES;
  }
}
