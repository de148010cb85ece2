package org.hemwright.draft.plan.piece;

import java.util.List;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.MotionNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Argument;

/**
 * An outline that has been looked over: it does not cross itself, and its fold edge is straight.
 *
 * @param outline the slot of the outline
 * @param fold the fold edge's place in the designer's list, or {@link Node#NONE}
 * @param names the names of the edges in her list
 */
public record SimpleOutlineNode(int outline, int fold, List<String> names)
    implements DrawnNode<DrawnOutline> {
  public SimpleOutlineNode {
    names = List.copyOf(names);
  }

  @Override
  public int[] inputs() {
    return Node.slots(outline);
  }

  @Override
  public int cost() {
    return 100;
  }

  @Override
  public DrawnOutline value(Values values) {
    DrawnOutline drawn = values.thing(outline, DrawnOutline.class);
    int curves = drawn.stitchLine().path().curves().size();
    values.spend(10L * curves * curves);
    List<Meeting> crossings = drawn.stitchLine().crossings();
    if (!crossings.isEmpty()) {
      Point place = crossings.get(0).point();
      throw new Failure(
          Cause.of("outline-crosses")
              .with("edges", Argument.of(edgesAt(drawn, crossings.get(0))))
              .with("x", Argument.mm(place.x()))
              .with("y", Argument.mm(place.y()))
              .with("count", Argument.of(crossings.size()))
              .at(place));
    }
    if (fold != Node.NONE && !MotionNode.Mirrored.isStraight(drawn.edge(fold).path())) {
      throw new Failure(Cause.of("fold-bent").with("edge", names.get(fold)));
    }
    return drawn;
  }

  private List<String> edgesAt(DrawnOutline drawn, Meeting crossing) {
    String one = edgeAt(drawn, crossing.distanceOnThis());
    String other = edgeAt(drawn, crossing.distanceOnOther());
    return one.equals(other) ? List.of(one) : List.of(one, other);
  }

  private String edgeAt(DrawnOutline drawn, double distance) {
    double walked = 0;
    for (DrawnOutline.DrawnEdge edge : drawn.edges()) {
      walked += edge.path().length();
      if (distance < walked) {
        return names.get(edge.index());
      }
    }
    return names.get(drawn.edges().get(drawn.edges().size() - 1).index());
  }
}
