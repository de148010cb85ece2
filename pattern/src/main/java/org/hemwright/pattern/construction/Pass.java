package org.hemwright.pattern.construction;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.seam.Seam;
import org.jspecify.annotations.Nullable;

/**
 * One pass of a seam: its left, say, or its right.
 *
 * <p>What it takes is told once and kept, since every step of a making asks for it; two passes are
 * equal that are the same join of equal seams.
 */
public final class Pass {
  private final Seam seam;
  private final int index;
  private final List<Strip> strips;
  private final List<Part> parts;

  Pass(Seam seam, int index) {
    this.seam = seam;
    this.index = index;
    strips = strips(seam.joins().get(index)).toList();
    parts = strips.stream().map(Strip::part).distinct().toList();
  }

  private static Stream<Strip> strips(Seam.Join join) {
    return join.layers().stream().flatMap(layer -> layer.run().stream()).map(Strip::of);
  }

  /** The seam. */
  public Seam seam() {
    return seam;
  }

  /** The layers that it brings together. */
  public Seam.Join join() {
    return seam.joins().get(index);
  }

  /** The strips of all its layers, in their order. */
  public List<Strip> strips() {
    return strips;
  }

  /** The cut copies that it takes, each once. */
  public List<Part> parts() {
    return parts;
  }

  /** Whether both its layers lie on one cut copy, as those of a band folded in half do. */
  public boolean isWithinOnePart() {
    return parts.size() == 1;
  }

  /**
   * Whether all its layers lie on the same cut copies, one or several: those of a band folded in
   * half, also where the band is put together of parts.
   */
  public boolean isOnItself() {
    return join().layers().stream().map(Pass::parts).distinct().count() == 1;
  }

  private static Set<Part> parts(Seam.Layer layer) {
    return layer.run().stream().map(Part::of).collect(Collectors.toSet());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Pass pass && index == pass.index && seam.equals(pass.seam));
  }

  @Override
  public int hashCode() {
    return 31 * seam.name().hashCode() + index;
  }

  @Override
  public String toString() {
    return "Pass[" + seam.name() + ", " + index + "]";
  }
}
