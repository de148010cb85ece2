package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/**
 * A drawing marked as a proof: the word stands above and below it, again and again, on paper that
 * is added there; so no line is touched, and no part of the width is without it.
 */
public final class ProofMark {
  /** From one word to the next, in words' widths. */
  private static final double APART = 2;

  /** The added paper, in capitals' heights. */
  private static final double STRIP = 2.2;

  private ProofMark() {}

  /**
   * The same drawing, marked.
   *
   * @param points the word's size (1/72 in); smaller where the drawing is too narrow for one word
   */
  public static Sheet on(Sheet sheet, String word, double points) {
    Box frame = sheet.frame();
    SetLine usual = Face.SEMIBOLD.set(word, points);
    SetLine line =
        usual.width() <= frame.width()
            ? usual
            : Face.SEMIBOLD.set(word, points * frame.width() / usual.width());
    double strip = STRIP * line.capitalHeight();
    double lift = (strip - line.capitalHeight()) / 2;
    int words = (int) ((frame.width() / line.width() + APART) / (1 + APART));
    double step = frame.width() / Math.max(1, words);
    List<Item> items = new ArrayList<>(sheet.items());
    for (int i = 0; i < Math.max(1, words); i++) {
      double x = frame.minX() + step * i + (step - line.width()) / 2;
      items.add(word(line, x, frame.maxY() + lift));
      items.add(word(line, x, frame.minY() - strip + lift));
    }
    Box larger = new Box(frame.minX(), frame.minY() - strip, frame.maxX(), frame.maxY() + strip);
    return new Sheet(larger, items);
  }

  private static Words word(SetLine line, double x, double y) {
    return new Words(line, new Point(x, y), 0, Inks.BLACK, Layer.COMMON, Subject.NONE);
  }
}
