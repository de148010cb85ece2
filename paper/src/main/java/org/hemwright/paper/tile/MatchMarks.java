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
    double length = from.distanceTo(to);
    Point place = from.toward(to, 0.5);
    for (double off = 0; off < length / 2 - CORNER; off += STEP) {
      Point after = from.plus(along.times(length / 2 + off));
      Point before = from.plus(along.times(length / 2 - off));
      if (isFree(after, along)) {
        place = after;
        break;
      }
      if (isFree(before, along)) {
        place = before;
        break;
      }
    }
    MatchMark mark = new MatchMark(place, along, ++count);
    room.take(box(place, along), 1);
    mark(one, mark);
    mark(other, mark);
  }

  private void mark(Tile tile, MatchMark mark) {
    marks.computeIfAbsent(tile, key -> new ArrayList<>()).add(mark);
  }

  private boolean isFree(Point place, Vector along) {
    return room.isFree(box(place, along));
  }

  private static TurnedBox box(Point place, Vector along) {
    double wide = along.dx() == 0 ? MatchMark.REACH : MatchMark.HALF;
    double high = along.dx() == 0 ? MatchMark.HALF : MatchMark.REACH;
    return new TurnedBox(place.plus(new Vector(-wide, -high)), 0, 2 * wide, 2 * high);
  }
}
