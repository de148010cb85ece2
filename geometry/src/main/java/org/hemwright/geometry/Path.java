package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line walked without lifting the pencil: curves, each starting where the one before it ends.
 * Joints within {@link Tolerance#SAME_POINT} are welded into one point, wider gaps are refused.
 * Lengths along it are in millimetres from its start.
 */
public final class Path {
  private final List<Curve> curves;

  /** The length walked before each curve, and last the whole; worked out when first asked for. */
  private volatile double @Nullable [] walked;

  private volatile @Nullable Box bounds;

  /** A box round each curve. */
  private volatile Box @Nullable [] hulls;

  private Path(List<Curve> curves) {
    this.curves = curves;
  }

  /** The path through curves in the order of walking. */
  public static Path of(Curve... curves) {
    return of(Arrays.asList(curves));
  }

  /** The path through curves in the order of walking; specks without length are left out. */
  public static Path of(List<? extends Curve> curves) {
    List<Curve> welded = new ArrayList<>(curves.size());
    for (Curve curve : curves) {
      Weld.add(welded, curve);
    }
    if (welded.isEmpty()) {
      throw new GeometryProblem("a path needs some length");
    }
    Weld.close(welded);
    return new Path(List.copyOf(welded));
  }

  /** The straight path between two points that are not one. */
  public static Path straight(Point from, Point to) {
    return polyline(List.of(from, to));
  }

  /** The path of straight stretches through points, each apart from the one before. */
  public static Path polyline(List<Point> points) {
    if (points.size() < 2) {
      throw new GeometryProblem("a path of straight stretches needs two points or more");
    }
    List<Curve> lines = new ArrayList<>(points.size() - 1);
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      if (from.isAt(points.get(i))) {
        throw new GeometryProblem(
            "two points in a row lie on one another at (" + from.x() + ", " + from.y() + ") mm");
      }
      lines.add(new Line(from, points.get(i)));
    }
    return of(lines);
  }

  /** The curves in the order of walking; never empty. */
  public List<Curve> curves() {
    return curves;
  }

  /** Where it starts. */
  public Point start() {
    return curves.get(0).start();
  }

  /** Where it ends. */
  public Point end() {
    return curves.get(curves.size() - 1).end();
  }

  /** Whether it ends where it starts. */
  public boolean isClosed() {
    return start().equals(end());
  }

  /** The unit vector in which it leaves its start. */
  public Vector startDirection() {
    return curves.get(0).direction(0);
  }

  /** The unit vector in which it arrives at its end. */
  public Vector endDirection() {
    return curves.get(curves.size() - 1).direction(1);
  }

  /** The whole length (mm). */
  public double length() {
    return walked()[curves.size()];
  }

  /** The length walked before curve {@code index}; for the number of curves, the whole. */
  double lengthBefore(int index) {
    return walked()[index];
  }

  private double[] walked() {
    double[] known = walked;
    if (known == null) {
      known = new double[curves.size() + 1];
      for (int i = 0; i < curves.size(); i++) {
        known[i + 1] = known[i] + curves.get(i).length();
      }
      walked = known;
    }
    return known;
  }

  /**
   * The place at a length from the start. A length past either end by more than {@link
   * Tolerance#SAME_POINT} is refused.
   */
  public PathPlace at(double distance) {
    double on = onPath(distance);
    int index = curveAt(on);
    return placeAt(index, parameterOn(index, on), on);
  }

  /** The place at a parameter of one of the curves. */
  PathPlace placeAt(int index, double t, double distance) {
    Curve curve = curves.get(index);
    return new PathPlace(distance, curve.at(t), curve.direction(t), curve.curvature(t));
  }

  /** The length from the start to a parameter of one of the curves. */
  double distanceAt(int index, double t) {
    if (t >= 1) {
      return lengthBefore(index + 1);
    }
    return t <= 0 ? lengthBefore(index) : lengthBefore(index) + curves.get(index).length(0, t);
  }

  private double onPath(double distance) {
    double length = length();
    if (!(distance >= -Tolerance.SAME_POINT && distance <= length + Tolerance.SAME_POINT)) {
      throw new GeometryProblem(
          "a place " + distance + " mm along is asked of a path that is " + length + " mm long");
    }
    return Math.max(0, Math.min(length, distance));
  }

  /** Which curve a length from the start lies on. */
  int curveAt(double distance) {
    double[] known = walked();
    int found = Arrays.binarySearch(known, distance);
    int index = found >= 0 ? found : -found - 2;
    return Math.min(index, curves.size() - 1);
  }

  private double parameterOn(int index, double distance) {
    double into = distance - lengthBefore(index);
    Curve curve = curves.get(index);
    if (curve instanceof Cubic cubic) {
      return cubic.parameterAt(into, lengthBefore(index + 1) - lengthBefore(index));
    }
    return curve.parameterAt(into);
  }

  /**
   * The stretch between two lengths, walked the same way. On a closed path a stretch may run on
   * through the start: then {@code to} is less than {@code from}.
   */
  public Path part(double from, double to) {
    double first = onPath(from);
    double last = onPath(to);
    List<Curve> stretch = new ArrayList<>();
    if (first < last) {
      addPart(stretch, first, last);
    } else if (isClosed() && first > last) {
      addPart(stretch, first, length());
      addPart(stretch, 0, last);
    }
    if (stretch.isEmpty()) {
      throw new GeometryProblem(
          "a stretch from " + from + " mm to " + to + " mm along a path has no length");
    }
    return of(stretch);
  }

  private void addPart(List<Curve> stretch, double from, double to) {
    for (int i = curveAt(from); i < curves.size() && lengthBefore(i) < to; i++) {
      double before = lengthBefore(i);
      double after = lengthBefore(i + 1);
      double begin = from - before > Tolerance.NO_LENGTH ? parameterOn(i, from) : 0;
      double finish = after - to > Tolerance.NO_LENGTH ? parameterOn(i, to) : 1;
      if (Math.min(after, to) - Math.max(before, from) > Tolerance.NO_LENGTH && begin < finish) {
        Curve curve = curves.get(i);
        stretch.add(begin == 0 && finish == 1 ? curve : curve.part(begin, finish));
      }
    }
  }

  /** The stretches between lengths that rise from the start to the end; one more than lengths. */
  public List<Path> splitAt(double... distances) {
    List<Path> stretches = new ArrayList<>(distances.length + 1);
    double from = 0;
    for (double distance : distances) {
      stretches.add(part(from, distance));
      from = distance;
    }
    stretches.add(part(from, length()));
    return List.copyOf(stretches);
  }

  /** This path and then another that starts where this one ends. */
  public Path then(Path next) {
    List<Curve> both = new ArrayList<>(curves);
    both.addAll(next.curves);
    return of(both);
  }

  /** The same line walked the other way. */
  public Path reversed() {
    List<Curve> back = new ArrayList<>(curves.size());
    for (int i = curves.size() - 1; i >= 0; i--) {
      back.add(curves.get(i).reversed());
    }
    return new Path(List.copyOf(back));
  }

  /** The path carried by a motion. */
  public Path moved(Motion motion) {
    List<Curve> carried = new ArrayList<>(curves.size());
    for (Curve curve : curves) {
      carried.add(curve.moved(motion));
    }
    return of(carried);
  }

  /** The smallest upright box round it. */
  public Box bounds() {
    Box known = bounds;
    if (known == null) {
      known = curves.get(0).bounds();
      for (Curve curve : curves) {
        known = known.union(curve.bounds());
      }
      bounds = known;
    }
    return known;
  }

  /** A box round one of the curves and its control points. */
  Box hull(int index) {
    Box[] known = hulls;
    if (known == null) {
      known = new Box[curves.size()];
      for (int i = 0; i < known.length; i++) {
        known[i] = curves.get(i) instanceof Cubic cubic ? cubic.hull() : curves.get(i).bounds();
      }
      hulls = known;
    }
    return known[index];
  }

  /** The place on the path that lies nearest to a point; of equals, the first. */
  public PathPlace nearest(Point point) {
    return NearestPlace.on(this, point);
  }

  /**
   * Every point that this path and another have in common, in the order of this path: crossings,
   * touches and ends that lie on the other path, each once. A stretch that the two share is given
   * by its two ends.
   */
  public List<Meeting> meetings(Path other) {
    return MeetingFinder.between(this, other);
  }

  /**
   * Points on the path, its ends among them, such that the straight stretches between them stray
   * from it by no more than a tolerance (mm, more than 0).
   */
  public List<Point> flattened(double tolerance) {
    return Flattening.of(this, tolerance);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Path path && curves.equals(path.curves);
  }

  @Override
  public int hashCode() {
    return curves.hashCode();
  }

  @Override
  public String toString() {
    return "Path" + curves;
  }
}
