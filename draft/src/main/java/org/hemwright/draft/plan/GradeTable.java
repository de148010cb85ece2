package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.RuleTable;
import org.hemwright.pattern.traced.TracedLine;

/**
 * Rules that are read from a table beside the document.
 *
 * @param group the last name of the outline's line: the block that it lies in, of files that have
 *     blocks
 */
record GradeTable(TracedGrading graded, String group) {
  /** The rules that a table has for a piece. */
  List<GradeRule> rules(Statement.GradeFrom line, PieceDeclaration from) {
    if (!graded.shared().inputs().hasTable(line.file())) {
      graded
          .problems()
          .add(graded.problems().at(line.span(), "grade-table-absent").with("file", line.file()));
    }
    Optional<RuleTable> table = graded.shared().inputs().table(line.file());
    List<GradeRule> rules = new ArrayList<>();
    if (table.isEmpty()) {
      graded.amiss();
      return rules;
    }
    List<RuleTable.Rule> rows =
        table.get().rules().stream()
            .filter(row -> row.piece().isEmpty() || row.piece().equals(from.scope().name()))
            .toList();
    if (rows.isEmpty()) {
      graded.amiss(
          graded
              .problems()
              .at(line.span(), "grade-table-without", from.scope().name())
              .with("file", line.file())
              .with("piece", from.scope().name()));
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
  private List<GradeRule> numbered(RuleTable.Rule first, List<RuleTable.Rule> rows, Span span) {
    List<GradeRule> rules = new ArrayList<>();
    if (!(first.place() instanceof RulePlace.Dot named)) {
      return rules;
    }
    Optional<List<Vector>> moves = moves(rows);
    for (TracedLine dot : graded.drawing().called(named.name())) {
      if (moves.isEmpty() || !dot.names().contains(group)) {
        continue;
      }
      for (int edge = 0; edge < graded.edges().size(); edge++) {
        PathPlace place = graded.edges().get(edge).nearest(dot.middle());
        if (place.point().distanceTo(dot.middle()) <= OutlineTracing.DOT_ON_LINE) {
          rules.add(new GradeRule(edge, place.distance(), moves.get(), span));
        }
      }
    }
    return rules;
  }

  private Optional<GradeRule> rule(RuleTable.Rule first, List<RuleTable.Rule> rows, Span span) {
    int edge = graded.piece().indexOf(first.edge());
    if (edge < 0) {
      graded.amiss(
          Finding.fail("grade-table-edge", first.edge())
              .with("edge", first.edge())
              .with("piece", graded.piece().scope().name())
              .with(
                  "known",
                  Argument.of(
                      graded.piece().edges().stream().map(each -> each.name().text()).toList()))
              .at(first.origin()));
      return Optional.empty();
    }
    Optional<List<Vector>> moves = moves(rows);
    return moves.flatMap(
        known ->
            graded
                .distance(edge, first.place(), span)
                .map(at -> new GradeRule(edge, at, known, span)));
  }

  /** From the steps of the rows of one point to its moves; nothing where a step leaps. */
  private Optional<List<Vector>> moves(List<RuleTable.Rule> rows) {
    List<Vector> moves = new ArrayList<>(Collections.nCopies(graded.count(), Vector.ZERO));
    for (RuleTable.Rule row : rows) {
      double[] into = new double[graded.count()];
      for (RuleTable.Step step : row.steps()) {
        Optional<Size> from = graded.shared().sizes().chart().size(step.from());
        Optional<Size> to = graded.shared().sizes().chart().size(step.to());
        if (from.isEmpty() || to.isEmpty() || to.get().position() != from.get().position() + 1) {
          graded.amiss(
              Finding.fail("grade-table-step", row.edge())
                  .with("from", step.from())
                  .with("to", step.to())
                  .with("chart", graded.shared().sizes().chart().file())
                  .at(row.origin()));
          return Optional.empty();
        }
        into[to.get().position()] = step.mm();
      }
      double[] amounts = graded.summed(into);
      for (int p = 0; p < graded.count(); p++) {
        moves.set(p, moves.get(p).plus(TracedGrading.vector(row.upright(), amounts[p])));
      }
    }
    return Optional.of(moves);
  }
}
