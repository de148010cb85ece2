package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LayoutCheckerTest {

  private static final List<Spot> SQUARE =
      List.of(new Spot(0, 0), new Spot(1, 0), new Spot(1, 1), new Spot(0, 1));

  @Test
  void acceptsEveryPublishedLayoutAtItsStatedWidth() throws Exception {
    assumeTrue(PublishedInstances.present(), "../shared/data/strip-packing is not here");
    for (String name : PublishedInstances.withLayouts()) {
      StripProblem problem = PublishedInstances.problemOfLayout(name);
      Layout layout = PublishedInstances.layout(name);
      // The stated length is rounded to three decimals.
      Layout roomy = new Layout(layout.length() + 5.1e-4, layout.placements());
      assertThat(new LayoutChecker(problem).objections(roomy)).as(name).isEmpty();
      assertThat(layout.density(problem))
          .as(name)
          .isCloseTo(PublishedInstances.density(name), within(1e-4));
    }
  }

  @Test
  void refusesEveryPublishedLayoutWithOnePiecePushedIntoAnother() throws Exception {
    assumeTrue(PublishedInstances.present(), "../shared/data/strip-packing is not here");
    for (String name : PublishedInstances.withLayouts()) {
      StripProblem problem = PublishedInstances.problemOfLayout(name);
      Layout layout = PublishedInstances.layout(name);
      for (int i = 0; i < layout.placements().size(); i++) {
        Layout pushed = pushedIntoNeighbour(problem, layout, i);
        assertThat(new LayoutChecker(problem).objections(pushed))
            .as("%s, placement %d", name, i)
            .anyMatch(o -> o.code().equals("lay-overlap"));
      }
    }
  }

  /** Moves one piece straight to the nearest other piece and 1e-4 of the strip's width further. */
  private static Layout pushedIntoNeighbour(StripProblem problem, Layout layout, int moved) {
    List<Spot> mine = corners(problem, layout.placements().get(moved));
    double best = Double.POSITIVE_INFINITY;
    double pushX = 0;
    double pushY = 0;
    for (int k = 0; k < layout.placements().size(); k++) {
      if (k == moved) {
        continue;
      }
      List<Spot> other = corners(problem, layout.placements().get(k));
      for (int sense = 1; sense >= -1; sense -= 2) {
        List<Spot> from = sense > 0 ? mine : other;
        List<Spot> to = sense > 0 ? other : mine;
        for (Spot corner : from) {
          for (int e = 0; e < to.size(); e++) {
            Spot a = to.get(e);
            Spot b = to.get((e + 1) % to.size());
            double dx = b.x() - a.x();
            double dy = b.y() - a.y();
            double share =
                ((corner.x() - a.x()) * dx + (corner.y() - a.y()) * dy) / (dx * dx + dy * dy);
            if (share < 0.05 || share > 0.95) {
              continue; // only where the push is square to an edge is its depth the push
            }
            double gap =
                ((corner.x() - a.x()) * dy - (corner.y() - a.y()) * dx) / Math.hypot(dx, dy);
            if (Math.abs(gap) < best) {
              best = Math.abs(gap);
              double reach = sense * (best + 1e-4 * problem.stripWidth()) / Math.hypot(dx, dy);
              pushX = -dy * reach;
              pushY = dx * reach;
            }
          }
        }
      }
    }
    List<Placement> placements = new ArrayList<>(layout.placements());
    Placement old = placements.get(moved);
    placements.set(moved, new Placement(old.id(), old.turn(), old.x() + pushX, old.y() + pushY));
    return new Layout(layout.length(), placements);
  }

  /** Placed corners, counter-clockwise as the instances have them. */
  private static List<Spot> corners(StripProblem problem, Placement p) {
    LooseShape shape =
        problem.shapes().stream().filter(s -> s.id().equals(p.id())).findFirst().orElseThrow();
    double angle = Math.toRadians(p.turn().degrees());
    return shape.outline().stream()
        .map(
            c ->
                new Spot(
                    c.x() * Math.cos(angle) - c.y() * Math.sin(angle) + p.x(),
                    c.x() * Math.sin(angle) + c.y() * Math.cos(angle) + p.y()))
        .toList();
  }

  @Test
  void touchingIsPenetrationOfAtMostOneTenMillionthOfTheWidth() {
    StripProblem problem = squares(4, 2, List.of());
    assertThat(codes(problem, 2, at(0, 0), at(1, 0))).isEmpty();
    assertThat(codes(problem, 2, at(0, 0), at(1 - 3.9e-7, 0))).isEmpty();
    assertThat(codes(problem, 2, at(0, 0), at(1 - 4.1e-7, 0))).containsExactly("lay-overlap");
    // corner to corner: the depth is the lesser of the two
    assertThat(codes(problem, 2, at(0, 0), at(1 - 3.9e-7, 0.5))).isEmpty();
    assertThat(codes(problem, 2, at(0, 0), at(1 - 4.1e-7, 1 - 4.1e-7)))
        .containsExactly("lay-overlap");
    assertThat(codes(problem, 2, at(0, 0), at(0.5, 1 - 3.9e-7))).isEmpty();
  }

  @Test
  void seesShapesThatCoincideOrLieInsideEachOther() {
    StripProblem two = squares(4, 2, List.of());
    assertThat(codes(two, 2, at(0, 0), at(0, 0))).containsExactly("lay-overlap");
    assertThat(codes(two, 2, at(0, 0), at(1e-8, 1e-8))).containsExactly("lay-overlap");
    List<Spot> large = List.of(new Spot(0, 0), new Spot(3, 0), new Spot(3, 3), new Spot(0, 3));
    StripProblem nested =
        new StripProblem(
            "nested",
            4,
            List.of(
                new LooseShape("s", 1, List.of(Turn.AS_DRAWN), SQUARE),
                new LooseShape("l", 1, List.of(Turn.AS_DRAWN), large)));
    Layout inside =
        new Layout(
            3,
            List.of(
                new Placement("l", Turn.AS_DRAWN, 0, 0), new Placement("s", Turn.AS_DRAWN, 1, 1)));
    assertThat(new LayoutChecker(nested).accepts(inside)).isFalse();
  }

  @Test
  void aShapeMayLieInTheHollowOfAnotherWithNothingToSpare() {
    // A U of outer width 3 and a square that fills its slot from the open side: they touch on three
    // edges.
    List<Spot> u =
        List.of(
            new Spot(0, 0),
            new Spot(3, 0),
            new Spot(3, 1),
            new Spot(1, 1),
            new Spot(1, 2),
            new Spot(3, 2),
            new Spot(3, 3),
            new Spot(0, 3));
    StripProblem problem =
        new StripProblem(
            "slot",
            3,
            List.of(
                new LooseShape("u", 1, List.of(Turn.AS_DRAWN), u),
                new LooseShape("s", 1, List.of(Turn.AS_DRAWN), SQUARE)));
    assertThat(accepts(problem, 3, 1, 1)).isTrue();
    assertThat(accepts(problem, 3, 1 - 1e-6, 1)).isFalse();
    assertThat(accepts(problem, 3, 1, 1 + 1e-6)).isFalse();
  }

  private static boolean accepts(StripProblem problem, double length, double x, double y) {
    return new LayoutChecker(problem)
        .accepts(
            new Layout(
                length,
                List.of(
                    new Placement("u", Turn.AS_DRAWN, 0, 0),
                    new Placement("s", Turn.AS_DRAWN, x, y))));
  }

  @Test
  void refusesWrongCountsTurnsAndEdges() {
    StripProblem problem = squares(4, 2, List.of());
    assertThat(codes(problem, 2, at(0, 0))).containsExactly("lay-too-few");
    assertThat(codes(problem, 3, at(0, 0), at(1, 0), at(2, 0))).containsExactly("lay-too-many");
    assertThat(codes(problem, 2, at(0, 0), new Placement("other", Turn.AS_DRAWN, 1, 0)))
        .containsExactlyInAnyOrder("lay-stranger", "lay-too-few");
    assertThat(codes(problem, 2, at(0, 0), new Placement("s", Turn.HALF, 2, 1)))
        .containsExactly("lay-turn");
    assertThat(codes(problem, 2, at(0, 0), at(1, -1e-5))).containsExactly("lay-outside");
    assertThat(codes(problem, 2, at(0, 0), at(1, 3.00001))).containsExactly("lay-outside");
    assertThat(codes(problem, 2, at(0, 0), at(1.00001, 0))).containsExactly("lay-outside");
    assertThat(codes(problem, 2, at(-1e-5, 0), at(1, 0))).containsExactly("lay-outside");
    assertThat(codes(problem, 2, at(0, 0), at(1e300, 0))).containsExactly("lay-far");
  }

  @Test
  void holdsShapesToTheirLanes() {
    StripProblem fold = squares(4, 1, List.of(new Lane.Line(0), new Lane.Line(3)));
    assertThat(codes(fold, 1, at(0, 0))).isEmpty();
    assertThat(codes(fold, 1, at(0, 3))).isEmpty();
    assertThat(codes(fold, 1, at(0, 1))).containsExactly("lay-outside");
    StripProblem layer = squares(4, 1, List.of(new Lane.Between(1, 2.5)));
    assertThat(codes(layer, 1, at(0, 1.2))).isEmpty();
    assertThat(codes(layer, 1, at(0, 0.9))).containsExactly("lay-outside");
  }

  private static StripProblem squares(double width, int count, List<Lane> lanes) {
    return new StripProblem(
        "squares",
        width,
        List.of(new LooseShape("s", count, List.of(Turn.AS_DRAWN), SQUARE, lanes)));
  }

  private static Placement at(double x, double y) {
    return new Placement("s", Turn.AS_DRAWN, x, y);
  }

  private static List<String> codes(StripProblem problem, double length, Placement... placements) {
    return new LayoutChecker(problem)
        .objections(new Layout(length, List.of(placements))).stream().map(Objection::code).toList();
  }

  /**
   * A corner that touches the middle of a long edge from outside may be rounded to the wrong side
   * of it.
   */
  @Test
  void aCornerThatTouchesALongEdgeIsDecidedAtOnce() {
    StripProblem problem =
        new StripProblem(
            "corner",
            4,
            List.of(
                new LooseShape(
                    "long",
                    1,
                    List.of(Turn.AS_DRAWN),
                    List.of(new Spot(0, 0), new Spot(4, 1), new Spot(0, 1.5))),
                new LooseShape(
                    "corner",
                    1,
                    List.of(Turn.AS_DRAWN),
                    List.of(new Spot(0, 0), new Spot(-1, -1), new Spot(1, -1)))));
    for (int i = 0; i < 200; i++) {
      double x = 2 + i * 1e-3;
      List<Placement> placements =
          List.of(
              new Placement("long", Turn.AS_DRAWN, 0, 2),
              new Placement("corner", Turn.AS_DRAWN, x, 2 + x / 4));
      assertThat(new LayoutChecker(problem).accepts(new Layout(4, placements))).isTrue();
    }
  }
}
