package org.hemwright.paper.sheet;

import java.util.List;

/**
 * Which sizes a thing is drawn for, so that a reader may show one size and hide the others.
 *
 * @param sizes the sizes' names in the chart's order; none for what is common to all. With several,
 *     the thing shows while any of them shows: a line on which several sizes coincide
 */
public record Layer(List<String> sizes) {
  /** What every size shares: words, grain, frames. */
  public static final Layer COMMON = new Layer(List.of());

  public Layer {
    sizes = List.copyOf(sizes);
  }

  /** What belongs to one size. */
  public static Layer of(String size) {
    return new Layer(List.of(size));
  }

  /** Whether it shows whatever the size. */
  public boolean isCommon() {
    return sizes.isEmpty();
  }
}
