package org.hemwright.pattern.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * Grading between sizes that were traced: between two of them every point goes evenly from the one
 * to the other, size by size; beyond the first and the last the nearest steps go on.
 */
public final class SizeGrading implements OutlineGrading {
  private final List<Path> base;
  private final TreeMap<Integer, List<Path>> traced;

  /**
   * Traced sizes of one outline.
   *
   * @param base the edges by which what lies on the outline is known
   * @param traced the same edges in two sizes or more, by the sizes' positions in the chart
   */
  public SizeGrading(List<Path> base, NavigableMap<Integer, List<Path>> traced) {
    this.base = List.copyOf(base);
    this.traced = new TreeMap<>(traced);
    if (traced.size() < 2) {
      throw new IllegalArgumentException("steps between sizes need two traced sizes");
    }
    for (List<Path> edges : traced.values()) {
      if (edges.size() != base.size()) {
        throw new IllegalArgumentException("every traced size has the same edges");
      }
    }
  }

  @Override
  public GradedOutline in(int position) {
    List<List<Path>> from = new ArrayList<>();
    List<List<Path>> to = new ArrayList<>();
    Integer exact = traced.containsKey(position) ? position : null;
    int low = exact != null ? exact : lower(position);
    int high = exact != null ? exact : higher(low);
    double share = exact != null ? 0 : (double) (position - low) / (high - low);
    for (int i = 0; i < base.size(); i++) {
      from.add(List.of(base.get(i)));
      Path one = edges(low).get(i);
      to.add(List.of(exact != null ? one : between(one, edges(high).get(i), share)));
    }
    return new GradedOutline(from, to);
  }

  private List<Path> edges(int position) {
    return traced.getOrDefault(position, base);
  }

  private int lower(int position) {
    Integer below = traced.floorKey(position);
    if (below == null) {
      return traced.firstKey();
    }
    return below.equals(traced.lastKey()) ? traced.lowerKey(below) : below;
  }

  private int higher(int low) {
    return traced.higherKey(low);
  }

  /** The line part of the way from one to another, point by point as each lies along its edge. */
  static Path between(Path one, Path other, double share) {
    TreeSet<Double> shares = new TreeSet<>();
    addJoints(one, shares);
    addJoints(other, shares);
    double[] cuts = shares.stream().mapToDouble(joint -> joint).toArray();
    List<Path> first = one.splitAt(times(cuts, one.length()));
    List<Path> second = other.splitAt(times(cuts, other.length()));
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < first.size(); i++) {
      curves.add(between(first.get(i).curves().get(0), second.get(i).curves().get(0), share));
    }
    return Path.of(curves);
  }

  private static double[] times(double[] shares, double length) {
    double[] places = new double[shares.length];
    for (int i = 0; i < shares.length; i++) {
      places[i] = shares[i] * length;
    }
    return places;
  }

  /** The shares at which curves join; joints of the two paths that nearly agree count as one. */
  private static void addJoints(Path path, NavigableSet<Double> shares) {
    double walked = 0;
    double length = path.length();
    List<Curve> curves = path.curves();
    for (int i = 0; i + 1 < curves.size(); i++) {
      walked += curves.get(i).length();
      double share = walked / length;
      Double below = shares.floor(share);
      Double above = shares.ceiling(share);
      double near = Tolerance.SAME_POINT / length;
      if ((below == null || share - below > near)
          && (above == null || above - share > near)
          && share > near
          && share < 1 - near) {
        shares.add(share);
      }
    }
  }

  private static Curve between(Curve one, Curve other, double share) {
    if (one instanceof Line && other instanceof Line) {
      return new Line(
          between(one.start(), other.start(), share), between(one.end(), other.end(), share));
    }
    Cubic a = one instanceof Cubic cubic ? cubic : Cubic.straight(one.start(), one.end());
    Cubic b = other instanceof Cubic cubic ? cubic : Cubic.straight(other.start(), other.end());
    return new Cubic(
        between(a.start(), b.start(), share),
        between(a.control1(), b.control1(), share),
        between(a.control2(), b.control2(), share),
        between(a.end(), b.end(), share));
  }

  private static Point between(Point one, Point other, double share) {
    Vector way = other.minus(one);
    return one.plus(way.times(share));
  }
}
