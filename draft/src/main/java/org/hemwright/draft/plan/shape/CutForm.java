package org.hemwright.draft.plan.shape;

import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;

/**
 * A cut from one edge to another that is spread, or several (handbook section 1, "Slash and
 * spread").
 *
 * @param far where the cut opens
 * @param near where it ends: a hinge, unless it opens there too
 * @param spread the slot of how far it opens at the far edge, a length, or of the angle it turns by
 * @param atNear the slot of how far it opens at the near edge, or {@link Node#NONE}
 * @param blend the slot of how far beside it the edges are redrawn, or NONE for the usual
 * @param asCut whether the edges are left as cut
 */
public record CutForm(
    EdgeSpot far, EdgeSpot near, int spread, int atNear, int blend, boolean asCut, Span span)
    implements ShapeForm {
  @Override
  public int[] inputs() {
    return ShapeForm.with(ShapeForm.with(far.inputs(), near.inputs()), spread, atNear, blend);
  }

  @Override
  public void check(Typing typing) {
    far.place().check(typing);
    near.place().check(typing);
    if (typing.kind(spread) != Kind.ANGLE) {
      typing.length(spread);
    }
    for (int slot : Node.slots(atNear, blend)) {
      typing.length(slot);
    }
  }

  /** How far the far and the near end open, for a cut between two points (mm). */
  double[] widths(Values values, Point from, Point to) {
    double length = from.distanceTo(to);
    double asked = values.number(spread);
    if (values.program().kind(spread) == Kind.ANGLE) {
      if (!(asked >= 0 && asked < Math.PI)) {
        throw new Failure(
            Cause.of("cut-spread").with("spread", Argument.of(Quantity.angle(asked))).at(from));
      }
      return new double[] {2 * length * StrictMath.sin(asked / 2), 0};
    }
    double other = atNear == Node.NONE ? 0 : values.number(atNear);
    if (!(asked >= 0 && other >= 0 && Math.abs(asked - other) < 2 * length)) {
      throw new Failure(
          Cause.of("cut-spread")
              .with("spread", Argument.mm(asked < 0 || other >= 0 ? asked : other))
              .at(from));
    }
    return new double[] {asked, other};
  }
}
