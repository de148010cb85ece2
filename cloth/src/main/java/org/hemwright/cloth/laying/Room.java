package org.hemwright.cloth.laying;

import java.util.Optional;

/**
 * Where the box's corner of each cut may lie: its lanes across the strip, and along it up to a
 * length.
 */
final class Room {

  private final double[] width;
  private final double[][] lanes;
  private final int[][] cutsOfShape;

  /** By cut, a place of the box's corner on a bar, and how far bars are apart; 0: none. */
  private final double[] bar;

  private final double[] repeat;

  Room(LayTask task, int shapes) {
    Forms forms = task.forms;
    width = forms.cuts().stream().mapToDouble(Cut::width).toArray();
    lanes = new double[width.length][];
    for (int cut = 0; cut < lanes.length; cut++) {
      lanes[cut] =
          forms.cuts().get(cut).lanes().stream()
              .flatMapToDouble(
                  r -> java.util.stream.LongStream.of(r.low(), r.high()).asDoubleStream())
              .toArray();
    }
    bar = new double[width.length];
    repeat = new double[width.length];
    for (int cut = 0; cut < width.length; cut++) {
      Cut own = forms.cuts().get(cut);
      Optional<Bars> bars = task.problem.shapes().get(own.shape()).bars();
      if (bars.isPresent()) {
        repeat[cut] = task.grid.steps(bars.get().repeat());
        bar[cut] = task.grid.steps(bars.get().offset()) - own.originX();
      }
    }
    cutsOfShape = new int[shapes][];
    for (int shape = 0; shape < shapes; shape++) {
      cutsOfShape[shape] = forms.cutsOf(shape).stream().mapToInt(forms.cuts()::indexOf).toArray();
    }
  }

  /** A turn of a shape, drawn evenly. */
  int drawCut(int shape, Chance chance) {
    int[] cuts = cutsOfShape[shape];
    return cuts.length == 1 ? cuts[0] : cuts[chance.below(cuts.length)];
  }

  /** The cuts of a shape. */
  int[] cutsOf(int shape) {
    return cutsOfShape[shape];
  }

  /** Whether a cut is held to bars. */
  boolean onBars(int cut) {
    return repeat[cut] > 0;
  }

  /** How far apart the bars are that a cut is held to, in grid steps; 0: it is held to none. */
  double repeat(int cut) {
    return repeat[cut];
  }

  /** The first x at or after a place; on a bar where the cut is held to them. */
  double nextX(int cut, double x) {
    double from = Math.max(0, x);
    return onBars(cut) ? atBar(cut, Math.ceil((from - 0.5 - bar[cut]) / repeat[cut])) : from;
  }

  private double atBar(int cut, double steps) {
    double x = Math.rint(bar[cut] + steps * repeat[cut]);
    return x < 0 ? Math.rint(bar[cut] + (steps + 1) * repeat[cut]) : x;
  }

  /** The last x on a strip of a length; below 0 where the cut is longer than the strip. */
  double lastX(int cut, double length) {
    double last = length - width[cut];
    if (!onBars(cut) || last < 0) {
      return last;
    }
    double x =
        Math.rint(bar[cut] + Math.floor((last + 0.5 - bar[cut]) / repeat[cut]) * repeat[cut]);
    return x > last ? Math.rint(x - repeat[cut]) : x;
  }

  double drawX(int cut, double length, Chance chance) {
    double x = chance.between(0, lastX(cut, length));
    return onBars(cut) ? nearestX(cut, length, x) : Math.rint(x);
  }

  double drawY(int cut, Chance chance) {
    double[] ranges = lanes[cut];
    int lane = ranges.length == 2 ? 0 : 2 * chance.below(ranges.length / 2);
    return Math.rint(chance.between(ranges[lane], ranges[lane + 1]));
  }

  double nearestX(int cut, double length, double x) {
    double last = lastX(cut, length);
    double near = Math.max(0, Math.min(last, x));
    if (!onBars(cut)) {
      return Math.rint(near);
    }
    return Math.min(last, atBar(cut, Math.rint((near - bar[cut]) / repeat[cut])));
  }

  double nearestY(int cut, double y) {
    double[] ranges = lanes[cut];
    double best = Math.max(ranges[0], Math.min(ranges[1], y));
    for (int lane = 2; lane < ranges.length; lane += 2) {
      double here = Math.max(ranges[lane], Math.min(ranges[lane + 1], y));
      if (Math.abs(here - y) < Math.abs(best - y)) {
        best = here;
      }
    }
    return Math.rint(best);
  }
}
