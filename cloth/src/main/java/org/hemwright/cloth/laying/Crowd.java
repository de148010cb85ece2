package org.hemwright.cloth.laying;

import java.util.Arrays;
import java.util.List;

/**
 * All copies in places on a strip of some length, free to overlap: who overlaps whom, how much, and
 * how much each overlap counts. A place is that of the box's lower left corner, in grid steps,
 * whole.
 *
 * <p>To find a copy's neighbours quickly the strip is divided along its length into bins, each
 * listing the copies whose boxes reach into it.
 */
final class Crowd {

  private static final int MOST_BINS = 128;
  private static final double BINS_PER_COPY_WIDTH = 1.5;

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
  private final NoFit[][] noFits;
  private final int[] cut;
  private final int[] form;

  /** Left, right, lower and upper end of each copy's box. */
  private final double[] box;

  private final float[] weight;
  private final double[] overlap;
  private double length;
  private final int[][] bins = new int[MOST_BINS][];
  private final int[] inBin = new int[MOST_BINS];
  private final double meanWidth;
  private double binsPerStep;
  private long work;

  Crowd(Forms forms, NoFitTable table, int[] shapeOf) {
    size = shapeOf.length;
    this.shapeOf = shapeOf.clone();
    List<Cut> cuts = forms.cuts();
    width = cuts.stream().mapToDouble(Cut::width).toArray();
    height = cuts.stream().mapToDouble(Cut::height).toArray();
    formOfCut = cuts.stream().mapToInt(Cut::form).toArray();
    noFits = new NoFit[cuts.size()][];
    for (int c = 0; c < noFits.length; c++) {
      noFits[c] = table.ofMoving(formOfCut[c]);
    }
    meanWidth = Arrays.stream(width).average().orElseThrow();
    for (int bin = 0; bin < MOST_BINS; bin++) {
      bins[bin] = new int[size];
    }
    cut = new int[size];
    form = new int[size];
    box = new double[4 * size];
    weight = new float[size * size];
    overlap = new double[size * size];
    forgetWeights();
  }

  double length() {
    return length;
  }

  int cut(int copy) {
    return cut[copy];
  }

  double x(int copy) {
    return box[4 * copy];
  }

  double y(int copy) {
    return box[4 * copy + 2];
  }

  /** How many places were looked at so far. */
  long work() {
    return work;
  }

  /** Lays all copies anew on a strip of a given length. */
  void arrange(double newLength, int[] cuts, double[] xs, double[] ys) {
    length = newLength;
    double count = Math.rint(length / meanWidth * BINS_PER_COPY_WIDTH);
    binsPerStep = Math.max(1, Math.min(MOST_BINS, count)) / (length + 1);
    Arrays.fill(inBin, 0);
    for (int copy = 0; copy < size; copy++) {
      put(copy, cuts[copy], xs[copy], ys[copy]);
    }
    for (int copy = 0; copy < size; copy++) {
      note(copy);
    }
  }

  /** Takes a copy's box off the strip, so that it meets nothing until it is put again. */
  void lift(int copy) {
    int last = bin(box[4 * copy + 1]);
    for (int bin = bin(box[4 * copy]); bin <= last; bin++) {
      int[] list = bins[bin];
      int at = 0;
      while (list[at] != copy) {
        at++;
      }
      inBin[bin]--;
      System.arraycopy(list, at + 1, list, at, inBin[bin] - at);
    }
    box[4 * copy] = Double.POSITIVE_INFINITY;
    box[4 * copy + 1] = Double.NEGATIVE_INFINITY;
  }

  /**
   * Puts a lifted copy somewhere. Until it is {@linkplain #note noted} its overlaps are the old
   * ones.
   */
  void put(int copy, int newCut, double x, double y) {
    cut[copy] = newCut;
    form[copy] = formOfCut[newCut];
    box[4 * copy] = x;
    box[4 * copy + 1] = x + width[newCut];
    box[4 * copy + 2] = y;
    box[4 * copy + 3] = y + height[newCut];
    int last = bin(box[4 * copy + 1]);
    for (int bin = bin(x); bin <= last; bin++) {
      bins[bin][inBin[bin]++] = copy;
    }
  }

  private int bin(double x) {
    return Math.max(0, Math.min(MOST_BINS - 1, (int) (x * binsPerStep)));
  }

  /**
   * What a lifted copy would overlap at a place, weighted.
   *
   * @param enough where the sum may stop: a result of at least this much is only known to be so
   */
  double weightedOverlap(int copy, int newCut, double x, double y, double enough) {
    work++;
    double right = x + width[newCut];
    double upper = y + height[newCut];
    NoFit[] moving = noFits[newCut];
    double sum = 0;
    int row = copy * size;
    int first = bin(x);
    int last = bin(right);
    for (int bin = first; bin <= last; bin++) {
      int[] list = bins[bin];
      int count = inBin[bin];
      for (int i = 0; i < count; i++) {
        int other = list[i];
        int b = 4 * other;
        if (y < box[b + 3]
            && upper > box[b + 2]
            && x < box[b + 1]
            && right > box[b]
            && bin == Math.max(first, bin(box[b]))) {
          double depth = moving[form[other]].depth(x - box[b], y - box[b + 2]);
          if (depth > 0) {
            sum += weight[row + other] * depth;
            if (sum >= enough) {
              return sum;
            }
          }
        }
      }
    }
    return sum;
  }

  /** Takes note of what a copy overlaps where it now lies. */
  void note(int copy) {
    int b = 4 * copy;
    NoFit[] moving = noFits[cut[copy]];
    for (int other = 0; other < size; other++) {
      int o = 4 * other;
      double depth = 0;
      if (other != copy
          && box[b] < box[o + 1]
          && box[b + 1] > box[o]
          && box[b + 2] < box[o + 3]
          && box[b + 3] > box[o + 2]) {
        depth = moving[form[other]].depth(box[b] - box[o], box[b + 2] - box[o + 2]);
      }
      overlap[copy * size + other] = depth;
      overlap[other * size + copy] = depth;
    }
  }

  /** What a copy overlaps where it was last noted, weighted. */
  double weightedOverlapOf(int copy) {
    double sum = 0;
    for (int pair = copy * size; pair < (copy + 1) * size; pair++) {
      if (overlap[pair] > 0) {
        sum += weight[pair] * overlap[pair];
      }
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
