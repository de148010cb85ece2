package org.hemwright.paper.style;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.body.Size;

/**
 * The styles of the sizes in one nest. A size keeps its dashes in every group it is drawn in, and
 * any nine neighbours of a chart differ; a size on its own is drawn with an unbroken line. An
 * unbroken line in a nest is one on which several sizes coincide.
 */
public final class SizeStyles {
  /**
   * Nine ways to break a line of 0.6 mm, neighbours as unlike as may be: long, dots, long and dot,
   * short, long and two dots, middling, long and short, middling and dot, long and two shorts.
   */
  private static final List<List<Double>> DASHES =
      List.of(
          List.of(11.0, 2.2),
          List.of(0.7, 1.3),
          List.of(9.0, 1.5, 0.7, 1.5),
          List.of(2.2, 1.6),
          List.of(9.0, 1.4, 0.7, 1.4, 0.7, 1.4),
          List.of(5.0, 2.0),
          List.of(9.0, 1.5, 2.4, 1.5),
          List.of(3.2, 1.4, 0.7, 1.4),
          List.of(9.0, 1.5, 2.4, 1.5, 2.4, 1.5));

  private final Map<Size, SizeStyle> styles;

  private SizeStyles(Map<Size, SizeStyle> styles) {
    this.styles = styles;
  }

  /**
   * The styles for a group of sizes.
   *
   * @param sizes in the chart's order, at least one
   * @param inColour whether sizes have inks of their own, or are all black
   */
  public static SizeStyles of(List<Size> sizes, boolean inColour) {
    Map<Size, SizeStyle> styles = new LinkedHashMap<>();
    int last = sizes.size() - 1;
    for (int i = 0; i <= last; i++) {
      Size size = sizes.get(i);
      if (last == 0) {
        styles.put(size, new SizeStyle(List.of(), Inks.BLACK));
      } else {
        List<Double> dashes = DASHES.get(size.position() % DASHES.size());
        styles.put(
            size, new SizeStyle(dashes, inColour ? Inks.ramp((double) i / last) : Inks.BLACK));
      }
    }
    return new SizeStyles(styles);
  }

  /** The style of a size of the group. */
  public SizeStyle of(Size size) {
    SizeStyle style = styles.get(size);
    if (style == null) {
      throw new IllegalArgumentException("size " + size.name() + " is not of this group");
    }
    return style;
  }

  /** The sizes, in the chart's order. */
  public List<Size> sizes() {
    return List.copyOf(styles.keySet());
  }
}
