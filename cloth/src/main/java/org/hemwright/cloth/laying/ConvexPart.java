package org.hemwright.cloth.laying;

/** A convex polygon on the grid, counter-clockwise. */
final class ConvexPart {

  final long[] x;
  final long[] y;

  ConvexPart(long[] x, long[] y) {
    this.x = x;
    this.y = y;
  }

  int size() {
    return x.length;
  }

  /** This part turned half round about the grid's origin: the set of −p. */
  ConvexPart reflected() {
    long[] rx = new long[x.length];
    long[] ry = new long[y.length];
    for (int i = 0; i < x.length; i++) {
      rx[i] = -x[i];
      ry[i] = -y[i];
    }
    return new ConvexPart(rx, ry);
  }

  /**
   * The sum {p + q}: both outlines' edges in the order of their directions. Edges of equal
   * direction become one.
   */
  ConvexPart plus(ConvexPart other) {
    int n = size();
    int m = other.size();
    long[] sx = new long[n + m];
    long[] sy = new long[n + m];
    int i = lowest();
    int k = other.lowest();
    int taken = 0;
    int takenOther = 0;
    long atX = x[i] + other.x[k];
    long atY = y[i] + other.y[k];
    int count = 0;
    while (taken < n || takenOther < m) {
      int inext = i + 1 == n ? 0 : i + 1;
      int knext = k + 1 == m ? 0 : k + 1;
      long ex = x[inext] - x[i];
      long ey = y[inext] - y[i];
      long fx = other.x[knext] - other.x[k];
      long fy = other.y[knext] - other.y[k];
      int order;
      if (taken == n) {
        order = -1;
      } else if (takenOther == m) {
        order = 1;
      } else {
        order = earlier(ex, ey, fx, fy);
      }
      sx[count] = atX;
      sy[count] = atY;
      if (order >= 0) {
        atX += ex;
        atY += ey;
        i = inext;
        taken++;
      }
      if (order <= 0) {
        atX += fx;
        atY += fy;
        k = knext;
        takenOther++;
      }
      count++;
    }
    return new ConvexPart(java.util.Arrays.copyOf(sx, count), java.util.Arrays.copyOf(sy, count));
  }

  private int lowest() {
    int lowest = 0;
    for (int i = 1; i < x.length; i++) {
      if (y[i] < y[lowest] || (y[i] == y[lowest] && x[i] < x[lowest])) {
        lowest = i;
      }
    }
    return lowest;
  }

  /** 1 when direction e comes before f, turning from x towards y; −1 after; 0 equal. */
  private static int earlier(long ex, long ey, long fx, long fy) {
    boolean eUpper = ey > 0 || (ey == 0 && ex > 0);
    boolean fUpper = fy > 0 || (fy == 0 && fx > 0);
    if (eUpper != fUpper) {
      return eUpper ? 1 : -1;
    }
    return GridOutline.compareProducts(ex, fy, ey, fx);
  }
}
