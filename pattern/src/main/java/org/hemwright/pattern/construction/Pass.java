package org.hemwright.pattern.construction;

import java.util.List;
import java.util.stream.Stream;
import org.hemwright.pattern.seam.Seam;

/**
 * One pass of a seam: its left, say, or its right.
 *
 * @param seam the seam
 * @param index which of its joins, from 0
 */
public record Pass(Seam seam, int index) {
  /** The layers that it brings together. */
  public Seam.Join join() {
    return seam.joins().get(index);
  }

  /** The strips of all its layers, in their order. */
  public List<Strip> strips() {
    return stream().toList();
  }

  private Stream<Strip> stream() {
    return join().layers().stream().flatMap(layer -> layer.run().stream()).map(Strip::of);
  }

  /** The cut copies that it takes, each once. */
  public List<Part> parts() {
    return stream().map(Strip::part).distinct().toList();
  }

  /** Whether both its layers lie on one cut copy, as those of a band folded in half do. */
  public boolean isWithinOnePart() {
    return parts().size() == 1;
  }
}
