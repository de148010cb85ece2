package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;

/**
 * A rectangle from the origin, right then up; its edges are the lower, the right, the upper and the
 * left, in that order. As drawn, the lower and the upper run to the right and the two ends run up.
 */
public record RectangleNode(int width, int height) implements DrawnNode<DrawnOutline> {
  @Override
  public int[] inputs() {
    return Node.slots(width, height);
  }

  @Override
  public void check(Typing typing) {
    typing.length(width);
    typing.length(height);
  }

  @Override
  public DrawnOutline value(Values values) {
    double wide = values.number(width);
    double high = values.number(height);
    if (!(wide > Tolerance.SAME_POINT && high > Tolerance.SAME_POINT)) {
      throw new Failure(
          Cause.of("rectangle-flat")
              .with("width", Argument.mm(wide))
              .with("height", Argument.mm(high)));
    }
    Path round =
        Path.polyline(
            List.of(
                Point.ORIGIN,
                new Point(wide, 0),
                new Point(wide, high),
                new Point(0, high),
                Point.ORIGIN));
    List<DrawnEdge> edges = new ArrayList<>();
    for (Curve side : round.curves()) {
      boolean back = edges.size() >= 2;
      edges.add(new DrawnEdge(edges.size(), Path.of(side), back));
    }
    return new DrawnOutline(Outline.of(round), edges);
  }
}
