package org.hemwright.exchange.dxf;

import java.util.Locale;
import org.hemwright.geometry.Point;

/** Writes a DXF as text: pairs of a group code and a value, a line each. */
final class DxfText {
  private static final double HEIGHT = 5;

  private final StringBuilder text = new StringBuilder();

  DxfText pair(int code, String value) {
    text.append(String.format(Locale.ROOT, "%3d", code))
        .append("\r\n")
        .append(value)
        .append("\r\n");
    return this;
  }

  DxfText number(int code, double value) {
    String number = String.format(Locale.ROOT, "%.4f", value);
    return pair(code, number.equals("-0.0000") ? "0.0000" : number);
  }

  private DxfText at(Point point) {
    return number(10, point.x()).number(20, point.y()).number(30, 0);
  }

  void point(DxfLayer layer, Point point) {
    pair(0, "POINT").pair(8, layer.number()).at(point);
  }

  /** A notch: its depth as thickness, the way it is cut as angle. */
  void notch(Point point, double depth, double degrees) {
    pair(0, "POINT").pair(8, DxfLayer.NOTCHES.number()).at(point);
    number(39, depth).number(50, degrees);
  }

  void line(DxfLayer layer, Point from, Point to) {
    pair(0, "LINE").pair(8, layer.number()).at(from);
    number(11, to.x()).number(21, to.y()).number(31, 0);
  }

  void words(DxfLayer layer, Point at, String words) {
    pair(0, "TEXT").pair(8, layer.number()).at(at).number(40, HEIGHT).pair(1, plain(words));
  }

  void polyline(DxfLayer layer, Iterable<Point> points, boolean closed) {
    pair(0, "POLYLINE").pair(8, layer.number()).pair(66, "1").pair(70, closed ? "1" : "0");
    for (Point point : points) {
      pair(0, "VERTEX").pair(8, layer.number()).at(point);
    }
    pair(0, "SEQEND").pair(8, layer.number());
  }

  /** Words in letters that every reader of such files has; others become a question mark. */
  static String plain(String words) {
    StringBuilder plain = new StringBuilder();
    words
        .replaceAll("\\s+", " ")
        .codePoints()
        .forEach(c -> plain.appendCodePoint(c >= ' ' && c < 127 ? c : '?'));
    return plain.toString();
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
