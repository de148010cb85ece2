package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.pattern.traced.GradedOutline;
import org.hemwright.pattern.traced.OutlineGrading;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.RuleGrading;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.RulePoint;
import org.hemwright.pattern.traced.RuleTable;
import org.hemwright.pattern.traced.SizeGrading;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.pattern.traced.TracingProblem;

/** Reads how a traced outline is graded: by rules, by other traced sizes, or not at all. */
final class GradeReader {
  private final Compilation shared;
  private final Problems problems;
  private final PieceDeclaration piece;
  private final Size base;
  private final TracedDrawing drawing;
  private final List<Path> edges;
  private final List<PieceDeclaration> pieces;

  /** The last name of the outline's line: the block that it lies in, of files that have blocks. */
  private String group = "";

  private boolean whole = true;

  GradeReader(
      Compilation shared,
      PieceDeclaration piece,
      Size base,
      TracedDrawing drawing,
      List<Path> edges,
      List<PieceDeclaration> pieces) {
    this.shared = shared;
    this.problems = shared.problems();
    this.piece = piece;
    this.base = base;
    this.drawing = drawing;
    this.edges = edges;
    this.pieces = pieces;
  }

  /** A rule before it is known whether another says the same point. */
  private record Rule(int edge, double distance, List<Vector> moves, Span span) {
    Rule {
      moves = List.copyOf(moves);
    }
  }

  /**
   * How the outline changes from size to size; nothing where that has been told to be amiss.
   *
   * @param other takes the outline from the drawing of another size
   */
  Optional<OutlineGrading> grading(
      OutlineRequest request,
      BiFunction<OutlineRequest, Statement.AlsoTraced, Optional<List<Path>>> other) {
    List<Statement.AlsoTraced> also = all(Statement.AlsoTraced.class);
    List<String> names = drawing.called(request.line()).get(0).names();
    group = names.get(names.size() - 1);
    List<Rule> rules = rules(piece, 0);
    boolean asked =
        !all(Statement.Grade.class).isEmpty()
            || !all(Statement.GradeFrom.class).isEmpty()
            || !all(Statement.GradeAs.class).isEmpty();
    if (asked && !also.isEmpty()) {
      problems.add(problems.at(also.get(0).span(), "grade-both", piece.scope().name()));
      return Optional.empty();
    }
    if (!also.isEmpty()) {
      return bySizes(request, also, other);
    }
    if (!whole) {
      return Optional.empty();
    }
    if (!asked) {
      GradedOutline same =
          new GradedOutline(
              edges.stream().map(List::of).toList(), edges.stream().map(List::of).toList());
      return Optional.of(position -> same);
    }
    return byRules(rules);
  }

  private <S extends Statement> List<S> all(Class<S> kind) {
    return all(piece, kind);
  }

  private static <S extends Statement> List<S> all(PieceDeclaration from, Class<S> kind) {
    return from.section().body().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private Optional<OutlineGrading> bySizes(
      OutlineRequest request,
      List<Statement.AlsoTraced> also,
      BiFunction<OutlineRequest, Statement.AlsoTraced, Optional<List<Path>>> other) {
    TreeMap<Integer, List<Path>> sizes = new TreeMap<>();
    sizes.put(base.position(), edges);
    for (Statement.AlsoTraced line : also) {
      Optional<Size> size = shared.sizes().find(line.size());
      Optional<List<Path>> its = other.apply(line.outline().map(request::of).orElse(request), line);
      if (size.isEmpty() || its.isEmpty()) {
        whole = false;
      } else if (sizes.putIfAbsent(size.get().position(), its.get()) != null) {
        problems.add(
            problems
                .at(line.size().span(), "traced-size-twice", piece.scope().name())
                .with("size", size.get().name()));
        whole = false;
      }
    }
    return whole ? Optional.of(new SizeGrading(edges, sizes)) : Optional.empty();
  }

  // --- rules ------------------------------------------------------------------------------------

  private Optional<OutlineGrading> byRules(List<Rule> rules) {
    List<RulePoint> points = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      int next = (i + 1) % edges.size();
      List<Rule> corner = new ArrayList<>();
      double end = edges.get(i).length();
      for (Rule rule : rules) {
        boolean atEnd = rule.edge() == i && rule.distance() >= end - Tolerance.DRAWN_LENGTH;
        boolean atStart = rule.edge() == next && rule.distance() <= Tolerance.DRAWN_LENGTH;
        if (atEnd || atStart) {
          corner.add(rule);
        } else if (rule.edge() == i && rule.distance() > Tolerance.DRAWN_LENGTH) {
          points.add(new RulePoint(i, rule.distance(), rule.moves()));
        }
      }
      if (corner.isEmpty()) {
        missing.add(name(i) + " at end");
      } else {
        agree(corner);
        points.add(new RulePoint(i, end, corner.get(0).moves()));
        points.add(new RulePoint(next, 0, corner.get(0).moves()));
      }
    }
    if (!missing.isEmpty()) {
      problems.add(
          problems
              .at(piece.section().name().span(), "grade-corner-missing", piece.scope().name())
              .with("corners", Argument.of(missing))
              .with("first", missing.get(0)));
      return Optional.empty();
    }
    return whole ? Optional.of(new RuleGrading(edges, points)) : Optional.empty();
  }

  private String name(int edge) {
    return piece.edges().get(edge).name().text();
  }

  /** Two rules for one corner must say the same. */
  private void agree(List<Rule> corner) {
    for (Rule rule : corner.subList(1, corner.size())) {
      for (int p = 0; p < rule.moves().size(); p++) {
        Vector gap = rule.moves().get(p).minus(corner.get(0).moves().get(p));
        if (gap.length() > Tolerance.DRAWN_LENGTH) {
          problems.add(
              problems
                  .at(rule.span(), "grade-corner-twice", piece.scope().name())
                  .with("line", problems.line(corner.get(0).span()))
                  .with("size", shared.sizes().chart().sizes().get(p).name())
                  .with("gap", Argument.mm(gap.length())));
          whole = false;
          return;
        }
      }
    }
  }

  /** The rules that a piece's lines give, on the edges of this piece. */
  private List<Rule> rules(PieceDeclaration from, int depth) {
    List<Rule> rules = new ArrayList<>();
    for (Statement line : from.section().body()) {
      if (line instanceof Statement.Grade grade) {
        rule(grade).ifPresent(rules::add);
      } else if (line instanceof Statement.GradeFrom table) {
        rules.addAll(table(table, from));
      } else if (line instanceof Statement.GradeAs as) {
        rules.addAll(as(as, depth));
      }
    }
    return rules;
  }

  private List<Rule> as(Statement.GradeAs as, int depth) {
    Optional<PieceDeclaration> source =
        pieces.stream()
            .filter(other -> other.scope().name().equals(as.piece().text()) && !other.equals(piece))
            .filter(other -> other.section().traced().isPresent())
            .findFirst();
    if (source.isEmpty() || depth > 0) {
      List<String> known =
          pieces.stream()
              .filter(other -> other.section().traced().isPresent() && !other.equals(piece))
              .map(other -> other.scope().name())
              .distinct()
              .toList();
      Unknown.tell(problems, as.piece(), "traced-piece", known);
      whole = false;
      return List.of();
    }
    return rules(source.get(), depth + 1);
  }

  private Optional<Integer> edge(Name name) {
    int index = piece.indexOf(name.text());
    if (index < 0) {
      Unknown.tell(
          problems,
          name,
          "edge-of-piece",
          piece.scope().name(),
          piece.edges().stream().map(edge -> edge.name().text()).toList());
      whole = false;
      return Optional.empty();
    }
    return Optional.of(index);
  }

  private Optional<Rule> rule(Statement.Grade grade) {
    Optional<Integer> edge = edge(grade.edge());
    if (edge.isEmpty()) {
      return Optional.empty();
    }
    RulePlace place;
    if (grade.place() instanceof Statement.GradePlace.End end) {
      place = new RulePlace.End(end.atEnd());
    } else if (grade.place() instanceof Statement.GradePlace.Measured measured) {
      double amount = Tracings.value(measured.amount());
      place =
          measured.amount().unit() == Unit.PERCENT
              ? new RulePlace.Share(amount, measured.fromEnd())
              : new RulePlace.Distance(amount, measured.fromEnd());
    } else {
      place = new RulePlace.Dot(((Statement.GradePlace.Dot) grade.place()).name());
    }
    Optional<Double> distance = distance(edge.get(), place, grade.span());
    List<Vector> moves = new ArrayList<>(Collections.nCopies(count(), Vector.ZERO));
    for (Statement.GradeWay way : grade.ways()) {
      double[] amounts = amounts(way.step());
      for (int p = 0; p < count(); p++) {
        double amount = way.negative() ? -amounts[p] : amounts[p];
        moves.set(p, moves.get(p).plus(vector(way.upright(), amount)));
      }
    }
    return distance.map(at -> new Rule(edge.get(), at, moves, grade.span()));
  }

  private static Vector vector(boolean upright, double amount) {
    return upright ? new Vector(0, amount) : new Vector(amount, 0);
  }

  private int count() {
    return shared.sizes().chart().sizes().size();
  }

  /** Where on a traced edge a rule stands (mm from its start). */
  private Optional<Double> distance(int edge, RulePlace place, Span span) {
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
      problems.add(
          problems
              .at(span, "grade-off-edge", piece.scope().full(name(edge)))
              .with("edge", name(edge))
              .with("length", Argument.mm(length)));
      whole = false;
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
      problems.add(finding);
      whole = false;
      return Optional.empty();
    }
  }

  // --- steps ------------------------------------------------------------------------------------

  /** For each size how far from the base size the steps lead (mm). */
  private double[] amounts(Statement.GradeStep step) {
    double[] amounts = new double[count()];
    if (step instanceof Statement.GradeStep.OfMeasurement of) {
      ofMeasurement(of, amounts);
      return amounts;
    }
    Statement.GradeStep.Stepped stepped = (Statement.GradeStep.Stepped) step;
    double[] into = new double[count()];
    Arrays.fill(into, Tracings.value(stepped.first()));
    int last = -1;
    for (NumberRule.Step later : stepped.later()) {
      Optional<Size> from = shared.sizes().find(later.from());
      if (from.isEmpty()) {
        whole = false;
        continue;
      }
      if (from.get().position() <= last) {
        problems.add(
            problems
                .at(later.from().span(), "step-downward", piece.scope().name())
                .with("size", from.get().name()));
        whole = false;
      }
      last = from.get().position();
      for (int p = last; p < count(); p++) {
        into[p] = Tracings.value((Expression.Literal) later.value());
      }
    }
    return summed(into);
  }

  /** From the step into each size to the way from the base size. */
  private double[] summed(double[] into) {
    double[] amounts = new double[into.length];
    for (int p = base.position() + 1; p < into.length; p++) {
      amounts[p] = amounts[p - 1] + into[p];
    }
    for (int p = base.position() - 1; p >= 0; p--) {
      amounts[p] = amounts[p + 1] - into[p + 1];
    }
    return amounts;
  }

  private void ofMeasurement(Statement.GradeStep.OfMeasurement of, double[] amounts) {
    SizeChart chart = shared.sizes().chart();
    Optional<SizeChart.Column> column = chart.column(of.measurement().text());
    if (column.isEmpty() || column.get().kind() != QuantityKind.LENGTH) {
      List<String> known =
          chart.columns().stream()
              .filter(each -> each.kind() == QuantityKind.LENGTH)
              .map(SizeChart.Column::name)
              .toList();
      Unknown.tell(problems, of.measurement(), "measurement", known);
      whole = false;
      return;
    }
    List<SizeChart.Cell> cells = column.get().cells();
    List<String> blank = new ArrayList<>();
    for (int p = 0; p < amounts.length; p++) {
      boolean drawn = piece.scope().sizes().contains(chart.sizes().get(p)) || p == base.position();
      if (cells.get(p).value().isEmpty() && drawn) {
        blank.add(chart.sizes().get(p).name());
      }
    }
    if (!blank.isEmpty()) {
      problems.add(
          problems
              .at(of.measurement().span(), "measurement-missing")
              .with("chart", chart.file())
              .with("heading", column.get().heading())
              .sizes(blank));
      whole = false;
      return;
    }
    double share = Tracings.value(of.share());
    double start = cells.get(base.position()).value().orElse(0);
    for (int p = 0; p < amounts.length; p++) {
      amounts[p] = share * (cells.get(p).value().orElse(start) - start);
    }
  }

  // --- tables -----------------------------------------------------------------------------------

  private List<Rule> table(Statement.GradeFrom line, PieceDeclaration from) {
    if (!shared.inputs().hasTable(line.file())) {
      problems.add(problems.at(line.span(), "grade-table-absent").with("file", line.file()));
    }
    Optional<RuleTable> table = shared.inputs().table(line.file());
    List<Rule> rules = new ArrayList<>();
    if (table.isEmpty()) {
      whole = false;
      return rules;
    }
    List<RuleTable.Rule> rows =
        table.get().rules().stream()
            .filter(row -> row.piece().isEmpty() || row.piece().equals(from.scope().name()))
            .toList();
    if (rows.isEmpty()) {
      problems.add(
          problems
              .at(line.span(), "grade-table-without", from.scope().name())
              .with("file", line.file())
              .with("piece", from.scope().name()));
      whole = false;
    }
    List<RuleTable.Rule> left = new ArrayList<>(rows);
    while (!left.isEmpty()) {
      RuleTable.Rule first = left.remove(0);
      List<RuleTable.Rule> same = new ArrayList<>(List.of(first));
      left.removeIf(
          row ->
              row.edge().equals(first.edge())
                  && row.place().equals(first.place())
                  && row.upright() != first.upright()
                  && same.size() == 1
                  && same.add(row));
      if (first.edge().isEmpty()) {
        rules.addAll(numbered(first, same, line.span()));
      } else {
        rule(first, same, line.span()).ifPresent(rules::add);
      }
    }
    return rules;
  }

  /** A rule for every dot of its name that lies on an edge. */
  private List<Rule> numbered(RuleTable.Rule first, List<RuleTable.Rule> rows, Span span) {
    List<Rule> rules = new ArrayList<>();
    if (!(first.place() instanceof RulePlace.Dot named)) {
      return rules;
    }
    Optional<List<Vector>> moves = moves(rows);
    for (TracedLine dot : drawing.called(named.name())) {
      if (moves.isEmpty() || !dot.names().contains(group)) {
        continue;
      }
      for (int edge = 0; edge < edges.size(); edge++) {
        PathPlace place = edges.get(edge).nearest(dot.middle());
        if (place.point().distanceTo(dot.middle()) <= OutlineTracing.DOT_ON_LINE) {
          rules.add(new Rule(edge, place.distance(), moves.get(), span));
        }
      }
    }
    return rules;
  }

  private Optional<Rule> rule(RuleTable.Rule first, List<RuleTable.Rule> rows, Span span) {
    int edge = piece.indexOf(first.edge());
    if (edge < 0) {
      problems.add(
          Finding.fail("grade-table-edge", first.edge())
              .with("edge", first.edge())
              .with("piece", piece.scope().name())
              .with(
                  "known",
                  Argument.of(piece.edges().stream().map(each -> each.name().text()).toList()))
              .at(first.origin()));
      whole = false;
      return Optional.empty();
    }
    Optional<List<Vector>> moves = moves(rows);
    return moves.flatMap(
        known -> distance(edge, first.place(), span).map(at -> new Rule(edge, at, known, span)));
  }

  /** From the steps of the rows of one point to its moves; nothing where a step leaps. */
  private Optional<List<Vector>> moves(List<RuleTable.Rule> rows) {
    List<Vector> moves = new ArrayList<>(Collections.nCopies(count(), Vector.ZERO));
    for (RuleTable.Rule row : rows) {
      double[] into = new double[count()];
      for (RuleTable.Step step : row.steps()) {
        Optional<Size> from = shared.sizes().chart().size(step.from());
        Optional<Size> to = shared.sizes().chart().size(step.to());
        if (from.isEmpty() || to.isEmpty() || to.get().position() != from.get().position() + 1) {
          problems.add(
              Finding.fail("grade-table-step", row.edge())
                  .with("from", step.from())
                  .with("to", step.to())
                  .with("chart", shared.sizes().chart().file())
                  .at(row.origin()));
          whole = false;
          return Optional.empty();
        }
        into[to.get().position()] = step.mm();
      }
      double[] amounts = summed(into);
      for (int p = 0; p < count(); p++) {
        moves.set(p, moves.get(p).plus(vector(row.upright(), amounts[p])));
      }
    }
    return Optional.of(moves);
  }
}
