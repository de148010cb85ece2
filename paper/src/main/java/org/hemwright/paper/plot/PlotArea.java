package org.hemwright.paper.plot;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/** Puts marks into a figure whose axes run over ranges of values. */
final class PlotArea {
  static final double POINTS = 9;

  private final Box area;
  private final Box values;
  private final List<Item> inside = new ArrayList<>();
  private final List<Item> outside = new ArrayList<>();

  /**
   * An area.
   *
   * @param area on the sheet (mm)
   * @param values what its edges stand for
   */
  PlotArea(Box area, Box values) {
    this.area = area;
    this.values = values;
  }

  /** Where a pair of values stands on the sheet. */
  Point at(double x, double y) {
    return new Point(
        area.minX() + (x - values.minX()) / values.width() * area.width(),
        area.minY() + (y - values.minY()) / values.height() * area.height());
  }

  /** A line through points of the sheet, seen within the area. */
  void line(Pen pen, List<Point> points) {
    List<Point> apart = apart(points);
    if (apart.size() > 1) {
      inside.add(new Stroke(Path.polyline(apart), pen, Layer.COMMON, Subject.NONE));
    }
  }

  /** The points without those that lie on the one before. */
  private static List<Point> apart(List<Point> points) {
    List<Point> apart = new ArrayList<>();
    for (Point point : points) {
      if (apart.isEmpty() || !apart.get(apart.size() - 1).isAt(point)) {
        apart.add(point);
      }
    }
    return apart;
  }

  void line(Pen pen, Point from, Point to) {
    line(pen, List.of(from, to));
  }

  /** A line that may stand outside the area. */
  void rule(Pen pen, Point from, Point to) {
    outside.add(new Stroke(Path.straight(from, to), pen, Layer.COMMON, Subject.NONE));
  }

  /** An area filled, seen within the plot's. */
  void fill(Ink ink, List<Point> corners) {
    List<Point> round = apart(closedPoints(corners));
    if (round.size() > 3) {
      Outline outline = Outline.of(Path.polyline(round));
      inside.add(new Fill(outline, ink, Layer.COMMON, Subject.NONE));
    }
  }

  void fill(Ink ink, Box box) {
    fill(ink, corners(box));
  }

  /** A small filled shape, whole wherever it stands. */
  void mark(Ink ink, List<Point> corners) {
    Outline outline = Outline.of(Path.polyline(closedPoints(corners)));
    outside.add(new Fill(outline, ink, Layer.COMMON, Subject.NONE));
  }

  void box(Pen pen, Box box) {
    line(pen, closedPoints(corners(box)));
  }

  static List<Point> corners(Box box) {
    return List.of(
        new Point(box.minX(), box.minY()),
        new Point(box.maxX(), box.minY()),
        new Point(box.maxX(), box.maxY()),
        new Point(box.minX(), box.maxY()));
  }

  private static List<Point> closedPoints(List<Point> corners) {
    List<Point> round = new ArrayList<>(corners);
    round.add(corners.get(0));
    return round;
  }

  /** Words whose place along their line is given as a share: 0 starts there, 1 ends there. */
  SetLine words(String text, Face face, Ink ink, Point at, double share) {
    SetLine line = face.set(text, POINTS);
    Point start = new Point(at.x() - share * line.width(), at.y() - line.capitalHeight() / 2);
    outside.add(new Words(line, start, 0, ink, Layer.COMMON, Subject.NONE));
    return line;
  }

  /** The figure with a margin round all (mm). */
  Sheet sheet(Box frame) {
    List<Item> all = new ArrayList<>();
    all.add(new Clip(area, inside));
    all.addAll(outside);
    return new Sheet(frame, all);
  }
}
