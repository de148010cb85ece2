package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * Folds lines out over an edge: a point at some depth inside it, square to it, goes to the same
 * distance outside.
 *
 * <p>The images are drawn with cubics within {@link Tolerance#OFFSET_FIT} of the true ones, and
 * with straight lines where the edge is straight.
 */
final class FoldMap {
  private static final int SAMPLES = 6;
  private static final int DEEPEST = 10;

  /** An end of a hem that needs more curves than this is no line that could be cut. */
  private static final int MOST = 64;

  /**
   * Cloth inside a curved fold is crowded together; a line that lies where it has less than this
   * share of the fold's own length is not folded out.
   */
  private static final double LEAST_ROOM = 0.2;

  /** Says that a fold bends more sharply than what is folded over it is deep. */
  static final class TooSharp extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private final AllowanceArm hem;
  private final Path fold;

  /** How far the fold line runs on straight, at either end. */
  private final double run;

  /** +1 where the outside of the piece lies to the left of the fold line, else −1. */
  private final double side;

  private FoldMap(AllowanceArm hem, double reach, Point first) {
    this.hem = hem;
    Path stitch = hem.stitch();
    Point corner = stitch.start();
    this.run = corner.distanceTo(first) + reach;
    this.fold =
        Path.of(
            joined(
                new Line(corner.minus(stitch.startDirection().times(run)), corner),
                stitch.curves(),
                new Line(stitch.end(), stitch.end().plus(stitch.endDirection().times(run)))));
    this.side = hem.before() ? 1 : -1;
  }

  private static List<Curve> joined(Line first, List<Curve> middle, Line last) {
    List<Curve> all = new ArrayList<>();
    all.add(first);
    all.addAll(middle);
    all.add(last);
    return all;
  }

  /**
   * The folding over an arm's stitch line.
   *
   * @param reach how far beyond its corners lines to fold may go (mm)
   * @param first a point on the fold line's run beyond the corner, or on the fold line
   */
  static FoldMap of(AllowanceArm hem, double reach, Point first) {
    return new FoldMap(hem, reach, first);
  }

  /** How deep a point lies inside the fold line (mm). */
  double depth(Point point) {
    PathPlace foot = foot(point);
    return -side * point.minus(foot.point()).dot(foot.left());
  }

  private PathPlace foot(Point point) {
    return fold.nearest(point);
  }

  /** The image of a line inside the fold, folded out over it. */
  List<Curve> foldedOut(Path inside) {
    return images(inside, 0, -1);
  }

  /**
   * The image of a line inside a hem, folded out over the hem's fold line and then again over the
   * line at {@code depth} outside it.
   */
  List<Curve> foldedOutAgain(Path inside, double depth) {
    return images(inside, 2 * side * depth, 1);
  }

  /** A point at the left offset m of the fold line goes to the offset {@code base + sign · m}. */
  private List<Curve> images(Path inside, double base, double sign) {
    List<Curve> images = new ArrayList<>();
    for (Curve curve : inside.curves()) {
      add(images, curve, base, sign, 0);
    }
    return images;
  }

  private record Image(Point point, Vector derivative) {}

  private Image image(Curve curve, double t, double base, double sign) {
    Point point = curve.at(t);
    Vector pace = curve.derivative(t);
    PathPlace foot = foot(point);
    Vector left = foot.left();
    double offset = point.minus(foot.point()).dot(left);
    double moved = base + sign * offset;
    double slope = 1 - foot.curvature() * offset;
    if (!(slope >= LEAST_ROOM)) {
      throw new TooSharp();
    }
    double along = pace.dot(foot.tangent()) * (1 - foot.curvature() * moved) / slope;
    double aside = sign * pace.dot(left);
    return new Image(
        foot.point().plus(left.times(moved)), foot.tangent().times(along).plus(left.times(aside)));
  }

  private void add(List<Curve> images, Curve curve, double base, double sign, int depth) {
    Image from = image(curve, 0, base, sign);
    Image to = image(curve, 1, base, sign);
    Cubic fit =
        new Cubic(
            from.point(),
            from.point().plus(from.derivative().times(1.0 / 3)),
            to.point().minus(to.derivative().times(1.0 / 3)),
            to.point());
    double stray = 0;
    double bend = 0;
    for (int i = 1; i < SAMPLES; i++) {
      double t = (double) i / SAMPLES;
      Point exact = image(curve, t, base, sign).point();
      stray = Math.max(stray, fit.at(t).distanceTo(exact));
      bend = Math.max(bend, from.point().toward(to.point(), t).distanceTo(exact));
    }
    if (bend <= Tolerance.PLACE) {
      images.add(new Line(from.point(), to.point()));
    } else if (stray <= Tolerance.OFFSET_FIT) {
      images.add(fit);
    } else if (depth == DEEPEST || images.size() >= MOST) {
      throw new TooSharp();
    } else {
      add(images, curve.part(0, 0.5), base, sign, depth + 1);
      add(images, curve.part(0.5, 1), base, sign, depth + 1);
    }
  }

  /** Where a point beside the fold line lies along the hem's cut line, as a place of its arm. */
  double alongHem(Point point) {
    double along = foot(point).distance() - run;
    return along <= 0 ? along : hem.cut().nearest(point).distance();
  }

  /** A way of curves whose last is led to a point that its end all but reaches. */
  List<Curve> endingAt(List<Curve> way, Point end) {
    List<Curve> led = new ArrayList<>(way);
    int last = led.size() - 1;
    Curve curve = led.get(last);
    Vector shift = end.minus(curve.end());
    led.set(
        last,
        curve instanceof Cubic cubic
            ? new Cubic(cubic.start(), cubic.control1(), cubic.control2().plus(shift), end)
            : new Line(curve.start(), end));
    return led;
  }
}
