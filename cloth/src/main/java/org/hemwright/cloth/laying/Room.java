package org.hemwright.cloth.laying;

/**
 * Where the box's corner of each cut may lie: its lanes across the strip, and along it up to a
 * length.
 */
final class Room {

  private final double[] width;
  private final double[][] lanes;
  private final int[][] cutsOfShape;

  Room(Forms forms, int shapes) {
    width = forms.cuts().stream().mapToDouble(Cut::width).toArray();
    lanes = new double[width.length][];
    for (int cut = 0; cut < lanes.length; cut++) {
      lanes[cut] =
          forms.cuts().get(cut).lanes().stream()
              .flatMapToDouble(
                  r -> java.util.stream.LongStream.of(r.low(), r.high()).asDoubleStream())
              .toArray();
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

  /** The last x on a strip of a length; below 0 where the cut is longer than the strip. */
  double lastX(int cut, double length) {
    return length - width[cut];
  }

  double drawX(int cut, double length, Chance chance) {
    return Math.rint(chance.between(0, lastX(cut, length)));
  }

  double drawY(int cut, Chance chance) {
    double[] ranges = lanes[cut];
    int lane = ranges.length == 2 ? 0 : 2 * chance.below(ranges.length / 2);
    return Math.rint(chance.between(ranges[lane], ranges[lane + 1]));
  }

  double nearestX(int cut, double length, double x) {
    return Math.rint(Math.max(0, Math.min(lastX(cut, length), x)));
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
