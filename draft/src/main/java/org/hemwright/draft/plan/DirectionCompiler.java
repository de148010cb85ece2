package org.hemwright.draft.plan;

import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.DirectionNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.syntax.Direction;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.geometry.Vector;

/** Turns directions into nodes. */
final class DirectionCompiler {
  private final Compilation shared;
  private final Compilers all;

  DirectionCompiler(Compilation shared, Compilers all) {
    this.shared = shared;
    this.all = all;
  }

  /**
   * The slot of a direction.
   *
   * @param stand the slot of the point where one stands, or {@link Node#NONE}
   */
  int slot(Direction direction, Scope scope, int stand) {
    return shared.nodes().add(node(direction, scope, stand), direction.span());
  }

  private Node node(Direction direction, Scope scope, int stand) {
    if (direction instanceof Direction.Compass compass) {
      return new DirectionNode.Fixed(
          switch (compass.way()) {
            case UP -> new Vector(0, 1);
            case DOWN -> new Vector(0, -1);
            case LEFT -> new Vector(-1, 0);
            case RIGHT -> new Vector(1, 0);
          });
    } else if (direction instanceof Direction.AtAngle at) {
      return new DirectionNode.AtAngle(all.numbers().slot(at.angle(), scope));
    } else if (direction instanceof Direction.Toward toward) {
      return standing(direction, toward.point(), scope, stand, false);
    } else if (direction instanceof Direction.AwayFrom away) {
      return standing(direction, away.point(), scope, stand, true);
    } else if (direction instanceof Direction.AsFromTo as) {
      return new DirectionNode.FromTo(
          shared.lookup().point(as.from(), scope), shared.lookup().point(as.to(), scope), false);
    } else if (direction instanceof Direction.Along along) {
      return new DirectionNode.AlongPath(stand, all.paths().slot(along.path(), scope), 0);
    } else if (direction instanceof Direction.SquareTo square) {
      return new DirectionNode.AlongPath(
          stand, all.paths().slot(square.path(), scope), square.toTheRight() ? -1 : 1);
    }
    Direction.Turned turned = (Direction.Turned) direction;
    return new DirectionNode.Turned(
        all.numbers().slot(turned.angle(), scope), slot(turned.from(), scope, stand));
  }

  private Node standing(
      Direction direction, Reference point, Scope scope, int stand, boolean back) {
    int to = shared.lookup().point(point, scope);
    if (stand == Node.NONE) {
      shared.problems().add(shared.problems().at(direction.span(), "nowhere-to-stand"));
      return new Broken();
    }
    return new DirectionNode.FromTo(stand, to, back);
  }
}
