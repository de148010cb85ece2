package org.hemwright.cloth.laying;

/** Where every copy of a {@link Crowd} lay at some time: a picture to come back to. */
final class Places {

  final double length;

  /** The overlap that was left; 0 where this is a layout. */
  final double overlap;

  final int[] cut;
  final double[] x;
  final double[] y;

  Places(double length, double overlap, int[] cut, double[] x, double[] y) {
    this.length = length;
    this.overlap = overlap;
    this.cut = cut;
    this.x = x;
    this.y = y;
  }

  /** A picture of a crowd as it lies. */
  static Places of(Crowd crowd, double overlap) {
    int[] cut = new int[crowd.size];
    double[] x = new double[crowd.size];
    double[] y = new double[crowd.size];
    for (int copy = 0; copy < crowd.size; copy++) {
      cut[copy] = crowd.cut(copy);
      x[copy] = crowd.x(copy);
      y[copy] = crowd.y(copy);
    }
    return new Places(crowd.length(), overlap, cut, x, y);
  }

  /** Lays a crowd as it lay then. */
  void restore(Crowd crowd) {
    crowd.arrange(length, cut, x, y);
  }
}
