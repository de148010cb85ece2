package org.hemwright.draft.plan.shape;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;

/**
 * A dart whose cloth is drafted: its apex, its place on an edge, and how wide it opens there.
 *
 * @param apex the slot of its apex
 * @param wide the slot of its opening at the edge, a length, or of its angle
 * @param how how it is stitched and pressed
 */
public record DartForm(String name, EdgeSpot spot, int apex, int wide, Sewing how, Span span)
    implements ShapeForm {
  /**
   * How a dart is stitched and pressed.
   *
   * @param shortOf the slot of how far the stitched point stays short of the apex, or {@link
   *     Node#NONE}
   * @param blend the slot of how far beside it the edge is redrawn, or NONE for all the way
   * @param towardStart whether it is pressed toward her start of the edge
   */
  public record Sewing(int shortOf, int blend, boolean towardStart, Origin origin) {
    int[] inputs() {
      return Node.slots(shortOf, blend);
    }

    void check(Typing typing) {
      for (int slot : inputs()) {
        typing.length(slot);
      }
    }

    double shortOf(Values values) {
      return shortOf == Node.NONE ? 0 : Math.max(0, values.number(shortOf));
    }

    OptionalDouble blend(Values values) {
      return blend == Node.NONE
          ? OptionalDouble.empty()
          : OptionalDouble.of(Math.max(0, values.number(blend)));
    }
  }

  @Override
  public int[] inputs() {
    return ShapeForm.with(ShapeForm.with(spot.inputs(), how.inputs()), apex, wide);
  }

  @Override
  public void check(Typing typing) {
    spot.place().check(typing);
    how.check(typing);
    if (typing.kind(wide) != Kind.ANGLE) {
      typing.length(wide);
    }
  }

  /** The dart in one size. */
  Darts.Dart dart(Values values, DrawnOutline outline) {
    Point inner = values.point(apex);
    double at = spot.one(values, outline);
    Point place = spot.point(outline, at);
    double reach = inner.distanceTo(place);
    double asked = values.number(wide);
    boolean byAngle = values.program().kind(wide) == Kind.ANGLE;
    if (!(asked > 0) || asked >= (byAngle ? Math.PI : 2 * reach)) {
      Cause wrong = Cause.of("dart-opening").with("dart", name).at(inner);
      throw new Failure(
          byAngle
              ? wrong.with(
                  "opening", Argument.of(org.hemwright.pattern.quantity.Quantity.angle(asked)))
              : wrong.with("opening", Argument.mm(asked)));
    }
    if (!outline.stitchLine().contains(inner)) {
      throw new Failure(
          Cause.of("dart-apex-outside")
              .with("dart", name)
              .with("apex", values.program().text(apex))
              .at(inner));
    }
    double angle = byAngle ? asked : 2 * StrictMath.asin(asked / (2 * reach));
    return new Darts.Dart(name, spot, at, inner, angle, angle, false, how, span);
  }

  /** The names of darts that lines before this one give. */
  public static boolean names(List<ShapeForm> forms, String dart) {
    return forms.stream().anyMatch(form -> form.dartNamed().filter(dart::equals).isPresent());
  }

  @Override
  public Optional<String> dartNamed() {
    return Optional.of(name);
  }
}
