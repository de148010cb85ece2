package org.hemwright.pattern.traced;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * An outline in one size beside the traced one: stretch by stretch, from each corner or control
 * point to the next. What lies on it, and what lies inside it, is carried from the one to the
 * other.
 *
 * @param base the traced edges, each as its stretches end to end
 * @param graded the same stretches in this size
 */
public record GradedOutline(List<List<Path>> base, List<List<Path>> graded) {
  /** Points of the outline that what lies inside is carried by, for each stretch. */
  private static final int BY_EACH = 4;

  public GradedOutline {
    base = copies(base);
    graded = copies(graded);
    if (base.size() != graded.size()) {
      throw new IllegalArgumentException("a graded outline has the edges of the traced one");
    }
  }

  private static List<List<Path>> copies(List<List<Path>> edges) {
    return edges.stream().map(List::copyOf).toList();
  }

  /** The edges in this size. */
  public List<Path> edges() {
    List<Path> edges = new ArrayList<>();
    for (List<Path> stretches : graded) {
      List<Curve> curves = new ArrayList<>();
      stretches.forEach(stretch -> curves.addAll(stretch.curves()));
      edges.add(Path.of(curves));
    }
    return edges;
  }

  /**
   * Where a traced point lies in this size. A point on the outline keeps its share of its stretch;
   * a point inside moves as the outline round it does, the nearest of it most.
   */
  public Point carried(Point traced) {
    Path at = base.get(0).get(0);
    Path to = graded.get(0).get(0);
    PathPlace nearest = at.nearest(traced);
    for (int i = 0; i < base.size(); i++) {
      for (int k = 0; k < base.get(i).size(); k++) {
        PathPlace place = base.get(i).get(k).nearest(traced);
        if (place.point().distanceTo(traced) < nearest.point().distanceTo(traced)) {
          nearest = place;
          at = base.get(i).get(k);
          to = graded.get(i).get(k);
        }
      }
    }
    if (nearest.point().distanceTo(traced) <= Tolerance.DRAWN_LENGTH) {
      double share = nearest.distance() / at.length();
      return to.at(Math.min(1, share) * to.length()).point();
    }
    return traced.plus(inside(traced));
  }

  /**
   * A traced line in this size: its ends and handles are carried. A closed line inside, such as the
   * place of a pocket, keeps its size and moves as its middle does.
   */
  public Path carried(Path traced) {
    if (traced.isClosed()) {
      Point middle = traced.bounds().centre();
      return traced.moved(Motion.move(carried(middle).minus(middle)));
    }
    List<Curve> curves = new ArrayList<>();
    Point from = carried(traced.start());
    for (Curve curve : traced.curves()) {
      Point to = carried(curve.end());
      if (curve instanceof Cubic cubic) {
        Vector start = from.minus(cubic.start());
        Vector end = to.minus(cubic.end());
        Point first = cubic.control1().plus(start.times(2.0 / 3)).plus(end.times(1.0 / 3));
        Point second = cubic.control2().plus(start.times(1.0 / 3)).plus(end.times(2.0 / 3));
        curves.add(new Cubic(from, first, second, to));
      } else if (!from.isAt(to)) {
        curves.add(new Line(from, to));
      }
      from = to;
    }
    return Path.of(curves);
  }

  /**
   * How what lies inside moves: the moves of points round the outline weighed by mean value
   * coordinates (M. S. Floater, "Mean value coordinates", 2003), which move everything alike where
   * the outline does, and stretch it evenly where the outline is stretched evenly.
   */
  private Vector inside(Point point) {
    List<Point> round = new ArrayList<>();
    List<Vector> moves = new ArrayList<>();
    for (int i = 0; i < base.size(); i++) {
      for (int k = 0; k < base.get(i).size(); k++) {
        Path from = base.get(i).get(k);
        Path to = graded.get(i).get(k);
        for (int j = 0; j < BY_EACH; j++) {
          double share = (double) j / BY_EACH;
          Point traced = from.at(share * from.length()).point();
          round.add(traced);
          moves.add(to.at(share * to.length()).point().minus(traced));
        }
      }
    }
    int count = round.size();
    double sum = 0;
    Vector move = Vector.ZERO;
    for (int i = 0; i < count; i++) {
      Vector before = round.get((i + count - 1) % count).minus(point);
      Vector here = round.get(i).minus(point);
      Vector after = round.get((i + 1) % count).minus(point);
      double away = here.length();
      if (away <= Tolerance.SAME_POINT) {
        return moves.get(i);
      }
      double weight = (halfTangent(before, here) + halfTangent(here, after)) / away;
      sum += weight;
      move = move.plus(moves.get(i).times(weight));
    }
    return Math.abs(sum) <= Tolerance.NO_LENGTH ? Vector.ZERO : move.times(1 / sum);
  }

  private static double halfTangent(Vector one, Vector other) {
    double lengths = one.length() * other.length();
    double cross = one.cross(other);
    double below = lengths + one.dot(other);
    return below <= Tolerance.NO_LENGTH * lengths ? 0 : cross / below;
  }
}
