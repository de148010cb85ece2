package org.hemwright.draft.add;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.geometry.Point;

/** The ways to say a new piece: a rectangle, corner by corner, or after another piece. */
final class PieceWays {
  private final Scene scene;
  private final String name;
  private final Ways ways;

  PieceWays(Scene scene, String name, Ways ways) {
    this.scene = scene;
    this.name = name;
    this.ways = ways;
  }

  void find(List<Pick> picks) {
    List<Point> corners = new ArrayList<>();
    List<Pick.OfLine> edges = new ArrayList<>();
    List<String> pieces = new ArrayList<>();
    for (Pick pick : picks) {
      if (pick instanceof Pick.OfPlace place) {
        corners.add(place.at());
      } else if (pick instanceof Pick.OfLine line && scene.isEdge(line)) {
        edges.add(line);
      } else if (pick instanceof Pick.OfPiece piece) {
        pieces.add(piece.piece());
      }
    }
    if (corners.size() == 2) {
      rectangle(corners.get(0), corners.get(1));
    } else if (corners.size() > 2) {
      corners(corners);
    }
    if (!edges.isEmpty() && edges.stream().allMatch(e -> e.piece().equals(edges.get(0).piece()))) {
      facing(edges);
    }
    if (!pieces.isEmpty()) {
      String other = pieces.get(pieces.size() - 1);
      piece(Addition.Way.OUTLINE_AS, List.of("outline as " + other), "");
      piece(Addition.Way.OUTLINE_AS, List.of("outline as drafted " + other), "");
    }
  }

  private void rectangle(Point one, Point other) {
    String width = scene.spelling().length(StrictMath.abs(one.x() - other.x()));
    String height = scene.spelling().length(StrictMath.abs(one.y() - other.y()));
    piece(
        Addition.Way.RECTANGLE,
        List.of(
            "rectangle " + width + " by " + height + ", edges lower, right_side, upper, left_side"),
        "grain along left_side");
  }

  private void corners(List<Point> places) {
    List<Point> round = new ArrayList<>(places);
    double area = 0;
    for (int i = 0; i < round.size(); i++) {
      Point here = round.get(i);
      Point next = round.get((i + 1) % round.size());
      area += here.x() * next.y() - next.x() * here.y();
    }
    if (area < 0) {
      Collections.reverse(round);
    }
    List<String> lines = new ArrayList<>();
    lines.add("point corner_1 at 0 " + unit() + ", 0 " + unit());
    List<String> edges = new ArrayList<>();
    for (int i = 0; i < round.size(); i++) {
      if (i > 0) {
        double right = round.get(i).x() - round.get(0).x();
        double up = round.get(i).y() - round.get(0).y();
        lines.add("point corner_" + (i + 1) + " at " + signed(right) + ", " + signed(up));
      }
      int next = (i + 1) % round.size() + 1;
      edges.add("edge_" + (i + 1) + " is corner_" + (i + 1) + " to corner_" + next);
    }
    lines.add("outline " + String.join(", ", edges));
    piece(Addition.Way.CORNERS, lines, "grain up");
  }

  private String unit() {
    return scene.spelling().length() == Unit.IN ? "in" : "cm";
  }

  private String signed(double mm) {
    return (mm < 0 && !scene.spelling().isNothing(mm) ? "-" : "")
        + scene.spelling().length(StrictMath.abs(mm));
  }

  private void facing(List<Pick.OfLine> edges) {
    List<String> along = edges.stream().map(Pick.OfLine::name).distinct().toList();
    String depth = scene.spelling().length() == Unit.IN ? "2 1/2 in" : "6 cm";
    piece(
        Addition.Way.FACING,
        List.of(
            "facing of "
                + edges.get(0).piece()
                + " along "
                + String.join(" and ", along)
                + ", depth "
                + depth
                + ", edges "
                + String.join(", ", along)
                + ", far_end, inner, near_end"),
        "grain up");
  }

  private void piece(Addition.Way way, List<String> body, String grain) {
    List<NewLine> lines = new ArrayList<>();
    String title = name.replace('_', ' ');
    lines.add(
        new NewLine(
            NewLine.Place.PIECE,
            "piece "
                + name
                + " \""
                + title.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + title.substring(1)
                + "\" number "
                + nextNumber()));
    fabric().ifPresent(cloth -> under(lines, "cut 1 of " + cloth));
    body.forEach(line -> under(lines, line));
    under(lines, "allowance " + (scene.spelling().length() == Unit.IN ? "3/8 in" : "1 cm"));
    if (!grain.isEmpty()) {
      under(lines, grain);
    }
    ways.add(way, lines);
  }

  private static void under(List<NewLine> lines, String text) {
    lines.add(new NewLine(NewLine.Place.UNDER, text));
  }

  private java.util.Optional<String> fabric() {
    return scene.document().statements().stream()
        .filter(Statement.FabricSection.class::isInstance)
        .map(each -> ((Statement.FabricSection) each).name().text())
        .findFirst();
  }

  private int nextNumber() {
    return 1
        + scene.document().statements().stream()
            .filter(Statement.PieceSection.class::isInstance)
            .mapToInt(each -> ((Statement.PieceSection) each).number())
            .max()
            .orElse(0);
  }
}
