package org.hemwright.paper.arrange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hemwright.geometry.Box;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.junit.jupiter.api.Test;

class TileGridTest {
  // Handbook check value 33: 1100 × 1600 mm on 190 × 277 mm tiles.
  @Test
  void countsPages() {
    TileGrid butt = new TileGrid(190, 277, 0);
    assertThat(butt.columns(1100)).isEqualTo(6);
    assertThat(butt.rows(1600)).isEqualTo(6);
    TileGrid overlapping = new TileGrid(190, 277, 15);
    assertThat(overlapping.columns(1100)).isEqualTo(7);
    assertThat(overlapping.rows(1600)).isEqualTo(7);
  }

  @Test
  void windowsCoverTheSheetFromItsUpperLeftCorner() {
    TileGrid grid = new TileGrid(190, 254, 15);
    assertThat(grid.window(new Tile(0, 0))).isEqualTo(new Box(0, -254, 190, 0));
    assertThat(grid.window(new Tile(1, 2))).isEqualTo(new Box(350, -493, 540, -239));
    assertThat(grid.core(new Tile(1, 2))).isEqualTo(new Box(350, -478, 525, -239));
  }

  @Test
  void pagesAreNamedByRowAndColumn() {
    assertThat(new Tile(0, 0).name()).isEqualTo("A1");
    assertThat(new Tile(2, 11).name()).isEqualTo("C12");
    assertThat(new Tile(26, 0).name()).isEqualTo("AA1");
  }

  @Test
  void pagesThatOnlyOverlapAreRefused() {
    assertThatThrownBy(() -> new TileGrid(190, 254, 190)).hasMessageContaining("overlap");
  }
}
