package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/** The {@link NoFit} of every ordered pair of forms. */
final class NoFitTable {

  /** Cells over all fields together; a pair's share is held between the least and the most. */
  private static final long CELLS = 24_000_000;

  private static final int MOST_CELLS = 1024;
  private static final int LEAST_CELLS = 256;

  private final Forms forms;
  private final List<List<ConvexPart>> parts = new ArrayList<>();
  private final int[] halfTurned;
  private final int cells;
  private final double meanArea;
  private final NoFit[][] table;

  NoFitTable(Forms forms) {
    this.forms = forms;
    int n = forms.count();
    meanArea =
        IntStream.range(0, n).mapToDouble(f -> forms.outline(f).area()).average().orElseThrow();
    halfTurned = IntStream.range(0, n).map(forms::halfTurned).toArray();
    for (int form = 0; form < n; form++) {
      parts.add(ConvexParts.of(forms.outline(form)));
    }
    cells = (int) Math.max(LEAST_CELLS, Math.min(MOST_CELLS, CELLS / ((long) n * n)));
    ConcurrentHashMap<Integer, DepthField> fields = new ConcurrentHashMap<>();
    IntStream.range(0, n * n)
        .parallel()
        .filter(pair -> pair == key(pair / n, pair % n))
        .forEach(pair -> fields.put(pair, field(pair / n, pair % n)));
    table = new NoFit[n][n];
    for (int fixed = 0; fixed < n; fixed++) {
      for (int moving = 0; moving < n; moving++) {
        table[moving][fixed] = view(fixed, moving, fields);
      }
    }
  }

  /** For each fixed form, how deep the moving one is inside it. */
  NoFit[] ofMoving(int moving) {
    return table[moving];
  }

  /** The region of a pair, made anew. */
  NoFitRegion region(int fixed, int moving) {
    return new NoFitRegion(parts.get(fixed), parts.get(moving));
  }

  private DepthField field(int fixed, int moving) {
    GridOutline a = forms.outline(fixed);
    GridOutline b = forms.outline(moving);
    return new DepthField(region(fixed, moving), -b.maxX(), -b.maxY(), a.maxX(), a.maxY(), cells);
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

  private NoFit view(int fixed, int moving, ConcurrentHashMap<Integer, DepthField> fields) {
    int n = forms.count();
    int key = key(fixed, moving);
    DepthField field = java.util.Objects.requireNonNull(fields.get(key));
    if (key == fixed * n + moving) {
      return new NoFit(field, 1, 0, 0, weight(fixed, moving));
    }
    if (key == moving * n + fixed) {
      return new NoFit(field, -1, 0, 0, weight(fixed, moving));
    }
    GridOutline a = forms.outline(fixed);
    GridOutline b = forms.outline(moving);
    double wider = (double) (b.maxX() - a.maxX());
    double higher = (double) (b.maxY() - a.maxY());
    if (key == halfTurned[fixed] * n + halfTurned[moving]) {
      return new NoFit(field, -1, -wider, -higher, weight(fixed, moving));
    }
    return new NoFit(field, 1, wider, higher, weight(fixed, moving));
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
