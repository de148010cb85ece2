package org.hemwright.paper.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.SandlingSkirt;
import org.hemwright.paper.arrange.TileGrid;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Words;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroupSheetTest {
  private static GroupSheet sheet(PageFormat format, double overlap) {
    SizeRun run = SandlingSkirt.run();
    List<Size> sizes = run.pattern().chart().sizes();
    GroupDrawing group = new GroupDrawing(run, sizes, Nest.of(run, sizes, false, true), false);
    return GroupSheet.of(group, format, overlap, Optional.empty()).orElseThrow();
  }

  private static Area area(List<Point> points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points.get(0).x(), points.get(0).y());
    points.forEach(point -> path.lineTo(point.x(), point.y()));
    path.closePath();
    return new Area(path);
  }

  private static Area area(Box box) {
    return new Area(new Rectangle2D.Double(box.minX(), box.minY(), box.width(), box.height()));
  }

  private static double size(Area area) {
    double sum = 0;
    double[] c = new double[6];
    double startX = 0;
    double startY = 0;
    double x = 0;
    double y = 0;
    for (PathIterator i = area.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> {
          startX = c[0];
          startY = c[1];
          x = c[0];
          y = c[1];
        }
        case PathIterator.SEG_LINETO -> {
          sum += (x * c[1] - c[0] * y) / 2;
          x = c[0];
          y = c[1];
        }
        default -> {
          sum += (x * startY - startX * y) / 2;
          x = startX;
          y = startY;
        }
      }
    }
    return Math.abs(sum);
  }

  private static Area piecesOf(GroupSheet sheet, Size size) {
    Area pieces = new Area();
    for (GroupSheet.LaidPiece piece : sheet.pieces()) {
      piece.areas().getOrDefault(size, List.of()).forEach(points -> pieces.add(area(points)));
    }
    return pieces;
  }

  // Checked with the JDK's own area operations (java.awt.geom.Area), not with ours.
  @ParameterizedTest
  @ValueSource(doubles = {0, 15})
  void everySizeGetsThePagesThatHoldItsPiecesAndNoOthers(double overlap) {
    GroupSheet sheet = sheet(PageFormat.EITHER, overlap);
    for (Size size : sheet.group().sizes()) {
      Area pieces = piecesOf(sheet, size);
      Area shown = new Area();
      List<Tile> tiles = sheet.tiles(size);
      for (Tile tile : TileGrid.all(sheet.arrangement().rows(), sheet.arrangement().columns())) {
        Area part = area(sheet.grid().core(tile));
        part.intersect(pieces);
        assertThat(size(part) > 1e-3)
            .as(size.name() + " " + tile.name())
            .isEqualTo(tiles.contains(tile));
        if (tiles.contains(tile)) {
          shown.add(part);
        }
      }
      assertThat(size(shown)).isCloseTo(size(pieces), within(1.0));
    }
  }

  // As above, for the pieces of one view alone.
  @Test
  void everyViewGetsThePagesThatHoldItsPieces() {
    SizeRun run = SandlingSkirt.inViews(false);
    List<Size> sizes = run.pattern().chart().sizes();
    List<View> views = run.pattern().views();
    GroupDrawing group =
        new GroupDrawing(run, sizes, Nest.of(run, sizes, false, true), false, views);
    GroupSheet sheet = GroupSheet.of(group, PageFormat.EITHER, 0, Optional.empty()).orElseThrow();
    int told = 0;
    for (View view : views) {
      for (Size size : sizes) {
        List<Tile> tiles = sheet.tiles(size, view);
        for (Tile tile : TileGrid.all(sheet.arrangement().rows(), sheet.arrangement().columns())) {
          Area part = new Area();
          for (GroupSheet.LaidPiece piece : sheet.pieces()) {
            if (view.pieces().contains(piece.nest().card().name())) {
              piece.areas().getOrDefault(size, List.of()).forEach(points -> part.add(area(points)));
            }
          }
          part.intersect(area(sheet.grid().core(tile)));
          assertThat(tiles.contains(tile)).isEqualTo(size(part) > 1e-3);
        }
        told += sheet.tiles(size).size() - tiles.size();
      }
    }
    assertThat(told).as("view B needs fewer").isPositive();
  }

  @ParameterizedTest
  @EnumSource(PageFormat.class)
  void piecesDoNotLieOnOneAnother(PageFormat format) {
    GroupSheet sheet = sheet(format, 0);
    Size largest = sheet.group().sizes().get(8);
    Area laid = new Area();
    for (GroupSheet.LaidPiece piece : sheet.pieces()) {
      Area own = area(piece.areas().getOrDefault(largest, List.of()).get(0));
      Area common = new Area(own);
      common.intersect(laid);
      assertThat(common.isEmpty()).isTrue();
      laid.add(own);
    }
  }

  @Test
  void marksPairEverySideOnWhichTwoPrintedPagesMeet() {
    GroupSheet sheet = sheet(PageFormat.EITHER, 0);
    List<Tile> tiles = sheet.tiles();
    Box all = sheet.bounds().grown(600);
    Room room = new Room(List.of(TestRooms.outline(all)));
    Map<Tile, List<MatchMark>> marks = MatchMarks.of(sheet, tiles, room, true);
    Map<Integer, List<Tile>> pairs = new LinkedHashMap<>();
    marks.forEach(
        (tile, own) ->
            own.forEach(
                mark -> pairs.computeIfAbsent(mark.number(), key -> new ArrayList<>()).add(tile)));
    int sides = 0;
    for (Tile tile : tiles) {
      sides += tiles.contains(new Tile(tile.row(), tile.column() + 1)) ? 1 : 0;
      sides += tiles.contains(new Tile(tile.row() + 1, tile.column())) ? 1 : 0;
    }
    assertThat(pairs).hasSize(sides);
    pairs.forEach(
        (number, pair) -> {
          assertThat(pair).hasSize(2);
          Tile one = pair.get(0);
          Tile other = pair.get(1);
          int apart = Math.abs(one.row() - other.row()) + Math.abs(one.column() - other.column());
          assertThat(apart).isEqualTo(1);
        });
    for (Tile tile : tiles) {
      Box core = sheet.grid().core(tile);
      for (MatchMark mark : marks.getOrDefault(tile, List.of())) {
        boolean upright = mark.along().equals(new Vector(0, 1));
        double off =
            upright
                ? Math.min(
                    Math.abs(mark.centre().x() - core.minX()),
                    Math.abs(mark.centre().x() - core.maxX()))
                : Math.min(
                    Math.abs(mark.centre().y() - core.minY()),
                    Math.abs(mark.centre().y() - core.maxY()));
        assertThat(off).as("half of the diamond lies on each page").isLessThan(1e-9);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"EITHER", "A4", "LETTER"})
  void wordsKeepOffTheLinesWherePagesMeet(String paper) {
    GroupSheet sheet = sheet(PageFormat.valueOf(paper), 0);
    int asked = 0;
    for (Inked item : sheet.items()) {
      if (item instanceof Words words && words.layer().equals(Layer.COMMON)) {
        Box box = Box.of(words.corners());
        for (int column = 1; column < sheet.arrangement().columns(); column++) {
          double x = column * sheet.grid().stepAcross();
          assertThat(box.minX() < x && x < box.maxX()).as(words.line().text()).isFalse();
          asked++;
        }
        for (int row = 1; row < sheet.arrangement().rows(); row++) {
          double y = -row * sheet.grid().stepDown();
          assertThat(box.minY() < y && y < box.maxY()).as(words.line().text()).isFalse();
          asked++;
        }
      }
    }
    assertThat(asked).isGreaterThan(50);
  }

  @Test
  void onLargePaperWhatFitsLiesOnOnePage() {
    GroupSheet sheet = sheet(PageFormat.A0, 0);
    GroupSheet.LaidPiece panel = sheet.pieces().get(0);
    List<Tile> needed =
        sheet.tiles().stream()
            .filter(
                tile ->
                    panel.areas().values().stream()
                        .flatMap(List::stream)
                        .anyMatch(points -> AreaTest.meets(points, sheet.grid().core(tile))))
            .toList();
    assertThat(needed).hasSize(1);
  }
}
