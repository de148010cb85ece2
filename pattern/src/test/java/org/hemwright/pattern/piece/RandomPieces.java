package org.hemwright.pattern.piece;

import static org.hemwright.pattern.piece.PieceSketch.plain;
import static org.hemwright.pattern.piece.PieceSketch.turned;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/** Pieces with four sides as garments have them, curved in and out, by seed. */
final class RandomPieces {
  private static final double[] WIDTHS = {0, 6, 10, 12.7, 15, 25};

  private final Random random;

  RandomPieces(long seed) {
    this.random = new Random(seed);
  }

  /** A panel with plain allowances all round and finishes of every kind that needs no hem. */
  Piece panel() {
    Point[] corners = corners();
    PieceSketch sketch = PieceSketch.named("panel");
    for (int i = 0; i < 4; i++) {
      sketch.edge("e" + i, side(corners[i], corners[(i + 1) % 4], 0.12), plain(width()));
      sketch.cornerBefore("e" + i, finish("e" + i, "e" + (i + 3) % 4));
    }
    return sketch.piece();
  }

  /** A panel whose lower edge is a hem turned back, once or twice, over a gentle curve. */
  Piece hemmed() {
    Point[] corners = corners();
    double depth = between(10, 45);
    Allowance hem = random.nextBoolean() ? turned(depth) : turned(depth, between(0.2, 1) * depth);
    return PieceSketch.named("hemmed")
        .edge("hem", side(corners[0], corners[1], 0.05), hem)
        .edge("right", side(corners[1], corners[2], 0.08), plain(width()))
        .edge("top", side(corners[2], corners[3], 0.08), plain(width()))
        .edge("left", side(corners[3], corners[0], 0.08), plain(width()))
        .cornerBefore("hem", new CornerFinish.TurnedBack("hem"))
        .cornerBefore("right", new CornerFinish.TurnedBack("hem"))
        .piece();
  }

  /**
   * A panel of a circle skirt, turned any way: sides along radii, so that its corners are square.
   * Its hem is turned back, its right side has an allowance and its left lies on the fold.
   */
  Piece sector() {
    Point apex = new Point(between(-300, 300), between(-300, 300));
    double start = between(0, 2 * Math.PI);
    double sweep = between(0.3, 1.5);
    double waist = between(100, 300);
    double hem = waist + between(200, 600);
    Vector first = Vector.atAngle(start);
    Vector last = Vector.atAngle(start + sweep);
    double depth = between(8, 25);
    return PieceSketch.named("sector")
        .edge(
            "hem",
            CircularArc.about(apex, apex.plus(first.times(hem)), sweep),
            random.nextBoolean() ? turned(depth) : turned(depth, depth / 2))
        .edge(
            "side",
            Path.straight(apex.plus(last.times(hem)), apex.plus(last.times(waist))),
            plain(width()))
        .edge(
            "waist", CircularArc.about(apex, apex.plus(last.times(waist)), -sweep), plain(width()))
        .fold("fold", Path.straight(apex.plus(first.times(waist)), apex.plus(first.times(hem))))
        .cornerBefore("hem", new CornerFinish.TurnedBack("hem"))
        .cornerBefore("side", new CornerFinish.TurnedBack("hem"))
        .piece();
  }

  /**
   * A piece that no one would sew: internal corners, short edges, wild curves, any allowance and
   * any finish anywhere.
   */
  Piece rough() {
    List<Path> sides = roughSides();
    PieceSketch sketch = PieceSketch.named("rough");
    for (int i = 0; i < sides.size(); i++) {
      sketch.edge("e" + i, sides.get(i), anyAllowance());
      sketch.cornerBefore("e" + i, anyFinish("e" + i, "e" + (i + sides.size() - 1) % sides.size()));
    }
    return sketch.piece();
  }

  /** The same shapes with one allowance all round and mitred corners. */
  Piece roughWithOneWidth() {
    Allowance allowance = plain(between(3, 20));
    List<Path> sides = roughSides();
    PieceSketch sketch = PieceSketch.named("even");
    for (int i = 0; i < sides.size(); i++) {
      sketch.edge("e" + i, sides.get(i), allowance);
    }
    return sketch.piece();
  }

  private List<Path> roughSides() {
    int count = 2 + random.nextInt(7);
    double size = between(60, 300);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Vector way = Vector.atAngle(2 * Math.PI * (i + between(-0.3, 0.3)) / count);
      points.add(Point.ORIGIN.plus(way.times(size * between(0.3, 1))));
    }
    List<Path> sides = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point from = points.get(i);
      Point to = points.get((i + 1) % count);
      sides.add(count == 2 ? bulging(from, to) : side(from, to, 0.4));
    }
    return sides;
  }

  private static Path bulging(Point from, Point to) {
    Vector aside = to.minus(from).right().times(0.4);
    return Path.of(
        new Cubic(from, from.toward(to, 0.2).plus(aside), from.toward(to, 0.8).plus(aside), to));
  }

  private Allowance anyAllowance() {
    double width = between(1, 30);
    return switch (random.nextInt(5)) {
      case 0 -> Allowance.NONE;
      case 1 -> turned(width);
      case 2 -> turned(width, width * between(0.2, 1.1));
      default -> plain(width());
    };
  }

  private CornerFinish anyFinish(String after, String before) {
    return random.nextBoolean()
        ? finish(after, before)
        : new CornerFinish.TurnedBack(random.nextBoolean() ? after : before);
  }

  private Point[] corners() {
    double wide = between(120, 400);
    double high = between(120, 500);
    double slant = 0.15;
    return new Point[] {
      new Point(wide * between(0, slant), high * between(0, slant)),
      new Point(wide * between(1, 1 + slant), high * between(0, slant)),
      new Point(wide * between(1, 1 + slant), high * between(1, 1 + slant)),
      new Point(wide * between(0, slant), high * between(1, 1 + slant))
    };
  }

  /** A straight line now and then, else a cubic that bulges either way or both. */
  private Path side(Point from, Point to, double bulge) {
    if (random.nextInt(4) == 0) {
      return Path.straight(from, to);
    }
    Vector chord = to.minus(from);
    Point control1 = from.toward(to, 1.0 / 3).plus(chord.left().times(between(-bulge, bulge)));
    Point control2 = from.toward(to, 2.0 / 3).plus(chord.left().times(between(-bulge, bulge)));
    return Path.of(new Cubic(from, control1, control2, to));
  }

  private CornerFinish finish(String after, String before) {
    return switch (random.nextInt(4)) {
      case 0 -> new CornerFinish.Square(random.nextBoolean() ? after : before);
      case 1 -> new CornerFinish.Stepped();
      default -> CornerFinish.USUAL;
    };
  }

  private double width() {
    return WIDTHS[random.nextInt(WIDTHS.length)];
  }

  double between(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  int count(int bound) {
    return random.nextInt(bound);
  }
}
