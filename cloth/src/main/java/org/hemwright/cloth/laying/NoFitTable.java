package org.hemwright.cloth.laying;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The no-fit regions of every ordered pair of forms, and the {@link DepthTable} made of them. */
final class NoFitTable {

  /** Cells over all fields together; a pair's share is held between the least and the most. */
  private static final long CELLS = 8_000_000;

  private static final int MOST_CELLS = 1024;
  private static final int LEAST_CELLS = 16;

  final DepthTable depths;

  private final Forms forms;
  private final NoFitStore store;
  private final int[] halfTurned;
  private final int cells;
  private final double meanArea;
  private final List<DepthField> fields;
  private final DepthTable.View[] views;

  NoFitTable(Forms forms, NoFitStore store) {
    this.forms = forms;
    this.store = store;
    int n = forms.count();
    meanArea =
        IntStream.range(0, n).mapToDouble(f -> forms.outline(f).area()).average().orElseThrow();
    halfTurned = IntStream.range(0, n).map(forms::halfTurned).toArray();
    cells = (int) Math.max(LEAST_CELLS, Math.min(MOST_CELLS, CELLS / ((long) n * n)));
    int[] keys =
        IntStream.range(0, n * n).filter(pair -> pair == key(pair / n, pair % n)).toArray();
    fields = IntStream.of(keys).parallel().mapToObj(pair -> field(pair / n, pair % n)).toList();
    views = new DepthTable.View[n * n];
    for (int fixed = 0; fixed < n; fixed++) {
      for (int moving = 0; moving < n; moving++) {
        views[moving * n + fixed] = view(fixed, moving, keys);
      }
    }
    depths = new DepthTable(n, fields, views);
  }

  /**
   * The boundary of a pair's region by differences of corners, {@link NoFitRegion#STRIDE} doubles a
   * stretch: on it the forms touch, and to the left of each stretch they overlap.
   */
  double[] touching(int moving, int fixed) {
    DepthTable.View view = views[moving * forms.count() + fixed];
    double[] stretches = fields.get(view.field()).boundary.clone();
    for (int s = 0; s < stretches.length; s += NoFitRegion.STRIDE) {
      stretches[s] = view.sign() * (stretches[s] - view.moveX());
      stretches[s + 1] = view.sign() * (stretches[s + 1] - view.moveY());
      stretches[s + 2] *= view.sign();
      stretches[s + 3] *= view.sign();
    }
    return stretches;
  }

  /** The region of a pair, made anew. */
  NoFitRegion region(int fixed, int moving) {
    return store.region(forms.outline(fixed), forms.outline(moving));
  }

  private DepthField field(int fixed, int moving) {
    return store.field(forms.outline(fixed), forms.outline(moving), cells);
  }

  /** The pair, of the four that share a field, that comes first. */
  private int key(int fixed, int moving) {
    int n = forms.count();
    int key = Math.min(fixed * n + moving, moving * n + fixed);
    int a = halfTurned[fixed];
    int b = halfTurned[moving];
    if (a >= 0 && b >= 0) {
      key = Math.min(key, Math.min(a * n + b, b * n + a));
    }
    return key;
  }

  private DepthTable.View view(int fixed, int moving, int[] keys) {
    int n = forms.count();
    int key = key(fixed, moving);
    int field = Arrays.binarySearch(keys, key);
    GridOutline a = forms.outline(fixed);
    GridOutline b = forms.outline(moving);
    double wider = (double) (b.maxX() - a.maxX());
    double higher = (double) (b.maxY() - a.maxY());
    double weight = weight(fixed, moving);
    double spanX = (double) (a.maxX() + b.maxX());
    double spanY = (double) (a.maxY() + b.maxY());
    if (key == fixed * n + moving) {
      return new DepthTable.View(field, 1, 0, 0, weight, spanX, spanY);
    }
    if (key == moving * n + fixed) {
      return new DepthTable.View(field, -1, 0, 0, weight, spanX, spanY);
    }
    if (key == halfTurned[fixed] * n + halfTurned[moving]) {
      return new DepthTable.View(field, -1, -wider, -higher, weight, spanX, spanY);
    }
    return new DepthTable.View(field, 1, wider, higher, weight, spanX, spanY);
  }

  /**
   * By what a depth counts: overlaps of large forms more, so that these find their places first
   * (Gardeyn et al. 2025). In strip-independent units, so that weights and sums stay moderate.
   */
  private double weight(int fixed, int moving) {
    double a = forms.outline(fixed).area() / meanArea;
    double b = forms.outline(moving).area() / meanArea;
    return Math.sqrt(Math.sqrt(a * b)) / Math.sqrt(meanArea);
  }
}
