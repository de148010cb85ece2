package org.hemwright.draft.add;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/** The ways to say a point. */
final class PointWays {
  private final Scene scene;
  private final String piece;
  private final String start;
  private final Ways ways;

  PointWays(Scene scene, String piece, String name, Ways ways) {
    this.scene = scene;
    this.piece = piece;
    this.start = "point " + name + " ";
    this.ways = ways;
  }

  private void add(Addition.Way way, String rule) {
    ways.add(way, new NewLine(NewLine.Place.POINT, start + rule));
  }

  /** The ways by all that was pointed at. */
  void find(List<Pick> picks) {
    Pick last = picks.get(picks.size() - 1);
    Pick first = picks.get(0);
    if (picks.size() == 3) {
      byTwo(picks);
    } else if (picks.size() == 1 || first instanceof Pick.OfPlace || first.equals(last)) {
      alone(last);
    } else if (first instanceof Pick.OfPoint from) {
      fromPoint(from, last);
    } else if (first instanceof Pick.OfLine line) {
      if (last instanceof Pick.OfPoint point) {
        across(point, line);
      } else if (last instanceof Pick.OfLine other) {
        meeting(line, other);
      } else if (last instanceof Pick.OfPlace place) {
        along(new Pick.OfLine(line.piece(), line.name(), place.at()));
      }
    }
  }

  /** By two points, and a third that is mirrored across them or a place at two distances. */
  private void byTwo(List<Pick> picks) {
    if (!(picks.get(0) instanceof Pick.OfPoint a && picks.get(1) instanceof Pick.OfPoint b)) {
      return;
    }
    Optional<Point> from = scene.point(a.piece(), a.name());
    Optional<Point> to = scene.point(b.piece(), b.name());
    if (picks.get(2) instanceof Pick.OfPoint third) {
      add(
          Addition.Way.MIRRORED,
          "is " + reference(third) + " mirrored across " + reference(a) + " to " + reference(b));
    } else if (picks.get(2) instanceof Pick.OfPlace place && from.isPresent() && to.isPresent()) {
      Vector way = to.get().minus(from.get());
      Vector off = place.at().minus(from.get());
      boolean left = way.dx() * off.dy() - way.dy() * off.dx() > 0;
      add(
          Addition.Way.COMPASSES,
          scene.spelling().length(off.length())
              + " from "
              + reference(a)
              + " and "
              + scene.spelling().length(place.at().distanceTo(to.get()))
              + " from "
              + reference(b)
              + (left ? ", left of " : ", right of ")
              + reference(a)
              + " to "
              + reference(b));
    }
  }

  private void alone(Pick pick) {
    if (pick instanceof Pick.OfLine line) {
      along(line);
    } else if (pick instanceof Pick.OfPlace place) {
      scene
          .nearest(piece, place.at())
          .ifPresent(
              near ->
                  from(
                      near.name(),
                      scene.values().point(scene.size(), near).orElseThrow(),
                      place.at()));
      add(Addition.Way.ORIGIN, "at " + signed(place.at().x()) + ", " + signed(place.at().y()));
    }
  }

  private String signed(double mm) {
    return (mm < 0 && !scene.spelling().isNothing(mm) ? "-" : "")
        + scene.spelling().length(StrictMath.abs(mm));
  }

  private void fromPoint(Pick.OfPoint from, Pick last) {
    Optional<Point> base = scene.point(from.piece(), from.name());
    if (base.isEmpty()) {
      return;
    }
    if (last instanceof Pick.OfPlace place) {
      from(reference(from), base.get(), place.at());
    } else if (last instanceof Pick.OfPoint other) {
      String both = " from " + reference(from) + " to " + reference(other);
      add(Addition.Way.MIDWAY, "midway" + both);
      add(Addition.Way.SHARE_BETWEEN, "1/3" + both);
      add(Addition.Way.SHARE_BETWEEN, "2/3" + both);
      scene
          .point(other.piece(), other.name())
          .ifPresent(
              there ->
                  add(
                      Addition.Way.TOWARD,
                      "from "
                          + reference(from)
                          + " toward "
                          + reference(other)
                          + " "
                          + scene.spelling().length(base.get().distanceTo(there) / 2)));
    } else if (last instanceof Pick.OfLine line) {
      across(from, line);
    }
  }

  private void from(String name, Point base, Point goal) {
    String legs = legs(goal.minus(base));
    if (!legs.isEmpty()) {
      add(Addition.Way.LEGS, "from " + name + legs);
    }
    Vector way = goal.minus(base);
    boolean across = StrictMath.abs(way.dx()) > StrictMath.abs(way.dy());
    String one = legs(across ? new Vector(way.dx(), 0) : new Vector(0, way.dy()));
    if (!one.isEmpty()) {
      add(Addition.Way.SQUARE_WAY, "from " + name + one);
    }
    if (!scene.spelling().isNothing(way.length())) {
      add(
          Addition.Way.ANGLE,
          "from "
              + name
              + " at "
              + scene.spelling().angle(StrictMath.atan2(way.dy(), way.dx()))
              + " "
              + scene.spelling().length(way.length()));
    }
  }

  /** The legs of a way across and up; empty where it leads nowhere. */
  private String legs(Vector way) {
    List<String> legs = new ArrayList<>();
    if (!scene.spelling().isNothing(way.dx())) {
      legs.add(
          (way.dx() < 0 ? "left " : "right ") + scene.spelling().length(StrictMath.abs(way.dx())));
    }
    if (!scene.spelling().isNothing(way.dy())) {
      legs.add(
          (way.dy() < 0 ? "down " : "up ") + scene.spelling().length(StrictMath.abs(way.dy())));
    }
    return legs.isEmpty() ? "" : " " + String.join(" then ", legs);
  }

  private void along(Pick.OfLine line) {
    scene
        .path(line.piece(), line.name())
        .ifPresent(
            path -> {
              for (String place : AlongWays.of(scene, path, line.at(), false)) {
                add(
                    place.contains("%") || place.contains("/")
                        ? Addition.Way.SHARE_ALONG
                        : Addition.Way.ALONG,
                    "on " + reference(line) + " " + place);
              }
            });
  }

  private void across(Pick.OfPoint point, Pick.OfLine line) {
    add(Addition.Way.FOOT, "square from " + reference(point) + " to " + reference(line));
    Optional<Point> centre = scene.point(point.piece(), point.name());
    Optional<Path> path = scene.path(line.piece(), line.name());
    if (centre.isPresent() && path.isPresent()) {
      double radius = path.get().nearest(line.at()).point().distanceTo(centre.get());
      String rule =
          "on "
              + reference(line)
              + " where "
              + scene.spelling().length(radius)
              + " from "
              + reference(point);
      for (String pick : List.of("", ", first", ", last")) {
        add(Addition.Way.COMPASS, rule + pick);
      }
    }
  }

  private void meeting(Pick.OfLine line, Pick.OfLine other) {
    if (line.name().equals(other.name()) && line.piece().equals(other.piece())) {
      along(other);
      return;
    }
    for (String pick : List.of("", ", first", ", last")) {
      add(Addition.Way.MEETING, "where " + reference(line) + " meets " + reference(other) + pick);
    }
  }

  private String reference(Pick.OfPoint point) {
    return point.piece().equals(piece) ? point.name() : point.piece() + "." + point.name();
  }

  private String reference(Pick.OfLine line) {
    return line.piece().equals(piece) ? line.name() : line.piece() + "." + line.name();
  }
}
