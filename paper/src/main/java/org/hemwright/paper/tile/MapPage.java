package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.arrange.Footprint;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.body.Size;

/**
 * How the pages of one group lie: all of them reduced with the pieces on them, and the table of
 * pages.
 */
final class MapPage {
  private static final Ink PIECE = new Ink(0xe9, 0xee, 0xf3);
  private static final Pen OUTLINE = Pen.solid(0.2, Inks.BLACK);
  private static final Pen GRID = Pen.solid(0.2, Inks.QUIET);
  private static final Pen BLANK = Pen.solid(0.1, Inks.QUIET.tint(0.5));
  private static final double HEAD = 28;
  private static final double ABOVE_TABLE = 9;

  /** A page number as wide as any. */
  private static final int MOST_DIGITS = 888;

  /** The widest map with the table beside it, and the space between the two (mm). */
  private static final double BESIDE = 112;

  private static final double GUTTER = 10;
  private static final double POINTS = 9;
  private static final double FIGURE = 22;
  private static final double CLEAR = 1.4;

  /** Pages on the map narrower than this leave no room for their names (mm). */
  private static final double LEAST_PAGE = 13;

  private final GroupSheet sheet;
  private final Speech speech;
  private final List<Tile> tiles;
  private Leaf leaf = new Leaf();
  private int first;
  private Room room;

  MapPage(GroupSheet sheet, Speech speech) {
    this.sheet = sheet;
    this.speech = speech;
    tiles = sheet.tiles();
    room = new Room(List.of(Path.polyline(Footprint.corners(new Box(0, 0, 1, 1)))));
  }

  /** Where the table of pages stands. */
  private enum Table {
    BESIDE,
    BELOW,
    APART
  }

  GroupSheet sheet() {
    return sheet;
  }

  /** How many pages it takes in frames of a height (mm). */
  int count(double height) {
    return table(height) == Table.APART ? 2 : 1;
  }

  /**
   * Its pages.
   *
   * @param number of the first of them in the file; the group's pages follow
   */
  List<Leaf> leaves(int number, double height) {
    first = number + count(height);
    PageTable pages = new PageTable(sheet, speech, first);
    leaf = headed("How the pages lie");
    switch (table(height)) {
      case BESIDE -> {
        map(HEAD, BESIDE, height - HEAD);
        pages.draw(leaf, BESIDE + GUTTER, HEAD - 1, KeyPanel.WIDTH - BESIDE - GUTTER);
      }
      case BELOW -> {
        double foot = map(HEAD, KeyPanel.WIDTH, below(height));
        pages.draw(leaf, 0, foot + ABOVE_TABLE, KeyPanel.WIDTH);
      }
      case APART -> {
        map(HEAD, KeyPanel.WIDTH, height - HEAD);
        Leaf other = headed("Which pages to print");
        pages.draw(other, 0, HEAD, KeyPanel.WIDTH);
        return List.of(leaf, other);
      }
    }
    return List.of(leaf);
  }

  private Leaf headed(String title) {
    Leaf page = new Leaf();
    page.words(0, 14, title, Face.LIGHT, 26);
    page.wordsBefore(
        KeyPanel.WIDTH,
        14,
        speech.sizes(sheet.group().sizeNames()) + ", " + tiles.size() + " pages",
        Face.REGULAR,
        11);
    page.rule(0, 19, KeyPanel.WIDTH, Pens.SIGN);
    return page;
  }

  /** Where the table leaves the map the most room, or on a page of its own where that is little. */
  private Table table(double height) {
    PageTable pages = new PageTable(sheet, speech, MOST_DIGITS);
    boolean fits = pages.height(KeyPanel.WIDTH - BESIDE - GUTTER) < height - HEAD;
    double beside = fits ? scale(BESIDE, height - HEAD) : 0;
    double below = below(height) > 0 ? scale(KeyPanel.WIDTH, below(height)) : 0;
    if (Math.max(beside, below) * sheet.grid().stepAcross() < LEAST_PAGE
        && scale(KeyPanel.WIDTH, height - HEAD) > 1.2 * Math.max(beside, below)) {
      return Table.APART;
    }
    return beside > below ? Table.BESIDE : Table.BELOW;
  }

  /** How high the map may be with the table below it (mm). */
  private double below(double height) {
    double table = new PageTable(sheet, speech, MOST_DIGITS).height(KeyPanel.WIDTH);
    return height - HEAD - ABOVE_TABLE - table - 2;
  }

  private double wide() {
    return sheet.arrangement().columns() * sheet.grid().stepAcross() + sheet.grid().overlap();
  }

  private double high() {
    return sheet.arrangement().rows() * sheet.grid().stepDown() + sheet.grid().overlap();
  }

  private double scale(double width, double height) {
    return Math.min(width / wide(), height / high());
  }

  /** The map within a width and a height; answers how far down it reaches. */
  private double map(double top, double width, double height) {
    double scale = scale(width, height);
    double left = (width - wide() * scale) / 2;
    for (GroupSheet.LaidPiece piece : sheet.pieces()) {
      for (List<List<Point>> areas : piece.areas().values()) {
        leaf.fill(reduced(areas.get(0), scale, left, top), PIECE);
      }
    }
    Box edge = new Box(left, -top - high() * scale, left + wide() * scale, -top);
    room = new Room(List.of(Path.polyline(Footprint.corners(edge))));
    for (GroupSheet.LaidPiece piece : sheet.pieces()) {
      outlines(piece, scale, left, top);
    }
    for (int row = 0; row < sheet.arrangement().rows(); row++) {
      for (int column = 0; column < sheet.arrangement().columns(); column++) {
        tile(new Tile(row, column), scale, left, top);
      }
    }
    return top + high() * scale;
  }

  private void tile(Tile tile, double scale, double left, double top) {
    Box core = sheet.grid().core(tile);
    double x = left + core.minX() * scale;
    double down = top - core.maxY() * scale;
    double wide = core.width() * scale;
    double high = core.height() * scale;
    int index = tiles.indexOf(tile);
    if (index < 0) {
      leaf.hatch(new Box(x, -down - high, x + wide, -down), 2, BLANK);
      leaf.stroke(edge(x, down, wide, high), BLANK);
      return;
    }
    leaf.stroke(edge(x, down, wide, high), GRID);
    name(tile, index, x, down, wide, high);
  }

  private static Path edge(double x, double down, double wide, double high) {
    return Path.polyline(Footprint.corners(new Box(x, -down - high, x + wide, -down)));
  }

  /** A page's name and number, in that corner of its picture which is free. */
  private void name(Tile tile, int index, double x, double down, double wide, double high) {
    SetLine name = Face.SEMIBOLD.set(tile.name(), POINTS);
    SetLine number = Face.REGULAR.set("p.\u00a0" + (first + index), POINTS);
    double width = Math.max(name.width(), number.width());
    double height = name.capitalHeight() + Face.mm(POINTS) * Face.LEADING + number.descent();
    double[][] corners = {
      {x + CLEAR, down + CLEAR},
      {x + wide - width - CLEAR, down + CLEAR},
      {x + CLEAR, down + high - height - CLEAR},
      {x + wide - width - CLEAR, down + high - height - CLEAR},
      {x + (wide - width) / 2, down + (high - height) / 2}
    };
    double[] place = corners[0];
    boolean free = false;
    for (int i = 0; i < corners.length && !free; i++) {
      Point foot = new Point(corners[i][0], -corners[i][1] - height);
      if (room.isFree(new TurnedBox(foot, 0, width, height))) {
        place = corners[i];
        free = true;
      }
    }
    if (!free) {
      Box bare = new Box(place[0], -place[1] - height, place[0] + width, -place[1]).grown(0.4);
      leaf.fill(Path.polyline(Footprint.corners(bare)), Inks.PAPER);
    }
    double base = place[1] + name.capitalHeight();
    leaf.words(place[0], base, tile.name(), Face.SEMIBOLD, POINTS);
    double next = base + Face.mm(POINTS) * Face.LEADING;
    leaf.words(place[0], next, number.text(), Face.REGULAR, POINTS);
  }

  private void outlines(GroupSheet.LaidPiece piece, double scale, double left, double top) {
    List<Map.Entry<Size, List<List<Point>>>> sizes = new ArrayList<>(piece.areas().entrySet());
    for (int i = 0; i < sizes.size(); i++) {
      if (i == 0 || i == sizes.size() - 1) {
        Path path = reduced(sizes.get(i).getValue().get(0), scale, left, top);
        leaf.stroke(path, OUTLINE);
        room.takeLine(path, 0.5);
      }
    }
    figure(piece, reduced(sizes.get(0).getValue().get(0), scale, left, top), scale, left, top);
  }

  /** The piece's number, off the edges of pages where there is room. */
  private void figure(
      GroupSheet.LaidPiece piece, Path smallest, double scale, double left, double top) {
    String number = Integer.toString(piece.nest().card().number());
    SetLine figure = Face.LIGHT.set(number, FIGURE);
    Room inside = new Room(List.of(smallest));
    for (int column = 1; column < sheet.arrangement().columns(); column++) {
      double x = left + column * sheet.grid().stepAcross() * scale;
      inside.takeLine(Path.straight(new Point(x, -1000), new Point(x, 0)), CLEAR);
    }
    for (int row = 1; row < sheet.arrangement().rows(); row++) {
      double y = -top - row * sheet.grid().stepDown() * scale;
      inside.takeLine(Path.straight(new Point(0, y), new Point(1000, y)), CLEAR);
    }
    Point middle = Box.of(smallest.flattened(Tolerance.PRINTED_FLAT)).centre();
    TurnedBox about =
        new TurnedBox(
            middle.minus(new Vector(figure.width() / 2, figure.capitalHeight() / 2)),
            0,
            figure.width(),
            figure.capitalHeight());
    TurnedBox box =
        inside.find(0, figure.width(), figure.capitalHeight(), inside.centre()).orElse(about);
    leaf.words(box.corner().x(), -box.corner().y(), number, Face.LIGHT, FIGURE);
    room.take(box, 1);
  }

  private static Path reduced(List<Point> area, double scale, double left, double top) {
    List<Point> points = new ArrayList<>();
    for (Point point : area) {
      Point small = new Point(left + point.x() * scale, -(top - point.y() * scale));
      if (points.isEmpty()
          || points.get(points.size() - 1).distanceTo(small) > Tolerance.PRINTED_AS_ONE) {
        points.add(small);
      }
    }
    Point start = points.get(0);
    if (!points.get(points.size() - 1).equals(start)) {
      points.add(start);
    }
    return Path.polyline(points);
  }
}
