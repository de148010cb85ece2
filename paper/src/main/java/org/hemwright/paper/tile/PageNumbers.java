package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.HouseType;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.View;

/**
 * How the pages of one file are counted and headed.
 *
 * @param speech of its papers
 * @param view the view that alone is printed, if only one is
 * @param all how many pages the file has
 * @param proof what marks every page as a proof, if anything does
 * @param type the fonts of the house
 */
record PageNumbers(
    Speech speech, Optional<View> view, int all, Optional<String> proof, HouseType type) {
  private static final double POINTS = 9;
  private static final double ABOVE = 1.5;
  private static final double AFTER_NAME = 3.5;
  private static final double BETWEEN = 6;

  /**
   * The line above a page's frame: its name, design, version, house, sizes and number; below it the
   * house's own line, if it has one.
   *
   * @param window the frame
   * @param name of the page among its neighbours
   * @param sizes the names of the sizes on it
   * @param number of the page in the file, from 1
   */
  List<Item> header(Box window, Optional<String> name, List<String> sizes, int number) {
    double y = window.maxY() + ABOVE;
    double x = window.minX();
    List<Item> items = new ArrayList<>();
    if (name.isPresent()) {
      SetLine own = Face.SEMIBOLD.set(name.get(), POINTS);
      items.add(words(own, x, y));
      x += own.width() + AFTER_NAME;
    }
    SetLine page =
        Face.REGULAR.set("%s · Page %d of %d".formatted(speech.sizes(sizes), number, all), POINTS);
    double end = window.maxX() - page.width();
    if (proof.isPresent()) {
      SetLine mark = Face.SEMIBOLD.set(proof.get(), POINTS);
      items.add(words(mark, x, y));
      x += mark.width() + BETWEEN;
    }
    for (SetLine design : designs()) {
      if (x + design.width() + BETWEEN <= end) {
        items.add(words(design, x, y));
        break;
      }
    }
    items.add(words(page, end, y));
    speech.details().brand().footer().ifPresent(line -> items.add(footer(window, line)));
    return items;
  }

  /** What the design is called, in all words first; a proof's mark may need their room. */
  private List<SetLine> designs() {
    String title =
        speech.details().title()
            + view.map(each -> ", view " + Speech.spoken(each.name())).orElse("");
    String version = title + ", version " + speech.details().version();
    List<String> texts = List.of(version + ", " + speech.details().by(), version, title);
    Stream<SetLine> own = texts.stream().map(text -> type.line(text, POINTS));
    return Stream.concat(own, texts.stream().map(text -> Face.REGULAR.set(text, POINTS))).toList();
  }

  /** The house's own line, below the frame. */
  private Words footer(Box window, String text) {
    SetLine line = type.line(text, POINTS);
    return words(line, window.minX(), window.minY() - ABOVE - line.capitalHeight());
  }

  /** Whether the house's line is too long for the narrowest page. */
  static boolean isTooLong(String footer, HouseType type) {
    return type.line(footer, POINTS).width() > KeyPanel.WIDTH;
  }

  private static Words words(SetLine line, double x, double y) {
    return new Words(line, new Point(x, y), 0, Inks.BLACK, Layer.COMMON, Subject.NONE);
  }

  /** Page numbers as a printing dialogue takes them: "2–5, 7, 9". */
  static String ranges(List<Integer> pages) {
    List<String> ranges = new ArrayList<>();
    for (int first = 0; first < pages.size(); ) {
      int last = first;
      while (last + 1 < pages.size() && pages.get(last + 1) == pages.get(last) + 1) {
        last++;
      }
      ranges.add(
          first == last ? pages.get(first).toString() : pages.get(first) + "–" + pages.get(last));
      first = last + 1;
    }
    return String.join(", ", ranges);
  }
}
