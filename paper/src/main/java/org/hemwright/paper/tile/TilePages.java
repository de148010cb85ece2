package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.arrange.Footprint;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/** The printed pages of one group's sheet, each with its frame, name, marks and header. */
final class TilePages {
  private static final double TAG = 20;
  private static final double CLEAR = 2;
  private static final double TAG_STEP = 8;

  private final GroupSheet sheet;
  private final PageFormat format;
  private final PageNumbers numbers;
  private final List<Tile> tiles;
  private final List<Inked> items;
  private final Room room;
  private final Map<Tile, List<MatchMark>> marks;

  TilePages(GroupSheet sheet, List<Inked> panel, PageFormat format, PageNumbers numbers) {
    this.sheet = sheet;
    this.format = format;
    this.numbers = numbers;
    tiles = sheet.tiles();
    items = new ArrayList<>(sheet.items());
    items.addAll(panel);
    room = room();
    marks = MatchMarks.of(sheet, tiles, room, !format.isLarge());
  }

  /** What is free on the sheet. */
  private Room room() {
    Box first = sheet.grid().window(new Tile(0, 0));
    Tile corner = new Tile(sheet.arrangement().rows() - 1, sheet.arrangement().columns() - 1);
    Box all = first.union(sheet.grid().window(corner));
    Room free = new Room(List.of(Path.polyline(Footprint.corners(all))));
    for (Inked item : items) {
      if (item instanceof Stroke stroke) {
        free.takeLine(stroke.path(), CLEAR);
      } else if (item instanceof Words words) {
        SetLine line = words.line();
        Point foot = words.corners().get(0);
        double high = line.capitalHeight() + line.descent();
        free.take(new TurnedBox(foot, words.angle(), line.width(), high), CLEAR);
      }
    }
    return free;
  }

  /** The pages, row by row. */
  List<Sheet> sheets(int firstNumber) {
    List<Sheet> pages = new ArrayList<>();
    for (int i = 0; i < tiles.size(); i++) {
      pages.add(page(tiles.get(i), firstNumber + i));
    }
    return pages;
  }

  private Sheet page(Tile tile, int number) {
    Box window = format.window(sheet, tile);
    boolean alone = format.isLarge() && tiles.size() == 1;
    List<Item> inWindow = new ArrayList<>();
    for (MatchMark mark : marks.getOrDefault(tile, List.of())) {
      inWindow.addAll(mark.items());
    }
    for (Inked item : items) {
      if (item.bounds().overlaps(window)) {
        inWindow.add(item);
      }
    }
    List<Item> all = new ArrayList<>();
    all.add(new Clip(window, inWindow));
    if (!alone) {
      all.add(
          new Stroke(
              Path.polyline(Footprint.corners(window)), Pens.RULE, Layer.COMMON, Subject.NONE));
      tag(window, tile.name()).ifPresent(all::add);
    }
    Optional<String> name = alone ? Optional.empty() : Optional.of(tile.name());
    all.addAll(numbers.header(window, name, sheet.group().sizeNames(), number));
    return new Sheet(format.paper(window), all);
  }

  /** The page's name inside its frame, near the upper left corner or where else it is free. */
  private Optional<Words> tag(Box window, String name) {
    SetLine line = Face.SEMIBOLD.set(name, TAG);
    double width = line.width() + 2;
    double height = line.capitalHeight() + 2;
    for (double down = 4; down + height < window.height() - 4; down += TAG_STEP) {
      for (double across = 4; across + width < window.width() - 4; across += TAG_STEP) {
        Point corner = new Point(window.minX() + across, window.maxY() - down - height);
        TurnedBox box = new TurnedBox(corner, 0, width, height);
        if (room.isFree(box)) {
          room.take(box, CLEAR);
          return Optional.of(words(line, box.at(1, 1), Inks.QUIET));
        }
      }
    }
    return Optional.empty();
  }

  private static Words words(SetLine line, Point at, Ink ink) {
    return new Words(line, at, 0, ink, Layer.COMMON, Subject.NONE);
  }
}
