package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Accepts or refuses a layout. It shares no code with the search and believes nothing that the
 * search says.
 *
 * <p>Every placed corner is rounded once to a grid of strip width / 2<sup>30</sup>; from there on
 * each decision about sides, crossings and containment is exact (integers, products in 128 bits).
 * Shapes may touch: a penetration of at most {@link #TOUCH} of the strip's width is no overlap, nor
 * is standing over an edge by as much. {@link Penetration} says how deep one shape is inside
 * another.
 */
public final class LayoutChecker {

  /** The deepest penetration that still counts as touching, as a share of the strip's width. */
  public static final double TOUCH = 1e-7;

  private static final double STEPS = 0x1p30;
  private static final double TURN_SLACK_DEGREES = 1e-9;

  private final StripProblem problem;
  private final double touch = TOUCH * STEPS;

  /** A checker of layouts for this problem. */
  public LayoutChecker(StripProblem problem) {
    this.problem = problem;
  }

  /** Whether nothing speaks against the layout. */
  public boolean accepts(Layout layout) {
    return objections(layout).isEmpty();
  }

  /**
   * Everything that speaks against the layout, in the order of its placements, wrong counts last;
   * empty: it is accepted.
   */
  public List<Objection> objections(Layout layout) {
    List<Objection> objections = new ArrayList<>();
    Map<String, LooseShape> shapes = new LinkedHashMap<>();
    Map<String, Integer> laid = new LinkedHashMap<>();
    for (LooseShape shape : problem.shapes()) {
      shapes.put(shape.id(), shape);
      laid.put(shape.id(), 0);
    }
    List<Laid> placed = new ArrayList<>();
    for (int at = 0; at < layout.placements().size(); at++) {
      Placement placement = layout.placements().get(at);
      LooseShape shape = shapes.get(placement.id());
      if (shape == null) {
        objections.add(new Objection(at, Finding.fail("lay-stranger", placement.id()).build()));
        continue;
      }
      laid.merge(shape.id(), 1, Integer::sum);
      if (!allowed(shape, placement.turn())) {
        objections.add(new Objection(at, turned(shape, placement)));
      }
      PlacedOutline outline = PlacedOutline.of(shape, placement, problem.stripWidth() / STEPS);
      if (outline.farAway()) {
        objections.add(new Objection(at, about("lay-far", placement).build()));
        continue;
      }
      placed.add(new Laid(at, outline));
      double over = overhang(shape, outline, layout.length());
      if (over > touch) {
        String depth = Double.toString(over * problem.stripWidth() / STEPS);
        objections.add(
            new Objection(at, about("lay-outside", placement).with("depth", depth).build()));
      }
    }
    addOffBars(layout, shapes, objections);
    addOverlaps(placed, objections);
    objections.sort(Comparator.comparingInt(Objection::placement));
    for (LooseShape shape : problem.shapes()) {
      int count = Objects.requireNonNull(laid.get(shape.id()));
      if (count != shape.demand()) {
        String code = count < shape.demand() ? "lay-too-few" : "lay-too-many";
        Finding.Builder finding = Finding.fail(code, shape.id());
        finding.with("laid", Argument.of(count)).with("wanted", Argument.of(shape.demand()));
        objections.add(new Objection(-1, finding.build()));
      }
    }
    return objections;
  }

  /** A placed outline and its place in the layout's list. */
  private record Laid(int at, PlacedOutline outline) {}

  private void addOffBars(
      Layout layout, Map<String, LooseShape> shapes, List<Objection> objections) {
    for (int at = 0; at < layout.placements().size(); at++) {
      Placement placement = layout.placements().get(at);
      LooseShape shape = shapes.get(placement.id());
      double apart =
          shape == null ? 0 : shape.bars().map(bars -> bars.apart(placement.x())).orElse(0.0);
      if (apart > TOUCH * problem.stripWidth()) {
        objections.add(
            new Objection(
                at, about("lay-off-bar", placement).with("apart", Double.toString(apart)).build()));
      }
    }
  }

  private void addOverlaps(List<Laid> placed, List<Objection> objections) {
    List<Laid> byX = new ArrayList<>(placed);
    byX.sort(Comparator.comparingLong(laid -> laid.outline.minX));
    for (int i = 0; i < byX.size(); i++) {
      PlacedOutline a = byX.get(i).outline;
      for (int k = i + 1; k < byX.size() && byX.get(k).outline.minX < a.maxX; k++) {
        PlacedOutline b = byX.get(k).outline;
        if (b.minY < a.maxY && a.minY < b.maxY && new Penetration(touch).exceeds(a, b)) {
          boolean inOrder = byX.get(i).at < byX.get(k).at;
          Laid first = byX.get(inOrder ? i : k);
          Placement other = byX.get(inOrder ? k : i).outline.placement;
          Finding.Builder finding = about("lay-overlap", first.outline.placement);
          finding.with("other", other.id()).with("other_place", place(other));
          objections.add(new Objection(first.at, finding.build()));
        }
      }
    }
  }

  /** How far an outline stands over the strip, its length or its nearest lane, in grid steps. */
  private double overhang(LooseShape shape, PlacedOutline o, double length) {
    double unit = problem.stripWidth() / STEPS;
    double overEnds = Math.max((double) -o.minX, o.maxX - length / unit);
    double over = Math.max(overEnds, Math.max((double) -o.minY, o.maxY - STEPS));
    if (shape.lanes().isEmpty()) {
      return over;
    }
    double overLane = Double.POSITIVE_INFINITY;
    for (Lane lane : shape.lanes()) {
      overLane = Math.min(overLane, overLane(lane, o, unit));
    }
    return Math.max(over, overLane);
  }

  private static double overLane(Lane lane, PlacedOutline o, double unit) {
    if (lane instanceof Lane.Between between) {
      return Math.max(between.low() / unit - o.minY, o.maxY - between.high() / unit);
    }
    return lane instanceof Lane.Line line
        ? Math.abs(o.placement.y() - line.y()) / unit
        : Double.POSITIVE_INFINITY;
  }

  private static Finding turned(LooseShape shape, Placement placement) {
    return about("lay-turn", placement)
        .with("turn", words(placement.turn()))
        .with("turns", Argument.of(shape.turns().stream().map(LayoutChecker::words).toList()))
        .build();
  }

  private static String words(Turn turn) {
    double degrees = turn.degrees();
    String number =
        degrees == Math.rint(degrees) ? Long.toString((long) degrees) : Double.toString(degrees);
    return turn.mirrored() ? number + " mirrored" : number;
  }

  private static boolean allowed(LooseShape shape, Turn turn) {
    return shape.turns().stream()
        .anyMatch(
            t -> {
              double apart = Math.abs(t.degrees() - turn.degrees());
              return t.mirrored() == turn.mirrored()
                  && Math.min(apart, 360 - apart) <= TURN_SLACK_DEGREES;
            });
  }

  private static Finding.Builder about(String code, Placement placement) {
    return Finding.fail(code, placement.id()).with("place", place(placement));
  }

  private static String place(Placement p) {
    return p.x() + ", " + p.y();
  }
}
