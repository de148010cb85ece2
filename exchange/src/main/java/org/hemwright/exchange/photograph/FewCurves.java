package org.hemwright.exchange.photograph;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.exchange.photograph.CornerSight.SeenCorner;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.jspecify.annotations.Nullable;

/**
 * Draws an outline that was seen as many places with few lines and smooth curves.
 *
 * <p>Between corners a stretch is a straight line where that does, else one cubic, its handles by
 * least squares on the places, their parameters closed in in turn (Schneider, "An algorithm for
 * automatically fitting digitized curves", <i>Graphics Gems</i>, 1990); where one strays by more
 * than {@link Tolerance#SEEN_CURVE} it is parted at the worst place, and both parts leave that in
 * one direction.
 */
final class FewCurves {
  /** Places are taken this far apart (mm). */
  private static final double STEP = 0.5;

  /** A stretch is straight when a line strays by no more than this from the mean of its middle. */
  private static final double STRAIGHT_SAG = 0.12;

  private static final int ROUNDS = 24;
  private static final int DEEPEST = 6;

  private FewCurves() {}

  /**
   * A closed path through places.
   *
   * @param seen counter-clockwise round a closed line, close together (mm)
   */
  static Path through(List<Point> seen) {
    List<Point> places = evenly(seen);
    double step = length(seen) / places.size();
    List<SeenCorner> corners = new CornerSight(places, step).corners();
    int skip = (int) Math.ceil(CornerSight.ROUNDED / step);
    List<Curve> curves = new ArrayList<>();
    if (corners.isEmpty()) {
      smooth(places, step, curves);
    }
    for (int n = 0; n < corners.size(); n++) {
      SeenCorner from = corners.get(n);
      SeenCorner to = corners.get((n + 1) % corners.size());
      int length =
          corners.size() == 1
              ? places.size()
              : Math.floorMod(to.index() - from.index(), places.size());
      List<Point> stretch = new ArrayList<>();
      stretch.add(from.point());
      for (int k = skip; k <= length - skip; k++) {
        stretch.add(places.get((from.index() + k) % places.size()));
      }
      stretch.add(to.point());
      stretch(stretch, null, null, 0, curves);
    }
    return Path.of(curves);
  }

  /** A line without corners, parted at four places that it leaves in the direction it comes. */
  private static void smooth(List<Point> places, double step, List<Curve> curves) {
    int count = places.size();
    int quarter = count / 4;
    for (int n = 0; n < 4; n++) {
      int from = n * quarter;
      int to = n == 3 ? count : (n + 1) * quarter;
      List<Point> stretch = new ArrayList<>();
      for (int k = from; k <= to; k++) {
        stretch.add(places.get(k % count));
      }
      stretch(
          stretch,
          direction(places, from, step),
          direction(places, to % count, step).negated(),
          0,
          curves);
    }
  }

  private static Vector direction(List<Point> places, int at, double step) {
    int reach = Math.max(2, (int) Math.round(5 / step));
    int count = places.size();
    return places
        .get(Math.floorMod(at + reach, count))
        .minus(places.get(Math.floorMod(at - reach, count)))
        .unit();
  }

  /**
   * Curves from the first place to the last.
   *
   * @param out the direction in which they leave, free where null
   * @param back the direction from the end back into them, free where null
   */
  private static void stretch(
      List<Point> places,
      @Nullable Vector out,
      @Nullable Vector back,
      int depth,
      List<Curve> curves) {
    Point start = places.get(0);
    Point end = places.get(places.size() - 1);
    if (out == null && back == null && isStraight(places)) {
      curves.add(new Line(start, end));
      return;
    }
    Fit best = new CubicFit(places, out, back).fit(ROUNDS);
    if (best.worst() <= Tolerance.SEEN_CURVE || depth == DEEPEST || places.size() < 24) {
      curves.add(best.cubic());
      return;
    }
    int at = Math.max(10, Math.min(places.size() - 11, best.worstAt()));
    Vector along = places.get(at + 8).minus(places.get(at - 8)).unit();
    stretch(places.subList(0, at + 1), out, along.negated(), depth + 1, curves);
    stretch(places.subList(at, places.size()), along, back, depth + 1, curves);
  }

  private static boolean isStraight(List<Point> places) {
    Point start = places.get(0);
    Vector whole = places.get(places.size() - 1).minus(start);
    double length = whole.length();
    if (length < Tolerance.SEEN_CURVE) {
      return true;
    }
    Vector across = whole.unit().left();
    double sag = 0;
    int middle = 0;
    for (int k = 0; k < places.size(); k++) {
      double off = places.get(k).minus(start).dot(across);
      if (Math.abs(off) > Tolerance.SEEN_CURVE) {
        return false;
      }
      if (3 * k >= places.size() && 3 * k <= 2 * places.size()) {
        sag += off;
        middle++;
      }
    }
    return middle == 0 || Math.abs(sag / middle) <= STRAIGHT_SAG;
  }

  /** A cubic, and where it strays most from the places. */
  record Fit(Cubic cubic, double worst, int worstAt) {}

  /** How long a closed line through places is (mm). */
  static double length(List<Point> places) {
    double length = 0;
    for (int k = 0; k < places.size(); k++) {
      length += places.get(k).distanceTo(places.get((k + 1) % places.size()));
    }
    return length;
  }

  /** The same closed line by places evenly apart, each the mean of what was seen around it. */
  private static List<Point> evenly(List<Point> seen) {
    double whole = length(seen);
    int count = Math.max(64, (int) Math.round(whole / STEP));
    double step = whole / count;
    List<Point> places = new ArrayList<>(count);
    int index = 0;
    double passed = 0;
    double next = seen.get(0).distanceTo(seen.get(1 % seen.size()));
    for (int k = 0; k < count; k++) {
      double wanted = k * step;
      while (passed + next < wanted && index < seen.size() - 1) {
        passed += next;
        index++;
        next = seen.get(index).distanceTo(seen.get((index + 1) % seen.size()));
      }
      double share = next == 0 ? 0 : Math.min(1, (wanted - passed) / next);
      places.add(seen.get(index).toward(seen.get((index + 1) % seen.size()), share));
    }
    return places;
  }
}
