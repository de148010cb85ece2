package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.style.SizeStyles;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;

/**
 * Which pages of one group each size needs, with the sizes' lines as a key; where the maker may
 * choose among views, for all pieces and then for each view.
 */
final class PageTable {
  private static final double ROW = 6.4;
  private static final double LINE = 4.6;
  private static final double TEXT = 10;
  private static final double HEADING = 12;

  /** Below this width pages stand under their size, not beside it (mm). */
  private static final double NARROW = 80;

  private static final double GUTTER = 8;

  private final GroupSheet sheet;
  private final Speech speech;
  private final int first;
  private final List<Tile> tiles;

  /**
   * The table.
   *
   * @param first the number of the group's first printed page in the file
   */
  PageTable(GroupSheet sheet, Speech speech, int first) {
    this.sheet = sheet;
    this.speech = speech;
    this.first = first;
    tiles = sheet.tiles();
  }

  /** How high it is when it is so wide (mm). */
  double height(double width) {
    return draw(new Leaf(), 0, 0, width);
  }

  /** Draws it; answers its foot, counted down from the frame's top. */
  double draw(Leaf leaf, double left, double top, double width) {
    leaf.words(left, top + 4, "Pages that each size needs", Face.SEMIBOLD, HEADING);
    List<Nest> nests = sheet.group().nests();
    if (nests.isEmpty()) {
      return top + 4;
    }
    SizeStyles styles = nests.get(0).styles();
    return sheet.group().views().isEmpty()
        ? bySize(leaf, left, top + 11, width, styles)
        : byView(leaf, left, top + 11, width, styles);
  }

  private List<Integer> numbers(List<Tile> own) {
    return own.stream().map(tile -> first + tiles.indexOf(tile)).toList();
  }

  private static String count(List<Integer> pages) {
    return pages.size() + (pages.size() == 1 ? "\u00a0page" : "\u00a0pages");
  }

  private double bySize(Leaf leaf, double left, double top, double width, SizeStyles styles) {
    boolean narrow = width < NARROW;
    double down = top;
    double foot = top;
    for (Size size : sheet.group().sizes()) {
      List<Integer> pages = numbers(sheet.tiles(size));
      String ranges = PageNumbers.ranges(pages);
      double sample = narrow ? 26 : 44;
      double name = left + sample + (narrow ? 4 : 6);
      KeyPanel.sizeSample(leaf, left, down, sample, styles, size);
      leaf.words(name, down, "Size " + size.name(), Face.REGULAR, TEXT);
      if (narrow) {
        leaf.wordsBefore(left + width, down, count(pages), Face.REGULAR, TEXT);
        foot = leaf.text(name, down + LINE, ranges, Face.REGULAR, TEXT, left + width - name);
        down = foot + ROW + 1;
      } else {
        leaf.wordsBefore(left + 86, down, count(pages), Face.REGULAR, TEXT);
        foot = leaf.text(left + 92, down, ranges, Face.REGULAR, TEXT, width - 92);
        down = foot + ROW;
      }
    }
    return foot;
  }

  private double byView(Leaf leaf, double left, double top, double width, SizeStyles styles) {
    double down = key(leaf, left, top, width, styles) + 3;
    int columns = width < NARROW ? 1 : 2;
    double wide = (width - (columns - 1) * GUTTER) / columns;
    List<String> heads = new ArrayList<>(List.of("All pieces"));
    List<Map<Size, List<Integer>>> pages = new ArrayList<>(List.of(allPieces()));
    for (View view : sheet.group().views()) {
      heads.add(Speech.view(view));
      Map<Size, List<Integer>> own = new LinkedHashMap<>();
      sheet.group().sizes().forEach(size -> own.put(size, numbers(sheet.tiles(size, view))));
      pages.add(own);
    }
    double foot = down;
    for (int i = 0; i < heads.size(); i++) {
      if (i > 0 && i % columns == 0) {
        down = foot + ROW + 2;
      }
      double x = left + i % columns * (wide + GUTTER);
      foot = Math.max(foot, section(leaf, x, down, wide, heads.get(i), pages.get(i)));
    }
    return foot;
  }

  private Map<Size, List<Integer>> allPieces() {
    Map<Size, List<Integer>> pages = new LinkedHashMap<>();
    sheet.group().sizes().forEach(size -> pages.put(size, numbers(sheet.tiles(size))));
    return pages;
  }

  /** The lines of the sizes, in columns; answers where what follows may begin. */
  private double key(Leaf leaf, double left, double top, double width, SizeStyles styles) {
    List<Size> sizes = sheet.group().sizes();
    if (sizes.size() < 2) {
      return top - 4;
    }
    int columns = width < NARROW ? 2 : 4;
    int rows = (sizes.size() + columns - 1) / columns;
    double wide = width / columns;
    for (int i = 0; i < sizes.size(); i++) {
      int column = i / rows;
      double x = left + column * wide;
      KeyPanel.sizeSample(leaf, x, top + i % rows * ROW, wide - 6, styles, sizes.get(i));
    }
    return top + rows * ROW;
  }

  /** Sizes that need the same pages take one line together. */
  private double section(
      Leaf leaf,
      double left,
      double top,
      double width,
      String head,
      Map<Size, List<Integer>> pagesOfSize) {
    double foot = leaf.text(left, top, head, Face.SEMIBOLD, TEXT, width);
    double down = foot + 5.4;
    List<String> together = new ArrayList<>();
    List<Map.Entry<Size, List<Integer>>> rows = new ArrayList<>(pagesOfSize.entrySet());
    for (int i = 0; i < rows.size(); i++) {
      List<Integer> pages = rows.get(i).getValue();
      together.add(rows.get(i).getKey().name());
      if (i + 1 < rows.size() && rows.get(i + 1).getValue().equals(pages)) {
        continue;
      }
      leaf.words(left, down, speech.sizes(together), Face.REGULAR, TEXT);
      String ranges = pages.isEmpty() ? "" : PageNumbers.ranges(pages);
      if (width < NARROW) {
        leaf.wordsBefore(left + width, down, count(pages), Face.REGULAR, TEXT);
        foot = leaf.text(left, down + LINE, ranges, Face.REGULAR, TEXT, width);
      } else {
        leaf.wordsBefore(left + 44, down, count(pages), Face.REGULAR, TEXT);
        foot = leaf.text(left + 48, down, ranges, Face.REGULAR, TEXT, width - 48);
      }
      down = foot + 5.4;
      together.clear();
    }
    return foot;
  }
}
