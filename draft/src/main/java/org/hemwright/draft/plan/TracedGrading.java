package org.hemwright.draft.plan;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.pattern.traced.TracingProblem;

/**
 * A traced piece whose grading is read: what rules may name, and whether all that they say holds.
 */
final class TracedGrading {
  private final Compilation shared;
  private final Problems problems;
  private final PieceDeclaration piece;
  private final Size base;
  private final TracedDrawing drawing;
  private final List<Path> edges;
  private boolean whole = true;

  TracedGrading(
      Compilation shared,
      PieceDeclaration piece,
      Size base,
      TracedDrawing drawing,
      List<Path> edges) {
    this.shared = shared;
    this.problems = shared.problems();
    this.piece = piece;
    this.base = base;
    this.drawing = drawing;
    this.edges = edges;
  }

  Compilation shared() {
    return shared;
  }

  Problems problems() {
    return problems;
  }

  PieceDeclaration piece() {
    return piece;
  }

  Size base() {
    return base;
  }

  TracedDrawing drawing() {
    return drawing;
  }

  /** The edges as they are traced, in the base size. */
  List<Path> edges() {
    return edges;
  }

  /** Whether nothing that was read is amiss. */
  boolean isWhole() {
    return whole;
  }

  /** Notes that something is amiss, which was told. */
  void amiss() {
    whole = false;
  }

  /** Tells what is amiss. */
  void amiss(Finding.Builder finding) {
    problems.add(finding);
    whole = false;
  }

  /** How many sizes the chart has. */
  int count() {
    return shared.sizes().chart().sizes().size();
  }

  /** The name of an edge. */
  String name(int edge) {
    return piece.edges().get(edge).name().text();
  }

  /** The place of an edge in the order of the outline; absent, and told, where there is none. */
  Optional<Integer> edge(Name name) {
    int index = piece.indexOf(name.text());
    if (index < 0) {
      Unknown.tell(
          problems,
          name,
          "edge-of-piece",
          piece.scope().name(),
          piece.edges().stream().map(edge -> edge.name().text()).toList());
      amiss();
      return Optional.empty();
    }
    return Optional.of(index);
  }

  /** A move up or to the right (mm). */
  static Vector vector(boolean upright, double amount) {
    return upright ? new Vector(0, amount) : new Vector(amount, 0);
  }

  /** From the step into each size to the way from the base size. */
  double[] summed(double[] into) {
    double[] amounts = new double[into.length];
    for (int p = base.position() + 1; p < into.length; p++) {
      amounts[p] = amounts[p - 1] + into[p];
    }
    for (int p = base.position() - 1; p >= 0; p--) {
      amounts[p] = amounts[p + 1] - into[p + 1];
    }
    return amounts;
  }

  /** Where on a traced edge a rule stands (mm from its start). */
  Optional<Double> distance(int edge, RulePlace place, Span span) {
    Path path = edges.get(edge);
    double length = path.length();
    double at;
    if (place instanceof RulePlace.End end) {
      at = end.atEnd() ? length : 0;
    } else if (place instanceof RulePlace.Distance distance) {
      at = distance.fromEnd() ? length - distance.mm() : distance.mm();
    } else if (place instanceof RulePlace.Share share) {
      at = share.fromEnd() ? length * (1 - share.share()) : length * share.share();
    } else {
      return dot(edge, ((RulePlace.Dot) place).name(), span);
    }
    if (!(at >= -Tolerance.DRAWN_LENGTH && at <= length + Tolerance.DRAWN_LENGTH)) {
      amiss(
          problems
              .at(span, "grade-off-edge", piece.scope().full(name(edge)))
              .with("edge", name(edge))
              .with("length", Argument.mm(length)));
      return Optional.empty();
    }
    return Optional.of(Math.max(0, Math.min(length, at)));
  }

  private Optional<Double> dot(int edge, String name, Span span) {
    try {
      List<TracedLine> dots = OutlineTracing.lines(drawing, name);
      Point middle = dots.get(0).middle();
      PathPlace place = edges.get(edge).nearest(middle);
      double away = place.point().distanceTo(middle);
      if (dots.size() > 1) {
        throw new TracingProblem("traced-dots-several")
            .with("name", name)
            .with("count", Argument.of(dots.size()));
      }
      if (away > OutlineTracing.DOT_ON_LINE) {
        throw new TracingProblem("traced-dot-off")
            .with("name", name)
            .with("line", name(edge))
            .with("away", Argument.mm(away));
      }
      return Optional.of(place.distance());
    } catch (TracingProblem problem) {
      Finding.Builder finding = problems.at(span, problem.code());
      problem.arguments().forEach(finding::with);
      amiss(finding);
      return Optional.empty();
    }
  }
}
