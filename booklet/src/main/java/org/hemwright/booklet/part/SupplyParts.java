package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.step.SewingWords;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.notion.NotionSettings;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.notion.ThreadNeed;
import org.hemwright.pattern.quantity.LengthKind;

/** What is needed besides the cloth: thread, fasteners, zippers, and what else is bought. */
final class SupplyParts {
  private final Given given;
  private final Telling telling;

  SupplyParts(Given given) {
    this.given = given;
    this.telling = given.telling();
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
}
