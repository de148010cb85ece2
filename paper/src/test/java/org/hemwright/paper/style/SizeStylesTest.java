package org.hemwright.paper.style;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.pattern.body.Size;
import org.junit.jupiter.api.Test;

class SizeStylesTest {
  private static List<Size> sizes(int from, int to) {
    return IntStream.range(from, to).mapToObj(i -> new Size(i, "s" + i)).toList();
  }

  // Handbook section 6, "Lines": size must never depend on colour alone.
  @Test
  void anyNineNeighboursDifferInTheirDashes() {
    for (int first = 0; first < 20; first++) {
      List<Size> group = sizes(first, first + 9);
      SizeStyles styles = SizeStyles.of(group, false);
      Set<List<Double>> dashes = new HashSet<>();
      for (Size size : group) {
        assertThat(styles.of(size).dashes()).isNotEmpty();
        assertThat(styles.of(size).ink()).isEqualTo(Inks.BLACK);
        dashes.add(styles.of(size).dashes());
      }
      assertThat(dashes).hasSize(9);
    }
  }

  @Test
  void aSizeKeepsItsDashesFromGroupToGroup() {
    Size shared = new Size(8, "s8");
    assertThat(SizeStyles.of(sizes(0, 9), true).of(shared).dashes())
        .isEqualTo(SizeStyles.of(sizes(8, 17), true).of(shared).dashes());
  }

  /** The contrast of two inks, 1 to 21 (WCAG 2.2). */
  private static double contrast(Ink one, Ink other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  /** Relative luminance, 0 black to 1 white (WCAG 2.2). */
  private static double luminance(Ink ink) {
    return 0.2126 * linear(ink.red()) + 0.7152 * linear(ink.green()) + 0.0722 * linear(ink.blue());
  }

  private static double linear(int part) {
    double share = part / 255.0;
    return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
  }

  // WCAG 2.2, 1.4.11: 3 : 1 for what must be seen to understand a drawing; 1.4.3: 4.5 : 1 for text
  // is kept for all but the palest two of nine.
  @Test
  void everyInkIsDarkEnoughOnPaperAndPalerThanTheOneBefore() {
    Ink before = Inks.BLACK;
    for (int i = 0; i <= 8; i++) {
      Ink ink = Inks.ramp(i / 8.0);
      assertThat(contrast(ink, Inks.PAPER)).isGreaterThan(3);
      if (i <= 6) {
        assertThat(contrast(ink, Inks.PAPER)).isGreaterThan(4.5);
      }
      assertThat(luminance(ink)).isGreaterThan(luminance(before));
      before = ink;
    }
  }

  // House style (look.md): cut line 0.6 mm, stitch line 0.3 mm dashed, inner lines 0.25 mm.
  @Test
  void pensHaveTheHouseWidths() {
    assertThat(Pens.CUT.width()).isEqualTo(0.6);
    assertThat(Pens.STITCH.width()).isEqualTo(0.3);
    assertThat(Pens.STITCH.dashes()).isNotEmpty();
    assertThat(Pens.INNER.width()).isEqualTo(0.25);
  }

  @Test
  void aSizeOnItsOwnIsUnbrokenAndBlack() {
    Size only = new Size(4, "s4");
    SizeStyle style = SizeStyles.of(List.of(only), true).of(only);
    assertThat(style.dashes()).isEmpty();
    assertThat(style.ink()).isEqualTo(Inks.BLACK);
  }
}
