package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.draft.syntax.Quoted;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hemwright.pattern.traced.TracedDrawing;

/**
 * Writes the lines of a piece that is brought in from a drawing.
 *
 * @param edges the names of its edges, in order; empty where a stretch is left out
 */
record TracedLines(
    PiecePlace place,
    TracedDrawing drawing,
    TracingAnswers answers,
    OutlineEnds ends,
    List<String> edges) {
  /** What is written point by point, each under the name that the drawing gives it. */
  private static final List<PartRole> POINTED =
      List.of(PartRole.INNER_LINE, PartRole.PLACEMENT, PartRole.DRILL, PartRole.POINT);

  TracedLines {
    edges = List.copyOf(edges);
  }

  /** The piece's lines, the first of them its heading. */
  List<TrialLine> lines() {
    TracingAnswers.Card card = answers.card();
    Optional<Statement.PieceSection> instead = place.instead();
    List<TrialLine> lines = new ArrayList<>();
    String scale =
        answers
            .part(PartRole.SCALE_LINE)
            .filter(name -> !answers.scale().isBlank())
            .map(name -> ", where " + quoted(name) + " is " + plain(answers.scale()) + ",")
            .orElse("");
    String size = card.size().isBlank() ? "" : " in size " + Quoted.size(plain(card.size()));
    String ranges =
        instead
            .flatMap(Statement.PieceSection::sizes)
            .map(sizes -> " " + Source.of(place.document()).text(sizes.span()))
            .orElse("");
    lines.add(
        TrialLine.sure(
            "piece %s traced %s%s%s as %s number %d%s"
                .formatted(
                    card.name(),
                    quoted(answers.file()),
                    size,
                    scale,
                    quoted(card.title()),
                    instead.map(Statement.PieceSection::number).orElse(card.number()),
                    ranges)));
    String outline = outline();
    if (instead.isPresent()) {
      kept(instead.get(), outline, lines);
    } else {
      lines.add(TrialLine.sure("  cut " + cut(card)));
      lines.add(TrialLine.sure(outline));
      if (!card.fold().isBlank()) {
        lines.add(TrialLine.sure("  fold " + plain(card.fold())));
      }
      String allowance = card.allowance().isBlank() ? "none" : plain(card.allowance());
      String fold = card.fold().isBlank() ? "" : ", " + plain(card.fold()) + " none";
      lines.add(
          TrialLine.sure("  allowance " + allowance + (allowance.equals("none") ? "" : fold)));
    }
    marks(lines);
    return lines;
  }

  private static String cut(TracingAnswers.Card card) {
    String how = !card.fold().isBlank() ? ", on the fold" : card.mirrored() ? ", mirrored" : "";
    return card.count() + " of " + card.fabric() + how;
  }

  private String outline() {
    StringBuilder text = new StringBuilder("  outline traced ");
    text.append(quoted(answers.outline().orElseThrow())).append(" from ");
    boolean dot = ends.ends().get(0).dot().isPresent();
    text.append(dot ? quoted(ends.ends().get(0).dot().get()) : "the " + plain(answers.start()));
    text.append(answers.clockwise() ? " clockwise" : " anticlockwise");
    if (StrictMath.abs(answers.corners() - OutlineRequest.USUAL_CORNER_DEGREES) > 1e-9) {
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

  /** The lines of the piece whose place it takes; points and lines of its drafting go. */
  private void kept(Statement.PieceSection instead, String outline, List<TrialLine> lines) {
    Source source = Source.of(place.document());
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
        lines.add(TrialLine.sure(outline));
        said = true;
      } else if (!shape && !drafting && !other) {
        int first = source.line(each.span().start());
        int last = source.line(StrictMath.max(each.span().start(), each.span().end() - 1));
        String text =
            place
                .document()
                .text()
                .substring(source.lineStart(first), source.lineEnd(last))
                .replaceAll("\\R\\s*", " ");
        boolean trial = !(each instanceof Statement.Cut);
        lines.add(new TrialLine(text.stripTrailing(), trial, true));
      }
    }
    if (!said) {
      lines.add(TrialLine.sure(outline));
    }
  }

  private void marks(List<TrialLine> lines) {
    for (String part : answers.parts(PartRole.NOTCHES)) {
      for (String edge : edges) {
        if (!edge.isEmpty()) {
          lines.add(new TrialLine("  notch " + edge + " traced " + quoted(part), true, false));
        }
      }
    }
    Optional<String> grain = answers.part(PartRole.GRAIN);
    if (grain.isPresent()) {
      lines.add(TrialLine.sure("  grain traced " + quoted(grain.get())));
    } else if (answers.card().instead().isEmpty()) {
      lines.add(TrialLine.sure("  grain up"));
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

  private static void mark(PartRole role, String drawn, String name, List<TrialLine> lines) {
    switch (role) {
      case INNER_LINE ->
          lines.add(TrialLine.sure("  inner " + name + " is traced " + quoted(drawn)));
      case PLACEMENT ->
          lines.add(TrialLine.sure("  placement " + name + " is traced " + quoted(drawn)));
      case POINT -> lines.add(TrialLine.sure("  point " + name + " traced " + quoted(drawn)));
      default -> {
        lines.add(TrialLine.sure("  point " + name + "_at traced " + quoted(drawn)));
        lines.add(TrialLine.sure("  drill " + name + " at " + name + "_at"));
      }
    }
  }

  /** The points of the drawing that lie on its edges. */
  List<TracedPiece.Grown.Dot> dots() {
    List<TracedPiece.Grown.Dot> dots = new ArrayList<>();
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
              .ifPresent(edge -> dots.add(new TracedPiece.Grown.Dot(edge, own.get(), name)));
        }
      }
    }
    return dots;
  }

  /** A name for the document from one of a drawing, unlike those before. */
  private static String plainName(String drawn, Set<String> taken) {
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
    return Quoted.words(plain(text));
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private static String number(double value) {
    return value == StrictMath.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
