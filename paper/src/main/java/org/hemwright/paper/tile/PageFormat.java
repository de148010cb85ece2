package org.hemwright.paper.tile;

import org.hemwright.geometry.Box;
import org.hemwright.paper.arrange.Arranger;
import org.hemwright.paper.arrange.TileGrid;

/** The papers that a pattern is printed on (mm; ISO 216, ANSI Y14.1 for Letter). */
public enum PageFormat {
  /** Prints on A4 and on Letter alike. */
  EITHER("pages", "A4 or Letter", 210, 279.4, 190, 254),
  /** Fewer pages on A4. */
  A4("pages-a4", "A4", 210, 297, 190, 277),
  /** Fewer pages on Letter. */
  LETTER("pages-letter", "Letter", 215.9, 279.4, 195.9, 259.4),
  /** A copy shop's sheets. */
  A0("a0", "A0", 841, 1189, 811, 1159),
  /** A plotter's roll of 36 in; as long as needed, up to what readers honour. */
  ROLL("roll-36in", "36 in roll", 914.4, 5080, 884.4, 5050);

  private static final int MOST_COLUMNS = 12;

  private final String fileName;
  private final String title;
  private final double paperWidth;
  private final double paperHeight;
  private final double width;
  private final double height;

  PageFormat(
      String fileName,
      String title,
      double paperWidth,
      double paperHeight,
      double width,
      double height) {
    this.fileName = fileName;
    this.title = title;
    this.paperWidth = paperWidth;
    this.paperHeight = paperHeight;
    this.width = width;
    this.height = height;
  }

  /** Its part of a file's name. */
  public String fileName() {
    return fileName;
  }

  /** Its name for the maker. */
  public String title() {
    return title;
  }

  /** Of the paper (mm). */
  public double paperWidth() {
    return paperWidth;
  }

  /** Of the paper (mm); of the longest paper, on a roll. */
  public double paperHeight() {
    return paperHeight;
  }

  /**
   * How the sheet is cut into pages.
   *
   * @param overlap of neighbouring pages (mm); large papers never overlap
   */
  public TileGrid grid(double overlap) {
    return new TileGrid(width, height, isLarge() ? 0 : overlap);
  }

  /** Whether it is a copy shop's paper, on which pieces are not cut apart. */
  public boolean isLarge() {
    return this == A0 || this == ROLL;
  }

  /** What a page shows of a sheet; on a roll no more than there is to show. */
  Box window(GroupSheet sheet, TileGrid.Tile tile) {
    Box window = sheet.grid().window(tile);
    if (this == ROLL && sheet.arrangement().rows() == 1) {
      return new Box(window.minX(), sheet.bounds().minY() - 1, window.maxX(), window.maxY());
    }
    return window;
  }

  /** The paper round a window, its margins even. */
  Box paper(Box window) {
    double across = (paperWidth - width) / 2;
    double down = (paperHeight - height) / 2;
    return new Box(
        window.minX() - across, window.minY() - down, window.maxX() + across, window.maxY() + down);
  }

  Arranger.Rules rules() {
    return new Arranger.Rules(isLarge(), this == ROLL ? 1 : MOST_COLUMNS);
  }
}
