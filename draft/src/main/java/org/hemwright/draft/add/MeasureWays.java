package org.hemwright.draft.add;

import java.util.List;

/** What can be measured between the things that were pointed at, as numbers of the document. */
final class MeasureWays {
  private final Scene scene;
  private final String piece;
  private final String name;
  private final Ways ways;

  MeasureWays(Scene scene, String piece, String name, Ways ways) {
    this.scene = scene;
    this.piece = piece;
    this.name = name;
    this.ways = ways;
  }

  void find(List<Pick> picks) {
    Pick first = picks.get(0);
    Pick last = picks.get(picks.size() - 1);
    if (picks.size() == 1) {
      if (first instanceof Pick.OfLine line) {
        inside(Addition.Way.LENGTH, "length of " + line.name());
      } else if (first instanceof Pick.OfPoint point) {
        inside(Addition.Way.GIRTH, "girth of " + piece + " at " + point.name());
      }
    } else if (picks.size() == 2) {
      two(first, last);
    } else if (first instanceof Pick.OfPoint one
        && picks.get(1) instanceof Pick.OfPoint at
        && last instanceof Pick.OfPoint other) {
      inside(Addition.Way.TURN, angle(at, other) + " - " + angle(at, one));
      inside(Addition.Way.TURN, angle(at, one) + " - " + angle(at, other));
    } else if (picks.stream().allMatch(Pick.OfLine.class::isInstance)) {
      left(
          Addition.Way.SUM,
          String.join(
              " + ", picks.stream().map(each -> "length of " + full((Pick.OfLine) each)).toList()));
    }
  }

  private void two(Pick first, Pick last) {
    if (first instanceof Pick.OfLine one && last instanceof Pick.OfLine other) {
      left(Addition.Way.DIFFERENCE, "length of " + full(one) + " - length of " + full(other));
      left(Addition.Way.SUM, "length of " + full(one) + " + length of " + full(other));
    } else if (first instanceof Pick.OfPoint one && last instanceof Pick.OfPoint other) {
      String both = " from " + named(one) + " to " + named(other);
      inside(Addition.Way.DISTANCE, "distance" + both);
      inside(Addition.Way.ACROSS, "across" + both);
      inside(Addition.Way.RISE, "rise" + both);
      inside(Addition.Way.TURN, "angle" + both);
    } else if (first instanceof Pick.OfPoint point && last instanceof Pick.OfLine line) {
      across(point, line);
    } else if (first instanceof Pick.OfLine line && last instanceof Pick.OfPoint point) {
      across(point, line);
    }
  }

  private void across(Pick.OfPoint point, Pick.OfLine line) {
    String foot = scene.free(piece, name + "_foot", java.util.Set.of());
    ways.add(
        Addition.Way.DISTANCE,
        new NewLine(
            NewLine.Place.POINT,
            "point " + foot + " square from " + named(point) + " to " + named(line)),
        new NewLine(
            NewLine.Place.NUMBER,
            "let " + name + " = distance from " + named(point) + " to " + foot));
  }

  private String angle(Pick.OfPoint from, Pick.OfPoint to) {
    return "angle from " + named(from) + " to " + named(to);
  }

  private void inside(Addition.Way way, String number) {
    ways.add(way, new NewLine(NewLine.Place.NUMBER, "let " + name + " = " + number));
  }

  private void left(Addition.Way way, String number) {
    ways.add(way, new NewLine(NewLine.Place.LEFT_NUMBER, "let " + name + " = " + number));
  }

  private String named(Pick pick) {
    if (pick instanceof Pick.OfPoint point) {
      return point.piece().equals(piece) ? point.name() : point.piece() + "." + point.name();
    }
    Pick.OfLine line = (Pick.OfLine) pick;
    return line.piece().equals(piece) ? line.name() : full(line);
  }

  private static String full(Pick.OfLine line) {
    return line.piece() + "." + line.name();
  }
}
