package org.hemwright.pattern.traced;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.jspecify.annotations.Nullable;

/**
 * Grading by rule: corners and control points move by their rules, points between them follow in
 * proportion along the edge, and curves keep their character.
 *
 * <p>Between two rules a straight line stays straight. On curves the move of a point is a smooth
 * function of how far along the edge it lies: it runs on smoothly through control points, so that
 * nothing there becomes a corner. What is square to a straight neighbour stays so: a neckline that
 * leaves the fold squarely does so in every size. At another corner two control points or more say
 * how the curve leaves; with fewer it keeps the angle to a straight neighbour, or the direction
 * itself where both neighbours are curved. It is one reckoning, whose stages stand in their order.
 */
public final class RuleGrading implements OutlineGrading {
  /**
   * A curve is graded in parts no longer than this (mm), so that proportion holds within it too.
   */
  private static final double LONGEST_PART = 40;

  private static final int MOST_PARTS = 8;

  /** Each edge cut at its rules. */
  private final List<List<Path>> stretches;

  /** The rules of each edge in order, one at its start and one at its end among them. */
  private final List<List<RulePoint>> rules;

  /**
   * Rules for an outline.
   *
   * @param edges end to end
   * @param points in any order; each edge has one at its start and one at its end
   */
  public RuleGrading(List<Path> edges, List<RulePoint> points) {
    List<List<Path>> cut = new ArrayList<>();
    List<List<RulePoint>> byEdge = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      int edge = i;
      Path path = edges.get(i);
      List<RulePoint> own =
          points.stream()
              .filter(point -> point.edge() == edge)
              .sorted(Comparator.comparingDouble(RulePoint::distance))
              .toList();
      if (own.size() < 2
          || own.get(0).distance() > Tolerance.SAME_POINT
          || own.get(own.size() - 1).distance() < path.length() - Tolerance.SAME_POINT) {
        throw new IllegalArgumentException("edge " + i + " has no rule at one of its ends");
      }
      double[] inner =
          own.subList(1, own.size() - 1).stream().mapToDouble(RulePoint::distance).toArray();
      cut.add(path.splitAt(inner));
      byEdge.add(own);
    }
    this.stretches = List.copyOf(cut);
    this.rules = List.copyOf(byEdge);
  }

  @Override
  public GradedOutline in(int position) {
    List<List<Path>> graded = new ArrayList<>();
    for (int edge = 0; edge < stretches.size(); edge++) {
      graded.add(edge(edge, position));
    }
    return new GradedOutline(stretches, graded);
  }

  private Vector move(int edge, int rule, int position) {
    return rules.get(edge).get(rule).moves().get(position);
  }

  private List<Path> edge(int edge, int position) {
    List<Path> own = stretches.get(edge);
    int count = own.size();
    Vector[] moves = new Vector[count + 1];
    for (int i = 0; i <= count; i++) {
      moves[i] = move(edge, i, position);
    }
    Stretching evenly = Stretching.of(own, moves);
    Vector[] left = new Vector[count + 1];
    for (int i = 0; i <= count; i++) {
      Point at = i == 0 ? own.get(0).start() : own.get(i - 1).end();
      left[i] = moves[i].minus(evenly.move(at));
    }
    Vector[][] slopes = slopes(edge, left, evenly, position);
    List<Path> graded = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Path stretch = own.get(i);
      if (isStraight(stretch)) {
        Point from = stretch.start().plus(moves[i]);
        Point to = stretch.end().plus(moves[i + 1]);
        if (from.isAt(to)) {
          throw new TracingProblem("grade-crushes");
        }
        graded.add(Path.straight(from, to));
      } else {
        Hermite rest =
            new Hermite(stretch.length(), left[i], left[i + 1], slopes[i][0], slopes[i][1]);
        graded.add(moved(stretch, evenly, rest));
      }
    }
    return graded;
  }

  /**
   * How fast what is left of the moves changes along an edge (mm for each mm): two slopes for each
   * stretch, at its start and at its end. Within a run of curved stretches that join smoothly they
   * are those of the smoothest curve through all moves (a cubic spline), whose ends keep their
   * angles.
   */
  private Vector[][] slopes(int edge, Vector[] left, Stretching evenly, int position) {
    List<Path> own = stretches.get(edge);
    Vector[][] slopes = new Vector[own.size()][2];
    int from = 0;
    while (from < own.size()) {
      int to = from;
      if (!isStraight(own.get(from))) {
        while (to + 1 < own.size() && runsOn(own.get(to), own.get(to + 1))) {
          to++;
        }
        boolean rich = to - from >= RICH;
        Vector start = endSlope(edge, from, true, left, evenly, position);
        Vector end = endSlope(edge, to, false, left, evenly, position);
        start = rich && (isBend(own, from - 1) || isFree(edge, from, true)) ? null : start;
        end = rich && (isBend(own, to) || isFree(edge, to, false)) ? null : end;
        Vector[] at = spline(own.subList(from, to + 1), left, from, start, end);
        for (int i = from; i <= to; i++) {
          slopes[i] = new Vector[] {at[i - from], at[i - from + 1]};
        }
      }
      from = to + 1;
    }
    return slopes;
  }

  /** Whether two stretches of one edge meet at a corner. */
  private static boolean isBend(List<Path> own, int before) {
    return before >= 0
        && before + 1 < own.size()
        && Math.abs(turn(own.get(before), own.get(before + 1))) > SMOOTH;
  }

  /**
   * Whether a stretch ends at a corner of the outline where its control points say how it leaves:
   * all corners but those that are square to a straight edge, which stay so.
   */
  private boolean isFree(int edge, int stretch, boolean atStart) {
    List<Path> own = stretches.get(edge);
    if (stretch != (atStart ? 0 : own.size() - 1)) {
      return false;
    }
    int count = stretches.size();
    List<Path> other = stretches.get((edge + (atStart ? count - 1 : 1)) % count);
    Path beside = other.get(atStart ? other.size() - 1 : 0);
    double turn = atStart ? turn(beside, own.get(stretch)) : turn(own.get(stretch), beside);
    return !isStraight(beside) || Math.abs(Math.abs(turn) - Math.PI / 2) > SQUARE;
  }

  private static boolean runsOn(Path before, Path after) {
    return !isStraight(after) && Math.abs(turn(before, after)) <= SMOOTH;
  }

  private static Vector secant(Path stretch, Vector[] left, int index) {
    return left[index + 1].minus(left[index]).times(1 / stretch.length());
  }

  private Vector endSlope(
      int edge, int stretch, boolean atStart, Vector[] left, Stretching evenly, int position) {
    List<Path> own = stretches.get(edge);
    Path here = own.get(stretch);
    Vector secant = secant(here, left, stretch);
    int beside = atStart ? stretch - 1 : stretch + 1;
    if (beside >= 0 && beside < own.size() && !isStraight(own.get(beside))) {
      return secant;
    }
    Vector tangent = atStart ? here.startDirection() : here.endDirection();
    Vector even = evenly.turn(tangent);
    Vector kept = tangent.turned(turned(edge, stretch, atStart, position));
    double along = 1 + even.plus(secant).dot(tangent);
    return kept.times(along).minus(tangent).minus(even);
  }

  /**
   * The slopes of a cubic spline at all its knots.
   *
   * @param start the slope at its start, or null where it is to bend there as little as it can
   * @param end the same at its end
   */
  private static Vector[] spline(
      List<Path> run, Vector[] left, int first, @Nullable Vector start, @Nullable Vector end) {
    int count = run.size();
    Vector[] slopes = new Vector[count + 1];
    double[] share = new double[count + 1];
    slopes[0] = start != null ? start : secant(run.get(0), left, first).times(1.5);
    share[0] = start != null ? 0 : 0.5;
    for (int i = 1; i < count; i++) {
      double before = run.get(i - 1).length();
      double after = run.get(i).length();
      Vector wanted =
          secant(run.get(i - 1), left, first + i - 1)
              .times(3 * after)
              .plus(secant(run.get(i), left, first + i).times(3 * before));
      double middle = 2 * (before + after) - after * share[i - 1];
      share[i] = before / middle;
      slopes[i] = wanted.minus(slopes[i - 1].times(after)).times(1 / middle);
    }
    Vector last = secant(run.get(count - 1), left, first + count - 1);
    slopes[count] =
        end != null
            ? end
            : last.times(3).minus(slopes[count - 1]).times(1 / (2 - share[count - 1]));
    for (int i = count - 1; i >= 0; i--) {
      slopes[i] = slopes[i].minus(slopes[i + 1].times(share[i]));
    }
    return slopes;
  }

  /** With this many control points on a curve, they say better how it leaves a bend of its edge. */
  private static final int RICH = 2;

  /** A joint that turns by less than this (radians) is smooth. */
  private static final double SMOOTH = StrictMath.toRadians(2);

  /** A corner that is so near to a right angle (radians) was meant to be one. */
  private static final double SQUARE = StrictMath.toRadians(2);

  private static double turn(Path before, Path after) {
    return before.endDirection().angleTo(after.startDirection());
  }

  /** By how much the straight neighbour of an end turns; 0 where it is curved. */
  private double turned(int edge, int stretch, boolean atStart, int position) {
    int count = stretches.size();
    int otherEdge = edge;
    int other = atStart ? stretch - 1 : stretch + 1;
    if (other < 0) {
      otherEdge = (edge + count - 1) % count;
      other = stretches.get(otherEdge).size() - 1;
    } else if (other >= stretches.get(edge).size()) {
      otherEdge = (edge + 1) % count;
      other = 0;
    }
    Path beside = stretches.get(otherEdge).get(other);
    if (!isStraight(beside)) {
      return 0;
    }
    Vector was = beside.end().minus(beside.start());
    Vector now =
        was.plus(move(otherEdge, other + 1, position)).minus(move(otherEdge, other, position));
    return now.length() <= Tolerance.SAME_POINT ? 0 : was.angleTo(now);
  }

  private static boolean isStraight(Path path) {
    Vector way = path.end().minus(path.start());
    return way.length() > Tolerance.SAME_POINT
        && path.curves().stream().allMatch(curve -> isAlong(curve, way.unit()));
  }

  /** Whether a curve runs straight one way; one that a drawing program made of a line counts. */
  private static boolean isAlong(Curve curve, Vector way) {
    if (curve instanceof Cubic cubic) {
      Vector first = cubic.control1().minus(cubic.start());
      Vector second = cubic.control2().minus(cubic.start());
      Vector whole = cubic.end().minus(cubic.start());
      return Math.abs(first.cross(way)) <= Tolerance.SAME_POINT
          && Math.abs(second.cross(way)) <= Tolerance.SAME_POINT
          && Math.abs(whole.cross(way)) <= Tolerance.SAME_POINT
          && first.dot(way) >= 0
          && second.dot(way) >= first.dot(way)
          && whole.dot(way) >= second.dot(way);
    }
    return Math.abs(curve.direction(0).angleTo(way)) <= Tolerance.SAME_DIRECTION;
  }

  /** A stretch with every point moved evenly and by what is left, as a function of length. */
  private static Path moved(Path stretch, Stretching evenly, Hermite rest) {
    List<Curve> curves = new ArrayList<>();
    double walked = 0;
    for (Curve curve : stretch.curves()) {
      int parts = (int) Math.ceil(Math.min(MOST_PARTS, Math.max(1, curve.length() / LONGEST_PART)));
      for (int part = 0; part < parts; part++) {
        Curve piece = parts == 1 ? curve : curve.part((double) part / parts, (part + 1.0) / parts);
        double next = walked + piece.length();
        curves.add(moved(piece, walked, next, evenly, rest));
        walked = next;
      }
    }
    return Path.of(curves);
  }

  private static Curve moved(Curve piece, double from, double to, Stretching evenly, Hermite rest) {
    Cubic cubic =
        piece instanceof Cubic already ? already : Cubic.straight(piece.start(), piece.end());
    double leaving = cubic.start().distanceTo(cubic.control1());
    double arriving = cubic.control2().distanceTo(cubic.end());
    Vector first = rest.at(from);
    Vector last = rest.at(to);
    return new Cubic(
        evenly.apply(cubic.start()).plus(first),
        evenly.apply(cubic.control1()).plus(first).plus(rest.slope(from).times(leaving)),
        evenly.apply(cubic.control2()).plus(last).plus(rest.slope(to).times(-arriving)),
        evenly.apply(cubic.end()).plus(last));
  }

  /**
   * What the rules of an edge have in common: a move, and a stretch in each direction. It is taken
   * from an edge with control points; where there are corners alone, all is in proportion along the
   * edge.
   */
  private record Stretching(Point about, Vector move, double xx, double xy, double yx, double yy) {
    /** How little a direction in which the points hardly spread may say. */
    private static final double STIFFNESS = 1e-3;

    static Stretching of(List<Path> stretches, Vector[] moves) {
      if (moves.length <= 2) {
        return new Stretching(Point.ORIGIN, Vector.ZERO, 0, 0, 0, 0);
      }
      Point[] points = new Point[moves.length];
      Vector middle = Vector.ZERO;
      Vector move = Vector.ZERO;
      for (int i = 0; i < moves.length; i++) {
        points[i] = i == 0 ? stretches.get(0).start() : stretches.get(i - 1).end();
        middle = middle.plus(points[i].minus(Point.ORIGIN).times(1.0 / moves.length));
        move = move.plus(moves[i].times(1.0 / moves.length));
      }
      Point about = Point.ORIGIN.plus(middle);
      double a = 0;
      double b = 0;
      double c = 0;
      Vector alongX = Vector.ZERO;
      Vector alongY = Vector.ZERO;
      for (int i = 0; i < moves.length; i++) {
        Vector out = points[i].minus(about);
        Vector more = moves[i].minus(move);
        a += out.dx() * out.dx();
        b += out.dx() * out.dy();
        c += out.dy() * out.dy();
        alongX = alongX.plus(more.times(out.dx()));
        alongY = alongY.plus(more.times(out.dy()));
      }
      double stiff = STIFFNESS * (a + c) + Tolerance.NO_LENGTH;
      a += stiff;
      c += stiff;
      double det = a * c - b * b;
      Vector x = alongX.times(c / det).plus(alongY.times(-b / det));
      Vector y = alongY.times(a / det).plus(alongX.times(-b / det));
      return new Stretching(about, move, x.dx(), y.dx(), x.dy(), y.dy());
    }

    /** How a direction changes. */
    Vector turn(Vector way) {
      return new Vector(xx * way.dx() + xy * way.dy(), yx * way.dx() + yy * way.dy());
    }

    Vector move(Point point) {
      return move.plus(turn(point.minus(about)));
    }

    Point apply(Point point) {
      return point.plus(move(point));
    }
  }

  /** A cubic function of length with given values and slopes at both ends. */
  private record Hermite(double whole, Vector first, Vector last, Vector start, Vector end) {
    Vector at(double walked) {
      double t = Math.min(1, walked / whole);
      double s = 1 - t;
      return first
          .times(s * s * (1 + 2 * t))
          .plus(last.times(t * t * (3 - 2 * t)))
          .plus(start.times(whole * t * s * s))
          .plus(end.times(-whole * t * t * s));
    }

    Vector slope(double walked) {
      double t = Math.min(1, walked / whole);
      double s = 1 - t;
      return last.minus(first)
          .times(6 * t * s / whole)
          .plus(start.times(s * (1 - 3 * t)))
          .plus(end.times(t * (t * 3 - 2)));
    }
  }
}
