package org.hemwright.workroom.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.Piece;

/**
 * Every piece in some sizes, drawn; what is like before is not drawn again.
 *
 * <p>Not for several threads at once.
 */
final class DrawnRun {
  /** The points and lines named on a piece. */
  private record Named(Map<String, Point> points, Map<String, Path> lines) {}

  /** What was drawn of a piece: with all that is named on it, or its outline alone. */
  private record Picture(Piece piece, Optional<Named> named, Ink ink) {
    boolean isOf(Piece other) {
      return piece.equals(other);
    }
  }

  /**
   * Where a drawing belongs.
   *
   * @param piece its name
   * @param size its place in the chart
   */
  record Spot(String piece, int size) {}

  private final Map<Spot, Picture> known = new ConcurrentHashMap<>();
  private Optional<Plan> plan = Optional.empty();
  private Map<String, List<PlannedThing>> things = Map.of();

  /**
   * The drawings of some values, in the order of the document and, for each piece, of the sizes.
   *
   * @param whole by a size's place in the chart: whether it is drawn with all that lies on a piece;
   *     of others that changed the outline alone is drawn
   */
  Map<Spot, Ink> of(Evaluation values, IntPredicate whole) {
    if (plan.isEmpty() || plan.get() != values.plan()) {
      plan = Optional.of(values.plan());
      things =
          values.plan().things().stream()
              .filter(t -> t.what() == Drawn.What.POINT || t.what() == Drawn.What.PATH)
              .collect(Collectors.groupingBy(PlannedThing::owner));
    }
    List<Map<Spot, Ink>> sizes =
        IntStream.range(0, values.sizes().size())
            .parallel()
            .mapToObj(size -> drawn(values, size, whole))
            .toList();
    Map<String, List<Map.Entry<Spot, Ink>>> byPiece = new LinkedHashMap<>();
    for (Map<Spot, Ink> inks : sizes) {
      for (Map.Entry<Spot, Ink> each : inks.entrySet()) {
        byPiece.computeIfAbsent(each.getKey().piece(), p -> new ArrayList<>()).add(each);
      }
    }
    Map<Spot, Ink> all = new LinkedHashMap<>();
    byPiece.values().forEach(inks -> inks.forEach(ink -> all.put(ink.getKey(), ink.getValue())));
    return all;
  }

  private Map<Spot, Ink> drawn(Evaluation values, int size, IntPredicate whole) {
    Map<Spot, Ink> inks = new LinkedHashMap<>();
    int position = values.sizes().get(size).position();
    boolean all = whole.test(position);
    for (Piece piece : values.pieces(size)) {
      Spot spot = new Spot(piece.name(), position);
      inks.put(spot, (all ? whole(spot, piece, values, size) : outline(spot, piece)).ink);
    }
    return inks;
  }

  private Picture whole(Spot spot, Piece piece, Evaluation values, int size) {
    Map<String, Point> points = new TreeMap<>();
    Map<String, Path> lines = new TreeMap<>();
    for (PlannedThing thing : things.getOrDefault(piece.name(), List.of())) {
      values.point(size, thing).ifPresent(at -> points.put(thing.name(), at));
      values.path(size, thing).ifPresent(path -> lines.put(thing.name(), path));
    }
    Optional<Named> named = Optional.of(new Named(points, lines));
    Picture before = known.get(spot);
    return before != null && before.isOf(piece) && before.named.equals(named)
        ? before
        : kept(spot, new Picture(piece, named, Ink.of(piece, points, lines)));
  }

  /** The outline, or the whole that was drawn when the piece was the same. */
  private Picture outline(Spot spot, Piece piece) {
    Picture before = known.get(spot);
    return before != null && before.isOf(piece)
        ? before
        : kept(spot, new Picture(piece, Optional.empty(), Ink.outlineOf(piece)));
  }

  private Picture kept(Spot spot, Picture picture) {
    known.put(spot, picture);
    return picture;
  }
}
