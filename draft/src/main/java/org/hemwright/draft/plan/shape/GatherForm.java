package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Intake;

/**
 * An edge, or a stretch of it, drawn up with gathering stitches.
 *
 * @param edge the edge's place in the designer's list
 * @param edgeName its name
 * @param from the slot of a point on it, or {@link Node#NONE} for its ends
 * @param to the slot of another, or NONE
 * @param drawnTo the slot of its length when drawn up, or of the share that is left
 */
public record GatherForm(
    String name, int edge, String edgeName, int from, int to, int drawnTo, Origin origin, Span span)
    implements ShapeForm {
  @Override
  public int[] inputs() {
    return Node.slots(from, to, drawnTo);
  }

  @Override
  public void check(Typing typing) {
    typing.lengthOrShare(drawnTo);
  }

  /** The edge with its gathers. */
  DrawnEdge on(Values values, DrawnEdge drawn, DrawnOutline drafted) {
    double length = drawn.path().length();
    double start = from == Node.NONE ? 0 : at(values, from, drawn, drafted);
    double end = to == Node.NONE ? length : at(values, to, drawn, drafted);
    double low = Math.min(start, end);
    double high = Math.max(start, end);
    for (Intake other : drawn.intakes()) {
      if (other.from() < high && low < other.to()) {
        throw new Failure(
            Cause.of("gathers-over-fold").with("gathers", name).with("other", other.name()));
      }
    }
    double plain = high - low;
    boolean share = values.program().kind(drawnTo) != Kind.LENGTH;
    double sewn = values.number(drawnTo) * (share ? plain : 1);
    if (!(sewn > 0 && sewn <= plain + Tolerance.SAME_POINT)) {
      throw new Failure(
          Cause.of("gathers-longer")
              .with("gathers", name)
              .with("plain", Argument.mm(plain))
              .with("sewn", Argument.mm(sewn)));
    }
    List<Intake> all = new ArrayList<>(drawn.intakes());
    all.add(new Intake.Gathers(name, edgeName, low, high, Math.min(sewn, plain), origin));
    return new DrawnEdge(
        drawn.index(), drawn.path(), drawn.reversed(), all, drawn.closed(), drawn.opened());
  }

  private double at(Values values, int slot, DrawnEdge drawn, DrawnOutline shaped) {
    Point drafted = values.point(slot);
    Point point = shaped.motionAt(drafted).apply(drafted);
    Optional<Double> on =
        Optional.of(drawn.path().nearest(point))
            .filter(place -> place.point().distanceTo(point) <= Tolerance.DRAWN_LENGTH)
            .map(place -> place.distance());
    return on.orElseThrow(
        () ->
            new Failure(
                Cause.of("point-off-path")
                    .with("point", values.program().text(slot))
                    .with("path", edgeName)
                    .with("gap", Argument.mm(drawn.path().nearest(point).point().distanceTo(point)))
                    .at(point)));
  }
}
