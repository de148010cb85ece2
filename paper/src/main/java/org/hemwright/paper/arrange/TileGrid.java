package org.hemwright.paper.arrange;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;

/**
 * How a big sheet is cut into pages. Rows run downward from the sheet's top edge (y = 0), columns
 * rightward from its left edge (x = 0).
 *
 * @param width of what one page shows (mm)
 * @param height of what one page shows (mm)
 * @param overlap how much of that the next page shows again (mm); 0 where pages are trimmed and
 *     laid edge to edge
 */
public record TileGrid(double width, double height, double overlap) {
  public TileGrid {
    if (!(overlap >= 0) || !(width > overlap) || !(height > overlap)) {
      throw new IllegalArgumentException(
          "pages show more than they overlap: %s × %s, %s".formatted(width, height, overlap));
    }
  }

  /** From one column to the next (mm). */
  public double stepAcross() {
    return width - overlap;
  }

  /** From one row to the next (mm). */
  public double stepDown() {
    return height - overlap;
  }

  /** How many columns show a drawing of some width (mm). */
  public int columns(double wide) {
    return count(wide, width);
  }

  /** How many rows show a drawing of some height (mm). */
  public int rows(double high) {
    return count(high, height);
  }

  private int count(double length, double side) {
    return Math.max(1, (int) Math.ceil((length - overlap) / (side - overlap)));
  }

  /** What a page shows of the sheet. */
  public Box window(Tile tile) {
    double left = tile.column() * stepAcross();
    double top = -tile.row() * stepDown();
    return new Box(left, top - height, left + width, top);
  }

  /** A page's own part of the sheet, which no other page shows but where they overlap. */
  public Box core(Tile tile) {
    double left = tile.column() * stepAcross();
    double top = -tile.row() * stepDown();
    return new Box(left, top - stepDown(), left + stepAcross(), top);
  }

  /** The pages of so many rows and columns, row by row. */
  public static List<Tile> all(int rows, int columns) {
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        tiles.add(new Tile(row, column));
      }
    }
    return tiles;
  }

  /**
   * One page's place.
   *
   * @param row from 0, downward
   * @param column from 0, rightward
   */
  public record Tile(int row, int column) {
    private static final int LETTERS = 26;

    /** Its name: a letter for the row, a number for the column. */
    public String name() {
      String letter = String.valueOf((char) ('A' + row % LETTERS));
      return letter.repeat(1 + row / LETTERS) + (column + 1);
    }
  }
}
