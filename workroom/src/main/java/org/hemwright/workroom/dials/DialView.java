package org.hemwright.workroom.dials;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.LiteralEdit;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.Dial;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.TextEdit;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.table.TableView;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Turns dials. */
public final class DialView implements View {
  private final TableView table;

  /**
   * With the table that shows what comes of a turn.
   *
   * @param table of the same room
   */
  public DialView(TableView table) {
    this.table = table;
  }

  /** What a window is turning. */
  private static final class Hand {
    Optional<Literal> turning = Optional.empty();
    double value;
  }

  /** A dial's own number in the document. */
  private record Literal(Expression.Literal written, int index) {}

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "dials", (room, window, question) -> dials(room, Frame.answer(), question.whole("size")),
        "turn", this::turn,
        "turned", this::turned);
  }

  @Override
  public void revised(Room room, Revision revision) {
    room.windows().forEach(window -> window.forget(Hand.class));
  }

  /** {@code {"ask": "dials", "size"}}: every dial, and what the garment measures in a size. */
  private static Frame dials(Room room, ObjectNode head, int size) {
    ArrayNode dials = head.putArray("dials");
    Optional<SizeRun> run = room.draft().evaluated().run();
    if (run.isEmpty()) {
      head.putArray("measures");
      return new Frame(head);
    }
    for (Dial dial : run.get().pattern().dials()) {
      ObjectNode one = dials.addObject();
      one.put("name", dial.name()).put("text", dial.text());
      one.put("value", dial.value()).put("from", dial.from()).put("to", dial.to());
      one.put("said", said(run.get(), dial, dial.value()));
      one.put("least", said(run.get(), dial, dial.from()));
      one.put("most", said(run.get(), dial, dial.to()));
    }
    new Garment(run.get()).write(size, head.putArray("measures"));
    return new Frame(head);
  }

  private static String said(SizeRun run, Dial dial, double value) {
    return switch (dial.kind()) {
      case LENGTH -> LedgerView.format(run).text(value, LengthKind.DIFFERENCE);
      case ANGLE -> DecimalText.of(StrictMath.toDegrees(value), 1) + "\u00b0";
      case RATIO -> DecimalText.of(value * 100, 1) + "%";
      default -> DecimalText.of(value, 3);
    };
  }

  private static Optional<Literal> literal(Evaluation values, String name) {
    Document document = values.plan().document();
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Dial dial && dial.name().text().equals(name)) {
        OptionalInt index = values.plan().literalAt(dial.value().span());
        return index.isPresent()
            ? Optional.of(new Literal(dial.value(), index.getAsInt()))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /**
   * {@code {"ask": "turn", "name", "value", "size"}}: the measurements, and what changed on the
   * table.
   */
  private Frame turn(Room room, Window window, Question question) throws Question.Unclear {
    Evaluation values =
        room.draft().evaluation().orElseThrow(() -> new Question.Unclear("nothing-drawn"));
    SizeRun run = room.draft().evaluated().run().orElseThrow();
    String name = question.text("name");
    Optional<Literal> literal = literal(values, name);
    Optional<Dial> dial =
        run.pattern().dials().stream().filter(each -> each.name().equals(name)).findFirst();
    if (literal.isEmpty() || dial.isEmpty()) {
      throw new Question.Unclear("no-dial");
    }
    double wanted =
        Math.max(dial.get().from(), Math.min(dial.get().to(), question.number("value")));
    double value =
        LiteralEdit.rounded(Source.of(values.plan().document()), literal.get().written(), wanted);
    Evaluation turned = values.withLiterals(Map.of(literal.get().index(), value));
    Hand hand = window.kept(Hand.class, Hand::new);
    hand.turning = literal;
    hand.value = value;
    ObjectNode head = Frame.answer().put("value", value).put("said", said(run, dial.get(), value));
    new Garment(turned.drawn().run()).write(question.whole("size"), head.putArray("measures"));
    return table.shown(room, window, turned, question.whole("size"), head);
  }

  /** {@code {"ask": "turned", "keep"}}: writes the dial's number, or lays everything back. */
  private Frame turned(Room room, Window window, Question question) {
    Hand hand = window.kept(Hand.class, Hand::new);
    boolean changed = false;
    if (hand.turning.isPresent() && question.body().path("keep").asBoolean()) {
      String text = room.text(PatternFolder.DOCUMENT);
      TextEdit edit =
          LiteralEdit.of(
              new Source(PatternFolder.DOCUMENT, text), hand.turning.get().written(), hand.value);
      String after = edit.applyTo(text);
      changed =
          !after.equals(text)
              && room.change(
                      java.util.List.of(Splice.between(PatternFolder.DOCUMENT, text, after)),
                      false,
                      "dial")
                  .isPresent();
    }
    window.forget(Hand.class);
    if (!changed) {
      table.layBack(room, window);
    }
    return new Frame(Frame.answer().put("changed", changed));
  }
}
