package org.hemwright.workroom.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.Piece;

/**
 * Every piece in every size, drawn; what is like before is not drawn again.
 *
 * <p>Not for several threads at once.
 */
final class DrawnRun {
  /** A piece and the points named on it: what ink is a picture of. */
  private record Model(Piece piece, Map<String, Point> points) {}

  /**
   * Where a drawing belongs.
   *
   * @param piece its name
   * @param size its place among the sizes
   */
  record Spot(String piece, int size) {}

  private Map<Model, Ink> known = new ConcurrentHashMap<>();

  /**
   * The drawings of some values, in the order of the document and, for each piece, of the sizes.
   */
  Map<Spot, Ink> of(Evaluation values) {
    List<PlannedThing> points =
        values.plan().things().stream().filter(t -> t.what() == Drawn.What.POINT).toList();
    Map<Model, Ink> now = new ConcurrentHashMap<>();
    List<Map<String, Ink>> sizes =
        IntStream.range(0, values.sizes().size())
            .parallel()
            .mapToObj(size -> drawn(values, size, points, now))
            .toList();
    known = now;
    Map<String, List<Spot>> byPiece = new LinkedHashMap<>();
    for (int size = 0; size < sizes.size(); size++) {
      for (String piece : sizes.get(size).keySet()) {
        byPiece.computeIfAbsent(piece, p -> new ArrayList<>()).add(new Spot(piece, size));
      }
    }
    Map<Spot, Ink> all = new LinkedHashMap<>();
    byPiece
        .values()
        .forEach(
            spots ->
                spots.forEach(
                    spot -> {
                      Ink ink = sizes.get(spot.size()).get(spot.piece());
                      if (ink != null) {
                        all.put(spot, ink);
                      }
                    }));
    return all;
  }

  private Map<String, Ink> drawn(
      Evaluation values, int size, List<PlannedThing> points, Map<Model, Ink> now) {
    Map<String, Ink> inks = new LinkedHashMap<>();
    for (Piece piece : values.pieces(size)) {
      Map<String, Point> named = new TreeMap<>();
      for (PlannedThing thing : points) {
        if (thing.owner().equals(piece.name())) {
          values.point(size, thing).ifPresent(at -> named.put(thing.name(), at));
        }
      }
      Model model = new Model(piece, named);
      Ink before = known.get(model);
      Ink ink = before == null ? Ink.of(piece, named) : before;
      now.put(model, ink);
      inks.put(piece.name(), ink);
    }
    return inks;
  }
}
