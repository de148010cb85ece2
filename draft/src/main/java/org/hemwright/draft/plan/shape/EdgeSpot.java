package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.piece.PlaceForm;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * A place, or several, on an edge of the outline as drafted.
 *
 * @param edge the edge's place in the designer's list
 * @param name its name
 * @param path the slot of its path, in her direction
 * @param place where along it
 */
public record EdgeSpot(int edge, String name, int path, PlaceForm place) {
  /** The slots it reads. */
  int[] inputs() {
    return ShapeForm.with(place.inputs(), path);
  }

  /** Whether her direction of the edge runs against the outline. */
  boolean isReversed(DrawnOutline outline) {
    return outline.edge(edge).reversed();
  }

  /** The lengths along the edge, counter-clockwise, in her order (mm). */
  List<Double> along(Values values, DrawnOutline outline) {
    DrawnEdge drawn = outline.edge(edge);
    double length = drawn.path().length();
    List<Double> all = new ArrayList<>();
    for (double hers : place.on(values, path)) {
      double at = drawn.reversed() ? length - hers : hers;
      if (at <= Tolerance.DRAWN_LENGTH || at >= length - Tolerance.DRAWN_LENGTH) {
        throw new Failure(Cause.of("fold-at-corner").with("edge", name));
      }
      all.add(at);
    }
    return all;
  }

  /**
   * The places on one edge, each with its partner on another, so that the ways between them do not
   * cross: those that come first round the outline on the one with those that come last on the
   * other.
   */
  static List<double[]> pairs(EdgeSpot one, EdgeSpot other, Values values, DrawnOutline outline) {
    List<Double> here = new ArrayList<>(one.along(values, outline));
    List<Double> there = new ArrayList<>(other.along(values, outline));
    if (here.size() != there.size()) {
      throw new Failure(
          Cause.of("cut-ends-differ").with("edge", one.name).with("other", other.name));
    }
    if (one.edge == other.edge) {
      throw new Failure(Cause.of("cut-on-one-edge").with("edge", one.name));
    }
    here.sort(Comparator.naturalOrder());
    there.sort(Comparator.reverseOrder());
    List<double[]> pairs = new ArrayList<>();
    for (int i = 0; i < here.size(); i++) {
      pairs.add(new double[] {here.get(i), there.get(i)});
    }
    return pairs;
  }

  /** The one place meant. */
  double one(Values values, DrawnOutline outline) {
    List<Double> all = along(values, outline);
    if (all.size() != 1) {
      throw new Failure(Cause.of("several-for-one"));
    }
    return all.get(0);
  }

  /** The point at a length along the edge. */
  Point point(DrawnOutline outline, double at) {
    return outline.edge(edge).path().at(at).point();
  }
}
