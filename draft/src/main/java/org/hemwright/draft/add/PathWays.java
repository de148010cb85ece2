package org.hemwright.draft.add;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/**
 * The ways to say a line or a curve; where it was pointed at no point, one is found there first.
 */
final class PathWays {
  private final Scene scene;
  private final String piece;
  private final String name;
  private final Ways ways;

  PathWays(Scene scene, String piece, String name, Ways ways) {
    this.scene = scene;
    this.piece = piece;
    this.name = name;
    this.ways = ways;
  }

  /** A place that a path runs through. */
  private record Knot(String reference, Point at) {}

  /** The knots, and the new points among them. */
  private record Knots(List<Knot> all, List<NewLine> lines) {}

  void lines(List<Pick> picks) {
    Optional<Knots> knots = knots(picks);
    if (knots.isEmpty()) {
      return;
    }
    List<Knot> all = knots.get().all;
    Pick last = picks.get(picks.size() - 1);
    if (all.size() == 2 && last instanceof Pick.OfLine onto && knots.get().lines.size() == 1) {
      String foot = all.get(1).reference;
      ways.add(
          Addition.Way.FOOT,
          new NewLine(
              NewLine.Place.POINT,
              "point " + foot + " square from " + all.get(0).reference + " to " + named(onto)),
          straight(all));
    }
    with(Addition.Way.STRAIGHT, knots.get(), straight(all).text());
    if (all.size() == 2) {
      Vector way = all.get(1).at.minus(all.get(0).at);
      boolean across = StrictMath.abs(way.dx()) > StrictMath.abs(way.dy());
      String start = "line " + name + " from " + all.get(0).reference + " ";
      String compass =
          across ? (way.dx() < 0 ? "left " : "right ") : (way.dy() < 0 ? "down " : "up ");
      double reach = StrictMath.abs(across ? way.dx() : way.dy());
      boolean firstIsNew = !(picks.get(0) instanceof Pick.OfPoint);
      if (!firstIsNew && !scene.spelling().isNothing(reach)) {
        add(Addition.Way.SQUARE_WAY, start + compass + scene.spelling().length(reach));
        add(
            Addition.Way.ANGLE,
            start
                + "at "
                + scene.spelling().angle(StrictMath.atan2(way.dy(), way.dx()))
                + " "
                + scene.spelling().length(way.length()));
      }
    }
  }

  private NewLine straight(List<Knot> all) {
    List<String> references = all.stream().map(Knot::reference).toList();
    return new NewLine(
        NewLine.Place.PATH, "line " + name + " from " + String.join(" to ", references));
  }

  void curves(List<Pick> picks) {
    Optional<Knots> knots = knots(picks);
    if (knots.isEmpty()) {
      return;
    }
    List<Knot> all = knots.get().all;
    int count = all.size();
    StringBuilder middle = new StringBuilder();
    for (Knot knot : all.subList(1, count - 1)) {
      middle.append(" through ").append(knot.reference);
    }
    String from = "curve " + name + " from " + all.get(0).reference;
    String to = " to " + all.get(count - 1).reference;
    with(Addition.Way.SMOOTH, knots.get(), from + middle + to);
    Vector first = all.get(1).at.minus(all.get(0).at);
    Vector last = all.get(count - 1).at.minus(all.get(count - 2).at);
    for (boolean across : new boolean[] {true, false}) {
      with(
          Addition.Way.SMOOTH_SQUARE,
          knots.get(),
          from
              + " leaving "
              + way(first, across)
              + middle
              + to
              + " arriving "
              + way(last, !across));
    }
    with(
        Addition.Way.SMOOTH_SQUARE,
        knots.get(),
        from + " leaving " + way(first, true) + middle + to + " arriving " + way(last, true));
    if (count == 3) {
      with(
          Addition.Way.ARC,
          knots.get(),
          "arc " + name + " from " + all.get(0).reference + middle + to);
    }
  }

  private static String way(Vector vector, boolean across) {
    return across ? (vector.dx() < 0 ? "left" : "right") : (vector.dy() < 0 ? "down" : "up");
  }

  private void add(Addition.Way way, String text) {
    ways.add(way, new NewLine(NewLine.Place.PATH, text));
  }

  private void with(Addition.Way way, Knots knots, String text) {
    List<NewLine> lines = new ArrayList<>(knots.lines);
    lines.add(new NewLine(NewLine.Place.PATH, text));
    ways.add(way, lines);
  }

  /** Each pick as a point by its name; absent with fewer than two. */
  private Optional<Knots> knots(List<Pick> picks) {
    List<Knot> knots = new ArrayList<>();
    List<NewLine> lines = new ArrayList<>();
    Set<String> taken = new HashSet<>(Set.of(name));
    for (Pick pick : picks) {
      if (pick instanceof Pick.OfPoint point) {
        scene
            .point(point.piece(), point.name())
            .ifPresent(at -> knots.add(new Knot(named(point), at)));
      } else if (pick instanceof Pick.OfLine line) {
        scene
            .path(line.piece(), line.name())
            .ifPresent(
                path -> {
                  String point = scene.free(piece, line.name() + "_point", taken);
                  taken.add(point);
                  lines.add(
                      new NewLine(
                          NewLine.Place.POINT,
                          "point "
                              + point
                              + " on "
                              + named(line)
                              + " "
                              + AlongWays.of(scene, path, line.at(), false).get(0)));
                  knots.add(new Knot(point, path.nearest(line.at()).point()));
                });
      } else if (pick instanceof Pick.OfPlace place) {
        Knot before = knots.isEmpty() ? nearest(place.at()) : knots.get(knots.size() - 1);
        String point = scene.free(piece, name + "_point", taken);
        taken.add(point);
        lines.add(
            new NewLine(NewLine.Place.POINT, "point " + point + " " + rule(before, place.at())));
        knots.add(new Knot(point, place.at()));
      }
    }
    return knots.size() < 2 ? Optional.empty() : Optional.of(new Knots(knots, lines));
  }

  private Knot nearest(Point at) {
    Optional<PlannedThing> near = scene.nearest(piece, at);
    return near.isEmpty()
        ? new Knot("", new Point(0, 0))
        : new Knot(near.get().name(), scene.values().point(scene.size(), near.get()).orElseThrow());
  }

  private String rule(Knot from, Point to) {
    Vector way = to.minus(from.at);
    String across =
        (way.dx() < 0 ? "left " : "right ") + scene.spelling().length(StrictMath.abs(way.dx()));
    String up =
        (way.dy() < 0 ? "down " : "up ") + scene.spelling().length(StrictMath.abs(way.dy()));
    if (from.reference.isEmpty()) {
      return "at "
          + (way.dx() < 0 ? "-" : "")
          + scene.spelling().length(StrictMath.abs(way.dx()))
          + ", "
          + (way.dy() < 0 ? "-" : "")
          + scene.spelling().length(StrictMath.abs(way.dy()));
    }
    if (scene.spelling().isNothing(way.dx())) {
      return "from " + from.reference + " " + up;
    }
    return "from "
        + from.reference
        + " "
        + across
        + (scene.spelling().isNothing(way.dy()) ? "" : " then " + up);
  }

  private String named(Pick.OfPoint point) {
    return point.piece().equals(piece) ? point.name() : point.piece() + "." + point.name();
  }

  private String named(Pick.OfLine line) {
    return line.piece().equals(piece) ? line.name() : line.piece() + "." + line.name();
  }
}
