package org.hemwright.draft.plan.shape;

import java.util.Optional;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.syntax.Span;

/**
 * A dart turned about its apex: into another place, whole or a share of it, or into another dart of
 * the same apex. The angle stays (handbook section 1, "Darts").
 *
 * @param dart the dart that gives
 * @param share the slot of the share that moves, or {@link Node#NONE} for all of it
 * @param to the place that opens; nothing where another dart takes it
 * @param as the name of the new dart, or of the dart that takes it; nothing where the place stays
 *     open as flare
 * @param how how a new dart is stitched and pressed
 */
public record DartMove(
    String dart,
    int share,
    Optional<EdgeSpot> to,
    Optional<String> as,
    DartForm.Sewing how,
    Span span)
    implements ShapeForm {
  @Override
  public Optional<String> dartNamed() {
    return as;
  }

  @Override
  public int[] inputs() {
    int[] spot = to.map(EdgeSpot::inputs).orElseGet(Node::slots);
    return ShapeForm.with(ShapeForm.with(spot, how.inputs()), share);
  }

  @Override
  public void check(Typing typing) {
    to.ifPresent(spot -> spot.place().check(typing));
    how.check(typing);
    if (share != Node.NONE) {
      typing.plain(share);
    }
  }
}
