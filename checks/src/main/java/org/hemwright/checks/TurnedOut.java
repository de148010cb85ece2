package org.hemwright.checks;

import java.util.HashSet;
import java.util.Set;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.seam.Seam;

/**
 * Ends that are closed before a seam is sewn: a collar is sewn to its like and turned out before it
 * is set between the stands, so that nothing runs on there and no cut edges meet.
 *
 * @param closed the edges that a seam brings to their own likes, as {@code collar.end}
 */
record TurnedOut(Set<String> closed) {
  TurnedOut {
    closed = Set.copyOf(closed);
  }

  static TurnedOut in(SizedPattern sized) {
    Set<String> closed = new HashSet<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        String first = join.layers().get(0).text();
        if (join.layers().stream().allMatch(layer -> layer.text().equals(first))) {
          closed.add(first);
        }
      }
    }
    return new TurnedOut(closed);
  }

  /** Whether both layers of a join end so. */
  boolean at(Seam.Join join, EdgeTip first, EdgeTip second) {
    return at(join, first) && at(join, second);
  }

  /** Whether the edge beside an end of a join is one of them: the join takes both its layers. */
  private boolean at(Seam.Join join, EdgeTip tip) {
    long layers =
        join.layers().stream()
            .filter(
                layer ->
                    layer.run().stream()
                        .anyMatch(place -> place.piece().equals(tip.piece().name())))
            .count();
    return layers > 1 && closed.contains(tip.beside().text());
  }
}
