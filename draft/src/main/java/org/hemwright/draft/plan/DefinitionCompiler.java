package org.hemwright.draft.plan;

import java.util.Optional;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.node.PointNode;
import org.hemwright.draft.plan.node.SolveNode;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;

/** Fills the slots kept for names with the nodes of their rules. */
final class DefinitionCompiler {
  private final Compilation shared;
  private final Compilers all;
  private final NodeList nodes;

  DefinitionCompiler(Compilation shared, Compilers all) {
    this.shared = shared;
    this.all = all;
    this.nodes = shared.nodes();
  }

  /** Compiles a line, if it gives a number or draws something. */
  void compile(Statement line, Scope scope) {
    if (line instanceof Statement.Let let) {
      number(let.name(), scope)
          .ifPresent(
              slot -> nodes.fill(slot, all.numbers().node(let.rule(), scope), let.rule().span()));
    } else if (line instanceof Statement.Solve solve) {
      number(solve.name(), scope).ifPresent(slot -> solve(slot, solve, scope));
    } else if (line instanceof Statement.Point point) {
      drawn(point.name(), scope)
          .ifPresent(
              slot ->
                  nodes.fill(slot, all.points().node(point.rule(), scope), point.rule().span()));
    } else if (line instanceof Statement.Path path) {
      drawn(path.name(), scope)
          .ifPresent(
              slot -> nodes.fill(slot, all.paths().node(path.rule(), scope), path.rule().span()));
    } else if (line instanceof Statement.Inner inner) {
      drawn(inner.name(), scope)
          .ifPresent(
              slot -> nodes.fill(slot, all.paths().node(inner.path(), scope), inner.path().span()));
    } else if (line instanceof Statement.Placement place) {
      drawn(place.name(), scope)
          .ifPresent(
              slot -> nodes.fill(slot, all.paths().node(place.path(), scope), place.path().span()));
    } else if (line instanceof Statement.Level level) {
      drawn(level.name(), scope)
          .ifPresent(
              slot ->
                  nodes.fill(
                      slot,
                      new PointNode.Same(shared.lookup().point(level.at(), scope)),
                      level.at().span()));
    }
  }

  private void solve(int slot, Statement.Solve solve, Scope scope) {
    Node node =
        SolveNode.of(
            all.numbers().slot(solve.left(), scope),
            all.numbers().slot(solve.right(), scope),
            all.numbers().slot(solve.low(), scope),
            all.numbers().slot(solve.high(), scope));
    nodes.fill(slot, node, solve.span());
  }

  /** The slot kept for a number, if this is the line that gives it. */
  private Optional<Integer> number(Name name, Scope scope) {
    nodes.about(scope.full(name.text()));
    Scope.NamedNumber number = scope.numbers().get(name.text());
    return number != null && number.span().equals(name.span())
        ? Optional.of(number.slot())
        : Optional.empty();
  }

  private Optional<Integer> drawn(Name name, Scope scope) {
    nodes.about(scope.full(name.text()));
    Drawn drawn = scope.drawn().get(name.text());
    Span own = name.span();
    return drawn != null && drawn.span().equals(own) ? Optional.of(drawn.slot()) : Optional.empty();
  }
}
