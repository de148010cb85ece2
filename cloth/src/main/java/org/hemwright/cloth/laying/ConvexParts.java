package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a simple polygon into convex parts without adding corners: ears are clipped, then triangles
 * are joined again across every cut that is not needed (Hertel and Mehlhorn 1983: at most four
 * times the least number of parts). Exact.
 */
final class ConvexParts {

  private ConvexParts() {}

  /** The convex parts, counter-clockwise; together they cover the outline's inside once. */
  static List<ConvexPart> of(GridOutline outline) {
    List<int[]> parts = triangles(outline);
    boolean joined = true;
    while (joined) {
      joined = false;
      for (int a = 0; a < parts.size(); a++) {
        for (int b = a + 1; b < parts.size(); b++) {
          int[] union = joined(outline, parts.get(a), parts.get(b));
          if (union.length > 0) {
            parts.set(a, union);
            parts.remove(b);
            joined = true;
            b = a;
          }
        }
      }
    }
    List<ConvexPart> convex = new ArrayList<>();
    for (int[] corners : parts) {
      convex.add(part(outline, corners));
    }
    return convex;
  }

  private static ConvexPart part(GridOutline o, int[] corners) {
    long[] x = new long[corners.length];
    long[] y = new long[corners.length];
    for (int i = 0; i < corners.length; i++) {
      x[i] = o.x[corners[i]];
      y[i] = o.y[corners[i]];
    }
    return new ConvexPart(x, y);
  }

  private static List<int[]> triangles(GridOutline o) {
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < o.size(); i++) {
      left.add(i);
    }
    List<int[]> triangles = new ArrayList<>();
    while (left.size() > 3) {
      int ear = bestEar(o, left);
      int n = left.size();
      int a = left.get((ear + n - 1) % n);
      int b = left.get(ear);
      int c = left.get((ear + 1) % n);
      if (side(o, a, b, c) != 0) {
        triangles.add(new int[] {a, b, c});
      }
      left.remove(ear);
    }
    if (side(o, left.get(0), left.get(1), left.get(2)) != 0) {
      triangles.add(new int[] {left.get(0), left.get(1), left.get(2)});
    }
    return triangles;
  }

  /**
   * The ear with the shortest cut; a corner in line with its neighbours counts as an ear without
   * area.
   */
  private static int bestEar(GridOutline o, List<Integer> left) {
    int n = left.size();
    int best = -1;
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      int a = left.get((i + n - 1) % n);
      int b = left.get(i);
      int c = left.get((i + 1) % n);
      double dx = (double) (o.x[c] - o.x[a]);
      double dy = (double) (o.y[c] - o.y[a]);
      double cut = dx * dx + dy * dy;
      if (cut < shortest && isEar(o, left, a, b, c)) {
        shortest = cut;
        best = i;
      }
    }
    if (best < 0) {
      throw new IllegalStateException("an outline that meets itself reached the search");
    }
    return best;
  }

  private static boolean isEar(GridOutline o, List<Integer> left, int a, int b, int c) {
    int turn = side(o, a, b, c);
    if (turn < 0) {
      return false;
    }
    for (int p : left) {
      if (p == a || p == b || p == c) {
        continue;
      }
      if (turn == 0) {
        continue;
      }
      if (side(o, a, b, p) >= 0 && side(o, b, c, p) >= 0 && side(o, c, a, p) >= 0) {
        return false;
      }
    }
    return true;
  }

  private static int side(GridOutline o, int a, int b, int c) {
    return GridOutline.side(o.x[a], o.y[a], o.x[b], o.y[b], o.x[c], o.y[c]);
  }

  /** The convex union of two parts that share an edge, or nothing. */
  private static int[] joined(GridOutline o, int[] a, int[] b) {
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < b.length; k++) {
        if (a[i] == b[(k + 1) % b.length] && a[(i + 1) % a.length] == b[k]) {
          int[] union = new int[a.length + b.length - 2];
          int n = 0;
          for (int s = 1; s <= a.length; s++) {
            union[n++] = a[(i + s) % a.length];
          }
          for (int s = 2; s < b.length; s++) {
            union[n++] = b[(k + s) % b.length];
          }
          return convex(o, union) ? union : new int[0];
        }
      }
    }
    return new int[0];
  }

  private static boolean convex(GridOutline o, int[] corners) {
    int n = corners.length;
    for (int i = 0; i < n; i++) {
      if (side(o, corners[i], corners[(i + 1) % n], corners[(i + 2) % n]) < 0) {
        return false;
      }
    }
    return true;
  }
}
