package org.hemwright.booklet.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.geometry.Box;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.sheet.Sheet;
import org.junit.jupiter.api.Test;

/** A figure that is drawn otherwise for large print is printed so there, and nowhere else. */
class OnPaperTest {
  private static final Sheet USUAL = new Sheet(new Box(0, 0, 160, 90), List.of());
  private static final Sheet SMALLER = new Sheet(new Box(-3, -3, 87, 57), List.of());

  private static String put(boolean large, Figure figure) {
    Markup out = new Markup();
    new OnPaper(new PrintForm(PrintForm.Paper.A4, large)).put(out, figure);
    return out.whole();
  }

  @Test
  void largePrintHasADrawingOfItsOwn() {
    Figure figure = new Figure("laying", USUAL, "How pieces lie", List.of());
    Figure other = figure.enlarged(new Figure.Enlarged(SMALLER, 1.5));
    assertThat(put(false, other)).contains("width:160.0mm;height:90.0mm");
    assertThat(put(true, other)).contains("width:135.0mm;height:90.0mm");
    assertThat(put(true, figure)).contains("width:160.0mm;height:90.0mm");
  }
}
