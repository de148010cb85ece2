package org.hemwright.draft.add;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.edit.SaidLines;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * The ways to say a thing that is to be, by what was pointed at.
 *
 * @param what it is to be
 * @param name what it is to be called; a free name is taken where it is empty or taken
 * @param picks what was pointed at, in order
 * @param near how far a place may lie from an even part of a line to be taken for it (mm)
 */
public record Adding(What what, String name, List<Pick> picks, double near) {
  private static final int MOST_PICKS = 40;

  public Adding {
    picks = List.copyOf(picks);
    if (picks.size() > MOST_PICKS) {
      throw new IllegalArgumentException("no thing hangs on more than " + MOST_PICKS + " picks");
    }
  }

  /** What can be added. */
  public enum What {
    POINT("new_point"),
    LINE("new_line"),
    CURVE("new_curve"),
    NOTCH(""),
    SEAM("new_seam"),
    PIECE("new_piece"),
    /** One garment of the pattern, by its pieces. */
    VIEW("A"),
    /** A number, measured between what is pointed at. */
    MEASURE("measured");

    private final String usual;

    What(String usual) {
      this.usual = usual;
    }
  }

  /** The name under which it will stand; empty for a notch, which needs none. */
  public String named(Evaluation values, int size) {
    String wanted = name.strip().replaceAll("[ -]+", "_");
    boolean proper = wanted.matches("\\p{L}[\\p{L}\\p{N}_]*");
    if (what == What.NOTCH) {
      return proper ? wanted : "";
    }
    Scene scene = new Scene(values, size, Spelling.of(values.plan().document()), near);
    if (what == What.VIEW) {
      return new ViewWays(scene, proper ? wanted : "").name();
    }
    return scene.free(piece(), proper ? wanted : what.usual, Set.of());
  }

  /** The piece on which the first pick lies that lies on one. */
  private String piece() {
    return picks.stream().map(Pick::piece).filter(each -> !each.isEmpty()).findFirst().orElse("");
  }

  /**
   * The ways, the most usual first.
   *
   * @param values of the document as it stands, in sizes of the whole chart
   * @param size the place of the size that is looked at
   * @return empty while more must be pointed at
   */
  public List<Addition> ways(Evaluation values, int size) {
    if (picks.isEmpty()) {
      return List.of();
    }
    Scene scene = new Scene(values, size, Spelling.of(values.plan().document()), near);
    String piece = piece();
    Optional<Statement.PieceSection> section =
        SaidLines.section(values.plan(), piece, values.sizes().get(size));
    Ways ways = new Ways(scene, section);
    String called = named(values, size);
    switch (what) {
      case POINT -> new PointWays(scene, piece, called, ways).find(picks);
      case LINE -> new PathWays(scene, piece, called, ways).lines(picks);
      case CURVE -> new PathWays(scene, piece, called, ways).curves(picks);
      case SEAM -> new SeamWays(scene, called, ways).find(picks);
      case PIECE -> new PieceWays(scene, called, ways).find(picks);
      case VIEW -> new ViewWays(scene, called).find(picks, ways);
      case MEASURE -> new MeasureWays(scene, piece, called, ways).find(picks);
      case NOTCH -> notches(scene, called, ways);
    }
    return ways.all();
  }

  private void notches(Scene scene, String called, Ways ways) {
    String as = called.isEmpty() ? "" : " as " + called;
    for (Pick pick : picks) {
      if (pick instanceof Pick.OfLine edge && scene.isEdge(edge)) {
        Pick last = picks.get(picks.size() - 1);
        Optional<Path> path = scene.path(edge.piece(), edge.name());
        if (last instanceof Pick.OfPoint point && point.piece().equals(edge.piece())) {
          notch(ways, Addition.Way.AT_POINT, edge, "at " + point.name() + as);
        } else if (path.isPresent()) {
          Point at = last instanceof Pick.OfLine line ? line.at() : edge.at();
          for (String place : AlongWays.of(scene, path.get(), at, true)) {
            Addition.Way way =
                place.endsWith("s")
                    ? Addition.Way.EVEN
                    : place.contains("%") || place.contains("/3")
                        ? Addition.Way.SHARE_ALONG
                        : Addition.Way.ALONG;
            notch(ways, way, edge, place + as);
          }
          AlongWays.of(scene, path.get(), at, true).stream()
              .limit(2)
              .forEach(place -> ofSeam(scene, ways, edge, place + as));
        }
        return;
      }
    }
  }

  /** Where the edge is the first layer of a seam by itself, the seam may have the notch. */
  private static void ofSeam(Scene scene, Ways ways, Pick.OfLine edge, String place) {
    for (Statement each : scene.document().statements()) {
      if (each instanceof Statement.SeamSection seam
          && seam.layers().get(0).places().size() == 1
          && isWhole(seam.layers().get(0).places().get(0), edge)) {
        ways.within(Addition.Way.SEAM_NOTCH, seam, "notch " + place);
      }
    }
  }

  private static boolean isWhole(Statement.PlaceTerm term, Pick.OfLine edge) {
    return term.piece().text().equals(edge.piece())
        && term.edge().text().equals(edge.name())
        && !term.every()
        && !term.reversed()
        && term.from().isEmpty()
        && term.to().isEmpty();
  }

  private static void notch(Ways ways, Addition.Way way, Pick.OfLine edge, String place) {
    String text = "notch " + edge.name() + " " + place;
    ways.add(way, new NewLine(NewLine.Place.NOTCH, text));
    ways.add(Addition.Way.DOUBLE, new NewLine(NewLine.Place.NOTCH, "double " + text));
  }
}
