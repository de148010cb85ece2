package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Boxes, point by point. */
class BoxTest {
  private final Box box = Box.of(new Point(4, -1), new Point(1, 2));

  @Test
  void goesRoundItsPoints() {
    assertThat(box).isEqualTo(new Box(1, -1, 4, 2));
    assertThat(Box.of(List.of(new Point(1, 2), new Point(4, 0), new Point(2, -1)))).isEqualTo(box);
    assertThat(box.width()).isEqualTo(3);
    assertThat(box.height()).isEqualTo(3);
    assertThat(box.centre()).isEqualTo(new Point(2.5, 0.5));
    assertThat(box.grown(1)).isEqualTo(new Box(0, -2, 5, 3));
    assertThat(box.union(new Box(3, 1, 9, 1))).isEqualTo(new Box(1, -1, 9, 2));
  }

  @Test
  void holdsItsEdgesAndTouchesItsNeighbours() {
    assertThat(box.contains(new Point(4, 2))).isTrue();
    assertThat(box.contains(new Point(4.001, 2))).isFalse();
    assertThat(box.overlaps(new Box(4, 2, 5, 5))).isTrue();
    assertThat(box.overlaps(new Box(4.001, 2, 5, 5))).isFalse();
    assertThat(box.distanceTo(new Point(7, 6))).isEqualTo(5);
    assertThat(box.distanceTo(new Point(2, 0))).isZero();
  }

  @Test
  void refusesToBeInsideOut() {
    assertThatThrownBy(() -> new Box(2, 0, 1, 0)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> new Box(Double.NaN, 0, 1, 0)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> Box.of(List.of())).isInstanceOf(GeometryProblem.class);
  }
}
