package org.hemwright.pattern.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.SeamRequest;

/**
 * Two layers of a seam walked along each other, from notch to notch where both have the same
 * notches, or from mark to mark where even marks are declared (handbook section 1, "Trueing and
 * walking").
 *
 * @param first the first layer
 * @param second the layer on it
 * @param intervals from start to end, at least one
 */
public record SeamWalk(LayerWalk first, LayerWalk second, List<Interval> intervals) {
  public SeamWalk {
    intervals = List.copyOf(intervals);
  }

  /**
   * A stretch of both layers whose ends are to meet.
   *
   * @param firstFrom where it starts on the first layer (mm from the layer's start)
   * @param firstTo where it ends there (mm)
   * @param secondFrom where it starts on the second (mm from that layer's start)
   * @param secondTo where it ends there (mm)
   */
  public record Interval(double firstFrom, double firstTo, double secondFrom, double secondTo) {
    /** The first layer's length (mm). */
    public double first() {
      return firstTo - firstFrom;
    }

    /** The second layer's length (mm). */
    public double second() {
      return secondTo - secondFrom;
    }
  }

  /** Walks one layer of a join, from 1 up, along the first. */
  public static SeamWalk of(Seam seam, Seam.Join join, int layer, SizedPattern sized) {
    LayerWalk first = LayerWalk.of(join.layers().get(0), sized);
    LayerWalk second = LayerWalk.of(join.layers().get(layer), sized);
    List<Double> here = new ArrayList<>();
    List<Double> there = new ArrayList<>();
    Optional<SeamRequest.Even> even = seam.even();
    if (even.isPresent()) {
      List<Double> marks = joints(second);
      int parts = even.get().parts();
      if (marks.size() == parts - 1) {
        for (int i = 1; i < parts; i++) {
          here.add(first.length() * i / parts);
        }
        there.addAll(marks);
      }
    } else if (notches(first).equals(notches(second))) {
      first.stops().stream().filter(s -> s.isNotch()).forEach(s -> here.add(s.distance()));
      second.stops().stream().filter(s -> s.isNotch()).forEach(s -> there.add(s.distance()));
    }
    here.add(first.length());
    there.add(second.length());
    List<Interval> intervals = new ArrayList<>();
    double a = 0;
    double b = 0;
    for (int i = 0; i < here.size(); i++) {
      intervals.add(new Interval(a, here.get(i), b, there.get(i)));
      a = here.get(i);
      b = there.get(i);
    }
    return new SeamWalk(first, second, intervals);
  }

  /** The distances at which a layer passes seams and folds, which even marks are to meet. */
  public static List<Double> joints(LayerWalk walk) {
    return walk.stops().stream()
        .filter(s -> s.kind() == LayerWalk.Kind.SEAM || s.kind() == LayerWalk.Kind.FOLD)
        .map(LayerWalk.Stop::distance)
        .toList();
  }

  private static List<LayerWalk.Kind> notches(LayerWalk walk) {
    return walk.stops().stream().filter(LayerWalk.Stop::isNotch).map(LayerWalk.Stop::kind).toList();
  }
}
