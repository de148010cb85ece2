package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.arrange.TileGrid;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;

/** A match mark for every side on which two printed pages meet, clear of lines where it can be. */
final class MatchMarks {
  private static final double STEP = 6;
  private static final double CORNER = 14;
  private static final double[] REACHES = {MatchMark.REACH, 5.5, 3};

  private final GroupSheet sheet;
  private final Room room;
  private final Map<Tile, List<MatchMark>> marks = new LinkedHashMap<>();
  private int count;

  private MatchMarks(GroupSheet sheet, Room room) {
    this.sheet = sheet;
    this.room = room;
  }

  /**
   * The marks that each page shows.
   *
   * @param tiles the printed pages
   * @param room what is free on the sheet; the marks take their part of it
   * @param always whether every such side has a mark, or only those that a piece crosses
   */
  static Map<Tile, List<MatchMark>> of(
      GroupSheet sheet, List<Tile> tiles, Room room, boolean always) {
    MatchMarks made = new MatchMarks(sheet, room);
    Set<Tile> printed = new LinkedHashSet<>(tiles);
    TileGrid grid = sheet.grid();
    for (Tile tile : tiles) {
      made.marks.put(tile, new ArrayList<>());
    }
    for (Tile tile : tiles) {
      Box core = grid.core(tile);
      Tile right = new Tile(tile.row(), tile.column() + 1);
      if (printed.contains(right)) {
        double x = core.maxX() + grid.overlap() / 2;
        made.side(tile, right, new Point(x, core.minY()), new Point(x, core.maxY()), always);
      }
      Tile below = new Tile(tile.row() + 1, tile.column());
      if (printed.contains(below)) {
        double y = core.minY() - grid.overlap() / 2;
        made.side(tile, below, new Point(core.minX(), y), new Point(core.maxX(), y), always);
      }
    }
    return made.marks;
  }

  private void side(Tile one, Tile other, Point from, Point to, boolean always) {
    if (!always && !sheet.crosses(from, to)) {
      return;
    }
    Vector along = to.minus(from).unit();
    Point place = place(from, to, along);
    MatchMark mark = new MatchMark(place, along, ++count);
    room.take(box(place, along, MatchMark.REACH), 1);
    mark(one, mark);
    mark(other, mark);
  }

  private void mark(Tile tile, MatchMark mark) {
    marks.computeIfAbsent(tile, key -> new ArrayList<>()).add(mark);
  }

  /**
   * Nearest the middle and all free; else with its tips alone on a line, so that no word is
   * covered; else in the middle.
   */
  private Point place(Point from, Point to, Vector along) {
    double length = from.distanceTo(to);
    for (double reach : REACHES) {
      for (double off = 0; off < length / 2 - CORNER; off += STEP) {
        for (double side : new double[] {1, -1}) {
          Point place = from.plus(along.times(length / 2 + side * off));
          if (room.isFree(box(place, along, reach))) {
            return place;
          }
        }
      }
    }
    return from.toward(to, 0.5);
  }

  private static TurnedBox box(Point place, Vector along, double reach) {
    double wide = along.dx() == 0 ? reach : MatchMark.HALF;
    double high = along.dx() == 0 ? MatchMark.HALF : reach;
    return new TurnedBox(place.plus(new Vector(-wide, -high)), 0, 2 * wide, 2 * high);
  }
}
