package org.hemwright.workroom.bring;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.pattern.traced.TracingProblem;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.traced.DrawingFile;
import org.hemwright.workbench.traced.DrawnParts;
import org.hemwright.workbench.traced.GrownAs;
import org.hemwright.workbench.traced.OutlineEnds;
import org.hemwright.workbench.traced.TracedPiece;
import org.hemwright.workbench.traced.TracingAnswers;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.NewProblems;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Shows a drawing of hers, takes her word for what its parts are, and writes the piece. */
public final class TraceView implements View {
  /** More lines than this are not drawn on the page; all are read. */
  private static final int MOST_SHOWN = 4000;

  private static final int MOST_PROBLEMS = 12;

  private final Parcels parcels;
  private final Map<Window, Opened> open = new HashMap<>();

  /**
   * With the files that windows send.
   *
   * @param parcels of the same room
   */
  public TraceView(Parcels parcels) {
    this.parcels = parcels;
  }

  /**
   * The drawing that a window looks at.
   *
   * @param name where it will lie in the folder
   */
  @SuppressWarnings("ArrayRecordComponent")
  private record Opened(String name, byte[] bytes, TracedDrawing drawing) {}

  /** A piece as it would be written, and what the document would come to. */
  private record Tried(TracedPiece piece, LiveDraft draft) {}

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "drawing", this::drawing, "trace", this::trace, "write tracing", this::writeTracing);
  }

  @Override
  public void closed(Room room, Window window) {
    open.remove(window);
  }

  // --- the drawing ------------------------------------------------------------------------------

  /**
   * {@code {"ask": "drawing"}}: reads the file that the window has sent. The answer: {@code
   * {"file", "trueSize", "box", "lines": [{"d", "name"}], "more", "parts": [{"name", "lines",
   * "round", "proposed"}], "unread", "problems"}} and what a new piece may say of itself.
   */
  private Frame drawing(Room room, Window window, Question question) throws Question.Unclear {
    String sent =
        parcels.name(window).orElseThrow(() -> new Question.Unclear("no-drawing-was-sent"));
    byte[] bytes = parcels.bytes(window).orElseThrow();
    String name = stored(room, sent, bytes);
    ReadDrawing read = DrawingFile.read(name, bytes);
    ObjectNode head = Frame.answer().put("file", name);
    Wording wording = Workbench.wording(room.draft().evaluated().run());
    FindingWords.write(read.findings(), room, wording, head.putArray("problems"));
    if (read.drawing().isEmpty()) {
      open.remove(window);
      return new Frame(head);
    }
    TracedDrawing drawing = read.drawing().get();
    open.put(window, new Opened(name, bytes, drawing));
    head.put("trueSize", drawing.inTrueSize());
    lines(drawing, head);
    ArrayNode parts = head.putArray("parts");
    for (DrawnParts.Part part : DrawnParts.of(drawing).parts()) {
      ObjectNode one = parts.addObject().put("name", part.name());
      one.put("round", part.round()).put("proposed", part.proposed().word());
      ArrayNode places = one.putArray("lines");
      part.lines().forEach(places::add);
    }
    ArrayNode unread = head.putArray("unread");
    drawing.unread().forEach(unread::add);
    pattern(room, sent, head);
    return new Frame(head);
  }

  private static void lines(TracedDrawing drawing, ObjectNode head) {
    Drawn drawn = new Drawn(1);
    ArrayNode lines = head.putArray("lines");
    Optional<Box> box = Optional.empty();
    for (int i = 0; i < drawing.lines().size(); i++) {
      TracedLine line = drawing.lines().get(i);
      Box own = line.path().bounds();
      box = Optional.of(box.map(all -> all.union(own)).orElse(own));
      if (i < MOST_SHOWN) {
        ObjectNode one = lines.addObject().put("d", drawn.path(line.path()));
        drawing.nameOf(i).ifPresent(name -> one.put("name", name));
      }
    }
    head.put("more", Math.max(0, drawing.lines().size() - MOST_SHOWN));
    ArrayNode corners = head.putArray("box");
    box.ifPresent(b -> corners.add(b.minX()).add(b.minY()).add(b.maxX()).add(b.maxY()));
  }

  /** What the pattern has already: fabrics, pieces and the next number. */
  private static void pattern(Room room, String sent, ObjectNode head) {
    ArrayNode fabrics = head.putArray("fabrics");
    ArrayNode pieces = head.putArray("pieces");
    Optional<SizeRun> run = room.draft().evaluated().run();
    int number = 1;
    if (run.isPresent()) {
      for (Fabric fabric : run.get().pattern().fabrics()) {
        fabrics.addObject().put("name", fabric.name()).put("title", fabric.title());
      }
      for (PieceCard card : run.get().pattern().pieces()) {
        number = Math.max(number, card.number() + 1);
        ObjectNode one = pieces.addObject().put("name", card.name()).put("title", card.title());
        ArrayNode edges = one.putArray("edges");
        run.get()
            .size(run.get().pattern().base().name())
            .flatMap(size -> size.piece(card.name()))
            .ifPresent(piece -> piece.edges().stream().map(Edge::name).forEach(edges::add));
      }
    }
    String own = sent.replaceFirst("\\.[^.]*$", "");
    String name = own.toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "_");
    name = name.replaceAll("^[_\\p{N}]+|_+$", "");
    head.put("number", number).put("name", name.isEmpty() ? "piece" : name);
    String title = own.replaceAll("[\\s_-]+", " ").strip();
    head.put(
        "title",
        title.isEmpty()
            ? ""
            : title.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + title.substring(1));
  }

  /** Where the file lies in the folder, or will: beside another of its name that holds more. */
  private static String stored(Room room, String sent, byte[] bytes) {
    String plain = sent.replaceAll(".*[/\\\\]", "").replaceAll("[:\\p{Cntrl}\"]", "_").strip();
    plain = PatternFolder.isPlain(plain) ? plain : "drawing.svg";
    String stem = plain.replaceFirst("\\.[^.]*$", "");
    String ending = plain.substring(stem.length());
    for (int i = 1; ; i++) {
      String name = PatternFolder.TRACED + "/" + stem + (i == 1 ? "" : "-" + i) + ending;
      FolderFile there = room.edited().file(name);
      if (there instanceof FolderFile.Absent
          || (there instanceof FolderFile.Content content
              && Arrays.equals(content.bytes(), bytes))) {
        return name;
      }
    }
  }

  // --- her answers ------------------------------------------------------------------------------

  /**
   * {@code {"ask": "trace", "roles": {part: word}, "scale", "start", "clockwise", "corners",
   * "less", "edges": [{"name", "less", "leftOut"}], "piece": {"name", "title", "number", "count",
   * "fabric", "mirrored", "fold", "allowance", "size", "instead"}, "grown"}}: what comes of her
   * answers. {@code {"lines", "dropped", "ends": [{"x", "y", "dot"}], "names", "drawn",
   * "problems"}}; nothing while no part is the outline.
   */
  private Frame trace(Room room, Window window, Question question) throws Question.Unclear {
    Opened opened = opened(window);
    TracingAnswers answers = SentAnswers.read(opened.name, question.body());
    ObjectNode head = Frame.answer();
    if (answers.outline().isEmpty()) {
      return new Frame(head);
    }
    Wording wording = Workbench.wording(room.draft().evaluated().run());
    try {
      Tried tried = tried(room, opened, answers, question.body().path("grown").asBoolean());
      ArrayNode lines = head.putArray("lines");
      tried.piece.lines().forEach(lines::add);
      ArrayNode dropped = head.putArray("dropped");
      tried.piece.dropped().forEach(dropped::add);
      ArrayNode ends = head.putArray("ends");
      for (OutlineEnds.End end : tried.piece.ends().ends()) {
        ObjectNode one = ends.addObject();
        new Drawn(1).at(one, end.at());
        end.dot().ifPresent(dot -> one.put("dot", dot));
      }
      ArrayNode names = head.putArray("names");
      tried.piece.edges().forEach(names::add);
      drawn(tried.draft, opened, answers, head);
      List<Finding> problems = NewProblems.of(room, tried.draft);
      wording = Workbench.wording(tried.draft.evaluated().run());
      FindingWords.write(
          problems.subList(0, Math.min(MOST_PROBLEMS, problems.size())),
          room,
          tried
              .draft
              .evaluated()
              .run()
              .map(LedgerView::format)
              .map(wording::showing)
              .orElse(wording),
          head.putArray("problems"));
    } catch (TracingProblem problem) {
      Finding.Builder finding = Finding.fail(problem.code(), opened.name);
      problem.arguments().forEach(finding::with);
      FindingWords.write(List.of(finding.build()), room, wording, head.putArray("problems"));
    }
    return new Frame(head);
  }

  /** The piece as the document would have it, over its drawing. */
  private static void drawn(
      LiveDraft draft, Opened opened, TracingAnswers answers, ObjectNode head) {
    Optional<SizeRun> run = draft.evaluated().run();
    String name = answers.card().name();
    String size =
        answers.card().size().isBlank()
            ? run.map(each -> each.pattern().base().name()).orElse("")
            : answers.card().size();
    Optional<Piece> piece =
        run.flatMap(each -> each.size(size)).flatMap(sized -> sized.piece(name));
    if (piece.isPresent()) {
      new Drawn(scale(draft, opened, name)).piece(piece.get(), head.putObject("drawn"));
    }
  }

  private static double scale(LiveDraft draft, Opened opened, String name) {
    Optional<Statement.ScaleLine> scale =
        draft.document().stream()
            .flatMap(document -> document.statements().stream())
            .filter(Statement.PieceSection.class::isInstance)
            .map(Statement.PieceSection.class::cast)
            .filter(section -> section.name().text().equals(name))
            .flatMap(section -> section.traced().stream())
            .flatMap(from -> from.scale().stream())
            .findFirst();
    if (scale.isEmpty()) {
      return 1;
    }
    Path line = opened.drawing.called(scale.get().line()).get(0).path();
    Expression.Literal length = scale.get().length();
    return length.value() * length.unit().factor() / line.start().distanceTo(line.end());
  }

  /**
   * {@code {"ask": "write tracing", …as "trace"}}: stores the drawing and writes the lines. The
   * answer has {@code changed}, or {@code unwritable}.
   */
  private Frame writeTracing(Room room, Window window, Question question) throws Question.Unclear {
    Opened opened = opened(window);
    TracingAnswers answers = SentAnswers.read(opened.name, question.body());
    if (answers.outline().isEmpty()) {
      throw new Question.Unclear("no-outline-written");
    }
    try {
      Tried tried = tried(room, opened, answers, question.body().path("grown").asBoolean());
      room.store(opened.name, opened.bytes);
      String before = room.text(PatternFolder.DOCUMENT);
      boolean changed =
          room.change(
                  List.of(Splice.between(PatternFolder.DOCUMENT, before, tried.piece.text())),
                  false,
                  "tracing")
              .isPresent();
      return new Frame(Frame.answer().put("changed", changed));
    } catch (TracingProblem problem) {
      throw new Question.Unclear("no-outline-written");
    } catch (IOException full) {
      room.note("a drawing could not be stored: " + full.getMessage());
      return new Frame(Frame.answer().put("unwritable", opened.name));
    }
  }

  /**
   * What her answers come to.
   *
   * @param grown whether it grows as the piece does whose place it takes
   */
  private static Tried tried(Room room, Opened opened, TracingAnswers answers, boolean grown)
      throws Question.Unclear {
    Document document =
        room.draft().document().orElseThrow(() -> new Question.Unclear("no-document-write-in"));
    TracedPiece piece =
        TracedPiece.of(
            document,
            opened.drawing,
            answers,
            growing -> grown ? rules(room, answers, growing) : List.of(),
            text -> NewProblems.of(room, draft(room, opened, text)));
    return new Tried(piece, draft(room, opened, piece.text()));
  }

  private static List<String> rules(Room room, TracingAnswers answers, TracedPiece.Grown grown) {
    return room.draft()
        .evaluation()
        .flatMap(
            values -> answers.card().instead().map(piece -> GrownAs.lines(values, piece, grown)))
        .orElse(List.of());
  }

  private static LiveDraft draft(Room room, Opened opened, String text) {
    return room.tried(PatternFolder.DOCUMENT, text, opened.name, opened.bytes);
  }

  private Opened opened(Window window) throws Question.Unclear {
    Opened opened = open.get(window);
    if (opened == null) {
      throw new Question.Unclear("no-drawing-open");
    }
    return opened;
  }
}
