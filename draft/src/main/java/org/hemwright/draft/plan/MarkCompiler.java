package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.piece.MarkNode;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.PathTerm;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.finding.Origin;

/** Turns drills, inner and placement lines, labels, levels and the rest into nodes. */
final class MarkCompiler {
  private final Compilation shared;
  private final Compilers all;
  private final PieceDeclaration piece;
  private final Scope scope;

  MarkCompiler(Compilation shared, Compilers all, PieceDeclaration piece) {
    this.shared = shared;
    this.all = all;
    this.piece = piece;
    this.scope = piece.scope();
  }

  /**
   * The slots of the marks, in the order of the document.
   *
   * @param grain the slot of the grain arrow, or {@link Node#NONE}
   * @param within goes on in some sizes only, and says whether there are any
   * @param everywhere goes on in all sizes of the piece
   */
  List<Integer> marks(int grain, Predicate<Optional<Statement.Sizes>> within, Runnable everywhere) {
    List<Integer> marks = new ArrayList<>();
    for (Statement line : piece.section().body()) {
      everywhere.run();
      if (within.test(sizes(line))) {
        node(line, grain).ifPresent(node -> marks.add(shared.nodes().add(node, line.span())));
      }
    }
    return marks;
  }

  private static Optional<Statement.Sizes> sizes(Statement line) {
    if (line instanceof Statement.Drill drill) {
      return drill.sizes();
    }
    return line instanceof Statement.Label label ? label.sizes() : Optional.empty();
  }

  private Optional<Node> node(Statement line, int grain) {
    Origin origin = shared.problems().origin(line.span());
    if (line instanceof Statement.Drill drill) {
      return Optional.of(
          new MarkNode.Drill(drill.name().text(), point(drill.at()), drill.text(), origin));
    } else if (line instanceof Statement.Inner inner) {
      return slot(inner.name().text())
          .map(path -> piece.carriedLine(shared.nodes(), path))
          .map(path -> new MarkNode.Line(inner.name().text(), path, false, inner.text(), origin));
    } else if (line instanceof Statement.Placement place) {
      return slot(place.name().text())
          .map(path -> piece.carriedLine(shared.nodes(), path))
          .map(path -> new MarkNode.Line(place.name().text(), path, true, place.text(), origin));
    } else if (line instanceof Statement.Label label) {
      return Optional.of(new MarkNode.Label(label.text(), point(label.at()), origin));
    } else if (line instanceof Statement.Level level) {
      return slot(level.name().text())
          .map(point -> piece.carried(shared.nodes(), point))
          .map(point -> new MarkNode.Level(level.name().text(), point, origin));
    } else if (line instanceof Statement.PieceStretch stretch) {
      return needsGrain(stretch, "stretch", grain)
          ? Optional.of(new MarkNode.Stretch(stretch.across(), grain, origin))
          : Optional.empty();
    } else if (line instanceof Statement.Lengthen lengthen) {
      int at = point(lengthen.at());
      return needsGrain(lengthen, "lengthen", grain)
          ? Optional.of(new MarkNode.Lengthen(at, grain, piece.outline(), origin))
          : Optional.empty();
    }
    return line instanceof Statement.Split split
        ? Optional.of(split(split, origin))
        : Optional.empty();
  }

  private Node split(Statement.Split split, Origin origin) {
    List<Integer> lines = new ArrayList<>();
    for (PathTerm line : split.lines()) {
      lines.add(piece.carriedLine(shared.nodes(), all.paths().slot(line, scope)));
    }
    return new MarkNode.Split(
        split.name().text(),
        lines,
        all.numbers().slot(split.allowance(), scope),
        split.parts().stream().map(Name::text).toList(),
        origin);
  }

  private int point(Reference at) {
    return piece.carried(shared.nodes(), shared.lookup().point(at, scope));
  }

  private Optional<Integer> slot(String name) {
    return Optional.ofNullable(scope.drawn().get(name)).map(Drawn::slot);
  }

  private boolean needsGrain(Statement line, String what, int grain) {
    boolean unread =
        piece.section().body().stream()
            .anyMatch(
                other -> other instanceof Statement.Unread missed && missed.word().equals("grain"));
    if (grain == Node.NONE && !unread) {
      shared
          .problems()
          .add(
              shared
                  .problems()
                  .at(line.span(), "grain-needed", scope.name())
                  .with("what", what)
                  .with("piece", scope.name()));
    }
    return grain != Node.NONE;
  }
}
