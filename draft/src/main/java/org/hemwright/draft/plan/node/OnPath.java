package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.SewnEdge;

/** Where on a path something lies, as a length from the path's start (mm). */
public final class OnPath {
  private OnPath() {}

  /** Where a point lies, which must be on the path within {@link Tolerance#DRAWN_LENGTH}. */
  public static double distance(Values values, int path, int point) {
    values.spend(40);
    Path line = values.path(path);
    Point place = values.point(point);
    if (place.equals(line.start())) {
      return 0;
    }
    if (place.equals(line.end())) {
      return line.length();
    }
    PathPlace nearest = line.nearest(place);
    double gap = nearest.point().distanceTo(place);
    if (gap > Tolerance.DRAWN_LENGTH) {
      throw new Failure(
          Cause.of("point-off-path")
              .with("point", values.program().text(point))
              .with("path", values.program().text(path))
              .with("gap", Argument.mm(gap))
              .at(place));
    }
    return nearest.distance();
  }

  /** Where a length or a share lies, as sewn, from the start or the end. */
  public static double distance(Values values, int path, int amount, boolean fromEnd) {
    if (!values.isSewn(path)) {
      double length = values.path(path).length();
      return distance(values, length, amount, fromEnd, values.program().text(path));
    }
    SewnEdge sewn = values.sewn(path);
    return sewn.placeOf(
        distance(values, sewn.length(), amount, fromEnd, values.program().text(path)));
  }

  /** Where a length or a share lies on something of a length (mm), from its start or its end. */
  public static double distance(
      Values values, double length, int amount, boolean fromEnd, String path) {
    Kind kind = values.program().kind(amount);
    double asked = values.number(amount) * (kind == Kind.LENGTH ? 1 : length);
    if (!(asked >= -Tolerance.DRAWN_LENGTH && asked <= length + Tolerance.DRAWN_LENGTH)) {
      throw new Failure(
          Cause.of("place-off-path")
              .with("path", path)
              .with("asked", Argument.mm(asked))
              .with("length", Argument.mm(length)));
    }
    double place = Math.max(0, Math.min(length, asked));
    return fromEnd ? length - place : place;
  }
}
