package org.hemwright.draft.plan.node;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.SmoothCurve;
import org.hemwright.geometry.Vector;
import org.jspecify.annotations.Nullable;

/**
 * A smooth curve through points, which may have straight stretches and corners.
 *
 * @param start the slot of the point where it begins
 * @param leaving the slot of its heading there, or {@link Node#NONE}
 * @param legs in order
 */
public record SmoothNode(int start, int leaving, List<Leg> legs) implements PathNode {
  public SmoothNode {
    legs = List.copyOf(legs);
  }

  /** How a stretch runs. */
  public enum Run {
    /** Smooth to a knot, and smoothly on. */
    THROUGH,
    /** Smooth to a knot, where it ends or turns a corner. */
    TO,
    /** Straight to a knot. */
    STRAIGHT,
    /** No stretch: a corner, after which the curve sets out afresh. */
    CORNER
  }

  /**
   * One stretch.
   *
   * @param to the slot of its knot, or {@link Node#NONE} for a corner
   * @param heading the slot of the heading at the knot (for a corner, on leaving), or NONE
   * @param tension the slot of its tension, or NONE
   */
  public record Leg(Run run, int to, int heading, int tension) {}

  @Override
  public int[] inputs() {
    return IntStream.concat(
            IntStream.of(start, leaving),
            legs.stream().flatMapToInt(leg -> IntStream.of(leg.to, leg.heading, leg.tension)))
        .filter(slot -> slot != NONE)
        .toArray();
  }

  @Override
  public void check(Typing typing) {
    for (Leg leg : legs) {
      if (leg.tension != NONE) {
        typing.plain(leg.tension);
      }
    }
  }

  @Override
  public int cost() {
    return 60 * legs.size();
  }

  @Override
  public Path value(Values values) {
    List<Curve> curves = new ArrayList<>();
    Point here = values.point(start);
    @Nullable Vector heading = leaving == NONE ? null : values.direction(leaving);
    int next = 0;
    while (next < legs.size()) {
      Leg leg = legs.get(next);
      switch (leg.run) {
        case CORNER -> {
          heading = leg.heading == NONE ? null : values.direction(leg.heading);
          next++;
        }
        case STRAIGHT -> {
          Point there = values.point(leg.to);
          curves.addAll(Path.straight(here, there).curves());
          heading = there.minus(here).unit();
          here = there;
          next++;
        }
        case TO, THROUGH -> {
          int last = lastOfSection(next);
          curves.addAll(section(values, here, heading, next, last).curves());
          here = values.point(legs.get(last).to);
          heading = null;
          next = last + 1;
        }
      }
    }
    return Path.of(curves);
  }

  private int lastOfSection(int first) {
    int last = first;
    while (legs.get(last).run == Run.THROUGH
        && last + 1 < legs.size()
        && (legs.get(last + 1).run == Run.THROUGH || legs.get(last + 1).run == Run.TO)) {
      last++;
    }
    return last;
  }

  private Path section(Values values, Point from, @Nullable Vector heading, int first, int last) {
    SmoothCurve curve = SmoothCurve.from(from);
    if (heading != null) {
      curve = curve.leaving(heading);
    }
    for (int i = first; i <= last; i++) {
      Leg leg = legs.get(i);
      if (leg.tension != NONE) {
        double tension = values.number(leg.tension);
        curve = curve.tension(tension, tension);
      }
      Point knot = values.point(leg.to);
      curve = curve.to(knot);
      if (leg.heading != NONE) {
        curve = curve.arriving(values.direction(leg.heading));
      } else if (i == last && i + 1 < legs.size() && legs.get(i + 1).run == Run.STRAIGHT) {
        curve = curve.arriving(values.point(legs.get(i + 1).to).minus(knot));
      }
    }
    return curve.path();
  }
}
