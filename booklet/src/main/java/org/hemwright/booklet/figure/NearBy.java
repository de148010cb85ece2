package org.hemwright.booklet.figure;

import static org.hemwright.booklet.figure.CloseUp.BEYOND;
import static org.hemwright.booklet.figure.CloseUp.HIGH;
import static org.hemwright.booklet.figure.CloseUp.WIDE;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.make.Stitch;

/** Puts down cloth, edges, stitches and measures in the window of a close-up (mm of paper). */
final class NearBy {
  private final List<Item> items = new ArrayList<>();

  List<Item> items() {
    return items;
  }

  /** Cloth in an upright box; where it reaches the window's edge it goes on. */
  NearBy cloth(double left, double low, double right, double high, boolean wrong) {
    items.addAll(Draw.cloth(Draw.box(left, low, right, high), wrong, Subject.NONE));
    return this;
  }

  /** Cloth in the whole window. */
  NearBy whole(boolean wrong) {
    return band(-BEYOND, HIGH + BEYOND, wrong);
  }

  /** Cloth from one side of the window to the other. */
  NearBy band(double low, double high, boolean wrong) {
    return cloth(-BEYOND, low, WIDE + BEYOND, high, wrong);
  }

  NearBy line(double x1, double y1, double x2, double y2, Pen pen) {
    items.add(Draw.line(x1, y1, x2, y2, pen));
    return this;
  }

  /** A line from one side of the window to the other. */
  NearBy across(double y, Pen pen) {
    return line(-BEYOND, y, WIDE + BEYOND, y, pen);
  }

  /** A cut edge across the window. */
  NearBy edge(double y) {
    return across(y, Draw.EDGE);
  }

  /** An edge where an upper layer is cut short in the drawing. */
  NearBy cutShort(double x, double low, double high) {
    List<Point> points = new ArrayList<>();
    int waves = 9;
    for (int i = 0; i <= waves; i++) {
      points.add(new Point(x + (i % 2 == 0 ? -0.5 : 0.5), low + (high - low) * i / waves));
    }
    items.add(Draw.line(Path.polyline(points), Draw.FINE));
    return this;
  }

  NearBy tag(String text, double x, double y) {
    items.addAll(Draw.words(text, new Point(x, y)));
    return this;
  }

  NearBy pin(double x, double y) {
    items.addAll(Draw.pin(new Point(x, y), new Vector(0, 1)));
    return this;
  }

  NearBy arrow(double x1, double y1, double x2, double y2) {
    items.addAll(Draw.arrow(new Point(x1, y1), new Point(x2, y2)));
    return this;
  }

  /** An arrow along a path. */
  NearBy arrow(Path path) {
    items.addAll(Draw.arrow(path));
    return this;
  }

  NearBy put(Path path, Pen pen) {
    items.add(Draw.line(path, pen));
    return this;
  }

  /** How far it is between two heights, with the text that says so. */
  NearBy measure(double x, double low, double high, String text) {
    line(x - 1.2, low, x + 1.2, low, Draw.FINE);
    line(x - 1.2, high, x + 1.2, high, Draw.FINE);
    line(x, low, x, high, Draw.FINE);
    double wide = Draw.width(text);
    double left = Math.max(1.5, Math.min(WIDE - wide - 1.5, x - wide / 2));
    double y = high + 2.6 > HIGH - 4 ? low - 3.4 : high + 2.4;
    tag(text, left + wide / 2 + 0.4, y + 0.9);
    return this;
  }

  /** The same between two places from left to right. */
  NearBy measureAcross(double left, double right, double y, String text) {
    line(left, y - 1.2, left, y + 1.2, Draw.FINE);
    line(right, y - 1.2, right, y + 1.2, Draw.FINE);
    line(left, y, right, y, Draw.FINE);
    double wide = Draw.width(text);
    double at = Math.max(1.5 + wide / 2, Math.min(WIDE - 1.5 - wide / 2, (left + right) / 2));
    return tag(text, at, y + 3.4);
  }

  /** A row of a stitch from left to right. */
  NearBy stitch(Stitch.Kind kind, double left, double right, double y, double amplitude) {
    switch (kind) {
      case ZIGZAG, CATCH_STITCH, BLIND_HEM -> zigzag(left, right, y, amplitude);
      case TWIN_NEEDLE, COVER -> {
        line(left, y + 1, right, y + 1, Draw.STITCH);
        line(left, y - 1, right, y - 1, Draw.STITCH);
      }
      case OVERLOCK_THREE, OVERLOCK_FOUR -> loops(left, right, y, kind);
      case STRETCH -> {
        line(left, y, right, y, new Pen(0.9, List.of(1.8, 0.8), Inks.CHALK));
      }
      default -> line(left, y, right, y, Draw.STITCH);
    }
    return this;
  }

  private void zigzag(double left, double right, double y, double amplitude) {
    List<Point> points = new ArrayList<>();
    int count = Math.max(2, (int) Math.round((right - left) / 1.7));
    for (int i = 0; i <= count; i++) {
      points.add(
          new Point(
              left + (right - left) * i / count, y + (i % 2 == 0 ? -amplitude : amplitude) / 2));
    }
    items.add(Draw.line(Path.polyline(points), Pen.solid(0.45, Inks.CHALK)));
  }

  private void loops(double left, double right, double y, Stitch.Kind kind) {
    line(left, y - 1.8, right, y - 1.8, Draw.STITCH);
    if (kind == Stitch.Kind.OVERLOCK_FOUR) {
      line(left, y - 0.4, right, y - 0.4, Draw.STITCH);
    }
    List<Point> points = new ArrayList<>();
    int count = Math.max(2, (int) Math.round((right - left) / 1.9));
    for (int i = 0; i <= count; i++) {
      double x = left + (right - left) * i / count;
      points.add(new Point(x, i % 2 == 0 ? y - 1.8 : y + 1.9));
    }
    items.add(Draw.line(Path.polyline(points), Pen.solid(0.4, Inks.CHALK)));
    line(left, y + 1.9, right, y + 1.9, Pen.solid(0.4, Inks.CHALK));
  }

  /** A ring, as a button or an eyelet. */
  NearBy ring(double x, double y, double radius) {
    items.add(
        Draw.line(
            CircularArc.about(new Point(x, y), new Point(x + radius, y), 2 * Math.PI), Draw.EDGE));
    return this;
  }
}
