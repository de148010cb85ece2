package org.hemwright.booklet.post;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.part.Given;
import org.hemwright.booklet.part.StepsPart.ToldStage;
import org.hemwright.booklet.part.StepsPart.ToldStep;
import org.hemwright.booklet.step.SewingWords;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;

/** What has to be filmed: for each step what must be in frame, and the settings to speak of. */
final class ShotList {
  private ShotList() {}

  static List<Block> of(Given given, List<ToldStage> stages) {
    Telling telling = given.telling();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, telling.say("shots.lead")));
    for (ToldStage stage : stages) {
      List<List<List<Inline>>> rows = new ArrayList<>();
      for (ToldStep step : stage.steps()) {
        rows.add(
            List.of(
                step.block().title(), frame(telling, step.step()), settings(telling, step.step())));
      }
      blocks.add(
          new Block.Table(
              stage.title(),
              List.of(
                  telling.say("shots.step"), telling.say("shots.frame"), telling.say("shots.say")),
              rows));
    }
    return blocks;
  }

  private static List<Inline> frame(Telling telling, Step step) {
    List<List<Inline>> shots = new ArrayList<>();
    Act act = step.act();
    if (act instanceof Act.Sew || act instanceof Act.Attach || act instanceof Act.SetIn) {
      shots.add(telling.say("shots.laid"));
      shots.add(telling.say("shots.needle"));
    } else if (!step.sewing().choices().isEmpty()) {
      shots.add(telling.say("shots.needle"));
    } else if (act instanceof Act.Press || act instanceof Act.Fold) {
      shots.add(telling.say("shots.iron"));
    } else {
      shots.add(telling.say("shots.hands"));
    }
    if (step.press().isPresent() && !(act instanceof Act.Press)) {
      shots.add(telling.say("shots.pressed"));
    }
    if (!step.leaves().isEmpty()) {
      shots.add(telling.say("shots.opening"));
    }
    for (String look : step.words().look()) {
      shots.add(telling.say("shots.look", Slots.of("look", new Inline.Own(telling.own(look)))));
    }
    // The parts have commas of their own.
    List<Inline> text = new ArrayList<>();
    for (List<Inline> shot : shots) {
      if (!text.isEmpty()) {
        text.add(new Inline.Text("; "));
      }
      text.addAll(shot);
    }
    return telling.words().capital(text);
  }

  private static List<Inline> settings(Telling telling, Step step) {
    List<List<Inline>> said = new ArrayList<>();
    for (int i = 0; i < step.sewing().choices().size(); i++) {
      Stitch stitch = step.sewing().choices().get(i);
      said.add(SewingWords.stitch(telling, stitch, step.id(), i));
    }
    return said.isEmpty() ? telling.say("table.none") : telling.words().either(said);
  }
}
