package org.hemwright.workbench.traced;

import java.util.List;
import java.util.function.Function;
import org.hemwright.draft.syntax.Document;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.TracedDrawing;

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
  public TracedPiece {
    lines = List.copyOf(lines);
    dropped = List.copyOf(dropped);
    edges = List.copyOf(edges);
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
    List<String> edges = answers.edgeNames(ends.ends().size());
    PiecePlace place = PiecePlace.of(document, answers.card().instead());
    TracedLines traced = new TracedLines(place, drawing, answers, ends, edges);
    List<TrialLine> lines = traced.lines();
    List<String> named = edges.stream().filter(edge -> !edge.isEmpty()).toList();
    grown
        .apply(new Grown(named, traced.dots()))
        .forEach(rule -> lines.add(TrialLine.sure("  " + rule)));
    LinesThatHold holding = LinesThatHold.of(place, lines, problems);
    return new TracedPiece(
        place.with(holding.lines()).text(),
        holding.lines().stream().map(TrialLine::text).toList(),
        holding.dropped(),
        ends,
        edges);
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
}
