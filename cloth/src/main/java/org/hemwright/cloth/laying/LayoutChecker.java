package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

  /** Everything that speaks against the layout; empty: it is accepted. */
  public List<Objection> objections(Layout layout) {
    List<Objection> objections = new ArrayList<>();
    Map<String, LooseShape> shapes = new LinkedHashMap<>();
    Map<String, Integer> missing = new LinkedHashMap<>();
    for (LooseShape shape : problem.shapes()) {
      shapes.put(shape.id(), shape);
      missing.put(shape.id(), shape.demand());
    }
    List<PlacedOutline> placed = new ArrayList<>();
    for (Placement placement : layout.placements()) {
      LooseShape shape = shapes.get(placement.id());
      if (shape == null) {
        objections.add(
            new Objection(
                Objection.Kind.COUNT, "shape " + placement.id() + " is not in the problem"));
        continue;
      }
      missing.merge(shape.id(), -1, Integer::sum);
      if (!allowed(shape, placement.turn())) {
        objections.add(
            new Objection(
                Objection.Kind.TURN, where(placement) + " lies in a turn that it is not allowed"));
      }
      PlacedOutline outline = PlacedOutline.of(shape, placement, problem.stripWidth() / STEPS);
      if (outline.farAway()) {
        objections.add(
            new Objection(Objection.Kind.OUTSIDE, where(placement) + " lies far off the strip"));
        continue;
      }
      placed.add(outline);
      if (!inside(shape, outline, layout.length())) {
        objections.add(
            new Objection(
                Objection.Kind.OUTSIDE,
                where(placement) + " stands over the edge of the strip, its lane or the length"));
      }
    }
    missing.forEach(
        (id, count) -> {
          if (count != 0) {
            objections.add(
                new Objection(
                    Objection.Kind.COUNT,
                    "shape "
                        + id
                        + " is laid "
                        + Math.abs(count)
                        + (count > 0 ? " times too few" : " times too many")));
          }
        });
    addOverlaps(placed, objections);
    return objections;
  }

  private void addOverlaps(List<PlacedOutline> placed, List<Objection> objections) {
    List<PlacedOutline> byX = new ArrayList<>(placed);
    byX.sort(Comparator.comparingLong(outline -> outline.minX));
    for (int i = 0; i < byX.size(); i++) {
      PlacedOutline a = byX.get(i);
      for (int k = i + 1; k < byX.size() && byX.get(k).minX < a.maxX; k++) {
        PlacedOutline b = byX.get(k);
        if (b.minY < a.maxY && a.minY < b.maxY && new Penetration(touch).exceeds(a, b)) {
          objections.add(
              new Objection(
                  Objection.Kind.OVERLAP, where(a.placement) + " overlaps " + where(b.placement)));
        }
      }
    }
  }

  private boolean inside(LooseShape shape, PlacedOutline o, double length) {
    double unit = problem.stripWidth() / STEPS;
    boolean onStrip =
        o.minX >= -touch
            && o.maxX <= length / unit + touch
            && o.minY >= -touch
            && o.maxY <= STEPS + touch;
    return onStrip
        && (shape.lanes().isEmpty()
            || shape.lanes().stream().anyMatch(lane -> inLane(lane, o, unit)));
  }

  private boolean inLane(Lane lane, PlacedOutline o, double unit) {
    if (lane instanceof Lane.Between between) {
      return o.minY >= between.low() / unit - touch && o.maxY <= between.high() / unit + touch;
    }
    return lane instanceof Lane.Line line && Math.abs(o.placement.y() - line.y()) / unit <= touch;
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

  private static String where(Placement p) {
    return "shape " + p.id() + " at " + p.x() + ", " + p.y();
  }
}
