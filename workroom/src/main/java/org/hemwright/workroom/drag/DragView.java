package org.hemwright.workroom.drag;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.edit.Drag;
import org.hemwright.draft.edit.Dragged;
import org.hemwright.draft.edit.Grip;
import org.hemwright.draft.edit.Grips;
import org.hemwright.draft.edit.Held;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.syntax.Source;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.body.Size;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.table.TableView;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Lets each window hold one thing at a time. */
public final class DragView implements View {
  private final TableView table;

  /**
   * With the table that shows what is dragged.
   *
   * @param table of the same room
   */
  public DragView(TableView table) {
    this.table = table;
  }

  /** What a window holds. */
  private static final class Hand {
    Optional<Held> held = Optional.empty();
    Optional<Size> size = Optional.empty();
    List<Grip> grips = List.of();
    Optional<Drag> drag = Optional.empty();
    Optional<Evaluation> values = Optional.empty();
    List<Size> shown = List.of();
    Optional<Dragged> last = Optional.empty();

    void open() {
      held = Optional.empty();
      grips = List.of();
      drag = Optional.empty();
      values = Optional.empty();
      shown = List.of();
      last = Optional.empty();
    }
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of("hold", this::hold, "drag", this::drag, "drop", this::drop);
  }

  @Override
  public void revised(Room room, Revision revision) {
    room.windows().forEach(window -> hand(window).open());
  }

  private static Hand hand(Window window) {
    return window.kept(Hand.class, Hand::new);
  }

  /**
   * {@code {"ask": "hold", "kind": "point|notch|edge", "piece", "name", "size", "share"}}: the ways
   * in which a drag can be written, and where the thing is.
   */
  private Frame hold(Room room, Window window, Question question) throws Question.Unclear {
    Hand hand = hand(window);
    hand.open();
    Evaluation values =
        room.draft().evaluation().orElseThrow(() -> new Question.Unclear("nothing-drawn"));
    int size = question.whole("size");
    if (size < 0 || size >= values.sizes().size()) {
      throw new Question.Unclear("no-size");
    }
    Held held = held(question);
    hand.held = Optional.of(held);
    hand.size = Optional.of(values.sizes().get(size));
    hand.grips = Grips.of(values.plan(), held, values.sizes().get(size));
    ObjectNode head = Frame.answer();
    ArrayNode ways = head.putArray("ways");
    for (Grip grip : hand.grips) {
      ObjectNode way = ways.addObject();
      way.put("kind", grip.kind().name().toLowerCase(Locale.ROOT));
      way.put("name", grip.name());
      way.put("reach", grip.reach().map(each -> each.name().toLowerCase(Locale.ROOT)).orElse(""));
      way.put("line", grip.line());
    }
    Optional<Point> place = Grips.place(values, size, held);
    place.ifPresent(at -> head.put("x", at.x()).put("y", at.y()));
    return new Frame(head);
  }

  private static Held held(Question question) throws Question.Unclear {
    String piece = question.text("piece");
    String name = question.text("name");
    String kind = question.text("kind");
    if (kind.equals("point")) {
      return new Held.OfPoint(piece, name);
    }
    if (kind.equals("notch")) {
      if (!name.matches("\\d{1,4}")) {
        throw new Question.Unclear("notch-number");
      }
      return new Held.OfNotch(piece, Integer.parseInt(name));
    }
    return new Held.OfLine(piece, name, Math.max(0, Math.min(1, question.number("share"))));
  }

  /**
   * {@code {"ask": "drag", "way", "x", "y", "size", "from", "to"}} (mm in the piece's plane; the
   * size that is looked at and those that are shown): the answer tells where the thing is now, the
   * line that will be written, and what changed on the table in those sizes, as {@code pieces}
   * does.
   */
  private Frame drag(Room room, Window window, Question question) throws Question.Unclear {
    Hand hand = hand(window);
    int way = question.whole("way");
    if (hand.held.isEmpty() || way < 0 || way >= hand.grips.size()) {
      throw new Question.Unclear("nothing-held");
    }
    Evaluation now = room.draft().evaluation().orElseThrow();
    Grip grip = hand.grips.get(way);
    if (hand.drag.isEmpty() || !hand.drag.get().grip().equals(grip)) {
      hand.drag = Drag.begin(now.plan(), grip, hand.held.get(), hand.size.orElseThrow());
      hand.values = Optional.empty();
    }
    if (hand.drag.isEmpty()) {
      throw new Question.Unclear("not-held");
    }
    List<Size> shown = shown(now, question);
    if (hand.values.isEmpty() || !hand.shown.equals(shown)) {
      hand.shown = shown;
      hand.values = Optional.of(hand.drag.get().plan().evaluate(shown, DialSettings.NONE));
    }
    Dragged dragged = hand.drag.get().to(new Point(question.number("x"), question.number("y")));
    hand.last = Optional.of(dragged);
    Source source = new Source(PatternFolder.DOCUMENT, dragged.text());
    ObjectNode head = Frame.answer();
    head.put("x", dragged.place().x()).put("y", dragged.place().y());
    head.put("line", grip.line());
    head.put(
        "text",
        dragged
            .text()
            .substring(source.lineStart(grip.line()), source.lineEnd(grip.line()))
            .strip());
    return table.shown(
        room,
        window,
        hand.values.orElseThrow().withLiterals(dragged.literals()),
        question.body().path("size").asInt(hand.size.orElseThrow().position()),
        head);
  }

  /** The sizes that the window shows, all of them where it does not say. */
  private static List<Size> shown(Evaluation now, Question question) {
    int last = now.sizes().size() - 1;
    int from = Math.max(0, Math.min(last, question.body().path("from").asInt(0)));
    int to = Math.max(from, Math.min(last, question.body().path("to").asInt(last)));
    return now.sizes().subList(from, to + 1);
  }

  /** {@code {"ask": "drop", "keep"}}: writes what was dragged, or lays everything back. */
  private Frame drop(Room room, Window window, Question question) {
    Hand hand = hand(window);
    Optional<Dragged> last = hand.last;
    boolean keep = question.body().path("keep").asBoolean();
    hand.open();
    boolean changed = false;
    if (keep && last.isPresent()) {
      String before = room.text(PatternFolder.DOCUMENT);
      Splice splice = Splice.between(PatternFolder.DOCUMENT, before, last.get().text());
      changed =
          !before.equals(last.get().text())
              && room.change(List.of(splice), false, "drag").isPresent();
    }
    if (!changed) {
      table.layBack(room, window);
    }
    return new Frame(Frame.answer().put("changed", changed));
  }
}
