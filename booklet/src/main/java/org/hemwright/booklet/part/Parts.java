package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Booklet;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.pattern.Details;

/** The booklet from its parts, in the order of handbook section 7. */
public final class Parts {
  /** The ids of all parts, in order; the designer's prose stands under them. */
  public static final List<String> IDS =
      List.of(
          "cover",
          "level",
          "printing",
          "supplies",
          "safety",
          "sizes",
          "finished",
          "choosing",
          "cloth",
          "elastics",
          "gauge",
          "pieces",
          "layings",
          "glossary",
          "key",
          "stitches",
          "steps",
          "care",
          "version",
          "licence");

  private Parts() {}

  /** The whole booklet. */
  public static Booklet booklet(Given given) {
    Telling telling = given.telling();
    FrontParts front = new FrontParts(given);
    SupplyParts supplies = new SupplyParts(given);
    SizeParts sizes = new SizeParts(given);
    ClothParts cloth = new ClothParts(given);
    PieceParts pieces = new PieceParts(given);
    StepsPart steps = new StepsPart(given);
    BackParts back = new BackParts(given);
    List<Block> cover = front.cover();
    List<Section> before = new ArrayList<>();
    before.add(front.level());
    before.add(front.printing());
    before.add(supplies.supplies());
    before.add(front.safety());
    before.add(sizes.body());
    sizes.finished().ifPresent(before::add);
    before.add(sizes.choosing());
    cloth.requirements().ifPresent(before::add);
    new ElasticsPart(given).elastics().ifPresent(before::add);
    cloth.gauge().ifPresent(before::add);
    before.add(pieces.pieces());
    new LayingsPart(given).layings().ifPresent(before::add);
    List<Section> after = new ArrayList<>();
    after.add(back.key());
    if (telling.run().pattern().making().isStated()) {
      after.add(steps.stitches());
      after.add(steps.steps());
    }
    after.add(back.care());
    after.add(back.version());
    after.add(back.licence());
    List<List<Inline>> texts = new ArrayList<>(Block.texts(cover));
    before.forEach(section -> texts.addAll(Block.texts(section.blocks())));
    after.forEach(section -> texts.addAll(Block.texts(section.blocks())));
    List<Section> all = new ArrayList<>(before);
    all.add(back.glossary(texts));
    all.addAll(after);
    return new Booklet(
        facts(telling),
        List.of(telling.detail("title")),
        cover,
        logo(given),
        footer(telling),
        given.type(),
        telling.words().plain("contents"),
        telling.words().plain("page"),
        all);
  }

  /** The picture that the document names as the logo, or else the one that is called so. */
  public static Optional<Picture> logo(Given given) {
    return given
        .telling()
        .run()
        .pattern()
        .details()
        .brand()
        .logo()
        .flatMap(file -> given.picture(file.replaceFirst("[.][^.]*$", "")))
        .or(() -> given.picture("logo"));
  }

  /** What the pattern is, and the house's own line. */
  public static List<Inline> footer(Telling telling) {
    List<Inline> footer =
        new ArrayList<>(
            telling.say(
                "footer",
                Slots.of("title", telling.detail("title"))
                    .and("version", telling.detail("version"))
                    .and("by", telling.detail("by"))));
    telling
        .run()
        .pattern()
        .details()
        .brand()
        .footer()
        .ifPresent(
            line -> {
              footer.add(new Inline.Text(" · "));
              footer.add(new Inline.Own(line));
            });
    return footer;
  }

  private static DocumentFacts facts(Telling telling) {
    Details details = telling.run().pattern().details();
    Slots slots =
        Slots.of("title", telling.detail("title"))
            .and("version", telling.detail("version"))
            .and("by", telling.detail("by"));
    return new DocumentFacts(
        telling.words().plain("facts.title", slots),
        details.by(),
        telling.words().plain("facts.about", slots),
        telling.words().tag(),
        details.dated(),
        List.of());
  }

  /** The part of that id in a booklet. */
  public static Optional<Section> part(Booklet booklet, String id) {
    return booklet.sections().stream().filter(section -> section.id().equals(id)).findFirst();
  }
}
