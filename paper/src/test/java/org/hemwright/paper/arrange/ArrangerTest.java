package org.hemwright.paper.arrange;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.junit.jupiter.api.Test;

class ArrangerTest {
  private static final TileGrid GRID = new TileGrid(190, 254, 0);
  private static final Arranger.Rules RULES = new Arranger.Rules(false, 12);

  private static List<Footprint> turns(double width, double height) {
    Footprint upright = Footprint.of(new Box(0, 0, width, height));
    Footprint lying = Footprint.of(new Box(0, 0, height, width));
    return List.of(upright, lying, upright, lying);
  }

  private static Area area(List<Point> points, Arrangement.Place place) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < points.size(); i++) {
      double x = points.get(i).x() + place.move().dx();
      double y = points.get(i).y() + place.move().dy();
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    return new Area(path);
  }

  private static int pages(List<List<Footprint>> things, Arrangement arrangement) {
    int pages = 0;
    for (TileGrid.Tile tile : TileGrid.all(arrangement.rows(), arrangement.columns())) {
      Box core = GRID.core(tile);
      boolean used = false;
      for (int i = 0; i < things.size(); i++) {
        Arrangement.Place place = arrangement.places().get(i);
        Area area = area(things.get(i).get(place.turn()).areas().get(0), place);
        used |= area.intersects(core.minX(), core.minY(), core.width(), core.height());
      }
      pages += used ? 1 : 0;
    }
    return pages;
  }

  @Test
  void whatFitsOnOnePageTakesOne() {
    List<List<Footprint>> things = List.of(turns(180, 240));
    Arrangement arrangement = Arranger.arrange(things, GRID, RULES).orElseThrow();
    assertThat(pages(things, arrangement)).isEqualTo(1);
  }

  @Test
  void twoHalvesShareAPage() {
    List<List<Footprint>> things = List.of(turns(180, 110), turns(110, 180));
    Arrangement arrangement = Arranger.arrange(things, GRID, RULES).orElseThrow();
    assertThat(pages(things, arrangement)).isEqualTo(1);
    assertThat(arrangement.places().get(0).turn() % 2)
        .isNotEqualTo(arrangement.places().get(1).turn() % 2);
  }

  @Test
  void nothingLiesOnAnythingElse() {
    for (int seed = 0; seed < 12; seed++) {
      Random random = new Random(seed);
      List<List<Footprint>> things = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        things.add(turns(40 + random.nextInt(400), 40 + random.nextInt(500)));
      }
      Arrangement arrangement = Arranger.arrange(things, GRID, RULES).orElseThrow();
      Area laid = new Area();
      for (int i = 0; i < things.size(); i++) {
        Arrangement.Place place = arrangement.places().get(i);
        Area area = area(things.get(i).get(place.turn()).areas().get(0), place);
        Area common = new Area(area);
        common.intersect(laid);
        assertThat(common.isEmpty()).as("seed %d, thing %d", seed, i).isTrue();
        laid.add(area);
      }
      Rectangle2D round = laid.getBounds2D();
      assertThat(round.getMinX()).isGreaterThanOrEqualTo(0);
      assertThat(round.getMaxY()).isLessThanOrEqualTo(0);
      assertThat(round.getMaxX()).isLessThanOrEqualTo(arrangement.columns() * GRID.width());
      assertThat(-round.getMinY()).isLessThanOrEqualTo(arrangement.rows() * GRID.height());
    }
  }

  @Test
  void onLargePaperWhatFitsIsNotCutApart() {
    TileGrid large = new TileGrid(811, 1159, 0);
    List<List<Footprint>> things =
        List.of(turns(700, 500), turns(700, 600), turns(700, 400), turns(300, 1100));
    Arrangement arrangement =
        Arranger.arrange(things, large, new Arranger.Rules(true, 12)).orElseThrow();
    for (int i = 0; i < things.size(); i++) {
      Arrangement.Place place = arrangement.places().get(i);
      Rectangle2D box = area(things.get(i).get(place.turn()).areas().get(0), place).getBounds2D();
      assertThat((int) Math.floor(box.getMinX() / 811))
          .isEqualTo((int) Math.floor(box.getMaxX() / 811));
      assertThat((int) Math.floor(-box.getMinY() / 1159))
          .isEqualTo((int) Math.floor(-box.getMaxY() / 1159));
    }
  }

  @Test
  void whatIsWiderThanTheSheetIsNotLaid() {
    List<List<Footprint>> things = List.of(turns(900, 1000));
    assertThat(Arranger.arrange(things, new TileGrid(884.4, 5050, 0), new Arranger.Rules(true, 1)))
        .isEmpty();
  }

  // Three things of a page's width and a third of its height fill one page, the fourth lies alone;
  // which of them that is does not matter to all four together.
  @Test
  void ofEqualArrangementsTheOneIsTakenInWhichSetsNeedFewPages() {
    List<List<Footprint>> things =
        List.of(turns(170, 70), turns(170, 70), turns(170, 70), turns(170, 70));
    for (List<Integer> set : List.of(List.of(0, 3), List.of(1, 3), List.of(2, 3))) {
      Arrangement arrangement = Arranger.arrange(things, GRID, RULES, List.of(set)).orElseThrow();
      assertThat(pages(things, arrangement)).isEqualTo(2);
      assertThat(pages(things, arrangement, set)).as(set.toString()).isEqualTo(1);
    }
  }

  private static int pages(
      List<List<Footprint>> things, Arrangement arrangement, List<Integer> set) {
    List<Arrangement.Place> places = set.stream().map(arrangement.places()::get).toList();
    return pages(
        set.stream().map(things::get).toList(),
        new Arrangement(places, arrangement.rows(), arrangement.columns()));
  }

  @Test
  void theSameThingsLieTheSameWay() {
    List<List<Footprint>> things = List.of(turns(300, 500), turns(120, 700), turns(90, 90));
    assertThat(Arranger.arrange(things, GRID, RULES))
        .isEqualTo(Arranger.arrange(things, GRID, RULES));
  }
}
