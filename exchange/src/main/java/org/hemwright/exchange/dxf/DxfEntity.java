package org.hemwright.exchange.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Point;

/**
 * What stands between one group code 0 and the next.
 *
 * @param kind the word after the 0, in capitals
 * @param line where it starts
 * @param pairs the other codes and values, in order
 */
record DxfEntity(String kind, int line, List<Pair> pairs) {
  /** A group code and its value. */
  record Pair(int code, String value) {}

  DxfEntity {
    pairs = List.copyOf(pairs);
  }

  Optional<String> text(int code) {
    return pairs.stream().filter(pair -> pair.code() == code).map(Pair::value).findFirst();
  }

  double number(int code) {
    return text(code).map(DxfEntity::number).orElse(0.0);
  }

  /** A number as it is written; 0 where it is none. */
  static double number(String text) {
    try {
      double value = Double.parseDouble(text.strip());
      return Double.isFinite(value) ? value : 0;
    } catch (NumberFormatException none) {
      return 0;
    }
  }

  /** The point at a code and ten more. */
  Point at(int code) {
    return new Point(number(code), number(code + 10));
  }

  /** All points at codes 10 and 20. */
  List<Point> points() {
    List<Point> points = new ArrayList<>();
    double x = 0;
    for (Pair pair : pairs) {
      if (pair.code() == 10) {
        x = number(pair.value());
      } else if (pair.code() == 20) {
        points.add(new Point(x, number(pair.value())));
      }
    }
    return points;
  }

  String layer() {
    return text(8).orElse("0").strip();
  }

  boolean isClosed() {
    return ((int) number(70) & 1) == 1;
  }
}
