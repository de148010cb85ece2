package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;

/**
 * Pleats on an edge: the piece is cut from there to another edge, widened by twice the depth of
 * each fold, and folded at the first edge.
 *
 * @param spot where the first lies on the edge that is sewn
 * @param to where its folds end
 * @param depth the slot of how deep the cloth beneath a fold reaches
 * @param kind how they are folded
 * @param fades whether they run out to nothing at the other edge
 * @param count how many, side by side toward her end of the edge
 * @param apart the slot of how far they lie apart, or {@link Node#NONE} for one
 */
public record PleatForm(
    String name,
    EdgeSpot spot,
    EdgeSpot to,
    int depth,
    Kind kind,
    boolean fades,
    int count,
    int apart,
    Origin origin,
    Span span)
    implements ShapeForm {
  /** Longer than any piece, so that a line beside a pleat meets both edges (mm). */
  private static final double BEYOND = 10_000;

  /** How a pleat is folded. */
  public enum Kind {
    /** One fold, which points toward her start of the edge. */
    KNIFE_TOWARD_START,
    /** One fold, which points toward her end. */
    KNIFE_TOWARD_END,
    /** Two folds away from each other, which meet beneath. */
    BOX,
    /** Two folds toward each other, which meet on top. */
    INVERTED
  }

  /**
   * A cut that is folded at its first end.
   *
   * @param at along the edge that is sewn, counter-clockwise (mm)
   * @param farAt along the other edge
   * @param folds for each fold whether the cloth beneath lies toward where the outline comes from
   */
  record Cut(double at, double farAt, List<Boolean> folds) {
    Cut {
      folds = List.copyOf(folds);
    }
  }

  @Override
  public int[] inputs() {
    return ShapeForm.with(ShapeForm.with(spot.inputs(), to.inputs()), depth, apart);
  }

  @Override
  public void check(Typing typing) {
    spot.place().check(typing);
    to.place().check(typing);
    typing.length(depth);
    if (apart != Node.NONE) {
      typing.length(apart);
    }
  }

  /** How deep each fold is (mm). */
  double deep(Values values) {
    double deep = values.number(depth);
    if (!(deep > 0)) {
      throw new Failure(
          Cause.of("pleat-depth").with("pleat", name).with("depth", Argument.mm(deep)));
    }
    return deep;
  }

  /** The cuts in one size, each with its folds in the order of the outline. */
  List<Cut> cuts(Values values, DrawnOutline outline) {
    boolean reversed = spot.isReversed(outline);
    double deep = deep(values);
    List<Cut> cuts = new ArrayList<>();
    for (double[] each : EdgeSpot.pairs(spot, to, values, outline)) {
      Cut given = new Cut(each[0], each[1], List.of());
      for (int k = 0; k < count; k++) {
        double aside = k == 0 ? 0 : k * values.number(apart) * (reversed ? -1 : 1);
        switch (kind) {
          case KNIFE_TOWARD_START -> cuts.add(beside(given, aside, outline, reversed));
          case KNIFE_TOWARD_END -> cuts.add(beside(given, aside, outline, !reversed));
          case INVERTED -> cuts.add(beside(given, aside, outline, true, false));
          case BOX -> {
            cuts.add(beside(given, aside - deep, outline, false));
            cuts.add(beside(given, aside + deep, outline, true));
          }
        }
      }
    }
    return cuts;
  }

  /** A cut beside the one that is given, on from it along the outline (mm). */
  private Cut beside(Cut given, double aside, DrawnOutline outline, Boolean... folds) {
    if (aside == 0) {
      return new Cut(given.at, given.farAt, List.of(folds));
    }
    Point from = spot.point(outline, given.at);
    Point into = to.point(outline, given.farAt);
    Vector along = into.minus(from).unit();
    Path line =
        Path.straight(from.minus(along.times(BEYOND)), from.plus(along.times(BEYOND)))
            .moved(Motion.move(along.right().times(aside)));
    return new Cut(
        meeting(line, spot, given.at, outline),
        meeting(line, to, given.farAt, outline),
        List.of(folds));
  }

  private double meeting(Path line, EdgeSpot edge, double near, DrawnOutline outline) {
    double best = -1;
    for (Meeting meeting : line.meetings(outline.edge(edge.edge()).path())) {
      double at = meeting.distanceOnOther();
      if (best < 0 || Math.abs(at - near) < Math.abs(best - near)) {
        best = at;
      }
    }
    if (best < 0) {
      throw new Failure(Cause.of("pleat-past-end").with("pleat", name).with("edge", edge.name()));
    }
    return best;
  }
}
