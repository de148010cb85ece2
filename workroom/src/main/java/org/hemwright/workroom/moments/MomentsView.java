package org.hemwright.workroom.moments;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.hemwright.paper.overlay.Overlay;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.compare.Change;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.pattern.compare.Changed;
import org.hemwright.pattern.compare.Comparison;
import org.hemwright.pattern.compare.PieceMatch;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workroom.history.Past;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Lists the moments, compares with one, goes back to one. */
public final class MomentsView implements View {
  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "moments", MomentsView::moments,
        "since", MomentsView::since,
        "back_to", MomentsView::backTo);
  }

  /** {@code {"ask": "moments"}}: the named moments, oldest first, and how many edits came after. */
  private static Frame moments(Room room, Window window, Question question) {
    ObjectNode head = Frame.answer().put("revision", room.revision());
    ArrayNode list = head.putArray("moments");
    list.addObject().put("number", 0).put("name", "").put("edits", edits(room, 0));
    for (Revision revision : room.history()) {
      if (revision.cause() == Revision.Cause.MOMENT) {
        list.addObject()
            .put("number", revision.number())
            .put("name", revision.name())
            .put("edits", edits(room, revision.number()));
      }
    }
    return new Frame(head);
  }

  private static long edits(Room room, int number) {
    return room.history().stream()
        .filter(each -> each.number() > number && !each.splices().isEmpty() && !each.joined())
        .count();
  }

  private static int number(Room room, Question question) throws Question.Unclear {
    int number = question.whole("number");
    boolean known =
        number == 0
            || room.history().stream()
                .anyMatch(each -> each.number() == number && each.cause() == Revision.Cause.MOMENT);
    if (!known) {
      throw new Question.Unclear("no-moment");
    }
    return number;
  }

  /**
   * {@code {"ask": "since", "number", "size", "was", "is"}}: what changed since a moment. Told by
   * and by as {@code since}: a list of sentences for each piece, and a drawing of each whose lines
   * changed, in one size; {@code was} and {@code is} are what the old and the new line are called.
   */
  private static Frame since(Room room, Window window, Question question) throws Question.Unclear {
    int number = number(room, question);
    int size = question.whole("size");
    String was = question.text("was");
    String is = question.text("is");
    int revision = room.revision();
    SortedMap<String, String> then = Past.texts(room.texts(), room.history(), number);
    boolean alike = Past.between(then, room.texts()).isEmpty();
    EditedFolder now = room.edited();
    room.promptly(
        () -> {
          ObjectNode head = Frame.tell("since").put("number", number).put("revision", revision);
          head.put("alike", alike);
          Optional<SizeRun> old =
              Workbench.draft(new EditedFolder(now.under(), then)).evaluated().run();
          Optional<SizeRun> current = Workbench.draft(now).evaluated().run();
          if (old.isPresent() && current.isPresent()) {
            changes(old.get(), current.get(), size, was, is, head);
          } else {
            head.put("undrawn", old.isEmpty() ? "was" : "is");
          }
          return head;
        },
        head -> window.send(new Frame(head)));
    return new Frame(Frame.answer());
  }

  private static void changes(
      SizeRun old, SizeRun now, int size, String was, String is, ObjectNode head) {
    Comparison comparison = Comparison.of(old, now);
    ChangeWords words = new ChangeWords(Workbench.compareWording(now));
    ObjectNode byPiece = head.putObject("changes");
    for (Change change : comparison.changes()) {
      ArrayNode list = byPiece.withArray("/" + change.piece().orElse(""));
      words.of(change).forEach(list::add);
    }
    ArrayNode pictures = head.putArray("pictures");
    if (size < 0 || size >= now.sizes().size()) {
      return;
    }
    String name = now.sizes().get(size).size().name();
    for (PieceMatch match : comparison.pieces()) {
      PieceMatch.Both both = match.sizes().get(name);
      if (both != null && !match.changes().isEmpty()) {
        String title = both.now().card().title();
        Overlay.of(both, title, was, is, apart(match, name), now.pattern().details().lengths())
            .ifPresent(
                sheet ->
                    pictures
                        .addObject()
                        .put("piece", match.name())
                        .put("title", title)
                        .put("svg", svg(now, title, sheet)));
      }
    }
  }

  private static Optional<Overlay.Apart> apart(PieceMatch match, String size) {
    for (Change change : match.changes()) {
      Change.Values values = change.values().get(size);
      if (change.changed() == Changed.CUT_LINE && values != null) {
        return values.at().map(at -> new Overlay.Apart(at, values.apart()));
      }
    }
    return Optional.empty();
  }

  private static String svg(SizeRun run, String title, Sheet sheet) {
    Details details = run.pattern().details();
    DocumentFacts facts =
        new DocumentFacts(
            title, details.by(), title, Speech.of(run).language(), details.dated(), List.of());
    return new String(SvgWriter.write(facts, sheet), StandardCharsets.UTF_8);
  }

  /** {@code {"ask": "back_to", "number"}}: the texts are again as they were at a moment. */
  private static Frame backTo(Room room, Window window, Question question) throws Question.Unclear {
    SortedMap<String, String> then =
        Past.texts(room.texts(), room.history(), number(room, question));
    var splices = Past.between(room.texts(), then);
    boolean done = !splices.isEmpty() && room.change(splices, false, "").isPresent();
    return new Frame(Frame.answer().put("done", done));
  }
}
