package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hemwright.booklet.figure.PieceFigures;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.step.SewingWords;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Tolerance;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Wearers;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.notion.NotionSettings;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.notion.ThreadNeed;
import org.hemwright.pattern.quantity.LengthKind;

/** What stands before the tables: cover, skill, printing, supplies, cautions. */
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

  Section supplies() {
    List<Block> blocks = new ArrayList<>(given.prose().part("supplies"));
    List<List<Inline>> items = new ArrayList<>();
    telling
        .run()
        .pattern()
        .fabrics()
        .forEach(fabric -> items.add(ClothParts.describe(telling, fabric)));
    for (Measurements.OfElastic elastic : telling.measured().elastics()) {
      items.add(
          given.say(
              "supplies.elastic",
              Slots.of("elastic", telling.name(elastic.name()))
                  .and(
                      "width",
                      telling.range(
                          elastic.width(),
                          LengthKind.NOTION,
                          Provenance.of(Source.ELASTIC, elastic.name(), "width")))));
    }
    items.addAll(bought());
    telling
        .run()
        .pattern()
        .making()
        .usualNeedle()
        .ifPresent(
            needle ->
                items.add(
                    given.say(
                        "supplies.needle",
                        Slots.of(
                            "needle",
                            SewingWords.needle(
                                telling,
                                needle,
                                Provenance.of(Source.STEP, "", "usual-needle"))))));
    items.add(given.say("supplies.thread"));
    items.addAll(thread());
    items.add(given.say("supplies.tools"));
    blocks.add(new Block.Listing(false, items));
    return new Section("supplies", given.say("part.supplies"), false, blocks);
  }

  /** How much thread each machine takes, from the least in any size to the most. */
  private List<List<Inline>> thread() {
    Map<String, double[]> needs = new LinkedHashMap<>();
    for (Notions notions : Notions.all(telling.run(), NotionSettings.HANDBOOK)) {
      for (ThreadNeed need : notions.thread()) {
        String machine = need.machine().name().toLowerCase(Locale.ROOT);
        double[] known =
            needs.computeIfAbsent(machine, k -> new double[] {Double.POSITIVE_INFINITY, 0});
        known[0] = Math.min(known[0], need.thread().least());
        known[1] = Math.max(known[1], need.thread().most());
      }
    }
    List<List<Inline>> items = new ArrayList<>();
    needs.forEach(
        (machine, range) ->
            items.add(
                given.say(
                    range[0] < 1 ? "supplies.thread-at-most" : "supplies.thread-amount",
                    Slots.of("machine", given.say("machine." + machine))
                        .and("least", thread(range[0], machine, "least"))
                        .and("most", thread(range[1], machine, "most")))));
    return items;
  }

  private Inline.Value thread(double mm, String machine, String which) {
    return new Inline.Value(
        telling.words().threadText(mm), Provenance.of(Source.NEEDS, "thread", machine, which));
  }

  /** What steps fasten, bind, fuse and close with. */
  /** Buttons and eyelets, those of one size together. */
  private List<List<Inline>> fasteners() {
    Map<String, Fasteners> all = new LinkedHashMap<>();
    for (Step step : telling.run().pattern().making().steps()) {
      if (step.act() instanceof Act.Fasten fasten
          && (fasten.kind() == Act.Fastening.BUTTON || fasten.kind() == Act.Fastening.EYELET)) {
        List<Inline> size = telling.amount(fasten.size(), LengthKind.NOTION, step.id(), "size");
        String key = "supplies." + fasten.kind().name().toLowerCase(Locale.ROOT);
        all.merge(
            key + Inline.plain(size),
            new Fasteners(key, fasten.count(), List.of(step.id()), size),
            Fasteners::and);
      }
    }
    List<List<Inline>> items = new ArrayList<>();
    for (Fasteners each : all.values()) {
      List<String> keys = new ArrayList<>(each.steps());
      keys.add("count");
      items.add(
          given.say(
              each.count() == 1 ? each.key() + ".one" : each.key(),
              Slots.of(
                      "count",
                      new Inline.Value(
                          Integer.toString(each.count()), new Provenance(Source.STEP, keys)))
                  .and("size", each.size())));
    }
    return items;
  }

  /** So many fasteners of one size, from these steps. */
  private record Fasteners(String key, int count, List<String> steps, List<Inline> size) {
    Fasteners and(Fasteners more) {
      List<String> both = new ArrayList<>(steps);
      both.addAll(more.steps);
      return new Fasteners(key, count + more.count, both, size);
    }
  }

  /** The zipper to buy: in each size the shortest sold that is as long as its opening. */
  private List<Inline> zipper(Step step, Act.InsertZip zip) {
    List<String> openings =
        step.work(Work.OfOpening.class).stream().map(Work.OfOpening::opening).toList();
    Optional<Amount> opening =
        telling.run().pattern().making().steps().stream()
            .flatMap(each -> each.leaves().stream())
            .filter(left -> openings.contains(left.name()))
            .map(Step.Opening::length)
            .findFirst();
    Map<Integer, List<String>> bySold = new TreeMap<>();
    for (SizedPattern sized : telling.run().sizes()) {
      double needed = opening.map(o -> o.in(sized.numbers()).orElse(0)).orElse(0.0);
      for (int i = 0; i < zip.sold().size(); i++) {
        if (zip.sold().get(i) > needed - Tolerance.DRAWN_LENGTH) {
          bySold.computeIfAbsent(i, k -> new ArrayList<>()).add(sized.size().name());
          break;
        }
      }
    }
    int told = bySold.values().stream().mapToInt(List::size).sum();
    if (opening.isEmpty() || told < telling.run().sizes().size()) {
      return given.say("supplies.zip");
    }
    List<List<Inline>> lengths = new ArrayList<>();
    bySold.forEach(
        (sold, sizes) -> {
          Inline length =
              telling
                  .words()
                  .length(
                      zip.sold().get(sold),
                      LengthKind.NOTION,
                      Provenance.of(Source.STEP, step.id(), "sold", Integer.toString(sold)));
          lengths.add(
              bySold.size() == 1
                  ? List.of(length)
                  : given.say(
                      "supplies.zip.in",
                      Slots.of("length", length).and("sizes", telling.sizes(sizes))));
        });
    return given.say("supplies.zip.long", Slots.of("lengths", telling.words().listed(lengths)));
  }

  private List<List<Inline>> bought() {
    List<List<Inline>> items = new ArrayList<>(fasteners());
    for (Step step : telling.run().pattern().making().steps()) {
      if (step.act() instanceof Act.Bind bind && bind.tape().isPresent()) {
        items.add(
            given.say(
                "supplies.tape",
                Slots.of(
                    "width",
                    telling.amount(bind.tape().get(), LengthKind.NOTION, step.id(), "tape"))));
      } else if (step.act() instanceof Act.InsertZip zip) {
        items.add(zipper(step, zip));
      }
    }
    for (Cord cord : telling.run().pattern().making().cords()) {
      items.add(
          given.say(
              "supplies.cord",
              Slots.of("cord", telling.name(cord.name()))
                  .and(
                      "length",
                      telling.amount(cord.length(), LengthKind.FINISHED, cord.name(), "cord"))));
    }
    return items;
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
