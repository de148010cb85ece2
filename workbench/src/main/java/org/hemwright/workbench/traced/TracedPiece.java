package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracingProblem;

/**
 * The lines that bring a piece in from a drawing, as the designer says what each part of it is.
 *
 * @param text the document with them
 * @param lines the lines of the piece
 * @param dropped lines of the piece whose place it takes, which name what the drawing does not have
 * @param ends where its edges end on the drawing
 * @param edges the names of its edges, in order; empty where a stretch is left out
 */
public record TracedPiece(
    String text, List<String> lines, List<String> dropped, OutlineEnds ends, List<String> edges) {
  /** Rounds of leaving out lines that do not hold; a line left out may take another with it. */
  private static final int MOST_ROUNDS = 12;

  public TracedPiece {
    lines = List.copyOf(lines);
    dropped = List.copyOf(dropped);
    edges = List.copyOf(edges);
  }

  /** One line, and whether it stays only where the document holds with it. */
  private record Line(String text, boolean onTrial, boolean hers) {
    static Line sure(String text) {
      return new Line(text, false, false);
    }
  }

  /**
   * Writes the lines.
   *
   * <p>Which edges a notch of the drawing marks, and which lines of the piece before still hold, is
   * found by drafting: a line that does not hold is left out, those of the former piece are told.
   *
   * @param grown finds by which rules it grows; none where it is the same in every size
   * @param problems what drafting another text of the document finds
   * @throws TracingProblem where the outline that she named is none
   */
  public static TracedPiece of(
      Document document,
      TracedDrawing drawing,
      TracingAnswers answers,
      Function<Grown, List<String>> grown,
      Function<String, List<Finding>> problems) {
    OutlineEnds ends = OutlineEnds.of(drawing, answers);
    List<String> edges = names(answers, ends.ends().size());
    Optional<Statement.PieceSection> instead = section(document, answers.card().instead());
    List<Line> lines = lines(document, drawing, answers, ends, edges, instead);
    List<String> named = edges.stream().filter(edge -> !edge.isEmpty()).toList();
    grown
        .apply(new Grown(named, dots(drawing, answers, ends, edges)))
        .forEach(rule -> lines.add(Line.sure("  " + rule)));
    return holding(document, instead, lines, ends, edges, problems);
  }

  /**
   * What rules may stand at.
   *
   * @param edges the names of its edges, in order
   * @param dots the points of its drawing that lie on them
   */
  public record Grown(List<String> edges, List<Dot> dots) {
    public Grown {
      edges = List.copyOf(edges);
      dots = List.copyOf(dots);
    }

    /**
     * A point on an edge.
     *
     * @param edge the edge's name
     * @param drawn what the drawing calls it
     * @param name what the document calls it
     */
    public record Dot(String edge, String drawn, String name) {}
  }

  private static List<Grown.Dot> dots(
      TracedDrawing drawing, TracingAnswers answers, OutlineEnds ends, List<String> edges) {
    List<Grown.Dot> dots = new ArrayList<>();
    if (answers.withAllowance()) {
      return dots;
    }
    Set<String> taken = new TreeSet<>(edges);
    for (String part : answers.parts(PartRole.POINT)) {
      for (int i = 0; i < drawing.lines().size(); i++) {
        Optional<String> own = drawing.nameOf(i);
        if (own.isPresent() && drawing.called(part).contains(drawing.lines().get(i))) {
          String name = plainName(own.get(), taken);
          ends.edgeAt(drawing.lines().get(i).middle())
              .map(edges::get)
              .filter(edge -> !edge.isEmpty())
              .ifPresent(edge -> dots.add(new Grown.Dot(edge, own.get(), name)));
        }
      }
    }
    return dots;
  }

  private static TracedPiece holding(
      Document document,
      Optional<Statement.PieceSection> instead,
      List<Line> all,
      OutlineEnds ends,
      List<String> edges,
      Function<String, List<Finding>> problems) {
    List<Line> lines = all;
    List<String> dropped = new ArrayList<>();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Placed placed = placed(document, instead, lines);
      List<Line> tried = lines;
      Set<Integer> faulty = new TreeSet<>();
      for (Finding finding : problems.apply(placed.text)) {
        finding
            .origin()
            .filter(at -> at.file().equals(document.file()))
            .map(Origin::line)
            .map(line -> line - placed.firstLine)
            .filter(line -> line >= 0 && line < tried.size() && tried.get(line).onTrial)
            .ifPresent(faulty::add);
      }
      if (faulty.isEmpty()) {
        break;
      }
      List<Line> left = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        if (!faulty.contains(i)) {
          left.add(lines.get(i));
        } else if (lines.get(i).hers) {
          dropped.add(lines.get(i).text.strip());
        }
      }
      lines = left;
    }
    lines = withoutIdle(document, instead, lines, dropped, problems);
    return new TracedPiece(
        placed(document, instead, lines).text,
        lines.stream().map(Line::text).toList(),
        dropped,
        ends,
        edges);
  }

  /** Leaves out numbers of the former piece that nothing asks for any more. */
  private static List<Line> withoutIdle(
      Document document,
      Optional<Statement.PieceSection> instead,
      List<Line> all,
      List<String> dropped,
      Function<String, List<Finding>> problems) {
    List<Line> lines = all;
    for (int i = all.size() - 1; i >= 0; i--) {
      Line line = all.get(i);
      if (line.hers && line.text.strip().startsWith("let ")) {
        List<Line> without = new ArrayList<>(lines);
        without.remove(line);
        int before = problems.apply(placed(document, instead, lines).text).size();
        if (problems.apply(placed(document, instead, without).text).size() <= before) {
          lines = without;
          dropped.add(line.text.strip());
        }
      }
    }
    return lines;
  }

  // --- the lines --------------------------------------------------------------------------------

  private static List<Line> lines(
      Document document,
      TracedDrawing drawing,
      TracingAnswers answers,
      OutlineEnds ends,
      List<String> edges,
      Optional<Statement.PieceSection> instead) {
    TracingAnswers.Card card = answers.card();
    List<Line> lines = new ArrayList<>();
    String scale =
        answers
            .part(PartRole.SCALE_LINE)
            .filter(name -> !answers.scale().isBlank())
            .map(name -> ", where " + quoted(name) + " is " + plain(answers.scale()) + ",")
            .orElse("");
    String size = card.size().isBlank() ? "" : " in size " + size(card.size());
    String ranges =
        instead
            .flatMap(Statement.PieceSection::sizes)
            .map(sizes -> " " + Source.of(document).text(sizes.span()))
            .orElse("");
    lines.add(
        Line.sure(
            "piece %s traced %s%s%s as %s number %d%s"
                .formatted(
                    card.name(),
                    quoted(answers.file()),
                    size,
                    scale,
                    quoted(card.title()),
                    instead.map(Statement.PieceSection::number).orElse(card.number()),
                    ranges)));
    String outline = outline(answers, ends, edges);
    if (instead.isPresent()) {
      kept(document, instead.get(), answers, outline, lines);
    } else {
      lines.add(Line.sure("  cut " + cut(card)));
      lines.add(Line.sure(outline));
      if (!card.fold().isBlank()) {
        lines.add(Line.sure("  fold " + plain(card.fold())));
      }
      String allowance = card.allowance().isBlank() ? "none" : plain(card.allowance());
      String fold = card.fold().isBlank() ? "" : ", " + plain(card.fold()) + " none";
      lines.add(Line.sure("  allowance " + allowance + (allowance.equals("none") ? "" : fold)));
    }
    marks(drawing, answers, edges, lines);
    return lines;
  }

  private static String cut(TracingAnswers.Card card) {
    String how = !card.fold().isBlank() ? ", on the fold" : card.mirrored() ? ", mirrored" : "";
    return card.count() + " of " + card.fabric() + how;
  }

  private static String outline(TracingAnswers answers, OutlineEnds ends, List<String> edges) {
    StringBuilder text = new StringBuilder("  outline traced ");
    text.append(quoted(answers.outline().orElseThrow())).append(" from ");
    boolean dot = ends.ends().get(0).dot().isPresent();
    text.append(dot ? quoted(ends.ends().get(0).dot().get()) : "the " + plain(answers.start()));
    text.append(answers.clockwise() ? " clockwise" : " anticlockwise");
    if (StrictMath.abs(answers.corners() - USUAL_CORNER) > 1e-9) {
      text.append(String.format(Locale.ROOT, ", corners over %s deg", number(answers.corners())));
    }
    boolean less = answers.withAllowance() && !answers.less().isBlank();
    if (less) {
      text.append(", less ").append(plain(answers.less()));
    }
    text.append(", edges ");
    for (int i = 0; i < edges.size(); i++) {
      text.append(i == 0 ? "" : ", ");
      text.append(edges.get(i).isEmpty() ? "left out" : edges.get(i));
      Optional<String> until = ends.ends().get((i + 1) % edges.size()).dot();
      until.ifPresent(name -> text.append(" to ").append(quoted(name)));
      boolean known = i < answers.edges().size() && !edges.get(i).isEmpty();
      if (answers.withAllowance() && known && !answers.edges().get(i).less().isBlank()) {
        text.append(" less ").append(plain(answers.edges().get(i).less()));
      }
    }
    return text.toString();
  }

  /** Corners turn by so many degrees where nothing is said. */
  public static final double USUAL_CORNER = 12;

  /** The lines of the piece whose place it takes; points and lines of its drafting go. */
  private static void kept(
      Document document,
      Statement.PieceSection instead,
      TracingAnswers answers,
      String outline,
      List<Line> lines) {
    Source source = Source.of(document);
    boolean said = false;
    for (Statement each : instead.body()) {
      boolean shape =
          each instanceof Statement.Outline
              || each instanceof Statement.OutlineAs
              || each instanceof Statement.Rectangle
              || each instanceof Statement.Facing
              || each instanceof Statement.OutlineTraced;
      boolean drafting =
          each instanceof Statement.Point
              || each instanceof Statement.Path
              || each instanceof Statement.Bring
              || each instanceof Statement.Grade
              || each instanceof Statement.GradeAs
              || each instanceof Statement.GradeFrom
              || each instanceof Statement.AlsoTraced;
      boolean other =
          (each instanceof Statement.Grain && answers.part(PartRole.GRAIN).isPresent())
              || (each instanceof Statement.NotchAt && answers.part(PartRole.NOTCHES).isPresent());
      if (shape && !said) {
        lines.add(Line.sure(outline));
        said = true;
      } else if (!shape && !drafting && !other) {
        int first = source.line(each.span().start());
        int last = source.line(StrictMath.max(each.span().start(), each.span().end() - 1));
        String text =
            document
                .text()
                .substring(source.lineStart(first), source.lineEnd(last))
                .replaceAll("\\R\\s*", " ");
        boolean trial = !(each instanceof Statement.Cut);
        lines.add(new Line(text.stripTrailing(), trial, true));
      }
    }
    if (!said) {
      lines.add(Line.sure(outline));
    }
  }

  private static final List<PartRole> POINTED =
      List.of(PartRole.INNER_LINE, PartRole.PLACEMENT, PartRole.DRILL, PartRole.POINT);

  private static void marks(
      TracedDrawing drawing, TracingAnswers answers, List<String> edges, List<Line> lines) {
    for (String part : answers.parts(PartRole.NOTCHES)) {
      for (String edge : edges) {
        if (!edge.isEmpty()) {
          lines.add(new Line("  notch " + edge + " traced " + quoted(part), true, false));
        }
      }
    }
    Optional<String> grain = answers.part(PartRole.GRAIN);
    if (grain.isPresent()) {
      lines.add(Line.sure("  grain traced " + quoted(grain.get())));
    } else if (answers.card().instead().isEmpty()) {
      lines.add(Line.sure("  grain up"));
    }
    Set<String> taken = new TreeSet<>(edges);
    for (PartRole role : POINTED) {
      for (String part : answers.parts(role)) {
        for (int i = 0; i < drawing.lines().size(); i++) {
          Optional<String> own = drawing.nameOf(i);
          if (own.isPresent() && drawing.called(part).contains(drawing.lines().get(i))) {
            mark(role, own.get(), plainName(own.get(), taken), lines);
          }
        }
      }
    }
  }

  private static void mark(PartRole role, String drawn, String name, List<Line> lines) {
    switch (role) {
      case INNER_LINE -> lines.add(Line.sure("  inner " + name + " is traced " + quoted(drawn)));
      case PLACEMENT -> lines.add(Line.sure("  placement " + name + " is traced " + quoted(drawn)));
      case POINT -> lines.add(Line.sure("  point " + name + " traced " + quoted(drawn)));
      default -> {
        lines.add(Line.sure("  point " + name + "_at traced " + quoted(drawn)));
        lines.add(Line.sure("  drill " + name + " at " + name + "_at"));
      }
    }
  }

  // --- names and words --------------------------------------------------------------------------

  /** Her names for the edges, and names of their own where she has none. */
  private static List<String> names(TracingAnswers answers, int count) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Optional<TracingAnswers.EdgeAnswer> said =
          i < answers.edges().size() ? Optional.of(answers.edges().get(i)) : Optional.empty();
      boolean leftOut = answers.withAllowance() && said.isPresent() && said.get().leftOut();
      String name = said.map(TracingAnswers.EdgeAnswer::name).map(String::strip).orElse("");
      names.add(leftOut ? "" : name.isEmpty() ? "edge_" + (i + 1) : name.replaceAll("\\s+", "_"));
    }
    return names;
  }

  /** A name for the document from one of a drawing, unlike those before. */
  static String plainName(String drawn, Set<String> taken) {
    String name =
        drawn
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "_")
            .replaceAll("^[_\\p{N}]+|_+$", "");
    name = name.isEmpty() ? "line" : name;
    String own = name;
    for (int i = 2; !taken.add(own); i++) {
      own = name + "_" + i;
    }
    return own;
  }

  private static String quoted(String text) {
    return '"' + plain(text).replace("\"", "\"\"") + '"';
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private static String size(String name) {
    return name.matches("[0-9]+|[\\p{L}][\\p{L}\\p{N}_]*") ? name : quoted(name);
  }

  private static String number(double value) {
    return value == StrictMath.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  // --- the document -----------------------------------------------------------------------------

  /** The document with lines in it, and where the first of them stands. */
  private record Placed(String text, int firstLine) {}

  private static Optional<Statement.PieceSection> section(
      Document document, Optional<String> name) {
    return document.statements().stream()
        .filter(Statement.PieceSection.class::isInstance)
        .map(Statement.PieceSection.class::cast)
        .filter(piece -> name.equals(Optional.of(piece.name().text())))
        .findFirst();
  }

  private static Placed placed(
      Document document, Optional<Statement.PieceSection> instead, List<Line> lines) {
    Source source = Source.of(document);
    String text = document.text();
    String written = String.join("\n", lines.stream().map(Line::text).toList());
    if (instead.isPresent()) {
      int first = source.line(instead.get().span().start());
      int end = source.lineEnd(source.line(StrictMath.max(0, end(instead.get()) - 1)));
      return new Placed(
          text.substring(0, source.lineStart(first)) + written + text.substring(end), first);
    }
    int after = -1;
    for (Statement each : document.statements()) {
      boolean before =
          each instanceof Statement.PieceSection
              || each instanceof Statement.PartSection
              || each instanceof Statement.FabricSection
              || each instanceof Statement.Heading;
      after = before ? StrictMath.max(after, end(each)) : after;
    }
    int at = after < 0 ? text.length() : source.lineEnd(source.line(StrictMath.max(0, after - 1)));
    String before = text.substring(0, at) + "\n\n";
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    return new Placed(before + written + text.substring(at), line);
  }

  private static int end(Statement statement) {
    if (statement instanceof Statement.Section section && !section.body().isEmpty()) {
      return section.body().get(section.body().size() - 1).span().end();
    }
    return statement.span().end();
  }
}
