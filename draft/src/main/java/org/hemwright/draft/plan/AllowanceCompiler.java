package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.plan.PieceDeclaration.DeclaredEdge;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.piece.AllowanceNode;
import org.hemwright.draft.plan.piece.CornerRules;
import org.hemwright.draft.plan.piece.PieceNode.PieceEdge;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.piece.CornerFinish;

/** Turns allowances and corners into nodes and rules. */
final class AllowanceCompiler {
  private final Compilers all;
  private final NodeList nodes;
  private final Problems problems;
  private final PieceDeclaration piece;
  private final Scope scope;
  private final PieceLines lines;

  AllowanceCompiler(Compilation shared, Compilers all, PieceDeclaration piece, PieceLines lines) {
    this.all = all;
    this.nodes = shared.nodes();
    this.problems = shared.problems();
    this.piece = piece;
    this.scope = piece.scope();
    this.lines = lines;
  }

  /** The edges with the slots of their allowances. */
  List<PieceEdge> edges(int fold) {
    Optional<Statement.Allowances> said = lines.one(Statement.Allowances.class);
    Map<Integer, Integer> own = new LinkedHashMap<>();
    said.ifPresent(allowances -> own.putAll(own(allowances, fold)));
    int usual =
        said.flatMap(Statement.Allowances::usual)
            .map(rule -> slot(List.of(rule), false, rule.span(), scope.name()))
            .orElse(Node.NONE);
    int none = Node.NONE;
    List<PieceEdge> edges = new ArrayList<>();
    for (int i = 0; i < piece.edges().size(); i++) {
      DeclaredEdge edge = piece.edges().get(i);
      int slot = own.getOrDefault(i, i == fold ? Node.NONE : usual);
      if (slot == Node.NONE) {
        if (none == Node.NONE) {
          none = nodes.add(new AllowanceNode(List.of(), false), edge.name().span());
        }
        slot = none;
      }
      edges.add(
          new PieceEdge(edge.name().text(), i == fold, slot, problems.origin(edge.name().span())));
    }
    return edges;
  }

  private Map<Integer, Integer> own(Statement.Allowances said, int fold) {
    Map<Integer, Integer> own = new LinkedHashMap<>();
    for (Statement.EdgeAllowance each : said.edges()) {
      Optional<Integer> index = lines.edge(each.edge());
      int slot = slot(each.folds(), each.turnedBack(), each.span(), scope.full(each.edge().text()));
      if (index.isEmpty()) {
        continue;
      }
      if (index.get() == fold && !each.folds().isEmpty()) {
        problems.add(
            problems
                .at(each.span(), "fold-with-allowance", scope.full(each.edge().text()))
                .with("edge", each.edge().text()));
      } else if (own.putIfAbsent(index.get(), slot) != null) {
        problems.add(
            problems
                .at(each.span(), "allowance-twice", scope.full(each.edge().text()))
                .with("edge", each.edge().text()));
      }
    }
    return own;
  }

  private int slot(List<NumberRule> folds, boolean turnedBack, Span span, String subject) {
    nodes.about(subject);
    List<Integer> depths = new ArrayList<>();
    for (NumberRule fold : folds) {
      depths.add(all.numbers().slot(fold, scope));
    }
    int slot = nodes.add(new AllowanceNode(depths, turnedBack || folds.size() > 1), span);
    nodes.about(scope.name());
    return slot;
  }

  /** How corners are finished, as far as the designer says. */
  CornerRules corners() {
    Map<Set<String>, CornerFinish> stated = new LinkedHashMap<>();
    for (Statement.Corner corner : lines.all(Statement.Corner.class)) {
      Optional<Integer> first = lines.edge(corner.first());
      Optional<Integer> second = lines.edge(corner.second());
      if (first.isEmpty() || second.isEmpty()) {
        continue;
      }
      String one = corner.first().text();
      String other = corner.second().text();
      if (!neighbours(first.get(), second.get())) {
        problems.add(
            problems
                .at(corner.span(), "no-such-corner", scope.name())
                .with("first", one)
                .with("second", other));
        continue;
      }
      Optional<CornerFinish> finish = finish(corner);
      if (finish.isPresent() && stated.putIfAbsent(Set.of(one, other), finish.get()) != null) {
        problems.add(
            problems
                .at(corner.span(), "corner-twice", scope.name())
                .with("first", one)
                .with("second", other));
      }
    }
    return new CornerRules(stated);
  }

  private boolean neighbours(int first, int second) {
    int count = piece.edges().size();
    return first != second && ((first + 1) % count == second || (second + 1) % count == first);
  }

  private Optional<CornerFinish> finish(Statement.Corner corner) {
    if (corner.finish() instanceof Statement.Finish.Mitred mitred) {
      if (mitred.limit().isEmpty()) {
        return Optional.of(CornerFinish.USUAL);
      }
      double limit = mitred.limit().get().value() * mitred.limit().get().unit().factor();
      if (!(limit >= 1)) {
        problems.add(
            problems
                .at(mitred.limit().get().span(), "mitre-limit", scope.name())
                .with("limit", problems.text(mitred.limit().get().span())));
        return Optional.empty();
      }
      return Optional.of(new CornerFinish.Mitred(limit));
    } else if (corner.finish() instanceof Statement.Finish.Square square) {
      return ofCorner(corner, square.edge()).map(CornerFinish.Square::new);
    } else if (corner.finish() instanceof Statement.Finish.TurnedBack turned) {
      return ofCorner(corner, turned.edge()).map(CornerFinish.TurnedBack::new);
    }
    return Optional.of(new CornerFinish.Stepped());
  }

  private Optional<String> ofCorner(Statement.Corner corner, Name edge) {
    String name = edge.text();
    if (name.equals(corner.first().text()) || name.equals(corner.second().text())) {
      return Optional.of(name);
    }
    problems.add(
        problems
            .at(edge.span(), "corner-of-other-edge", scope.name())
            .with("edge", name)
            .with("first", corner.first().text())
            .with("second", corner.second().text()));
    return Optional.empty();
  }
}
