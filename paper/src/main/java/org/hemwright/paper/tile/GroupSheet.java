package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.arrange.Arrangement;
import org.hemwright.paper.arrange.Arranger;
import org.hemwright.paper.arrange.Footprint;
import org.hemwright.paper.arrange.TileGrid;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.nest.PieceDrawing;
import org.hemwright.paper.nest.PieceShape;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;

/**
 * All pieces of one group laid on one big sheet: x right from the sheet's left edge, y up, the top
 * edge is y = 0.
 *
 * @param group the pieces
 * @param grid how the sheet is cut into pages
 * @param arrangement how many pages it has each way
 * @param pieces drawn where they lie, in the order of the document
 * @param panel where the key lies, if it was asked to lie on the sheet
 */
public record GroupSheet(
    GroupDrawing group,
    TileGrid grid,
    Arrangement arrangement,
    List<LaidPiece> pieces,
    Optional<Box> panel) {
  /** How closely outlines are followed when asked which pages they need (mm). */
  private static final double FLAT = 0.2;

  private static final double ROUGH = 1;

  public GroupSheet {
    pieces = List.copyOf(pieces);
  }

  /**
   * A piece where it lies.
   *
   * @param nest turned as it lies, its stack point at the origin
   * @param move from there to its place on the sheet (mm)
   * @param items drawn on the sheet
   * @param areas for each of its sizes the paper it needs, in the chart's order
   */
  public record LaidPiece(
      Nest nest, Vector move, List<Inked> items, Map<Size, List<List<Point>>> areas) {
    public LaidPiece {
      items = List.copyOf(items);
    }
  }

  /**
   * Lays a group.
   *
   * @param panel the size of a key to lie on the sheet among the pieces, if any
   * @return nothing where a piece is wider than the widest sheet
   */
  public static Optional<GroupSheet> of(
      GroupDrawing group, PageFormat format, double overlap, Optional<Box> panel) {
    List<List<Footprint>> footprints = new ArrayList<>();
    for (int i = 0; i < group.nests().size(); i++) {
      List<Footprint> turns = new ArrayList<>();
      boolean beside = group.piece(i, 0).beside().isPresent();
      for (int turn = 0; turn < 4; turn++) {
        turns.add(footprint(group, i, turn, beside));
      }
      footprints.add(turns);
    }
    panel.ifPresent(box -> footprints.add(List.of(Footprint.of(box))));
    TileGrid grid = format.grid(overlap);
    List<List<Integer>> views = group.views().stream().map(view -> indices(group, view)).toList();
    return Arranger.arrange(footprints, grid, format.rules(), views)
        .map(arrangement -> laid(group, grid, arrangement, panel));
  }

  private static List<Integer> indices(GroupDrawing group, View view) {
    return IntStream.range(0, group.nests().size())
        .filter(i -> view.pieces().contains(group.nests().get(i).card().name()))
        .boxed()
        .toList();
  }

  private static Footprint footprint(GroupDrawing group, int index, int turn, boolean beside) {
    List<List<Point>> areas = new ArrayList<>();
    for (PieceShape shape : group.nest(index, turn).shapes()) {
      areas.add(shape.cut().path().flattened(ROUGH));
    }
    if (beside) {
      group.piece(index, turn).beside().ifPresent(label -> areas.add(area(label.kept())));
    }
    return new Footprint(areas);
  }

  /** The smallest box round a piece and the label that may stand beside it. */
  private static Box needed(GroupDrawing group, int index, int turn) {
    Box piece = group.nest(index, turn).bounds();
    return group
        .piece(index, turn)
        .beside()
        .map(label -> piece.union(Box.of(label.kept().corners())))
        .orElse(piece);
  }

  private static List<Point> area(TurnedBox box) {
    List<Point> corners = new ArrayList<>(box.corners());
    corners.add(corners.get(0));
    return corners;
  }

  private static GroupSheet laid(
      GroupDrawing group, TileGrid grid, Arrangement arrangement, Optional<Box> panel) {
    List<LaidPiece> pieces = new ArrayList<>();
    for (int i = 0; i < group.nests().size(); i++) {
      Arrangement.Place place = arrangement.places().get(i);
      List<Path> seams = seams(needed(group, i, place.turn()), place.move(), grid, arrangement);
      PieceDrawing drawing = group.piece(i, place.turn(), seams);
      Map<Size, List<List<Point>>> areas = new LinkedHashMap<>();
      for (PieceShape shape : drawing.nest().shapes()) {
        List<List<Point>> own = new ArrayList<>();
        own.add(moved(shape.cut().path().flattened(FLAT), place.move()));
        drawing.beside().ifPresent(label -> own.add(moved(area(label.box()), place.move())));
        areas.merge(
            shape.size(),
            own,
            (known, more) -> {
              List<List<Point>> both = new ArrayList<>(known);
              both.addAll(more);
              return both;
            });
      }
      List<Inked> items = drawing.items().stream().map(item -> item.moved(place.move())).toList();
      pieces.add(new LaidPiece(drawing.nest(), place.move(), items, areas));
    }
    Optional<Box> key =
        panel.map(
            box -> {
              Vector move = arrangement.places().get(group.nests().size()).move();
              return new Box(
                  box.minX() + move.dx(),
                  box.minY() + move.dy(),
                  box.maxX() + move.dx(),
                  box.maxY() + move.dy());
            });
    return new GroupSheet(group, grid, arrangement, pieces, key);
  }

  /** Where pages meet on a piece, in the piece's own places. */
  private static List<Path> seams(Box bounds, Vector move, TileGrid grid, Arrangement arrangement) {
    List<Path> seams = new ArrayList<>();
    for (int column = 1; column < arrangement.columns(); column++) {
      double x = column * grid.stepAcross() + grid.overlap() / 2 - move.dx();
      if (bounds.minX() < x && x < bounds.maxX()) {
        seams.add(Path.straight(new Point(x, bounds.minY()), new Point(x, bounds.maxY())));
      }
    }
    for (int row = 1; row < arrangement.rows(); row++) {
      double y = -row * grid.stepDown() - grid.overlap() / 2 - move.dy();
      if (bounds.minY() < y && y < bounds.maxY()) {
        seams.add(Path.straight(new Point(bounds.minX(), y), new Point(bounds.maxX(), y)));
      }
    }
    return seams;
  }

  private static List<Point> moved(List<Point> points, Vector move) {
    return points.stream().map(point -> point.plus(move)).toList();
  }

  /** The pages that one size needs, row by row. */
  public List<Tile> tiles(Size size) {
    return TileGrid.all(arrangement.rows(), arrangement.columns()).stream()
        .filter(tile -> needs(size, pieces, grid.core(tile)))
        .toList();
  }

  /** The pages that one size of one view needs, row by row. */
  public List<Tile> tiles(Size size, View view) {
    List<LaidPiece> own =
        pieces.stream()
            .filter(piece -> view.pieces().contains(piece.nest().card().name()))
            .toList();
    return TileGrid.all(arrangement.rows(), arrangement.columns()).stream()
        .filter(tile -> needs(size, own, grid.core(tile)))
        .toList();
  }

  /** The pages that any size needs, and the key if it lies here, row by row. */
  public List<Tile> tiles() {
    return TileGrid.all(arrangement.rows(), arrangement.columns()).stream()
        .filter(
            tile -> {
              Box core = grid.core(tile);
              return panel.filter(core::overlaps).isPresent()
                  || group.sizes().stream().anyMatch(size -> needs(size, pieces, core));
            })
        .toList();
  }

  private static boolean needs(Size size, List<LaidPiece> pieces, Box core) {
    for (LaidPiece piece : pieces) {
      for (List<Point> area : piece.areas().getOrDefault(size, List.of())) {
        if (AreaTest.meets(area, core)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether any piece crosses a straight line between two points. */
  boolean crosses(Point from, Point to) {
    Box line = Box.of(from, to).grown(Tolerance.PRINTED_AS_ONE);
    for (LaidPiece piece : pieces) {
      for (List<List<Point>> areas : piece.areas().values()) {
        if (areas.stream().anyMatch(area -> AreaTest.meets(area, line))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Everything drawn, in order. */
  public List<Inked> items() {
    return pieces.stream().flatMap(piece -> piece.items().stream()).toList();
  }

  /** A box round all that lies on the sheet. */
  public Box bounds() {
    Box box = null;
    for (Inked item : items()) {
      box = box == null ? item.bounds() : box.union(item.bounds());
    }
    if (panel.isPresent()) {
      box = box == null ? panel.get() : box.union(panel.get());
    }
    return box == null ? new Box(0, 0, 0, 0) : box;
  }
}
