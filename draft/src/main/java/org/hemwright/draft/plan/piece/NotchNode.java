package org.hemwright.draft.plan.piece;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Notch;

/**
 * The notches that one statement puts on an edge; none where its condition does not hold.
 *
 * @param edge the slot of the edge's path, in the designer's direction
 * @param when the slot of the condition, or {@link Node#NONE}
 */
public record NotchNode(
    String piece,
    String edgeName,
    int edge,
    PlaceForm place,
    int when,
    Notch.Kind kind,
    Optional<String> name,
    Origin origin)
    implements DrawnNode<EdgeNotches.Several>, ChoiceNode {
  @Override
  public int[] inputs() {
    return IntStream.concat(IntStream.of(Node.slots(edge, when)), IntStream.of(place.inputs()))
        .toArray();
  }

  @Override
  public void check(Typing typing) {
    place.check(typing);
  }

  @Override
  public EdgeNotches.Several value(Values values) {
    if (when != Node.NONE) {
      values.need(when);
      if (values.number(when) == 0) {
        return new EdgeNotches.Several(List.of());
      }
    }
    values.need(edge);
    for (int input : place.inputs()) {
      values.need(input);
    }
    return new EdgeNotches.Several(
        List.of(new EdgeNotches(piece, edgeName, place.on(values, edge), kind, name, origin)));
  }
}
