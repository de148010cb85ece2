package org.hemwright.workroom.bring;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.traced.CornerRule;
import org.hemwright.workbench.traced.GrownAs;
import org.hemwright.workbench.traced.PastedSteps;
import org.hemwright.workbench.traced.PieceGrading;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.NewProblems;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Shows by which steps a traced piece grows, tries others, and writes them. */
public final class GradeView implements View {
  private static final int MOST_CORNERS = 200;
  private static final int MOST_PROBLEMS = 8;
  private static final double MM_PER_INCH = 25.4;

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "grading", GradeView::grading,
        "taken steps", GradeView::taken,
        "try grading", GradeView::tryGrading,
        "write grading", GradeView::writeGrading);
  }

  /**
   * {@code {"ask": "grading", "piece"}}: the traced pieces, and of the one named, or the first, its
   * corners with their rules. {@code {"pieces": [{"name", "title"}], "piece", "corners": [{"edge",
   * "next", "across", "up"}], "as", "kept", "measurements", "others": [{"name", "title",
   * "traced"}]}} and its outlines as {@code try grading} has them.
   */
  private static Frame grading(Room room, Window window, Question question)
      throws Question.Unclear {
    Document document = document(room);
    List<String> traced = PieceGrading.pieces(document);
    ObjectNode head = Frame.answer();
    ArrayNode pieces = head.putArray("pieces");
    traced.forEach(name -> pieces.addObject().put("name", name).put("title", title(room, name)));
    String asked = question.body().path("piece").asText("");
    String piece = traced.contains(asked) || traced.isEmpty() ? asked : traced.get(0);
    Optional<PieceGrading> grading = PieceGrading.of(document, piece);
    if (grading.isEmpty()) {
      return new Frame(head);
    }
    head.put("piece", piece);
    corners(grading.get().rules(), head);
    grading.get().as().ifPresent(as -> head.put("as", as));
    ArrayNode kept = head.putArray("kept");
    grading.get().kept().forEach(kept::add);
    room.draft().evaluated().run().ifPresent(run -> sources(run, traced, piece, head));
    outlines(room.draft(), piece, head);
    return new Frame(head);
  }

  /** What steps may be taken from. */
  private static void sources(SizeRun run, List<String> traced, String piece, ObjectNode head) {
    ArrayNode measurements = head.putArray("measurements");
    run.pattern().chart().columns().stream()
        .filter(column -> column.kind() == QuantityKind.LENGTH)
        .map(SizeChart.Column::name)
        .forEach(measurements::add);
    ArrayNode others = head.putArray("others");
    for (PieceCard card : run.pattern().pieces()) {
      if (!card.name().equals(piece)) {
        others
            .addObject()
            .put("name", card.name())
            .put("title", card.title())
            .put("traced", traced.contains(card.name()));
      }
    }
  }

  private static void corners(List<CornerRule> rules, ObjectNode head) {
    ArrayNode corners = head.putArray("corners");
    for (int i = 0; i < rules.size(); i++) {
      CornerRule rule = rules.get(i);
      corners
          .addObject()
          .put("edge", rule.edge())
          .put("next", rules.get((i + 1) % rules.size()).edge())
          .put("across", rule.across())
          .put("up", rule.up());
    }
  }

  /**
   * {@code {"ask": "taken steps", "piece", "from"}} or {@code {…, "pasted", "unit"}}: the corners
   * with steps taken from a drafted piece with edges of the same names, or pasted; {@code "none":
   * true} where there are none to take.
   */
  private static Frame taken(Room room, Window window, Question question) throws Question.Unclear {
    PieceGrading grading = grading(room, question.text("piece"));
    ObjectNode head = Frame.answer();
    SizeRun run =
        room.draft().evaluated().run().orElseThrow(() -> new Question.Unclear("nothing-drawn"));
    Optional<List<CornerRule>> rules;
    if (question.body().path("pasted").isTextual()) {
      double mm =
          switch (question.body().path("unit").asText("mm")) {
            case "cm" -> 10;
            case "in" -> MM_PER_INCH;
            default -> 1;
          };
      List<String> sizes = run.pattern().chart().sizes().stream().map(size -> size.name()).toList();
      rules = PastedSteps.rules(question.text("pasted"), mm, grading.edges(), sizes);
    } else {
      rules = GrownAs.rules(run, question.text("from"), grading.edges());
    }
    rules.ifPresentOrElse(some -> corners(some, head), () -> head.put("none", true));
    return new Frame(head);
  }

  /** The document with her rules, and what it comes to. */
  private record Tried(List<String> lines, String text, LiveDraft draft) {}

  /**
   * {@code {"ask": "try grading", "piece", "how": "rules|as|none", "as", "corners": [{"edge",
   * "across", "up"}]}}: {@code {"lines", "outlines": [{"size", "d"}], "at": [{"x", "y"}],
   * "lengths": [{"edge", "values"}], "problems"}}.
   */
  private static Frame tryGrading(Room room, Window window, Question question)
      throws Question.Unclear {
    Tried tried = tried(room, question);
    ObjectNode head = Frame.answer();
    ArrayNode lines = head.putArray("lines");
    tried.lines.forEach(lines::add);
    outlines(tried.draft, question.text("piece"), head);
    List<Finding> problems = NewProblems.of(room, tried.draft);
    Wording wording = Workbench.wording(tried.draft.evaluated().run());
    FindingWords.write(
        problems.subList(0, Math.min(MOST_PROBLEMS, problems.size())),
        room,
        tried.draft.evaluated().run().map(LedgerView::format).map(wording::showing).orElse(wording),
        head.putArray("problems"));
    return new Frame(head);
  }

  /** {@code {"ask": "write grading", …as "try grading"}}. */
  private static Frame writeGrading(Room room, Window window, Question question)
      throws Question.Unclear {
    Tried tried = tried(room, question);
    String before = room.text(PatternFolder.DOCUMENT);
    boolean changed =
        !tried.text.equals(before)
            && room.change(
                    List.of(Splice.between(PatternFolder.DOCUMENT, before, tried.text)),
                    false,
                    "grading")
                .isPresent();
    return new Frame(Frame.answer().put("changed", changed));
  }

  private static Tried tried(Room room, Question question) throws Question.Unclear {
    String piece = question.text("piece");
    PieceGrading grading = grading(room, piece);
    List<String> lines = new ArrayList<>();
    switch (question.text("how")) {
      case "as" -> lines.add("grade as " + question.text("as").strip());
      case "none" -> {}
      default -> {
        JsonNode corners = question.body().path("corners");
        if (!corners.isArray() || corners.size() > MOST_CORNERS) {
          throw new Question.Unclear("corners-list");
        }
        for (JsonNode corner : corners) {
          String edge = corner.path("edge").asText("");
          if (grading.edges().contains(edge)) {
            lines.add(
                new CornerRule(edge, corner.path("across").asText(""), corner.path("up").asText(""))
                    .line());
          }
        }
      }
    }
    String text =
        PieceGrading.written(document(room), piece, lines)
            .orElseThrow(() -> new Question.Unclear("no-traced-piece"));
    return new Tried(lines, text, room.tried(PatternFolder.DOCUMENT, text));
  }

  /** The piece in every size as it lies on its drawing, its corners, and its edges' lengths. */
  private static void outlines(LiveDraft draft, String piece, ObjectNode head) {
    ArrayNode outlines = head.putArray("outlines");
    ArrayNode at = head.putArray("at");
    ArrayNode lengths = head.putArray("lengths");
    Optional<SizeRun> run = draft.evaluated().run();
    if (run.isEmpty()) {
      return;
    }
    Drawn drawn = new Drawn(1);
    for (SizedPattern sized : run.get().sizes()) {
      sized
          .piece(piece)
          .ifPresent(
              one ->
                  outlines
                      .addObject()
                      .put("size", sized.size().name())
                      .put("d", drawn.path(one.stitchLine().path())));
    }
    Optional<Piece> base =
        run.get().size(run.get().pattern().base().name()).flatMap(sized -> sized.piece(piece));
    Optional<List<String>> edges =
        draft.document().flatMap(read -> PieceGrading.of(read, piece)).map(PieceGrading::edges);
    if (base.isEmpty() || edges.isEmpty()) {
      return;
    }
    for (int i = 0; i < edges.get().size(); i++) {
      String edge = edges.get().get(i);
      String next = edges.get().get((i + 1) % edges.get().size());
      corner(base.get(), edge, next).ifPresent(point -> drawn.at(at.addObject(), point));
      ArrayNode values = lengths.addObject().put("edge", edge).putArray("values");
      for (SizedPattern sized : run.get().sizes()) {
        Optional<Edge> here = sized.piece(piece).flatMap(one -> one.edge(edge));
        values.add(
            here.map(
                    one ->
                        LedgerView.format(run.get())
                            .text(one.path().length(), LengthKind.DIFFERENCE))
                .orElse(""));
      }
    }
  }

  private static Optional<Point> corner(Piece piece, String edge, String next) {
    Optional<Edge> one = piece.edge(edge);
    Optional<Edge> other = piece.edge(next);
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    boolean forward = one.get().path().end().isAt(other.get().path().start());
    return Optional.of(forward ? one.get().path().end() : one.get().path().start());
  }

  private static String title(Room room, String piece) {
    return room.draft().evaluated().run().stream()
        .flatMap(run -> run.pattern().pieces().stream())
        .filter(card -> card.name().equals(piece))
        .map(PieceCard::title)
        .findFirst()
        .orElse(piece);
  }

  private static PieceGrading grading(Room room, String piece) throws Question.Unclear {
    return PieceGrading.of(document(room), piece)
        .orElseThrow(() -> new Question.Unclear("no-traced-piece"));
  }

  private static Document document(Room room) throws Question.Unclear {
    return room.draft().document().orElseThrow(() -> new Question.Unclear("no-document"));
  }
}
