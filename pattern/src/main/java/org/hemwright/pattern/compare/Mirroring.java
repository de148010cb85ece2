package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/** A piece that is the mirror image of what it was. */
final class Mirroring {
  private static final Motion OVER = Motion.mirror(Point.ORIGIN, new Point(0, 1));

  private Mirroring() {}

  /** The sizes with new mirrored on old, where that makes them one and nothing else does. */
  static Optional<Map<String, PieceMatch.Both>> of(Map<String, PieceMatch.Both> sizes) {
    Map<String, PieceMatch.Both> mirrored = new LinkedHashMap<>();
    for (Map.Entry<String, PieceMatch.Both> size : sizes.entrySet()) {
      PieceMatch.Both both = size.getValue();
      if (same(both.old(), both.now(), both.onto())) {
        return Optional.empty();
      }
      Optional<Motion> motion = mirror(both.old(), both.now());
      if (motion.isEmpty() || !same(both.old(), both.now(), motion.get())) {
        return Optional.empty();
      }
      mirrored.put(size.getKey(), new PieceMatch.Both(both.old(), both.now(), motion.get()));
    }
    return Optional.of(mirrored);
  }

  private static Optional<Motion> mirror(Piece old, Piece now) {
    Edge edge = now.edges().get(0);
    return old.edge(edge.name())
        .flatMap(before -> Laying.onto(before.path(), edge.path().moved(OVER).reversed()))
        .map(OVER::then);
  }

  private static boolean same(Piece old, Piece now, Motion motion) {
    return now.edges().stream()
        .allMatch(
            edge ->
                old.edge(edge.name())
                    .filter(before -> LineDistance.same(before.path(), Onto.path(edge, motion)))
                    .isPresent());
  }
}
