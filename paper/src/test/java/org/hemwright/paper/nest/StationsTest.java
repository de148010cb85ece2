package org.hemwright.paper.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.junit.jupiter.api.Test;

class StationsTest {
  /** The line round a slit goes up one side and down the other; it has a way at its tip, too. */
  @Test
  void aLineThatTurnsBackHasAWayEverywhere() {
    Point low = new Point(10, 0);
    Stations slit = new Stations(Path.polyline(List.of(low, new Point(10, 140), low)));
    assertThat(slit.length()).isCloseTo(280, within(1e-9));
    for (double at = 0; at <= 280; at += 0.5) {
      assertThat(Math.abs(slit.direction(at).dy())).isCloseTo(1, within(1e-9));
      assertThat(slit.bend(at, 20)).isCloseTo(0, within(1e-9));
    }
  }
}
