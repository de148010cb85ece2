package org.hemwright.exchange.photograph;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.exchange.photograph.Picture.Look;

/**
 * The corners of a dark square to a fraction of a pixel: each side is seen at many places, a line
 * is laid through them, and neighbouring lines meet in the corner. The corner itself is never
 * looked at, where blur rounds it.
 */
final class SquareCorners {
  /** Places that are looked at along each side. */
  private static final int PLACES = 40;

  /** This share of a side next to each corner is left out. */
  private static final double LEFT_OUT = 0.15;

  private final EdgeSight sight;

  SquareCorners(Picture picture) {
    this.sight = new EdgeSight(picture, Look.LIGHT);
  }

  /** The corners near four rough ones, in the same order; empty where a side is not seen. */
  Optional<List<Pixel>> near(List<Pixel> rough) {
    List<Side> sides = new ArrayList<>();
    for (int k = 0; k < 4; k++) {
      Optional<Side> side = side(rough.get(k), rough.get((k + 1) % 4));
      if (side.isEmpty()) {
        return Optional.empty();
      }
      sides.add(side.get());
    }
    List<Pixel> corners = new ArrayList<>();
    for (int k = 0; k < 4; k++) {
      Pixel corner = sides.get((k + 3) % 4).meets(sides.get(k));
      if (corner.distanceTo(rough.get(k)) > 3 + rough.get(0).distanceTo(rough.get(2)) / 10) {
        return Optional.empty();
      }
      corners.add(corner);
    }
    return Optional.of(corners);
  }

  private Optional<Side> side(Pixel from, Pixel to) {
    double length = from.distanceTo(to);
    if (length < 8) {
      return Optional.empty();
    }
    double dx = (to.x() - from.x()) / length;
    double dy = (to.y() - from.y()) / length;
    List<Pixel> seen = new ArrayList<>();
    for (int k = 0; k <= PLACES; k++) {
      double share = LEFT_OUT + (1 - 2 * LEFT_OUT) * k / PLACES;
      Pixel place =
          new Pixel(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
      sight.near(place, -dy, dx).ifPresent(seen::add);
    }
    return seen.size() < PLACES / 2 ? Optional.empty() : Optional.of(Side.through(seen));
  }

  /** A line as the unit vector across it and how far along that it lies. */
  private record Side(double nx, double ny, double at) {
    /** The line from which the places lie least far, by squares. */
    static Side through(List<Pixel> places) {
      double x = 0;
      double y = 0;
      for (Pixel place : places) {
        x += place.x() / places.size();
        y += place.y() / places.size();
      }
      double xx = 0;
      double xy = 0;
      double yy = 0;
      for (Pixel place : places) {
        xx += (place.x() - x) * (place.x() - x);
        xy += (place.x() - x) * (place.y() - y);
        yy += (place.y() - y) * (place.y() - y);
      }
      double along = StrictMath.atan2(2 * xy, xx - yy) / 2;
      double nx = -StrictMath.sin(along);
      double ny = StrictMath.cos(along);
      return new Side(nx, ny, nx * x + ny * y);
    }

    Pixel meets(Side other) {
      double determinant = nx * other.ny - ny * other.nx;
      double safe = Math.abs(determinant) < 1e-9 ? 1e-9 : determinant;
      return new Pixel(
          (at * other.ny - ny * other.at) / safe, (nx * other.at - at * other.nx) / safe);
    }
  }
}
