package org.hemwright.draft.plan;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.pattern.traced.TracingProblem;

/** The drawings that a document names, in true size; what is wrong with one is told. */
record Drawings(Compilation shared) {
  /** The drawing of a piece in true size, as far as that is known. */
  Optional<TracedDrawing> read(Statement.TracedFrom from) {
    Optional<TracedDrawing> drawing = read(from.file(), from.span());
    if (drawing.isEmpty() || from.scale().isPresent()) {
      return drawing.flatMap(read -> scaled(read, from));
    }
    if (!drawing.get().inTrueSize()) {
      shared
          .problems()
          .add(
              Finding.warn("traced-size-unsaid", from.file())
                  .with("file", from.file())
                  .at(shared.problems().origin(from.span())));
    }
    return drawing;
  }

  /** A drawing as it is; where it is not among the inputs, it is told. */
  Optional<TracedDrawing> read(String file, Span at) {
    if (!shared.inputs().hasDrawing(file)) {
      shared.problems().add(shared.problems().at(at, "traced-drawing-absent").with("file", file));
    }
    return shared.inputs().drawing(file);
  }

  private Optional<TracedDrawing> scaled(TracedDrawing drawing, Statement.TracedFrom from) {
    Statement.ScaleLine scale = from.scale().orElseThrow();
    try {
      List<TracedLine> lines = OutlineTracing.lines(drawing, scale.line());
      Path line = lines.get(0).path();
      double drawn = line.start().distanceTo(line.end());
      if (lines.size() > 1 || drawn <= Tolerance.DRAWN_LENGTH) {
        throw new TracingProblem("traced-scale-line").with("name", scale.line());
      }
      return Optional.of(drawing.scaled(Tracings.value(scale.length()) / drawn));
    } catch (TracingProblem problem) {
      tell(problem, from.span());
      return Optional.empty();
    }
  }

  /** Tells what is wrong with a drawing at a place of the document that names it. */
  void tell(TracingProblem problem, Span at) {
    Finding.Builder finding = shared.problems().at(at, problem.code());
    problem.arguments().forEach(finding::with);
    shared.problems().add(finding);
  }
}
