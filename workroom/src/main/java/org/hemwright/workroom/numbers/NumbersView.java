package org.hemwright.workroom.numbers;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.edit.Held;
import org.hemwright.draft.edit.SaidLine;
import org.hemwright.draft.edit.SaidLines;
import org.hemwright.draft.edit.TypedNumber;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.Expression.Literal;
import org.hemwright.draft.syntax.Source;
import org.hemwright.pattern.body.Size;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.table.TableView;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Tells the lines that say a thing, and takes numbers that are typed in them. */
public final class NumbersView implements View {
  private final TableView table;

  /**
   * With the table that shows what is typed.
   *
   * @param table of the same room
   */
  public NumbersView(TableView table) {
    this.table = table;
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "lines", NumbersView::lines,
        "try number", this::tryNumber,
        "write number", this::writeNumber,
        "lay back", this::layBack);
  }

  private static Evaluation values(Room room) throws Question.Unclear {
    return room.draft().evaluation().orElseThrow(() -> new Question.Unclear("nothing-drawn"));
  }

  private static Size size(Room room, Question question) throws Question.Unclear {
    List<Size> sizes = values(room).sizes();
    int size = question.whole("size");
    if (size < 0 || size >= sizes.size()) {
      throw new Question.Unclear("no-size");
    }
    return sizes.get(size);
  }

  /**
   * {@code {"ask": "lines", "kind", "piece", "name", "size"}}: {@code {"lines": [{"line", "parts":
   * [text or {"at", "written"}]}]}}, offsets in the document of the {@code revision} that is told.
   */
  private static Frame lines(Room room, Window window, Question question) throws Question.Unclear {
    Plan plan = values(room).plan();
    Source source = Source.of(plan.document());
    ObjectNode head = Frame.answer().put("revision", room.revision());
    ArrayNode lines = head.putArray("lines");
    for (SaidLine said : said(plan, question, size(room, question))) {
      ObjectNode line = lines.addObject().put("line", said.line());
      line.put("kind", said.statement().getClass().getSimpleName().toLowerCase(Locale.ROOT));
      ArrayNode parts = line.putArray("parts");
      int at = said.span().start();
      for (Literal number : said.numbers()) {
        text(parts, source.text().substring(at, number.span().start()));
        parts
            .addObject()
            .put("at", number.span().start())
            .put("written", source.text(number.span()));
        at = number.span().end();
      }
      text(parts, source.text().substring(at, said.span().end()));
    }
    return new Frame(head);
  }

  private static void text(ArrayNode parts, String text) {
    String plain = text.replaceAll("\\s+", " ");
    if (!plain.isEmpty()) {
      parts.add(plain);
    }
  }

  private static List<SaidLine> said(Plan plan, Question question, Size size)
      throws Question.Unclear {
    String piece = question.text("piece");
    String name = question.text("name");
    return switch (question.text("kind")) {
      case "piece" -> SaidLines.ofPiece(plan, piece, size);
      case "point" -> SaidLines.of(plan, new Held.OfPoint(piece, name), size);
      case "edge", "path", "inner", "placement" ->
          SaidLines.of(plan, new Held.OfLine(piece, name, 0.5), size);
      case "notch" -> {
        if (!name.matches("\\d{1,4}")) {
          throw new Question.Unclear("notch-number");
        }
        yield SaidLines.of(plan, new Held.OfNotch(piece, Integer.parseInt(name)), size);
      }
      case "seam" -> SaidLines.ofSeam(plan, name);
      default -> SaidLines.ofNumber(plan, piece, name);
    };
  }

  private static TypedNumber.Read read(Room room, Question question) throws Question.Unclear {
    Plan plan = values(room).plan();
    int at = question.whole("at");
    if (question.whole("revision") != room.revision()) {
      throw new Question.Unclear("changed-meanwhile");
    }
    Optional<Literal> there =
        plan.literals().stream().filter(each -> each.span().start() == at).findFirst();
    if (there.isEmpty()) {
      throw new Question.Unclear("no-number-there");
    }
    return TypedNumber.of(plan, there.get(), question.text("typed"), size(room, question));
  }

  /**
   * {@code {"ask": "try number", "revision", "at", "typed", "way", "size"}}: the table follows, and
   * the answer tells the ways in which it can be written: {@code {"ways": [{"kind", "text"}],
   * "slips": [text], "told": [text]}}.
   */
  private Frame tryNumber(Room room, Window window, Question question) throws Question.Unclear {
    TypedNumber.Read read = read(room, question);
    ObjectNode head = Frame.answer();
    ArrayNode ways = head.putArray("ways");
    for (TypedNumber.Way way : read.ways()) {
      Source source = new Source(PatternFolder.DOCUMENT, way.text());
      ways.addObject()
          .put("kind", way.kind().name().toLowerCase(Locale.ROOT))
          .put(
              "text",
              way.text()
                  .substring(source.lineStart(way.line()), source.lineEnd(way.line()))
                  .strip());
    }
    ArrayNode slips = head.putArray("slips");
    read.slips().forEach(each -> slips.add(Workbench.wording(Optional.empty()).message(each)));
    ArrayNode told = head.putArray("told");
    if (!read.ways().isEmpty()) {
      int way = Math.max(0, Math.min(read.ways().size() - 1, question.whole("way")));
      show(room, window, read.ways().get(way).text(), question.whole("size"), told);
    }
    return new Frame(head);
  }

  private void show(Room room, Window window, String text, int size, ArrayNode told) {
    LiveDraft tried = room.tried(PatternFolder.DOCUMENT, text);
    table.showTried(room, window, tried, size);
    tried.evaluated().problems().stream()
        .filter(each -> !room.draft().evaluated().problems().contains(each))
        .limit(2)
        .forEach(each -> told.add(Workbench.wording(tried.evaluated().run()).message(each)));
  }

  /** {@code {"ask": "write number", "revision", "at", "typed", "way", "size"}}. */
  private Frame writeNumber(Room room, Window window, Question question) throws Question.Unclear {
    TypedNumber.Read read = read(room, question);
    int way = question.whole("way");
    if (way < 0 || way >= read.ways().size()) {
      throw new Question.Unclear("no-number-here");
    }
    String before = room.text(PatternFolder.DOCUMENT);
    String after = read.ways().get(way).text();
    boolean changed =
        !before.equals(after)
            && room.change(
                    List.of(Splice.between(PatternFolder.DOCUMENT, before, after)), false, "number")
                .isPresent();
    if (!changed) {
      table.layBack(room, window);
    }
    return new Frame(Frame.answer().put("changed", changed));
  }

  /** {@code {"ask": "lay back"}}: the table shows what is written. */
  private Frame layBack(Room room, Window window, Question question) {
    table.layBack(room, window);
    return new Frame(Frame.answer());
  }
}
