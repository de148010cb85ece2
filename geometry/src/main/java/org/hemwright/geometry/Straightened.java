package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** A path in which straight stretches that go on straight over a joint are one. */
final class Straightened {
  private Straightened() {}

  static Path of(Path path) {
    List<Curve> curves = new ArrayList<>(path.curves().size());
    for (Curve curve : path.curves()) {
      int last = curves.size() - 1;
      if (last >= 0
          && curve instanceof Line line
          && curves.get(last) instanceof Line before
          && before.direction(1).minus(line.direction(0)).length() <= Tolerance.SAME_DIRECTION) {
        curves.set(last, new Line(before.start(), line.end()));
      } else {
        curves.add(curve);
      }
    }
    return curves.size() == path.curves().size() ? path : Path.of(curves);
  }
}
