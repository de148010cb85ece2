package org.hemwright.workroom.ledger;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.LengthRounding;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Answers what a selected thing measures. */
public final class LedgerView implements View {
  @Override
  public Map<String, Answering> answers() {
    return Map.of("about", LedgerView::about);
  }

  /** {@code {"ask": "about", "kind", "piece", "name"}}. */
  private static Frame about(Room room, Window window, Question question) throws Question.Unclear {
    ObjectNode head = Frame.answer();
    String name = question.text("name");
    head.put("title", shown(name));
    head.putArray("words");
    ArrayNode rows = head.putArray("rows");
    Optional<SizeRun> run = room.draft().evaluated().run();
    if (run.isPresent()) {
      Measure measure = new Measure(run.get(), format(run.get()), rows);
      new About(room, run.get(), question.text("piece"), name, measure, head)
          .say(question.text("kind"));
    }
    return new Frame(head);
  }

  /** A name as it is shown: {@code _} is a blank. */
  public static String shown(String name) {
    return name.replace('_', ' ');
  }

  /**
   * How lengths are said in this document: those that she drafts with to 0.1 mm and 1/32 in, in
   * centimetres from 1 cm up.
   */
  public static LengthFormat format(SizeRun run) {
    LengthRounding usual = LengthRounding.HANDBOOK;
    Map<LengthKind, LengthRounding.Step> steps = new EnumMap<>(usual.steps());
    steps.put(LengthKind.DIFFERENCE, new LengthRounding.Step(0.1, 32, 10));
    return new LengthFormat(
        run.pattern().details().units() == Details.Units.INCHES
            ? LengthFormat.Edition.INCHES_FIRST
            : LengthFormat.Edition.METRIC_FIRST,
        false,
        new LengthRounding(steps, usual.partners()));
  }

  /**
   * Writes a number of the document in every size: {@code {"label", "of", "values", "numbers"}}.
   *
   * @param full its name, after its piece's and a point where it is a piece's own
   * @param rows the list to which the row is added
   */
  public static void row(SizeRun run, String label, String full, ArrayNode rows) {
    new Measure(run, format(run), rows).quantity("named", sized -> sized.numbers().get(full));
    ((ObjectNode) rows.get(rows.size() - 1)).put("of", label);
  }

  /** Adds a sentence: its key in the page's words, and what it is about. */
  static void words(ObjectNode head, String key, String... of) {
    ObjectNode sentence = ((ArrayNode) head.get("words")).addObject().put("key", key);
    ArrayNode names = sentence.putArray("of");
    for (String name : of) {
      names.add(name);
    }
  }

  /** A number in words, whatever it is of. */
  public static String said(Quantity quantity, LengthFormat lengths) {
    return switch (quantity.kind()) {
      case LENGTH -> lengths.text(quantity.amount(), LengthKind.DIFFERENCE);
      case ANGLE -> DecimalText.of(StrictMath.toDegrees(quantity.amount()), 2) + "\u00b0";
      default -> DecimalText.of(quantity.amount(), 4);
    };
  }

  /** One answer on its way. */
  private record About(
      Room room, SizeRun run, String piece, String name, Measure measure, ObjectNode head) {
    void say(String kind) {
      switch (kind) {
        case "piece" -> sayPiece();
        case "edge" -> sayEdge();
        case "point" -> sayPoint();
        case "notch" -> sayNotch();
        case "inner", "placement" -> sayLine();
        case "path" -> sayPath();
        case "seam" -> new SeamTelling(run, name).write(head, measure);
        default -> sayNumber();
      }
    }

    private Optional<Piece> in(SizedPattern sized) {
      return sized.piece(piece);
    }

    private void words(String key, String... of) {
      LedgerView.words(head, key, of);
    }

    private void sayPiece() {
      run.sizes().stream()
          .flatMap(sized -> in(sized).stream())
          .findFirst()
          .ifPresent(
              first -> {
                head.put("title", first.card().title());
                words("piece", Integer.toString(first.card().number()), shown(piece));
              });
      measure.length("width", sized -> box(sized, false));
      measure.length("height", sized -> box(sized, true));
      measure.area(
          "area",
          sized ->
              in(sized)
                  .map(each -> OptionalDouble.of(Measurements.openedArea(each)))
                  .orElse(OptionalDouble.empty()));
    }

    private OptionalDouble box(SizedPattern sized, boolean up) {
      return in(sized)
          .map(each -> each.stitchLine().bounds())
          .map(box -> OptionalDouble.of(up ? box.maxY() - box.minY() : box.maxX() - box.minX()))
          .orElse(OptionalDouble.empty());
    }

    private Optional<Edge> edgeIn(SizedPattern sized) {
      return in(sized).flatMap(each -> each.edge(name));
    }

    private void sayEdge() {
      boolean takenIn =
          run.sizes().stream()
              .anyMatch(
                  sized ->
                      in(sized).stream()
                          .anyMatch(
                              each ->
                                  each.edge(name).stream()
                                      .anyMatch(
                                          edge ->
                                              Math.abs(each.sewnLength(edge) - edge.path().length())
                                                  > 0.01)));
      measure.length(
          takenIn ? "sewn" : "length",
          sized ->
              in(sized)
                  .flatMap(each -> each.edge(name).map(each::sewnLength))
                  .map(OptionalDouble::of)
                  .orElse(OptionalDouble.empty()));
      if (takenIn) {
        measure.length(
            "drawn",
            sized ->
                edgeIn(sized)
                    .map(edge -> OptionalDouble.of(edge.path().length()))
                    .orElse(OptionalDouble.empty()));
      }
      if (run.sizes().stream().flatMap(s -> edgeIn(s).stream()).anyMatch(Edge::onFold)) {
        words("fold");
      } else {
        measure.allowance(
            "allowance",
            sized ->
                edgeIn(sized)
                    .map(edge -> OptionalDouble.of(edge.allowance().width()))
                    .orElse(OptionalDouble.empty()));
      }
      new Mates(run, piece, name).write(head, measure);
    }

    private void sayPoint() {
      Evaluation values = room.draft().evaluation().orElseThrow();
      measure.length("right", sized -> at(values, sized, true));
      measure.length("up", sized -> at(values, sized, false));
    }

    private OptionalDouble at(Evaluation values, SizedPattern sized, boolean x) {
      int size = values.sizes().indexOf(sized.size());
      for (PlannedThing thing : values.plan().things()) {
        if (thing.owner().equals(piece) && thing.name().equals(name)) {
          Optional<Point> point = values.point(size, thing);
          if (point.isPresent()) {
            return OptionalDouble.of(x ? point.get().x() : point.get().y());
          }
        }
      }
      return OptionalDouble.empty();
    }

    private void sayNotch() {
      int number = name.chars().allMatch(Character::isDigit) ? Integer.parseInt(name) : 0;
      Optional<Notch> any =
          run.sizes().stream().flatMap(sized -> notchIn(sized, number).stream()).findFirst();
      any.ifPresent(
          notch ->
              head.put("title", shown(notch.edge()))
                  .put("titled", notch.kind() == Notch.Kind.DOUBLE ? "double_notch" : "notch"));
      measure.length(
          "from_start",
          sized -> {
            Optional<Notch> notch = notchIn(sized, number);
            Optional<Edge> edge =
                notch.flatMap(known -> in(sized).flatMap(p -> p.edge(known.edge())));
            if (notch.isEmpty() || edge.isEmpty()) {
              return OptionalDouble.empty();
            }
            double along = notch.get().distance();
            return OptionalDouble.of(
                edge.get().reversed() ? edge.get().path().length() - along : along);
          });
    }

    private Optional<Notch> notchIn(SizedPattern sized, int number) {
      return in(sized)
          .filter(each -> number < each.notches().size())
          .map(each -> each.notches().get(number));
    }

    private void sayLine() {
      measure.length(
          "length",
          sized ->
              in(sized).stream()
                  .flatMap(each -> each.marks().stream())
                  .map(this::length)
                  .filter(OptionalDouble::isPresent)
                  .findFirst()
                  .orElse(OptionalDouble.empty()));
    }

    private void sayPath() {
      Evaluation values = room.draft().evaluation().orElseThrow();
      measure.length(
          "length",
          sized -> {
            int size = values.sizes().indexOf(sized.size());
            return values.plan().things().stream()
                .filter(thing -> thing.owner().equals(piece) && thing.name().equals(name))
                .flatMap(thing -> values.path(size, thing).stream())
                .mapToDouble(path -> path.length())
                .findFirst();
          });
    }

    private OptionalDouble length(Mark mark) {
      if (mark instanceof Mark.Inner inner && inner.name().equals(name)) {
        return OptionalDouble.of(inner.path().length());
      }
      return mark instanceof Mark.Placement placement && placement.name().equals(name)
          ? OptionalDouble.of(placement.path().length())
          : OptionalDouble.empty();
    }

    private void sayNumber() {
      String full = piece.isEmpty() ? name : piece + "." + name;
      if (run.sizes().stream().anyMatch(sized -> sized.numbers().containsKey(full))) {
        measure.quantity("value", sized -> sized.numbers().get(full));
      }
    }
  }
}
