package org.hemwright.pattern.body;

/**
 * One size of a chart.
 *
 * @param position its place in the chart, from 0, smallest first as the chart lists them
 * @param name as the chart writes it: {@code 14}, {@code 2T}, {@code S/M}
 */
public record Size(int position, String name) implements Comparable<Size> {
  public Size {
    if (position < 0 || name.isBlank()) {
      throw new IllegalArgumentException("a size has a place from 0 and a name");
    }
  }

  @Override
  public int compareTo(Size other) {
    return Integer.compare(position, other.position);
  }
}
