package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * What a cut piece covers of the cloth, as a polygon.
 *
 * @param corners counter-clockwise, the first not repeated (mm, thousandths), at least three
 */
public record Silhouette(List<Spot> corners) {
  private static final double STEPS_PER_MM = 1000;

  public Silhouette {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("a silhouette has three corners or more");
    }
  }

  /** An outline, made flat and moved. Its corners lie on the outline. */
  public static Silhouette of(Outline outline, Motion motion) {
    List<Spot> corners = new ArrayList<>();
    for (Point point : outline.path().flattened(Tolerance.OFFSET)) {
      Point moved = motion.apply(point);
      add(corners, rounded(moved.x()), rounded(moved.y()));
    }
    return closed(corners);
  }

  /** Corners in either direction, rounded to thousandths, with what is repeated left out. */
  static Silhouette closed(List<Spot> corners) {
    List<Spot> round = new ArrayList<>();
    for (Spot corner : corners) {
      add(round, rounded(corner.x()), rounded(corner.y()));
    }
    while (round.size() > 3 && round.get(0).equals(round.get(round.size() - 1))) {
      round.remove(round.size() - 1);
    }
    if (twiceArea(round) < 0) {
      Collections.reverse(round);
    }
    return new Silhouette(round);
  }

  private static void add(List<Spot> corners, double x, double y) {
    Spot corner = new Spot(x, y);
    if (corners.isEmpty() || !corners.get(corners.size() - 1).equals(corner)) {
      corners.add(corner);
    }
  }

  private static double rounded(double mm) {
    return Math.rint(mm * STEPS_PER_MM) / STEPS_PER_MM + 0.0;
  }

  private static double twiceArea(List<Spot> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Spot a = corners.get(i);
      Spot b = corners.get((i + 1) % corners.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice;
  }

  /** Its area (mm²). */
  public double area() {
    return twiceArea(corners) / 2;
  }

  /** The least x (mm). */
  public double left() {
    return corners.stream().mapToDouble(Spot::x).min().orElseThrow();
  }

  /** The greatest x (mm). */
  public double right() {
    return corners.stream().mapToDouble(Spot::x).max().orElseThrow();
  }

  /** The least y (mm). */
  public double low() {
    return corners.stream().mapToDouble(Spot::y).min().orElseThrow();
  }

  /** The greatest y (mm). */
  public double high() {
    return corners.stream().mapToDouble(Spot::y).max().orElseThrow();
  }

  /** How far it reaches across the cloth (mm). */
  public double height() {
    return high() - low();
  }

  /** How far it reaches along the cloth (mm). */
  public double length() {
    return right() - left();
  }

  /** Its mirror image, y → −y. */
  public Silhouette mirrored() {
    return closed(corners.stream().map(c -> new Spot(c.x(), -c.y())).toList());
  }

  /** Turned end for end about the middle of its box. */
  public Silhouette turned() {
    double x = left() + right();
    double y = low() + high();
    return closed(corners.stream().map(c -> new Spot(x - c.x(), y - c.y())).toList());
  }

  /** The same, elsewhere. */
  public Silhouette moved(double dx, double dy) {
    return closed(corners.stream().map(c -> new Spot(c.x() + dx, c.y() + dy)).toList());
  }

  /** The same with a margin (mm) round it, nowhere less. */
  public Silhouette grown(double margin) {
    return GrownOutline.of(this, margin);
  }

  /** Whether every corner of each lies within a distance (mm) of the other's edge. */
  boolean isLike(Silhouette other, double within) {
    return Math.abs(left() - other.left()) <= within
        && Math.abs(right() - other.right()) <= within
        && Math.abs(low() - other.low()) <= within
        && Math.abs(high() - other.high()) <= within
        && covers(other, within)
        && other.covers(this, within);
  }

  private boolean covers(Silhouette other, double within) {
    return other.corners.stream().allMatch(corner -> isNear(corner, within));
  }

  private boolean isNear(Spot from, double within) {
    for (int i = 0; i < corners.size(); i++) {
      if (distance(from, corners.get(i), next(i)) <= within) {
        return true;
      }
    }
    return false;
  }

  private static double distance(Spot from, Spot a, Spot b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double along = ((from.x() - a.x()) * dx + (from.y() - a.y()) * dy) / (dx * dx + dy * dy);
    double share = Math.max(0, Math.min(1, along));
    double ex = from.x() - a.x() - share * dx;
    double ey = from.y() - a.y() - share * dy;
    return Math.sqrt(ex * ex + ey * ey);
  }

  private Spot next(int i) {
    return corners.get((i + 1) % corners.size());
  }

  /** The part on or above y = 0; absent where the line y = 0 does not cut it into two. */
  public Optional<Silhouette> upperHalf() {
    List<Spot> half = new ArrayList<>();
    int entries = 0;
    for (int i = 0; i < corners.size(); i++) {
      Spot here = corners.get(i);
      Spot there = next(i);
      if (here.y() >= 0) {
        half.add(here);
      }
      if (here.y() >= 0 != there.y() >= 0) {
        double share = here.y() / (here.y() - there.y());
        half.add(new Spot(here.x() + share * (there.x() - here.x()), 0));
        entries++;
      }
    }
    return entries == 2 && half.size() > 2 ? Optional.of(closed(half)) : Optional.empty();
  }

  /** A path round it. */
  public Outline outline() {
    List<Point> points = new ArrayList<>();
    corners.forEach(corner -> points.add(new Point(corner.x(), corner.y())));
    points.add(points.get(0));
    return Outline.of(Path.polyline(points));
  }
}
