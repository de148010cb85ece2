package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.traced.GradedOutline;
import org.hemwright.pattern.traced.OutlineGrading;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hemwright.pattern.traced.RuleGrading;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.RulePoint;
import org.hemwright.pattern.traced.SizeGrading;

/** Reads how a traced outline is graded: by rules, by other traced sizes, or not at all. */
final class GradeReader {
  private final TracedGrading graded;
  private final List<PieceDeclaration> pieces;

  /**
   * A reader of one piece's rules.
   *
   * @param pieces all pieces, whose rules it may take
   */
  GradeReader(TracedGrading graded, List<PieceDeclaration> pieces) {
    this.graded = graded;
    this.pieces = pieces;
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
    List<String> names = graded.drawing().called(request.line()).get(0).names();
    GradeTable tables = new GradeTable(graded, names.get(names.size() - 1));
    List<GradeRule> rules = rules(graded.piece(), tables, 0);
    boolean asked =
        !all(Statement.Grade.class).isEmpty()
            || !all(Statement.GradeFrom.class).isEmpty()
            || !all(Statement.GradeAs.class).isEmpty();
    if (asked && !also.isEmpty()) {
      graded
          .problems()
          .add(
              graded
                  .problems()
                  .at(also.get(0).span(), "grade-both", graded.piece().scope().name()));
      return Optional.empty();
    }
    if (!also.isEmpty()) {
      return bySizes(request, also, other);
    }
    if (!graded.isWhole()) {
      return Optional.empty();
    }
    if (!asked) {
      GradedOutline same =
          new GradedOutline(
              graded.edges().stream().map(List::of).toList(),
              graded.edges().stream().map(List::of).toList());
      return Optional.of(position -> same);
    }
    return byRules(rules);
  }

  private <S extends Statement> List<S> all(Class<S> kind) {
    return all(graded.piece(), kind);
  }

  private static <S extends Statement> List<S> all(PieceDeclaration from, Class<S> kind) {
    return from.section().body().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private Optional<OutlineGrading> bySizes(
      OutlineRequest request,
      List<Statement.AlsoTraced> also,
      BiFunction<OutlineRequest, Statement.AlsoTraced, Optional<List<Path>>> other) {
    TreeMap<Integer, List<Path>> sizes = new TreeMap<>();
    sizes.put(graded.base().position(), graded.edges());
    for (Statement.AlsoTraced line : also) {
      Optional<Size> size = graded.shared().sizes().find(line.size());
      Optional<List<Path>> its = other.apply(line.outline().map(request::of).orElse(request), line);
      if (size.isEmpty() || its.isEmpty()) {
        graded.amiss();
      } else if (sizes.putIfAbsent(size.get().position(), its.get()) != null) {
        graded.amiss(
            graded
                .problems()
                .at(line.size().span(), "traced-size-twice", graded.piece().scope().name())
                .with("size", size.get().name()));
      }
    }
    return graded.isWhole()
        ? Optional.of(new SizeGrading(graded.edges(), sizes))
        : Optional.empty();
  }

  // --- rules ------------------------------------------------------------------------------------

  private Optional<OutlineGrading> byRules(List<GradeRule> rules) {
    List<RulePoint> points = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (int i = 0; i < graded.edges().size(); i++) {
      int next = (i + 1) % graded.edges().size();
      List<GradeRule> corner = new ArrayList<>();
      double end = graded.edges().get(i).length();
      for (GradeRule rule : rules) {
        boolean atEnd = rule.edge() == i && rule.distance() >= end - Tolerance.DRAWN_LENGTH;
        boolean atStart = rule.edge() == next && rule.distance() <= Tolerance.DRAWN_LENGTH;
        if (atEnd || atStart) {
          corner.add(rule);
        } else if (rule.edge() == i && rule.distance() > Tolerance.DRAWN_LENGTH) {
          points.add(new RulePoint(i, rule.distance(), rule.moves()));
        }
      }
      if (corner.isEmpty()) {
        missing.add(graded.name(i) + " at end");
      } else {
        agree(corner);
        points.add(new RulePoint(i, end, corner.get(0).moves()));
        points.add(new RulePoint(next, 0, corner.get(0).moves()));
      }
    }
    if (!missing.isEmpty()) {
      graded
          .problems()
          .add(
              graded
                  .problems()
                  .at(
                      graded.piece().section().name().span(),
                      "grade-corner-missing",
                      graded.piece().scope().name())
                  .with("corners", Argument.of(missing))
                  .with("first", missing.get(0)));
      return Optional.empty();
    }
    return graded.isWhole()
        ? Optional.of(new RuleGrading(graded.edges(), points))
        : Optional.empty();
  }

  /** Two rules for one corner must say the same. */
  private void agree(List<GradeRule> corner) {
    for (GradeRule rule : corner.subList(1, corner.size())) {
      for (int p = 0; p < rule.moves().size(); p++) {
        Vector gap = rule.moves().get(p).minus(corner.get(0).moves().get(p));
        if (gap.length() > Tolerance.DRAWN_LENGTH) {
          graded.amiss(
              graded
                  .problems()
                  .at(rule.span(), "grade-corner-twice", graded.piece().scope().name())
                  .with("line", graded.problems().line(corner.get(0).span()))
                  .with("size", graded.shared().sizes().chart().sizes().get(p).name())
                  .with("gap", Argument.mm(gap.length())));
          return;
        }
      }
    }
  }

  /** The rules that a piece's lines give, on the edges of this graded.piece(). */
  private List<GradeRule> rules(PieceDeclaration from, GradeTable tables, int depth) {
    List<GradeRule> rules = new ArrayList<>();
    for (Statement line : from.section().body()) {
      if (line instanceof Statement.Grade grade) {
        rule(grade).ifPresent(rules::add);
      } else if (line instanceof Statement.GradeFrom table) {
        rules.addAll(tables.rules(table, from));
      } else if (line instanceof Statement.GradeAs as) {
        rules.addAll(as(as, tables, depth));
      }
    }
    return rules;
  }

  private List<GradeRule> as(Statement.GradeAs as, GradeTable tables, int depth) {
    Optional<PieceDeclaration> source =
        pieces.stream()
            .filter(
                other ->
                    other.scope().name().equals(as.piece().text()) && !other.equals(graded.piece()))
            .filter(other -> other.section().traced().isPresent())
            .findFirst();
    if (source.isEmpty() || depth > 0) {
      List<String> known =
          pieces.stream()
              .filter(
                  other -> other.section().traced().isPresent() && !other.equals(graded.piece()))
              .map(other -> other.scope().name())
              .distinct()
              .toList();
      Unknown.tell(graded.problems(), as.piece(), "traced-piece", known);
      graded.amiss();
      return List.of();
    }
    return rules(source.get(), tables, depth + 1);
  }

  private Optional<GradeRule> rule(Statement.Grade grade) {
    Optional<Integer> edge = graded.edge(grade.edge());
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
    Optional<Double> distance = graded.distance(edge.get(), place, grade.span());
    List<Vector> moves = new ArrayList<>(Collections.nCopies(graded.count(), Vector.ZERO));
    for (Statement.GradeWay way : grade.ways()) {
      double[] amounts = new GradeSteps(graded).amounts(way.step());
      for (int p = 0; p < graded.count(); p++) {
        double amount = way.negative() ? -amounts[p] : amounts[p];
        moves.set(p, moves.get(p).plus(TracedGrading.vector(way.upright(), amount)));
      }
    }
    return distance.map(at -> new GradeRule(edge.get(), at, moves, grade.span()));
  }
}
