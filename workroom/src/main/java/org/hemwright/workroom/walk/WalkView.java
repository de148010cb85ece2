package org.hemwright.workroom.walk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Tells how the second layer of a seam rolls along the first. */
public final class WalkView implements View {
  /** So many steps from end to end. */
  private static final int STEPS = 120;

  /** Notches nearer than this meet (mm): half a millimetre is the pencil's line. */
  private static final double MET = 0.5;

  @Override
  public Map<String, Answering> answers() {
    return Map.of("walk", WalkView::walk);
  }

  /**
   * {@code {"ask": "walk", "seam", "size", "pass", "still", "rolls"}}, the last three numbers of a
   * pass and of two of its layers, from 0: {@code {"passes": [[layer]], "pieces", "lengths",
   * "more", "notches": [{"share", "met", "said"}], "rest"}} and numbers, nine a step: of both
   * layers place (x, y) and way (an angle), then the number of each one's piece, then 1 where the
   * second is turned over; after the steps the points of what is left over, of the layer that
   * {@code rest} says.
   */
  private static Frame walk(Room room, Window window, Question question) throws Question.Unclear {
    SizeRun run =
        room.draft().evaluated().run().orElseThrow(() -> new Question.Unclear("nothing-drawn"));
    int size = question.whole("size");
    if (size < 0 || size >= run.sizes().size()) {
      throw new Question.Unclear("no-size");
    }
    SizedPattern sized = run.sizes().get(size);
    String name = question.text("seam");
    Optional<Seam> seam =
        sized.seams().stream().filter(each -> each.name().equals(name)).findFirst();
    if (seam.isEmpty()) {
      throw new Question.Unclear("no-seam");
    }
    List<Seam.Join> passes = seam.get().joins();
    int pass = among(question, "pass", 0, passes.size());
    List<Seam.Layer> layers = passes.get(pass).layers();
    int still = among(question, "still", 0, layers.size());
    int rolls = among(question, "rolls", still == 1 ? 0 : 1, layers.size());
    if (still == rolls) {
      throw new Question.Unclear("layer-walked-along-another");
    }
    Roll roll = new Roll(sized, layers.get(still), layers.get(rolls));
    List<String> pieces = new ArrayList<>();
    double longer = Math.max(roll.firstLength(), roll.secondLength());
    double shorter = Math.min(roll.firstLength(), roll.secondLength());
    List<double[]> steps = roll.steps(STEPS, shorter, pieces);
    boolean firstIsLonger = roll.firstLength() > roll.secondLength();
    List<double[]> rest = roll.rest(firstIsLonger, shorter, longer);
    LengthFormat lengths = LedgerView.format(run);
    ObjectNode head = Frame.answer().put("steps", steps.size());
    ArrayNode names = head.putArray("pieces");
    pieces.forEach(names::add);
    head.putArray("lengths")
        .add(lengths.text(roll.firstLength(), LengthKind.DIFFERENCE))
        .add(lengths.text(roll.secondLength(), LengthKind.DIFFERENCE));
    head.put("pass", pass).put("still", still).put("rolls", rolls);
    ArrayNode told = head.putArray("passes");
    for (Seam.Join each : passes) {
      ArrayNode one = told.addArray();
      each.layers().forEach(layer -> one.add(text(sized, layer)));
    }
    head.put("more", lengths.text(longer - shorter, LengthKind.DIFFERENCE));
    head.put("even", longer - shorter < 0.05);
    head.put("rest", firstIsLonger ? 0 : 1);
    notches(roll, lengths, shorter, head.putArray("notches"));
    float[] numbers = new float[9 * steps.size() + 2 * rest.size()];
    int at = 0;
    for (double[] step : steps) {
      for (double number : step) {
        numbers[at++] = (float) number;
      }
    }
    for (double[] point : rest) {
      numbers[at++] = (float) point[0];
      numbers[at++] = (float) point[1];
    }
    return new Frame(head, numbers);
  }

  private static int among(Question question, String field, int usual, int count)
      throws Question.Unclear {
    int value = question.body().path(field).asInt(usual);
    if (value < 0 || value >= count) {
      throw new Question.Unclear("seam-no", field);
    }
    return value;
  }

  /** What a layer takes, in words: "Back yoke seam (left) and Front shoulder". */
  private static String text(SizedPattern sized, Seam.Layer layer) {
    return layer.run().stream()
        .map(
            place ->
                sized.piece(place.piece()).map(piece -> piece.card().title()).orElse(place.piece())
                    + ", "
                    + LedgerView.shown(place.edge())
                    + (place.copy().isBlank() ? "" : " (" + LedgerView.shown(place.copy()) + ")"))
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  /** Notch by notch, in the order in which they are passed. */
  private static void notches(Roll roll, LengthFormat lengths, double length, ArrayNode list) {
    for (Roll.Meeting meeting : roll.meetings()) {
      ObjectNode notch = list.addObject();
      notch.put("share", Math.min(1, meeting.notch().distance() / Math.max(1, length)));
      notch.put("at", lengths.text(meeting.notch().distance(), LengthKind.DIFFERENCE));
      notch.put("alone", meeting.mate().isEmpty());
      notch.put("met", meeting.mate().isPresent() && meeting.apart() < MET);
      notch.put("apart", lengths.text(meeting.apart(), LengthKind.DIFFERENCE));
      notch.put(
          "mate", meeting.mate().map(LayerWalk.Stop::isNotch).orElse(true) ? "notch" : "joint");
    }
  }
}
