package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.draft.plan.name.Lookup;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.MotionNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.syntax.Move;

/** Turns moves into nodes. */
final class MoveCompiler {
  private final Compilation shared;
  private final Compilers all;

  MoveCompiler(Compilation shared, Compilers all) {
    this.shared = shared;
    this.all = all;
  }

  /** The slot of one move after another; {@link Node#NONE} for none. */
  int slot(List<Move> moves, Scope scope) {
    int motion = Node.NONE;
    for (Move move : moves) {
      int next = slot(move, scope);
      motion =
          motion == Node.NONE
              ? next
              : shared.nodes().add(new MotionNode.Then(motion, next), move.span());
    }
    return motion;
  }

  /** The slot of a move. */
  int slot(Move move, Scope scope) {
    return shared.nodes().add(node(move, scope), move.span());
  }

  private MotionNode node(Move move, Scope scope) {
    Lookup lookup = shared.lookup();
    if (move instanceof Move.Mirrored mirrored) {
      return new MotionNode.Mirrored(all.paths().slot(mirrored.axis(), scope));
    } else if (move instanceof Move.Moved moved) {
      return new MotionNode.Moved(
          all.directions().slot(moved.direction(), scope, Node.NONE),
          all.numbers().slot(moved.distance(), scope));
    } else if (move instanceof Move.MovedFromTo moved) {
      return new MotionNode.MovedFromTo(
          lookup.point(moved.from(), scope), lookup.point(moved.to(), scope));
    }
    Move.Turned turned = (Move.Turned) move;
    return new MotionNode.Turned(
        all.numbers().slot(turned.angle(), scope), lookup.point(turned.about(), scope));
  }
}
