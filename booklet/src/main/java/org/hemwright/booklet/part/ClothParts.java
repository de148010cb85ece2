package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.booklet.figure.StretchGauge;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.cloth.yardage.BuyingLength;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.split.SplitChoice;
import org.hemwright.pattern.split.SplitRun;

/** What each cloth must be like, how much of it to buy by size, width and view; its gauge. */
public final class ClothParts {
  private final Given given;
  private final Telling telling;

  ClothParts(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  /** What each cloth is to be like, and how much of it to buy. */
  public static List<Block> cloths(Given given) {
    Telling telling = given.telling();
    List<Block> blocks = new ArrayList<>();
    for (Fabric fabric : telling.run().pattern().fabrics()) {
      blocks.add(new Block.Paragraph(Block.Tone.PLAIN, describe(telling, fabric)));
    }
    given.yardage().ifPresent(table -> blocks.addAll(tables(telling, table)));
    return blocks;
  }

  /** The tables of what cloth to buy, one for each view, fabric and nap. */
  public static List<Block.Table> tables(Telling telling, YardageTable yardage) {
    List<Block.Table> tables = new ArrayList<>();
    YardageGroup.of(yardage)
        .forEach((heading, groups) -> tables.add(table(telling, heading, groups)));
    return tables;
  }

  private static Block.Table table(
      Telling telling, YardageGroup.Heading heading, List<YardageGroup> groups) {
    List<List<Inline>> head = new ArrayList<>();
    head.add(telling.say("table.sizes"));
    for (double width : groups.get(0).widths()) {
      head.add(
          telling.say("cloth.wide", Slots.of("width", width(telling, heading.fabric(), width))));
    }
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (YardageGroup group : groups) {
      List<List<Inline>> row = new ArrayList<>();
      row.add(sizes(telling, group.sizes()));
      for (int i = 0; i < group.widths().size(); i++) {
        Optional<BuyingLength> buy = group.buy(i);
        Provenance from =
            Provenance.of(
                Source.CLOTH,
                heading.view().name(),
                heading.fabric().name(),
                heading.nap().name().toLowerCase(Locale.ROOT),
                Double.toString(group.widths().get(i)),
                group.sizes().get(0).name());
        row.add(
            buy.map(
                    need ->
                        List.<Inline>of(
                            new Inline.Value(
                                telling.words().buyText(need.tenths(), need.eighths()), from)))
                .orElseGet(() -> telling.say("cloth.too-narrow")));
      }
      rows.add(row);
    }
    Slots slots =
        Slots.of("fabric", telling.fabric(heading.fabric().name()))
            .and("view", telling.views(List.of(heading.view().name())))
            .and("nap", nap(telling, heading));
    String plain = heading.fabric().hasNoNap() ? ".no-nap" : "";
    String key = (telling.severalViews() ? "cloth.caption.view" : "cloth.caption") + plain;
    return new Block.Table(telling.words().capital(telling.say(key, slots)), head, rows);
  }

  /** "with nap"; of a cloth with stripes the repeat that it is laid for. */
  private static List<Inline> nap(Telling telling, YardageGroup.Heading heading) {
    return heading
        .fabric()
        .repeat()
        .map(repeat -> repeat(telling, heading.fabric(), repeat))
        .orElseGet(
            () -> telling.say(heading.nap() == Fabric.Nap.ONE_WAY ? "cloth.nap" : "cloth.no-nap"));
  }

  /** "repeat 10.8 cm along and 9 cm across, uneven across". */
  static List<Inline> repeat(Telling telling, Fabric fabric, Fabric.Repeat repeat) {
    Slots slots =
        Slots.of("along", every(telling, fabric, "along", repeat.along()))
            .and("across", every(telling, fabric, "across", repeat.across()));
    String ways =
        repeat.along().isEmpty() ? "across" : repeat.across().isEmpty() ? "along" : "both";
    List<Inline> text = new ArrayList<>(telling.say("cloth.repeat." + ways, slots));
    if (repeat.isUneven()) {
      String uneven = !repeat.unevenAlong() ? "across" : !repeat.unevenAcross() ? "along" : "both";
      text.addAll(telling.say("cloth.uneven." + uneven));
    }
    return text;
  }

  private static List<Inline> every(
      Telling telling, Fabric fabric, String way, OptionalDouble every) {
    return every.isEmpty()
        ? List.of()
        : List.of(
            telling
                .words()
                .length(
                    every.getAsDouble(),
                    LengthKind.FINISHED,
                    Provenance.of(Source.FABRIC, fabric.name(), "repeat", way)));
  }

  /** A width that a cloth is sold in. */
  static Inline.Value width(Telling telling, Fabric fabric, double width) {
    return telling
        .words()
        .length(
            width,
            LengthKind.FINISHED,
            Provenance.of(Source.FABRIC, fabric.name(), "width", Double.toString(width)));
  }

  private static List<Inline> sizes(Telling telling, List<Size> sizes) {
    return sizes.size() == 1
        ? List.of(Telling.size(sizes.get(0).name()))
        : telling.say(
            "sizes.range",
            Slots.of("first", Telling.size(sizes.get(0).name()))
                .and("last", Telling.size(sizes.get(sizes.size() - 1).name())));
  }

  Optional<Section> requirements() {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(given.prose().part("cloth"));
    for (Fabric fabric : telling.run().pattern().fabrics()) {
      blocks.add(new Block.Paragraph(Block.Tone.PLAIN, describe(telling, fabric)));
    }
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("cloth.preshrink")));
    given.yardage().ifPresent(table -> blocks.addAll(tables(telling, table)));
    given.yardage().ifPresent(table -> blocks.addAll(cutApart(telling, table)));
    return Optional.of(new Section("cloth", given.say("part.cloth"), false, blocks));
  }

  private record Place(Fabric fabric, double width) {}

  /** Which pieces are cut apart, on which cloths and in which sizes, and what that asks for. */
  private static List<Block> cutApart(Telling telling, YardageTable yardage) {
    Map<SplitChoice, Map<Place, Set<Size>>> apart = new LinkedHashMap<>();
    for (YardageRow row : yardage.rows()) {
      if (row.best()) {
        for (SplitChoice choice : row.variant()) {
          apart
              .computeIfAbsent(choice, none -> new LinkedHashMap<>())
              .computeIfAbsent(new Place(row.fabric(), row.width()), none -> new TreeSet<>())
              .add(row.size());
        }
      }
    }
    List<Block> blocks = new ArrayList<>();
    apart.forEach(
        (choice, places) -> {
          List<List<Inline>> said = new ArrayList<>();
          places.forEach((place, sizes) -> said.add(place(telling, place, sizes)));
          Slots slots =
              Slots.of("piece", telling.piece(choice.piece()))
                  .and("places", telling.words().listed(said));
          String key = onFold(telling, choice) ? "cloth.apart.fold" : "cloth.apart";
          List<Inline> text = new ArrayList<>(telling.say(key, slots));
          if (isFinished(telling, choice)) {
            text.addAll(telling.say("cloth.apart.finish"));
          }
          blocks.add(new Block.Paragraph(Block.Tone.PLAIN, text));
        });
    return blocks;
  }

  /** Whether the edges of the seam that joins the parts are finished. */
  private static boolean isFinished(Telling telling, SplitChoice choice) {
    return SplitRun.of(telling.run(), List.of(choice)).pattern().making().steps().stream()
        .filter(step -> step.act() instanceof Act.Finish)
        .flatMap(step -> step.work(Work.OfSeam.class).stream())
        .anyMatch(seam -> seam.seam().equals(choice.split()));
  }

  private static List<Inline> place(Telling telling, Place place, Set<Size> sizes) {
    return telling.say(
        "cloth.apart.place",
        Slots.of("fabric", telling.fabric(place.fabric().name()))
            .and("width", width(telling, place.fabric(), place.width()))
            .and("sizes", telling.sizes(sizes.stream().map(Size::name).toList())));
  }

  private static boolean onFold(Telling telling, SplitChoice choice) {
    return telling.run().sizes().stream()
        .flatMap(sized -> sized.piece(choice.piece()).stream())
        .flatMap(piece -> piece.marks(Mark.Split.class).stream())
        .anyMatch(split -> split.name().equals(choice.split()) && split.onFold());
  }

  /** What a cloth must be: kind, stretch, nap. */
  public static List<Inline> describe(Telling telling, Fabric fabric) {
    List<Inline> text = new ArrayList<>();
    text.add(new Inline.Strong(List.of(telling.fabric(fabric.name()))));
    if (telling.fused().contains(fabric.name())) {
      text.addAll(telling.say("cloth.is-fused"));
      return text;
    }
    text.addAll(
        telling.say(fabric.kind() == Fabric.Kind.KNIT ? "cloth.is-knit" : "cloth.is-woven"));
    fabric
        .stretchAcross()
        .ifPresent(
            share ->
                text.addAll(
                    telling.say(
                        "cloth.stretch-across",
                        Slots.of(
                            "share",
                            telling.percent(
                                share,
                                Provenance.of(Source.FABRIC, fabric.name(), "stretch-across"))))));
    fabric
        .stretchAlong()
        .ifPresent(
            share ->
                text.addAll(
                    telling.say(
                        "cloth.stretch-along",
                        Slots.of(
                            "share",
                            telling.percent(
                                share,
                                Provenance.of(Source.FABRIC, fabric.name(), "stretch-along"))))));
    fabric
        .repeat()
        .ifPresent(
            repeat ->
                text.addAll(
                    telling.say(
                        "cloth.with-repeat", Slots.of("repeat", repeat(telling, fabric, repeat)))));
    text.addAll(
        telling.say(
            fabric.laidWith() == Fabric.Nap.ONE_WAY
                ? "cloth.one-way"
                : fabric.hasNoNap() ? "cloth.never-napped" : "cloth.either-way"));
    if (fabric.repeat().isPresent()) {
      text.addAll(telling.say("cloth.other-repeat"));
    }
    if (fabric.sidesAlike()) {
      text.addAll(telling.say("cloth.sides-alike"));
    }
    return text;
  }

  Optional<Section> gauge() {
    List<Figure> gauges = StretchGauge.of(telling);
    if (gauges.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("gauge.lead")));
    blocks.add(
        new Block.Listing(
            true,
            List.of(given.say("gauge.fold"), given.say("gauge.hold"), given.say("gauge.pull"))));
    blocks.addAll(given.prose().part("gauge"));
    gauges.forEach(figure -> blocks.add(new Block.Drawing(figure)));
    return Optional.of(new Section("gauge", given.say("part.gauge"), false, blocks));
  }
}
