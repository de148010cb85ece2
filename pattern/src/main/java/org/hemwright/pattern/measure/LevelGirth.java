package org.hemwright.pattern.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * How the garment goes round the body at a level: once round a hip, twice round two thighs. The
 * seams tell: copies that they join where the level crosses them make one loop.
 *
 * @param loops into how many loops the copies close; 1 where some edge that the level crosses is
 *     not sewn, as in a front that opens
 * @param girth of the largest loop (mm)
 */
public record LevelGirth(int loops, double girth) {
  /** The girth at a level of the pieces named, or nothing where none of them has the level. */
  public static Optional<LevelGirth> of(SizedPattern sized, String level, Set<String> pieces) {
    Crossed crossed = new Crossed();
    for (Piece piece : sized.pieces()) {
      if (pieces.contains(piece.name())) {
        piece.marks(Mark.Level.class).stream()
            .filter(mark -> mark.name().equals(level))
            .findFirst()
            .ifPresent(mark -> crossed.add(piece, mark.at()));
      }
    }
    if (crossed.widths.isEmpty()) {
      return Optional.empty();
    }
    for (Seam seam : sized.seams()) {
      seam.joins().forEach(crossed::join);
    }
    return Optional.of(crossed.girth());
  }

  /** The copies that a level crosses, and what holds them together there. */
  private static final class Crossed {
    private final Map<String, Double> widths = new LinkedHashMap<>();
    private final Map<String, Set<String>> edges = new LinkedHashMap<>();
    private final Map<String, String> loopOf = new LinkedHashMap<>();
    private final Set<String> open = new HashSet<>();

    private static String copy(String piece, String name) {
      return piece + "." + name;
    }

    private static String side(String copy, EdgePlace.Half half, String edge) {
      return copy + "." + half + "." + edge;
    }

    void add(Piece piece, Point at) {
      Optional<FlaredLevel> flared = FlaredLevel.of(piece, at);
      double y = at.y();
      boolean folded = piece.foldEdge().isPresent();
      List<EdgePlace.Half> halves =
          folded
              ? List.of(EdgePlace.Half.DRAWN, EdgePlace.Half.MIRRORED)
              : List.of(EdgePlace.Half.WHOLE);
      double width =
          flared.map(FlaredLevel::length).orElseGet(() -> Girth.across(piece, y)) * halves.size();
      List<String> names = new ArrayList<>();
      piece.card().copies().forEach(each -> names.add(each.name()));
      for (String name : names.isEmpty() ? List.of("1") : names) {
        String copy = copy(piece.name(), name);
        widths.put(copy, width);
        loopOf.put(copy, copy);
        Set<String> touched = new HashSet<>();
        for (Edge edge : piece.edges()) {
          if (!edge.onFold()) {
            List<Double> places =
                flared.map(level -> places(level, edge)).orElseGet(() -> places(piece, edge, y));
            if (!places.isEmpty()) {
              touched.add(edge.name());
            }
            double length = edge.path().length();
            boolean within =
                places.stream()
                    .anyMatch(
                        place ->
                            place > Tolerance.DRAWN_LENGTH
                                && place < length - Tolerance.DRAWN_LENGTH);
            if (within) {
              halves.forEach(half -> open.add(side(copy, half, edge.name())));
            }
          }
        }
        edges.put(copy, touched);
      }
    }

    /** A flared level meets its two sides, each somewhere between its ends. */
    private static List<Double> places(FlaredLevel level, Edge edge) {
      boolean meets = edge.equals(level.side()) || edge.equals(level.other());
      return meets ? List.of(edge.path().length() / 2) : List.of();
    }

    private static List<Double> places(Piece piece, Edge edge, double y) {
      Box box = piece.stitchLine().bounds();
      Path line = Path.straight(new Point(box.minX() - 1, y), new Point(box.maxX() + 1, y));
      List<Double> places = new ArrayList<>();
      edge.path().meetings(line).forEach(meeting -> places.add(meeting.distanceOnThis()));
      return places;
    }

    void join(Seam.Join join) {
      List<String> here = new ArrayList<>();
      for (Seam.Layer layer : join.layers()) {
        for (EdgePlace place : layer.run()) {
          String copy = copy(place.piece(), place.copy());
          open.remove(side(copy, place.half(), place.edge()));
          if (edges.getOrDefault(copy, Set.of()).contains(place.edge())) {
            here.add(copy);
          }
        }
      }
      for (int i = 1; i < here.size(); i++) {
        String kept = loop(here.get(0));
        String given = loop(here.get(i));
        loopOf.replaceAll((copy, loop) -> loop.equals(given) ? kept : loop);
      }
    }

    private String loop(String copy) {
      return loopOf.getOrDefault(copy, copy);
    }

    LevelGirth girth() {
      if (!open.isEmpty()) {
        return new LevelGirth(1, widths.values().stream().mapToDouble(w -> w).sum());
      }
      Map<String, Double> loops = new LinkedHashMap<>();
      widths.forEach((copy, width) -> loops.merge(loop(copy), width, Double::sum));
      return new LevelGirth(
          loops.size(), loops.values().stream().mapToDouble(w -> w).max().orElse(0));
    }
  }
}
