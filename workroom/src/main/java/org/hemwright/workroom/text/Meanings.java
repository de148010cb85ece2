package org.hemwright.workroom.text;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Answers what a name in the text is worth in every size, and where it is said. */
public final class Meanings implements View {
  @Override
  public Map<String, Answering> answers() {
    return Map.of("meaning", Meanings::meaning);
  }

  /** {@code {"ask": "meaning", "name", "owner"}}: a name as written, and the piece it stands in. */
  private static Frame meaning(Room room, Window window, Question question)
      throws Question.Unclear {
    String name = question.text("name");
    String owner = question.text("owner");
    ObjectNode head = Frame.answer().put("name", name);
    ArrayNode values = head.putArray("values");
    Optional<SizeRun> run = room.draft().evaluated().run();
    Optional<Evaluation> evaluation = room.draft().evaluation();
    if (run.isEmpty() || evaluation.isEmpty()) {
      return new Frame(head);
    }
    LengthFormat lengths = LedgerView.format(run.get());
    String inside = owner.isEmpty() || name.indexOf('.') >= 0 ? name : owner + "." + name;
    for (SizedPattern sized : run.get().sizes()) {
      Quantity number = sized.numbers().get(inside);
      number = number == null ? sized.numbers().get(name) : number;
      if (number != null) {
        values.addArray().add(sized.size().name()).add(LedgerView.said(number, lengths));
      }
    }
    if (values.isEmpty()) {
      drawn(evaluation.get(), inside, lengths, values);
    }
    return new Frame(head);
  }

  private static void drawn(Evaluation values, String full, LengthFormat lengths, ArrayNode to) {
    for (PlannedThing thing : values.plan().things()) {
      if (full.equals(thing.owner() + "." + thing.name())) {
        for (int size = 0; size < values.sizes().size(); size++) {
          Optional<Point> point = values.point(size, thing);
          Optional<Path> path = values.path(size, thing);
          String said =
              point
                  .map(
                      at ->
                          lengths.text(at.x(), LengthKind.DIFFERENCE)
                              + " right, "
                              + lengths.text(at.y(), LengthKind.DIFFERENCE)
                              + " up")
                  .or(
                      () ->
                          path.map(p -> lengths.text(p.length(), LengthKind.DIFFERENCE) + " long"))
                  .orElse("");
          if (!said.isEmpty()) {
            to.addArray().add(values.sizes().get(size).name()).add(said);
          }
        }
      }
    }
  }
}
