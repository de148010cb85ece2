package org.hemwright.pattern.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.Grain;

/**
 * How a piece lies: on the cloth by its grain, in the nest by its stack point, in its own plane.
 */
record LyingComparing(String name, Map<String, PieceMatch.Both> sizes, List<Change> changes) {
  void compare() {
    BySize found = new BySize(sizes.size());
    sizes.forEach(
        (size, both) -> {
          grain(size, both.old().grain(), both.now().grain(), both.onto(), found);
          Point stacked = both.onto().apply(both.now().stackPoint());
          if (both.old().stackPoint().distanceTo(stacked) > Tolerance.PRINTED_AS_ONE) {
            found.add(size, Changed.PIECE_STACKED, name);
          }
          if (!both.onto().isMirror() && isMoved(both.onto())) {
            found.add(size, Changed.PIECE_MOVED, name);
          }
        });
    changes.addAll(found.changes());
  }

  private static boolean isMoved(Motion motion) {
    return motion.shift().length() > Tolerance.DRAWN_LENGTH
        || Math.abs(motion.sin()) > Tolerance.SAME_DIRECTION
        || motion.cos() < 0;
  }

  private void grain(
      String size, Optional<Grain> was, Optional<Grain> is, Motion onto, BySize found) {
    if (was.isPresent() && is.isPresent()) {
      Vector before = was.get().direction();
      Vector now = onto.apply(is.get().direction());
      if (Math.abs(before.angleTo(now)) > Tolerance.SAME_DIRECTION) {
        found.add(
            size,
            Changed.GRAIN_TURNED,
            name + " grain",
            Optional.of(Directions.of(before)),
            Optional.of(Directions.of(now)));
      }
    } else if (is.isPresent()) {
      found.add(size, Changed.GRAIN_ADDED, name);
    } else if (was.isPresent()) {
      found.add(size, Changed.GRAIN_REMOVED, name);
    }
  }
}
