package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.QuantityKind;

/** The body's sizes, the garment's sizes, and how to choose one by them. */
public final class SizeParts {
  private final Given given;
  private final Telling telling;

  SizeParts(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  /** The table of body measurements. */
  public static Block.Table bodyTable(Telling telling) {
    List<List<Inline>> head = new ArrayList<>();
    head.add(telling.say("table.size"));
    List<SizeChart.Column> columns = lengths(telling);
    columns.forEach(
        column -> head.add(telling.words().capital(List.of(telling.measure(column.name())))));
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Size size : telling.sizes()) {
      List<List<Inline>> row = new ArrayList<>();
      row.add(List.of(Telling.size(size.name())));
      for (SizeChart.Column column : columns) {
        OptionalDouble value = column.cells().get(size.position()).value();
        row.add(
            value.isEmpty()
                ? telling.say("table.none")
                : List.of(
                    telling
                        .words()
                        .length(
                            value.getAsDouble(),
                            LengthKind.BODY,
                            Provenance.of(Source.BODY, size.name(), column.name()))));
      }
      rows.add(row);
    }
    return new Block.Table(telling.say("body.caption"), head, rows);
  }

  private static List<SizeChart.Column> lengths(Telling telling) {
    return telling.run().pattern().chart().columns().stream()
        .filter(column -> column.kind() == QuantityKind.LENGTH)
        .toList();
  }

  Section body() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("body.lead")));
    blocks.addAll(given.prose().part("sizes"));
    blocks.add(bodyTable(telling));
    List<List<Inline>> how =
        lengths(telling).stream()
            .map(column -> "tape." + column.name())
            .filter(telling.words()::has)
            .map(telling::say)
            .toList();
    if (!how.isEmpty()) {
      blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("body.how")));
      blocks.add(new Block.Listing(false, how));
    }
    return new Section("sizes", given.say("part.sizes"), false, blocks);
  }

  /** The tables of finished measurements, one for each view that has any. */
  public static List<Block.Table> finishedTables(Telling telling) {
    Map<List<List<Object>>, List<String>> alike = new LinkedHashMap<>();
    Map<String, List<Measurements.OfLevel>> byView = new LinkedHashMap<>();
    telling
        .measured()
        .girths()
        .forEach(girth -> byView.computeIfAbsent(girth.view(), k -> new ArrayList<>()).add(girth));
    byView.forEach(
        (view, levels) ->
            alike
                .computeIfAbsent(
                    levels.stream()
                        .map(level -> List.<Object>of(level.level(), rounded(level.girth())))
                        .toList(),
                    k -> new ArrayList<>())
                .add(view));
    List<Block.Table> tables = new ArrayList<>();
    for (List<String> views : alike.values()) {
      tables.add(finishedTable(telling, views, byView.getOrDefault(views.get(0), List.of())));
    }
    return tables;
  }

  /** To what a drawing can show. */
  private static Map<String, Long> rounded(Map<String, Double> girths) {
    Map<String, Long> rounded = new LinkedHashMap<>();
    girths.forEach((size, mm) -> rounded.put(size, Math.round(mm / Tolerance.DRAWN_LENGTH)));
    return rounded;
  }

  private static Block.Table finishedTable(
      Telling telling, List<String> views, List<Measurements.OfLevel> levels) {
    String view = views.get(0);
    List<List<Inline>> head = new ArrayList<>();
    head.add(telling.say("table.size"));
    for (Measurements.OfLevel level : levels) {
      head.add(heading(telling, "finished.girth", level));
      if (hasBody(telling, level)) {
        head.add(heading(telling, "finished.ease", level));
      }
    }
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (String size : telling.sizeNames()) {
      List<List<Inline>> row = new ArrayList<>();
      row.add(List.of(Telling.size(size)));
      for (Measurements.OfLevel level : levels) {
        Optional<Double> girth = Optional.ofNullable(level.girth().get(size));
        Provenance from = Provenance.of(Source.FINISHED, view, level.level(), size);
        row.add(
            girth
                .map(mm -> List.<Inline>of(telling.words().length(mm, LengthKind.FINISHED, from)))
                .orElseGet(() -> telling.say("table.none")));
        if (hasBody(telling, level)) {
          row.add(
              girth
                  .flatMap(
                      mm ->
                          body(telling, level.level(), size)
                              .map(
                                  own ->
                                      List.<Inline>of(
                                          telling
                                              .words()
                                              .length(
                                                  mm - own,
                                                  LengthKind.FINISHED,
                                                  Provenance.of(
                                                      Source.FINISHED,
                                                      view,
                                                      level.level(),
                                                      size,
                                                      "ease")))))
                  .orElseGet(() -> telling.say("table.none")));
        }
      }
      rows.add(row);
    }
    List<Inline> caption =
        telling.severalViews()
            ? telling.say("finished.caption.view", Slots.of("view", telling.views(views)))
            : telling.say("finished.caption");
    return new Block.Table(caption, head, rows);
  }

  private static List<Inline> heading(Telling telling, String key, Measurements.OfLevel level) {
    return telling
        .words()
        .capital(telling.say(key, Slots.of("level", telling.measure(level.level()))));
  }

  private static boolean hasBody(Telling telling, Measurements.OfLevel level) {
    return telling.run().pattern().chart().column(level.level()).isPresent();
  }

  private static Optional<Double> body(Telling telling, String measure, String size) {
    SizeChart chart = telling.run().pattern().chart();
    return chart
        .column(measure)
        .flatMap(
            column ->
                chart
                    .size(size)
                    .map(at -> column.cells().get(at.position()).value())
                    .filter(OptionalDouble::isPresent)
                    .map(OptionalDouble::getAsDouble));
  }

  Optional<Section> finished() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("finished.lead")));
    List<Block.Table> tables = new ArrayList<>(finishedTables(telling));
    for (Block block : given.prose().part("finished")) {
      Optional<Block.Table> joined =
          tables.size() == 1 && block instanceof Block.Table hers
              ? joined(tables.get(0), hers)
              : Optional.empty();
      joined.ifPresentOrElse(table -> tables.set(0, table), () -> blocks.add(block));
    }
    blocks.addAll(tables);
    return tables.isEmpty() && given.prose().part("finished").isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("finished", given.say("part.finished"), false, blocks));
  }

  /** Two tables with the same rows as one; absent where their rows are others. */
  private static Optional<Block.Table> joined(Block.Table table, Block.Table more) {
    List<String> own = table.rows().stream().map(row -> Inline.plain(row.get(0))).toList();
    if (!own.equals(more.rows().stream().map(row -> Inline.plain(row.get(0))).toList())) {
      return Optional.empty();
    }
    List<List<Inline>> head = new ArrayList<>(table.head());
    head.addAll(more.head().subList(1, more.head().size()));
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      List<List<Inline>> row = new ArrayList<>(table.rows().get(i));
      row.addAll(more.rows().get(i).subList(1, more.head().size()));
      rows.add(row);
    }
    return Optional.of(new Block.Table(table.caption(), head, rows));
  }

  /** The measurements of the body by which a size is chosen: those at which the garment is wide. */
  static List<String> governing(Telling telling) {
    return telling.measured().girths().stream()
        .map(Measurements.OfLevel::level)
        .distinct()
        .filter(level -> telling.run().pattern().chart().column(level).isPresent())
        .toList();
  }

  Section choosing() {
    List<Block> blocks = new ArrayList<>();
    List<String> by = governing(telling);
    List<List<Inline>> names =
        by.stream().map(each -> List.<Inline>of(telling.measure(each))).toList();
    List<List<Inline>> items = new ArrayList<>();
    items.add(given.say("choose.measure"));
    items.add(
        names.isEmpty()
            ? given.say("choose.any")
            : given.say("choose.by", Slots.of("measures", telling.words().listed(names))));
    items.add(given.say("choose.between"));
    items.add(given.say("choose.never"));
    blocks.add(new Block.Listing(true, items));
    blocks.addAll(given.prose().part("choosing"));
    return new Section("choosing", given.say("part.choosing"), false, blocks);
  }
}
