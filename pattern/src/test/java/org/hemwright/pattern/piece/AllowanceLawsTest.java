package org.hemwright.pattern.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.piece.PieceSketch.plain;
import static org.hemwright.pattern.piece.PieceSketch.polygon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;

/** What holds for every cut line, by seeded loops. Seeds are named in what a failure says. */
class AllowanceLawsTest {
  private static final int PIECES = 150;

  private static final Wording WORDING = Wording.of(Wording.patternMessages());

  /** A cut line is promised within this of the true one (design, Numbers). */
  private static final double PROMISE = 0.05;

  /**
   * Steiner's formula for a convex polygon moved outward with mitred corners: area + perimeter · w
   * + w² · the sum of tan(turn / 2).
   */
  @Test
  void theCutLineOfAConvexPolygonHasTheAreaThatSteinerSays() {
    for (int seed = 0; seed < PIECES; seed++) {
      RandomPieces random = new RandomPieces(seed);
      int sides = 3 + random.count(6);
      Point[] points = convex(random, sides);
      double width = random.between(3, 25);
      Piece piece = polygon(plain(width), points).piece();
      PieceSketch sketch = polygon(plain(width), points);
      for (int i = 0; i < sides; i++) {
        sketch.cornerBefore("e" + i, new CornerFinish.Mitred(1e6));
      }
      double expected = piece.stitchLine().signedArea();
      for (int i = 0; i < sides; i++) {
        Path edge = piece.edges().get(i).path();
        Path next = piece.edges().get((i + 1) % sides).path();
        double turn = edge.endDirection().angleTo(next.startDirection());
        expected += width * edge.length() + width * width * StrictMath.tan(turn / 2);
      }

      double area = cutLine(sketch.piece(), seed).outline().signedArea();

      assertThat(area).as("seed %d", seed).isCloseTo(expected, within(1e-6 * expected));
    }
  }

  @Test
  void everyStretchKeepsItsAllowanceFromItsStitchLine() {
    for (int seed = 0; seed < PIECES; seed++) {
      Piece piece = new RandomPieces(seed).panel();
      CutLine cut = cutLine(piece, seed);
      for (int i = 0; i < piece.edges().size(); i++) {
        Edge edge = piece.edges().get(i);
        Path runOn = runOn(edge.path());
        for (Point point : cut.edges().get(i).flattened(0.05)) {
          assertThat(runOn.nearest(point).point().distanceTo(point))
              .as("seed %d, edge %d", seed, i)
              .isCloseTo(edge.allowance().width(), within(PROMISE));
        }
      }
    }
  }

  @Test
  void theCutLineIsSimpleRunsCounterClockwiseAndHoldsTheStitchLine() {
    for (int seed = 0; seed < PIECES; seed++) {
      for (Piece piece : List.of(new RandomPieces(seed).panel(), new RandomPieces(seed).hemmed())) {
        Outline outline = cutLine(piece, seed).outline();
        assertThat(outline.crossings()).as("seed %d %s", seed, piece.name()).isEmpty();
        assertThat(outline.signedArea())
            .as("seed %d", seed)
            .isGreaterThanOrEqualTo(piece.stitchLine().signedArea());
        assertHolds(outline, piece, seed);
      }
    }
  }

  @Test
  void theMirrorImageOfAPieceHasTheMirrorImageOfItsCutLine() {
    for (int seed = 0; seed < PIECES; seed++) {
      for (Piece piece : List.of(new RandomPieces(seed).panel(), new RandomPieces(seed).hemmed())) {
        Motion mirror = Motion.mirror(new Point(10, -20), new Point(30, 40));
        Path image = cutLine(piece, seed).outline().path().moved(mirror);
        Outline ofImage = cutLine(mirrored(piece, mirror), seed).outline();

        assertThat(ofImage.signedArea())
            .as("seed %d", seed)
            .isCloseTo(-Outline.of(image).signedArea(), within(1.0));
        for (Point point : ofImage.path().flattened(0.1)) {
          assertThat(image.nearest(point).point().distanceTo(point))
              .as("seed %d %s", seed, piece.name())
              .isLessThan(PROMISE / 5);
        }
      }
    }
  }

  /**
   * Everything outside a hem's fold line, folded in over it (and a turn-under first over its own
   * fold line), lies on the piece as it is cut; the ends lie on the piece's own cut line.
   */
  @Test
  void aTurnedBackHemLiesOnThePieceWithinItsCutLine() {
    for (int seed = 0; seed < PIECES; seed++) {
      Piece piece = new RandomPieces(seed).hemmed();
      Outline cut = cutLine(piece, seed).outline();
      Edge hem = piece.edges().get(0);
      List<Double> folds = ((Allowance.TurnedBack) hem.allowance()).folds();
      Path fold = runOn(hem.path());
      double depth = folds.get(0);
      int ends = 0;
      for (Point point : cut.path().flattened(0.02)) {
        PathPlace foot = fold.nearest(point);
        double out = -foot.left().dot(point.minus(foot.point()));
        if (out < 0.01) {
          continue;
        }
        double in = out <= depth ? out : 2 * depth - out;
        Point folded = foot.point().plus(foot.left().times(in));
        double strays = cut.path().nearest(folded).point().distanceTo(folded);
        assertThat(cut.contains(folded) || strays <= PROMISE)
            .as("seed %d %s strays %s", seed, point, strays)
            .isTrue();
        ends += strays <= PROMISE ? 1 : 0;
      }
      assertThat(ends).as("seed %d", seed).isGreaterThanOrEqualTo(2);
    }
  }

  /** Where an edge is named in two parts of one allowance, the cut line does not notice. */
  @Test
  void anEdgeInTwoPartsHasTheSameCutLine() {
    for (int seed = 0; seed < PIECES; seed++) {
      RandomPieces random = new RandomPieces(seed);
      Piece piece = random.panel();
      PieceSketch sketch = PieceSketch.named("parted");
      for (int i = 0; i < piece.edges().size(); i++) {
        Edge edge = piece.edges().get(i);
        List<Path> parts = edge.path().splitAt(edge.path().length() * random.between(0.2, 0.8));
        sketch.edge("first " + edge.name(), parts.get(0), edge.allowance());
        sketch.edge("second " + edge.name(), parts.get(1), edge.allowance());
        CornerFinish finish = piece.corners().get(i).finish();
        if (finish instanceof CornerFinish.Square square) {
          String half = square.edge().equals(edge.name()) ? "first " : "second ";
          finish = new CornerFinish.Square(half + square.edge());
        }
        sketch.cornerBefore("first " + edge.name(), finish);
      }

      Path whole = cutLine(piece, seed).outline().path();
      Path parted = cutLine(sketch.piece(), seed).outline().path();

      assertThat(parted.length()).as("seed %d", seed).isCloseTo(whole.length(), within(0.05));
      for (Point point : parted.flattened(0.1)) {
        assertThat(whole.nearest(point).point().distanceTo(point))
            .as("seed %d", seed)
            .isLessThan(PROMISE / 2);
      }
    }
  }

  /** Square corners, on which most hems stand, are drawn whichever way the piece lies. */
  @Test
  void aHemSquareToItsSidesHasStraightEndsHoweverThePieceIsTurned() {
    for (int seed = 0; seed < PIECES; seed++) {
      RandomPieces random = new RandomPieces(seed);
      Piece sector = random.sector();
      double width = sector.edges().get(1).allowance().width();
      Allowance hem = sector.edges().get(0).allowance();

      CutLine cut = cutLine(sector, seed);

      Path side = sector.edges().get(1).path();
      Vector along = side.startDirection();
      Point expected =
          side.start().plus(along.right().times(width)).minus(along.times(hem.width()));
      assertThat(cut.outline().path().nearest(expected).point().distanceTo(expected))
          .as("seed %d", seed)
          .isLessThan(PROMISE / 5);
    }
  }

  /** With one width all round nothing that is cut lies nearer to the stitch line than that. */
  @Test
  void noPlaceOfTheCutLineIsNearerToTheStitchLineThanItsAllowance() {
    int drawn = 0;
    for (int seed = 0; seed < 2 * PIECES; seed++) {
      Piece piece = new RandomPieces(seed).roughWithOneWidth();
      Optional<CutLine> cut = AddedAllowance.to(piece).cutLine();
      if (cut.isEmpty() || !piece.stitchLine().crossings().isEmpty()) {
        continue;
      }
      double width = piece.edges().get(0).allowance().width();
      for (Point point : cut.get().outline().path().flattened(0.1)) {
        Point nearest = piece.stitchLine().path().nearest(point).point();
        assertThat(nearest.distanceTo(point))
            .as("seed %d %s", seed, point)
            .isGreaterThan(width - PROMISE);
      }
      drawn++;
    }
    assertThat(drawn).isGreaterThan(PIECES);
  }

  /** Pieces of every foolish kind: there is a cut line that could be cut, or a finding says why. */
  @Test
  void whateverThePieceThereIsASimpleCutLineOrAFindingThatFails() {
    int drawn = 0;
    for (int seed = 0; seed < 4 * PIECES; seed++) {
      Piece piece = new RandomPieces(seed).rough();
      AddedAllowance added = AddedAllowance.to(piece);
      boolean fails = added.findings().stream().anyMatch(f -> f.status() == Status.FAIL);
      assertThat(added.cutLine().isPresent()).as("seed %d", seed).isNotEqualTo(fails);
      for (Finding finding : added.findings()) {
        assertThat(WORDING.line(finding)).as("seed %d", seed).contains("rough");
      }
      boolean sound =
          piece.stitchLine().isCounterClockwise() && piece.stitchLine().crossings().isEmpty();
      if (added.cutLine().isPresent() && sound) {
        Outline outline = added.cutLine().get().outline();
        assertThat(added.cutLine().get().edges()).hasSameSizeAs(piece.edges());
        assertThat(outline.isCounterClockwise()).as("seed %d", seed).isTrue();
        assertThat(outline.crossings()).as("seed %d", seed).isEmpty();
        assertHolds(outline, piece, seed);
        drawn++;
      }
    }
    assertThat(drawn).isGreaterThan(2 * PIECES);
  }

  private static void assertHolds(Outline outline, Piece piece, int seed) {
    for (Point point : piece.stitchLine().path().flattened(1)) {
      boolean held =
          outline.contains(point)
              || outline.path().nearest(point).point().distanceTo(point) <= PROMISE;
      assertThat(held).as("seed %d %s %s", seed, piece.name(), point).isTrue();
    }
  }

  private static CutLine cutLine(Piece piece, int seed) {
    AddedAllowance added = AddedAllowance.to(piece);
    assertThat(added.cutLine()).as("seed %d %s", seed, added.findings()).isPresent();
    return added.cutLine().orElseThrow();
  }

  /** Points on an ellipse, in order: a convex polygon. */
  private static Point[] convex(RandomPieces random, int sides) {
    double wide = random.between(60, 300);
    double high = random.between(60, 300);
    Point[] points = new Point[sides];
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * (i + random.between(0, 0.8)) / sides;
      points[i] = new Point(wide * StrictMath.cos(angle), high * StrictMath.sin(angle));
    }
    return points;
  }

  private static Path runOn(Path path) {
    Vector back = path.startDirection().times(-500);
    Vector on = path.endDirection().times(500);
    List<Curve> curves = new ArrayList<>();
    curves.add(new Line(path.start().plus(back), path.start()));
    curves.addAll(path.curves());
    curves.add(new Line(path.end(), path.end().plus(on)));
    return Path.of(curves);
  }

  private static Piece mirrored(Piece piece, Motion mirror) {
    PieceSketch sketch = PieceSketch.named(piece.name());
    for (int i = piece.edges().size() - 1; i >= 0; i--) {
      Edge edge = piece.edges().get(i);
      Corner atEnd = piece.corners().get((i + 1) % piece.corners().size());
      sketch.edge(edge.name(), edge.path().moved(mirror).reversed(), edge.allowance());
      sketch.cornerBefore(edge.name(), atEnd.finish());
    }
    return sketch.piece();
  }
}
