package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.seam.Seam;

/**
 * Where a seam ends: the ends of two of its layers, one on the other when it is sewn.
 *
 * @param first of the first layer
 * @param second of another
 */
record SeamEnd(Seam seam, EdgeTip first, EdgeTip second) {
  /** All ends of all seams of a size, but for those that were closed and turned out before. */
  static List<SeamEnd> in(SizedPattern sized, TurnedOut turnedOut) {
    List<SeamEnd> ends = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (Seam.Layer layer : join.layers().subList(1, join.layers().size())) {
          for (boolean start : new boolean[] {true, false}) {
            Optional<EdgeTip> first = EdgeTip.of(join.layers().get(0), start, sized);
            Optional<EdgeTip> second = EdgeTip.of(layer, start, sized);
            if (first.isPresent()
                && second.isPresent()
                && !turnedOut.at(join, first.get(), second.get())) {
              ends.add(new SeamEnd(seam, first.get(), second.get()));
            }
          }
        }
      }
    }
    return ends;
  }
}
