package org.hemwright.workroom.add;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.add.Adding;
import org.hemwright.draft.add.Addition;
import org.hemwright.draft.add.Pick;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.NewProblems;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.table.TableView;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Tells in which ways a thing can be said by what was pointed at, and writes the one chosen. */
public final class AddView implements View {
  private static final int MOST_PICKS = 40;
  private final TableView table;

  /**
   * With the table that shows what would be added.
   *
   * @param table of the same room
   */
  public AddView(TableView table) {
    this.table = table;
  }

  /** A way, and what the document would come to with it. */
  private record Tried(Addition addition, LiveDraft draft, List<Finding> problems) {}

  @Override
  public Map<String, Answering> answers() {
    return Map.of("add", this::add, "write addition", this::write);
  }

  /**
   * {@code {"ask": "add", "what", "name", "picks": [{"kind": "point|line|place|piece", "piece",
   * "name", "x", "y"}], "near", "size", "way", "hover"}}. The answer: {@code {"name", "ways":
   * [{"way", "lines": [text], "rows"}], "problem"}}; rows tell what is measured. Where she only
   * hovers, ways are told as they would be said; else each is drafted, those that would not hold
   * are left out, and the one chosen is shown.
   */
  private Frame add(Room room, Window window, Question question) throws Question.Unclear {
    Evaluation values = values(room);
    int size = size(values, question);
    Adding adding = adding(question);
    List<Addition> all = adding.ways(values, size);
    ObjectNode head = Frame.answer().put("name", adding.named(values, size));
    ArrayNode ways = head.putArray("ways");
    if (question.body().path("hover").asBoolean()) {
      all.stream().limit(1).forEach(each -> tell(ways, each));
      return new Frame(head);
    }
    List<Tried> tried = tried(room, all);
    for (Tried each : tried) {
      tell(ways, each.addition);
      if (adding.what() == Adding.What.MEASURE) {
        measured(each, adding, head.path("name").asText(), (ObjectNode) ways.get(ways.size() - 1));
      }
    }
    if (tried.isEmpty()) {
      if (!all.isEmpty()) {
        problem(room, all.get(0)).ifPresent(words -> head.put("problem", words));
      }
      table.layBack(room, window);
    } else {
      int way = Math.max(0, Math.min(tried.size() - 1, question.body().path("way").asInt()));
      table.showTried(room, window, tried.get(way).draft, size);
    }
    return new Frame(head);
  }

  private static void tell(ArrayNode ways, Addition addition) {
    ObjectNode way = ways.addObject().put("way", addition.way().name().toLowerCase(Locale.ROOT));
    ArrayNode lines = way.putArray("lines");
    addition.lines().forEach(lines::add);
  }

  /** What is measured, in every size. */
  private static void measured(Tried tried, Adding adding, String name, ObjectNode way) {
    Optional<SizeRun> run = tried.draft.evaluated().run();
    if (run.isEmpty() || run.get().sizes().isEmpty()) {
      return;
    }
    String own = adding.picks().get(0).piece() + "." + name;
    boolean inPiece = run.get().sizes().stream().anyMatch(s -> s.numbers().containsKey(own));
    LedgerView.row(run.get(), LedgerView.shown(name), inPiece ? own : name, way.putArray("rows"));
  }

  /** The ways with which the document holds as well as it did. */
  private static List<Tried> tried(Room room, List<Addition> all) {
    List<Tried> holding = new ArrayList<>();
    for (Addition addition : all) {
      LiveDraft draft = room.tried(PatternFolder.DOCUMENT, addition.text());
      List<Finding> problems = problems(room, draft);
      if (problems.isEmpty()) {
        holding.add(new Tried(addition, draft, problems));
      }
    }
    return holding;
  }

  /** What is newly wrong; the first view leaves pieces to the next, as is told under the words. */
  private static List<Finding> problems(Room room, LiveDraft draft) {
    return NewProblems.of(room, draft).stream()
        .filter(each -> !each.code().equals("piece-in-no-view"))
        .toList();
  }

  private static Optional<String> problem(Room room, Addition addition) {
    LiveDraft draft = room.tried(PatternFolder.DOCUMENT, addition.text());
    return problems(room, draft).stream()
        .findFirst()
        .map(each -> Workbench.wording(draft.evaluated().run()).message(each));
  }

  /** {@code {"ask": "write addition", …as "add"}}: writes the way that was chosen. */
  private Frame write(Room room, Window window, Question question) throws Question.Unclear {
    Evaluation values = values(room);
    List<Tried> tried = tried(room, adding(question).ways(values, size(values, question)));
    int way = question.whole("way");
    if (way < 0 || way >= tried.size()) {
      throw new Question.Unclear("nothing-to-write");
    }
    String before = room.text(PatternFolder.DOCUMENT);
    String after = tried.get(way).addition.text();
    boolean changed =
        room.change(
                List.of(Splice.between(PatternFolder.DOCUMENT, before, after)), false, "addition")
            .isPresent();
    return new Frame(Frame.answer().put("changed", changed));
  }

  private static Evaluation values(Room room) throws Question.Unclear {
    return room.draft().evaluation().orElseThrow(() -> new Question.Unclear("no-chart"));
  }

  private static int size(Evaluation values, Question question) throws Question.Unclear {
    int size = question.whole("size");
    if (size < 0 || size >= values.sizes().size()) {
      throw new Question.Unclear("no-size");
    }
    return size;
  }

  private static Adding adding(Question question) throws Question.Unclear {
    Adding.What what;
    try {
      what = Adding.What.valueOf(question.text("what").toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException other) {
      throw new Question.Unclear("no-addition");
    }
    JsonNode told = question.body().path("picks");
    if (!told.isArray() || told.size() > MOST_PICKS) {
      throw new Question.Unclear("picks-list");
    }
    List<Pick> picks = new ArrayList<>();
    for (JsonNode each : told) {
      picks.add(pick(each));
    }
    double near = Math.max(0, Math.min(50, question.body().path("near").asDouble()));
    return new Adding(what, question.text("name"), picks, near);
  }

  private static Pick pick(JsonNode told) throws Question.Unclear {
    String piece = told.path("piece").asText("");
    String name = told.path("name").asText("");
    double x = told.path("x").asDouble();
    double y = told.path("y").asDouble();
    if (!(Math.abs(x) < 1e6 && Math.abs(y) < 1e6)) {
      throw new Question.Unclear("place-off");
    }
    return switch (told.path("kind").asText("")) {
      case "point" -> new Pick.OfPoint(piece, name);
      case "line" -> new Pick.OfLine(piece, name, new Point(x, y));
      case "place" -> new Pick.OfPlace(piece, new Point(x, y));
      case "piece" -> new Pick.OfPiece(piece);
      default -> throw new Question.Unclear("pick-kind");
    };
  }
}
