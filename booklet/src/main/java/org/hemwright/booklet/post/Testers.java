package org.hemwright.booklet.post;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.part.ClothParts;
import org.hemwright.booklet.part.Given;
import org.hemwright.booklet.part.SizeParts;
import org.hemwright.booklet.part.StepsPart;
import org.hemwright.booklet.part.StepsPart.ToldStage;
import org.hemwright.booklet.part.StepsPart.ToldStep;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.quantity.QuantityKind;

/** The call for testers and the form that they fill in (handbook section 8). */
record Testers(Given given) {
  /** How many testers each band of sizes has at least; handbook section 8. */
  private static final int EACH_BAND = 2;

  List<Block> call() {
    Telling telling = given.telling();
    List<Block> blocks = new ArrayList<>(given.prose().part("cover"));
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, telling.say("testers.lead")));
    List<List<Inline>> items = new ArrayList<>();
    for (SizeRange band : telling.run().pattern().paper().groups()) {
      items.add(
          telling.say(
              "testers.band",
              Slots.of(
                      "count",
                      new Inline.Value(
                          Integer.toString(EACH_BAND),
                          Provenance.of(Source.SETTING, "testers-each-band")))
                  .and("first", Telling.size(band.first().name()))
                  .and("last", Telling.size(band.last().name()))));
    }
    for (String key : telling.words().keys("testers.ask.")) {
      items.add(telling.say(key));
    }
    blocks.add(new Block.Listing(false, items));
    blocks.add(SizeParts.bodyTable(telling));
    blocks.addAll(ClothParts.cloths(given));
    for (String key : telling.words().keys("testers.terms.")) {
      blocks.add(new Block.Paragraph(Block.Tone.PLAIN, telling.say(key)));
    }
    return blocks;
  }

  /** The form as a table: a name that the program knows, the question, a cell for the answer. */
  String form() {
    Telling telling = given.telling();
    StringBuilder csv = new StringBuilder();
    row(csv, "field", text("form.question"), text("form.answer"));
    for (String field : List.of("tester", "version", "size", "view", "machine", "paper", "scale")) {
      String known = field.equals("version") ? telling.run().pattern().details().version() : "";
      row(csv, field, text("form." + field), known);
    }
    for (SizeChart.Column column : telling.run().pattern().chart().columns()) {
      if (column.kind() == QuantityKind.LENGTH) {
        row(csv, "body." + column.name(), ask("form.body", telling.measure(column.name())), "");
      }
    }
    List<String> levels =
        telling.measured().girths().stream().map(Measurements.OfLevel::level).distinct().toList();
    for (String level : levels) {
      row(csv, "finished." + level, ask("form.finished", telling.measure(level)), "");
    }
    for (Fabric fabric : telling.run().pattern().fabrics()) {
      Inline named = telling.fabric(fabric.name());
      row(csv, "cloth." + fabric.name() + ".what", ask("form.cloth", named), "");
      if (fabric.kind() == Fabric.Kind.KNIT) {
        row(csv, "cloth." + fabric.name() + ".stretch", ask("form.stretch", named), "");
      }
      row(csv, "cloth." + fabric.name() + ".width", ask("form.width", named), "");
      row(csv, "cloth." + fabric.name() + ".used", ask("form.used", named), "");
    }
    row(csv, "alterations", text("form.alterations"), "");
    row(csv, "time", text("form.time"), "");
    for (ToldStage stage : StepsPart.told(given)) {
      for (ToldStep step : stage.steps()) {
        row(
            csv,
            "step." + step.step().id(),
            Inline.plain(telling.say("form.step", Slots.of("step", step.block().title()))),
            "");
      }
    }
    row(csv, "photos", text("form.photos"), "");
    row(csv, "remarks", text("form.remarks"), "");
    return csv.toString();
  }

  private String text(String key) {
    return given.telling().words().plain(key);
  }

  private String ask(String key, Inline what) {
    return given.telling().words().plain(key, Slots.of("what", what));
  }

  private static void row(StringBuilder csv, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      csv.append(i == 0 ? "" : ",").append('"').append(cells[i].replace("\"", "\"\"")).append('"');
    }
    csv.append("\r\n");
  }
}
