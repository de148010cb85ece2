package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.step.StepWords;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.booklet.write.DrawnTitle;
import org.hemwright.geometry.Box;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;

/** The steps, stage by stage, and the stitches that they take. */
public final class StepsPart {
  private final Given given;
  private final Telling telling;

  StepsPart(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  /** A stage told: its title and its steps. */
  public record ToldStage(List<Inline> title, List<ToldStep> steps) {
    public ToldStage {
      title = List.copyOf(title);
      steps = List.copyOf(steps);
    }
  }

  /** A step told. */
  public record ToldStep(Step step, int number, Block.Step block) {}

  /** Every stage that has a step in one of the run's sizes. */
  public static List<ToldStage> told(Given given) {
    Telling telling = given.telling();
    List<ToldStage> stages = new ArrayList<>();
    List<Step> before = new ArrayList<>();
    int number = 0;
    for (Making.Stage stage : telling.run().pattern().making().stages()) {
      List<ToldStep> steps = new ArrayList<>();
      for (Step step : stage.steps()) {
        if (telling.sizes().stream()
            .anyMatch(size -> step.sizes().filter(r -> !r.contains(size)).isEmpty())) {
          number++;
          steps.add(new ToldStep(step, number, block(given, step, number, before)));
        }
        before.add(step);
      }
      if (!steps.isEmpty()) {
        List<Inline> title =
            stage.title().isBlank()
                ? telling.say("steps.stage")
                : List.of(
                    new Inline.Value(
                        telling.own(stage.title()),
                        Provenance.of(Source.NAME, "stage", stage.title())));
        stages.add(new ToldStage(title, steps));
      }
    }
    return stages;
  }

  private static Block.Step block(Given given, Step step, int number, List<Step> before) {
    Telling telling = given.telling();
    StepWords words = StepWords.of(telling, step, before);
    List<Inline> title = given.prose().title(step.id()).orElseGet(words::title);
    List<Inline> numbered =
        telling.say(
            "step.title",
            Slots.of("number", Telling.order(number, "step", step.id())).and("title", title));
    Optional<Figure> shown =
        hers(given, step, title).or(() -> given.drawings().of(telling, step, title));
    List<Block> blocks = new ArrayList<>(words.blocks());
    blocks.addAll(given.prose().step(step.id()));
    return new Block.Step(step.id(), numbered, shown, blocks);
  }

  /** Her picture of a step, or of the whole garment where it is tried on. */
  private static Optional<Figure> hers(Given given, Step step, List<Inline> title) {
    Optional<Picture> own = given.picture(step.id());
    boolean triedOn =
        step.act() instanceof Act.Handle handle && handle.kind() == Act.Handling.TRY_ON;
    if (own.isEmpty() && triedOn) {
      own =
          step.views().stream()
              .flatMap(view -> given.picture("view-" + view + "-front").stream())
              .findFirst();
    }
    return own.map(
        picture ->
            new Figure(
                "step-" + step.id(),
                new Sheet(new Box(0, 0, 80, 80), List.of()),
                DrawnTitle.of(picture)
                    .orElseGet(
                        () ->
                            Inline.plain(
                                given.say(
                                    "figure.alt",
                                    Slots.of(
                                        "title", List.of(new Inline.Own(Inline.plain(title))))))),
                List.of(),
                Optional.of(picture)));
  }

  Section stitches() {
    Map<Stitch, List<Integer>> used = new LinkedHashMap<>();
    Map<Stitch, String> first = new LinkedHashMap<>();
    int number = 0;
    for (ToldStage stage : told(given)) {
      for (ToldStep told : stage.steps()) {
        number = told.number();
        for (Stitch stitch : told.step().sewing().choices()) {
          used.computeIfAbsent(stitch, k -> new ArrayList<>()).add(number);
          first.putIfAbsent(stitch, told.step().id());
        }
      }
    }
    List<List<List<Inline>>> rows = new ArrayList<>();
    used.forEach(
        (stitch, steps) -> {
          String id = first.getOrDefault(stitch, "");
          rows.add(
              List.of(
                  telling.words().capital(telling.say("stitch." + stitch.kind().key())),
                  setting(stitch.lengthOrUsual(), id, "length", stitch),
                  stitch.widthOrUsual() > 0
                      ? setting(stitch.widthOrUsual(), id, "width", stitch)
                      : telling.say("table.none"),
                  stitch
                      .kind()
                      .iso4915()
                      .map(
                          iso ->
                              List.<Inline>of(
                                  new Inline.Value(
                                      iso,
                                      Provenance.of(
                                          Source.STANDARD, "iso-4915", stitch.kind().key()))))
                      .orElseGet(() -> telling.say("table.none")),
                  telling
                      .words()
                      .listed(
                          steps.stream()
                              .distinct()
                              .map(n -> List.<Inline>of(Telling.order(n, "step")))
                              .toList())));
        });
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("stitches.lead")));
    blocks.addAll(given.prose().part("stitches"));
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              given.say("stitches.caption"),
              List.of(
                  given.say("stitches.stitch"),
                  given.say("stitches.length"),
                  given.say("stitches.width"),
                  given.say(
                      "stitches.iso",
                      Slots.of(
                          "standard",
                          new Inline.Value(
                              "ISO\u00a04915", Provenance.of(Source.STANDARD, "iso-4915")))),
                  given.say("stitches.steps")),
              rows));
    }
    return new Section("stitches", given.say("part.stitches"), false, blocks);
  }

  private List<Inline> setting(double mm, String step, String what, Stitch stitch) {
    return List.of(
        telling
            .words()
            .setting(mm, Provenance.of(Source.STEP, step, "stitch", stitch.kind().key(), what)));
  }

  Section steps() {
    List<Block> blocks = new ArrayList<>(given.prose().part("steps"));
    for (ToldStage stage : told(given)) {
      blocks.add(new Block.Heading(2, "", stage.title()));
      stage.steps().forEach(told -> blocks.add(told.block()));
    }
    return new Section("steps", given.say("part.steps"), false, blocks);
  }
}
