package org.hemwright.workroom.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Two layers of a seam, walked side by side.
 *
 * @param first the layer that lies still
 * @param second the layer that rolls
 */
record Roll(SizedPattern sized, Seam.Layer first, Seam.Layer second) {
  /** Over so much of a layer its way is taken (mm, to each side). */
  private static final double NEAR = 0.5;

  /** What lies farther from a notch is not meant to meet it (mm). Common practice, no source. */
  private static final double MEANT = 40;

  double firstLength() {
    return LayerWalk.length(first, sized);
  }

  double secondLength() {
    return LayerWalk.length(second, sized);
  }

  /**
   * A notch, and what it comes upon in the other layer: a notch, or a seam, a fold or a corner.
   *
   * @param mate absent where nothing lies near enough to be meant
   */
  record Meeting(LayerWalk.Stop notch, Optional<LayerWalk.Stop> mate) {
    /** How far both lie apart (mm). */
    double apart() {
      return mate.map(each -> StrictMath.abs(each.distance() - notch.distance())).orElse(0.0);
    }
  }

  /** Every notch of both layers once, in the order in which they are passed. */
  List<Meeting> meetings() {
    List<LayerWalk.Stop> one = new ArrayList<>(LayerWalk.of(first, sized).stops());
    List<LayerWalk.Stop> other = new ArrayList<>(LayerWalk.of(second, sized).stops());
    List<Meeting> meetings = new ArrayList<>();
    Optional<Meeting> next = nearest(one, other);
    while (next.isPresent()) {
      meetings.add(next.get());
      one.remove(next.get().notch);
      other.remove(next.get().notch);
      next.get().mate.ifPresent(one::remove);
      next.get().mate.ifPresent(other::remove);
      next = nearest(one, other);
    }
    one.stream().filter(LayerWalk.Stop::isNotch).forEach(n -> meetings.add(alone(n)));
    other.stream().filter(LayerWalk.Stop::isNotch).forEach(n -> meetings.add(alone(n)));
    meetings.sort(Comparator.comparingDouble(each -> each.notch.distance()));
    return meetings;
  }

  private static Meeting alone(LayerWalk.Stop notch) {
    return new Meeting(notch, Optional.empty());
  }

  /** The two stops that lie nearest to each other, at least one of them a notch. */
  private static Optional<Meeting> nearest(List<LayerWalk.Stop> one, List<LayerWalk.Stop> other) {
    Optional<Meeting> best = Optional.empty();
    for (LayerWalk.Stop a : one) {
      for (LayerWalk.Stop b : other) {
        if (a.isNotch() || b.isNotch()) {
          Meeting meeting =
              a.isNotch() ? new Meeting(a, Optional.of(b)) : new Meeting(b, Optional.of(a));
          if (meeting.apart() < MEANT && best.map(m -> meeting.apart() < m.apart()).orElse(true)) {
            best = Optional.of(meeting);
          }
        }
      }
    }
    return best;
  }

  /**
   * Where both touch, step by step.
   *
   * @param count how many steps
   * @param length how far (mm)
   * @param pieces the names of the pieces that are met, which steps say by number
   */
  List<double[]> steps(int count, double length, List<String> pieces) {
    List<double[]> steps = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      Optional<Touch> one = touch(first, length * i / count);
      Optional<Touch> other = touch(second, length * i / count);
      if (one.isPresent() && other.isPresent()) {
        steps.add(
            new double[] {
              one.get().spot.point().x(),
              one.get().spot.point().y(),
              one.get().angle,
              other.get().spot.point().x(),
              other.get().spot.point().y(),
              other.get().angle,
              number(pieces, one.get().spot.place().piece()),
              number(pieces, other.get().spot.place().piece()),
              one.get().insideLeft == other.get().insideLeft ? 1 : 0
            });
      }
    }
    return steps;
  }

  /** What is left of the longer layer where the shorter ends. */
  List<double[]> rest(boolean ofFirst, double from, double to) {
    List<double[]> points = new ArrayList<>();
    if (to - from < NEAR / 10) {
      return points;
    }
    for (int i = 0; i <= 12; i++) {
      LayerWalk.spot(ofFirst ? first : second, sized, from + (to - from) * i / 12)
          .ifPresent(spot -> points.add(new double[] {spot.point().x(), spot.point().y()}));
    }
    return points;
  }

  /** Where a layer is touched: which way it is walked there, and on which side its piece lies. */
  private record Touch(LayerWalk.Spot spot, double angle, boolean insideLeft) {}

  private Optional<Touch> touch(Seam.Layer layer, double distance) {
    Optional<LayerWalk.Spot> spot = LayerWalk.spot(layer, sized, distance);
    if (spot.isEmpty()) {
      return Optional.empty();
    }
    EdgePlace place = spot.get().place();
    LayerWalk.Spot before = near(layer, distance - NEAR, spot.get());
    LayerWalk.Spot after = near(layer, distance + NEAR, spot.get());
    Vector way = after.point().minus(before.point());
    boolean turned =
        sized
            .piece(place.piece())
            .flatMap(piece -> piece.edge(place.edge()))
            .map(edge -> edge.reversed())
            .orElse(false);
    return Optional.of(
        new Touch(spot.get(), StrictMath.atan2(way.dy(), way.dx()), place.reversed() == turned));
  }

  /** A place near by on the same edge; the place itself where the edge ends. */
  private LayerWalk.Spot near(Seam.Layer layer, double distance, LayerWalk.Spot here) {
    return LayerWalk.spot(layer, sized, distance)
        .filter(other -> other.place().equals(here.place()))
        .orElse(here);
  }

  private static int number(List<String> pieces, String piece) {
    int at = pieces.indexOf(piece);
    if (at < 0) {
      pieces.add(piece);
      return pieces.size() - 1;
    }
    return at;
  }
}
