package org.hemwright.cloth.laying;

import java.util.Arrays;
import java.util.List;

/**
 * All copies in places on a strip of some length, free to overlap: who overlaps whom, how much, and
 * how much each overlap counts. A place is that of the box's lower left corner, in grid steps,
 * whole.
 *
 * <p>To find a copy's neighbours quickly the strip is divided along and across into bands. For each
 * band the copies are known, as bits, that begin in it or before, and that end in it or after; the
 * copies whose boxes may meet a box are those that four such sets have in common.
 */
final class Crowd {

  private static final int BANDS = 64;

  /** A weight above this grows no further. */
  private static final float MOST_WEIGHT = 1e12f;

  /** How many copies there are. */
  final int size;

  /** Which shape each copy is of. */
  final int[] shapeOf;

  /** Box width and height by cut. */
  final double[] width;

  final double[] height;

  private final int[] formOfCut;
  private final DepthTable depths;
  private final int[] cut;
  private final int[] form;
  private final double[] left;
  private final double[] lower;
  private final float[] weight;
  private final double[] overlap;
  private double length;
  private final double[] way = new double[2];

  /** How many words of 64 copies make a set. */
  private final int words;

  /** By band, the copies whose box begins there or before, or ends there or after. */
  private final long[] beginsAlong;

  private final long[] endsAlong;
  private final long[] beginsAcross;
  private final long[] endsAcross;
  private double bandsPerStepAlong;
  private final double bandsPerStepAcross;
  private long work;

  /** How the overlap that was last asked for with its slope grows along x and y. */
  private double slopeX;

  private double slopeY;

  Crowd(LayTask task) {
    Forms forms = task.forms;
    depths = task.table.depths;
    shapeOf = task.shapeOf.clone();
    size = shapeOf.length;
    List<Cut> cuts = forms.cuts();
    width = cuts.stream().mapToDouble(Cut::width).toArray();
    height = cuts.stream().mapToDouble(Cut::height).toArray();
    formOfCut = cuts.stream().mapToInt(Cut::form).toArray();
    cut = new int[size];
    form = new int[size];
    left = new double[size];
    lower = new double[size];
    weight = new float[size * size];
    overlap = new double[size * size];
    words = (size + Long.SIZE - 1) / Long.SIZE;
    beginsAlong = new long[BANDS * words];
    endsAlong = new long[BANDS * words];
    beginsAcross = new long[BANDS * words];
    endsAcross = new long[BANDS * words];
    bandsPerStepAcross = BANDS / (task.grid.width() + 1.0);
    forgetWeights();
  }

  double length() {
    return length;
  }

  int cut(int copy) {
    return cut[copy];
  }

  double x(int copy) {
    return left[copy];
  }

  double y(int copy) {
    return lower[copy];
  }

  /** How many places were looked at so far. */
  long work() {
    return work;
  }

  /** Lays all copies anew on a strip of a given length. */
  void arrange(double newLength, int[] cuts, double[] xs, double[] ys) {
    length = newLength;
    bandsPerStepAlong = BANDS / (length + 1);
    Arrays.fill(beginsAlong, 0);
    Arrays.fill(endsAlong, 0);
    Arrays.fill(beginsAcross, 0);
    Arrays.fill(endsAcross, 0);
    for (int copy = 0; copy < size; copy++) {
      cut[copy] = cuts[copy];
      form[copy] = formOfCut[cuts[copy]];
      left[copy] = xs[copy];
      lower[copy] = ys[copy];
      mark(copy);
    }
    for (int copy = 0; copy < size; copy++) {
      note(copy);
    }
  }

  private void mark(int copy) {
    int own = cut[copy];
    int word = copy / Long.SIZE;
    long bit = 1L << copy;
    mark(beginsAlong, along(left[copy]), BANDS, word, bit, true);
    mark(endsAlong, 0, along(left[copy] + width[own]) + 1, word, bit, true);
    mark(beginsAcross, across(lower[copy]), BANDS, word, bit, true);
    mark(endsAcross, 0, across(lower[copy] + height[own]) + 1, word, bit, true);
  }

  /** Puts a copy somewhere. Until it is {@linkplain #note noted} its overlaps are the old ones. */
  void put(int copy, int newCut, double x, double y) {
    int oldCut = cut[copy];
    double oldX = left[copy];
    double oldY = lower[copy];
    cut[copy] = newCut;
    form[copy] = formOfCut[newCut];
    left[copy] = x;
    lower[copy] = y;
    moveBegin(beginsAlong, copy, along(oldX), along(x));
    moveEnd(endsAlong, copy, along(oldX + width[oldCut]), along(x + width[newCut]));
    moveBegin(beginsAcross, copy, across(oldY), across(y));
    moveEnd(endsAcross, copy, across(oldY + height[oldCut]), across(y + height[newCut]));
  }

  private void moveBegin(long[] sets, int copy, int from, int to) {
    int word = copy / Long.SIZE;
    mark(sets, Math.min(from, to), Math.max(from, to), word, 1L << copy, to < from);
  }

  private void moveEnd(long[] sets, int copy, int from, int to) {
    int word = copy / Long.SIZE;
    mark(sets, Math.min(from, to) + 1, Math.max(from, to) + 1, word, 1L << copy, to > from);
  }

  /** Marks the bands from the first to before the last. */
  private void mark(long[] sets, int first, int last, int word, long bit, boolean present) {
    for (int at = first * words + word; at < last * words; at += words) {
      sets[at] = present ? sets[at] | bit : sets[at] & ~bit;
    }
  }

  private int along(double x) {
    return Math.max(0, Math.min(BANDS - 1, (int) (x * bandsPerStepAlong)));
  }

  private int across(double y) {
    return Math.max(0, Math.min(BANDS - 1, (int) (y * bandsPerStepAcross)));
  }

  /**
   * What a copy would overlap at a place, weighted.
   *
   * @param enough where the sum may stop: a result of at least this much is only known to be so
   */
  double weightedOverlap(int copy, int newCut, double x, double y, double enough) {
    work++;
    int begin = along(x + width[newCut]) * words;
    int end = along(x) * words;
    int beginAcross = across(y + height[newCut]) * words;
    int endAcross = across(y) * words;
    int row = copy * size;
    int pairs = depths.pair(formOfCut[newCut], 0);
    double sum = 0;
    for (int word = 0; word < words; word++) {
      long near =
          beginsAlong[begin + word]
              & endsAlong[end + word]
              & beginsAcross[beginAcross + word]
              & endsAcross[endAcross + word]
              & others(copy, word);
      while (near != 0) {
        int other = word * Long.SIZE + Long.numberOfTrailingZeros(near);
        near &= near - 1;
        double depth = depths.depth(pairs + form[other], x - left[other], y - lower[other]);
        if (depth > 0) {
          sum += weight[row + other] * depth;
          if (sum >= enough) {
            return sum;
          }
        }
      }
    }
    return sum;
  }

  /**
   * The same, whole; {@link #slopeX()} and {@link #slopeY()} then tell how it grows. The loop
   * stands here again, since the other, which need not know a slope, is what most of the time goes
   * into.
   */
  double weightedOverlap(int copy, int newCut, double x, double y) {
    work++;
    int begin = along(x + width[newCut]) * words;
    int end = along(x) * words;
    int beginAcross = across(y + height[newCut]) * words;
    int endAcross = across(y) * words;
    int row = copy * size;
    int pairs = depths.pair(formOfCut[newCut], 0);
    double sum = 0;
    slopeX = 0;
    slopeY = 0;
    for (int word = 0; word < words; word++) {
      long near =
          beginsAlong[begin + word]
              & endsAlong[end + word]
              & beginsAcross[beginAcross + word]
              & endsAcross[endAcross + word]
              & others(copy, word);
      while (near != 0) {
        int other = word * Long.SIZE + Long.numberOfTrailingZeros(near);
        near &= near - 1;
        int pair = pairs + form[other];
        double depth = depths.depth(pair, x - left[other], y - lower[other], way);
        if (depth > 0) {
          double counts = weight[row + other] * depths.weight(pair);
          sum += counts * depth;
          slopeX -= counts * way[0];
          slopeY -= counts * way[1];
        }
      }
    }
    return sum;
  }

  /** How the overlap that was last asked for with its slope grows along x. */
  double slopeX() {
    return slopeX;
  }

  /** How it grows along y. */
  double slopeY() {
    return slopeY;
  }

  /** All copies of a word but one. */
  private static long others(int copy, int word) {
    return word == copy / Long.SIZE ? ~(1L << copy) : -1;
  }

  /** Takes note of what a copy overlaps where it now lies. */
  void note(int copy) {
    double x = left[copy];
    double y = lower[copy];
    int begin = along(x + width[cut[copy]]) * words;
    int end = along(x) * words;
    int beginAcross = across(y + height[cut[copy]]) * words;
    int endAcross = across(y) * words;
    int pairs = depths.pair(form[copy], 0);
    for (int other = 0; other < size; other++) {
      overlap[copy * size + other] = 0;
      overlap[other * size + copy] = 0;
    }
    for (int word = 0; word < words; word++) {
      long near =
          beginsAlong[begin + word]
              & endsAlong[end + word]
              & beginsAcross[beginAcross + word]
              & endsAcross[endAcross + word]
              & others(copy, word);
      while (near != 0) {
        int other = word * Long.SIZE + Long.numberOfTrailingZeros(near);
        near &= near - 1;
        double depth = depths.depth(pairs + form[other], x - left[other], y - lower[other]);
        overlap[copy * size + other] = depth;
        overlap[other * size + copy] = depth;
      }
    }
  }

  /** What a copy overlaps where it was last noted, weighted. */
  double weightedOverlapOf(int copy) {
    double sum = 0;
    for (int pair = copy * size; pair < (copy + 1) * size; pair++) {
      sum += weight[pair] * overlap[pair];
    }
    return sum;
  }

  /** All overlaps together, unweighted; 0 when this is a layout. */
  double totalOverlap() {
    double sum = 0;
    for (int copy = 0; copy < size; copy++) {
      for (int other = copy + 1; other < size; other++) {
        sum += overlap[copy * size + other];
      }
    }
    return sum;
  }

  /** Lets all overlaps count alike. */
  void forgetWeights() {
    Arrays.fill(weight, 1);
  }

  /**
   * Makes overlaps that are still there count more, the deepest most, and lets the others be
   * forgotten.
   */
  void reweigh(SearchRules rules) {
    double deepest = 0;
    for (double depth : overlap) {
      deepest = Math.max(deepest, depth);
    }
    double slope = (rules.heaviest() - rules.lightest()) / deepest;
    float forget = (float) rules.forget();
    for (int pair = 0; pair < overlap.length; pair++) {
      if (overlap[pair] > 0) {
        double factor = rules.lightest() + slope * overlap[pair];
        weight[pair] = Math.min(MOST_WEIGHT, weight[pair] * (float) factor);
      } else {
        weight[pair] = Math.max(1, weight[pair] * forget);
      }
    }
  }
}
