package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.paper.arrange.Footprint;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.style.SizeStyles;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.body.Size;

/**
 * How the pages of one group lie: all of them reduced, the pieces on them, and for each size the
 * pages it needs, with its line as a key.
 */
final class MapPage {
  private static final Ink PIECE = new Ink(0xe9, 0xee, 0xf3);
  private static final Pen OUTLINE = Pen.solid(0.2, Inks.BLACK);
  private static final Pen GRID = Pen.solid(0.2, Inks.QUIET);
  private static final Pen BLANK = Pen.solid(0.1, Inks.QUIET.tint(0.5));
  private static final double HEAD = 28;
  private static final double ROW = 6.4;

  /** The widest map with the table beside it, and the space between the two (mm). */
  private static final double BESIDE = 112;

  private static final double GUTTER = 10;
  private static final double POINTS = 9;
  private static final double FIGURE = 22;
  private static final double CLEAR = 1.4;

  private final GroupSheet sheet;
  private final Speech speech;
  private final int first;
  private final Leaf leaf;
  private final List<Tile> tiles;
  private Room room;

  private MapPage(GroupSheet sheet, Speech speech, int first, Leaf leaf) {
    this.sheet = sheet;
    this.speech = speech;
    this.first = first;
    this.leaf = leaf;
    tiles = sheet.tiles();
    room = new Room(List.of(Path.polyline(Footprint.corners(new Box(0, 0, 1, 1)))));
  }

  /**
   * Draws the map.
   *
   * @param first the number of the group's first printed page in the file
   */
  static void draw(Leaf leaf, GroupSheet sheet, Speech speech, int first, double height) {
    new MapPage(sheet, speech, first, leaf).draw(height);
  }

  private void draw(double height) {
    leaf.words(0, 14, "How the pages lie", Face.LIGHT, 26);
    leaf.wordsBefore(
        KeyPanel.WIDTH,
        14,
        speech.sizes(sheet.group().sizeNames()) + ", " + tiles.size() + " pages",
        Face.REGULAR,
        11);
    leaf.rule(0, 19, KeyPanel.WIDTH, Pens.SIGN);
    double below = height - HEAD - sheet.group().sizes().size() * ROW - 18;
    if (scale(BESIDE, height - HEAD) > scale(KeyPanel.WIDTH, below)) {
      map(HEAD, BESIDE, height - HEAD);
      table(BESIDE + GUTTER, HEAD + 3, true);
    } else {
      double foot = map(HEAD, KeyPanel.WIDTH, below);
      table(0, foot + 12, false);
    }
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
      leaf.frame(x, down, wide, high, BLANK);
      return;
    }
    leaf.frame(x, down, wide, high, GRID);
    name(tile, index, x, down, wide, high);
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
    Nest nest = piece.nest();
    Point middle = Box.of(sizes.get(0).getValue().get(0)).centre();
    String number = Integer.toString(nest.card().number());
    SetLine figure = Face.LIGHT.set(number, FIGURE);
    double x = left + middle.x() * scale;
    double down = top - middle.y() * scale + figure.capitalHeight() / 2;
    leaf.wordsAbout(x, down, number, Face.LIGHT, FIGURE, Inks.BLACK);
    Point foot = new Point(x - figure.width() / 2, -down);
    room.take(new TurnedBox(foot, 0, figure.width(), figure.capitalHeight()), 1);
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

  /** The table of sizes; in a narrow column each takes two lines or more. */
  private void table(double left, double top, boolean narrow) {
    leaf.words(left, top, "Pages that each size needs", Face.SEMIBOLD, 12);
    List<Nest> nests = sheet.group().nests();
    if (nests.isEmpty()) {
      return;
    }
    SizeStyles styles = nests.get(0).styles();
    double down = top + 7;
    for (Size size : sheet.group().sizes()) {
      List<Integer> pages = new ArrayList<>();
      for (Tile tile : sheet.tiles(size)) {
        pages.add(first + tiles.indexOf(tile));
      }
      String count = pages.size() + (pages.size() == 1 ? " page" : " pages");
      String ranges = PageNumbers.ranges(pages);
      if (narrow) {
        KeyPanel.sizeSample(leaf, left, down, 26, styles, size);
        leaf.words(left + 30, down, "Size " + size.name(), Face.REGULAR, 10);
        leaf.wordsBefore(KeyPanel.WIDTH, down, count, Face.REGULAR, 10);
        double width = KeyPanel.WIDTH - left - 30;
        down = leaf.text(left + 30, down + 4.6, ranges, Face.REGULAR, 10, width) + ROW + 1;
      } else {
        KeyPanel.sizeSample(leaf, left, down, 44, styles, size);
        leaf.words(left + 50, down, "Size " + size.name(), Face.REGULAR, 10);
        leaf.wordsBefore(left + 86, down, count, Face.REGULAR, 10);
        double width = KeyPanel.WIDTH - left - 92;
        down = leaf.text(left + 92, down, ranges, Face.REGULAR, 10, width) + ROW;
      }
    }
  }
}
