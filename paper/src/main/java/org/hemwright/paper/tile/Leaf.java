package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.arrange.Footprint;
import org.hemwright.paper.label.TextBlock;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Picture;
import org.hemwright.paper.sheet.Raster;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/**
 * A page of words and figures being set. Places are counted in millimetres from the upper left
 * corner of its frame, rightward and downward.
 */
final class Leaf {
  private final List<Item> items = new ArrayList<>();

  /** Words that start at a place; answers where they end. */
  double words(double x, double down, String text, Face face, double points) {
    return words(x, down, text, face, points, Inks.BLACK);
  }

  double words(double x, double down, String text, Face face, double points, Ink ink) {
    return line(x, down, face.set(text, points), ink);
  }

  /** A line that starts at a place; answers where it ends. */
  double line(double x, double down, SetLine line) {
    return line(x, down, line, Inks.BLACK);
  }

  private double line(double x, double down, SetLine line, Ink ink) {
    items.add(new Words(line, new Point(x, -down), 0, ink, Layer.COMMON, Subject.NONE));
    return x + line.width();
  }

  /** Words that end at a place. */
  void wordsBefore(double x, double down, String text, Face face, double points) {
    SetLine line = face.set(text, points);
    words(x - line.width(), down, text, face, points);
  }

  /** Words about a middle. */
  void wordsAbout(double x, double down, String text, Face face, double points, Ink ink) {
    SetLine line = face.set(text, points);
    words(x - line.width() / 2, down, text, face, points, ink);
  }

  /** A text broken to a width, its first baseline at a place; answers the last baseline. */
  double text(double x, double down, String text, Face face, double points, double width) {
    double at = down;
    boolean first = true;
    for (SetLine line : TextBlock.broken(text, face, points, width)) {
      at += first ? 0 : Face.mm(points) * Face.LEADING;
      first = false;
      items.add(new Words(line, new Point(x, -at), 0, Inks.BLACK, Layer.COMMON, Subject.NONE));
    }
    return at;
  }

  void rule(double x, double down, double length, Pen pen) {
    line(x, down, x + length, down, pen);
  }

  void line(double fromX, double fromDown, double toX, double toDown, Pen pen) {
    items.add(
        new Stroke(
            Path.straight(new Point(fromX, -fromDown), new Point(toX, -toDown)),
            pen,
            Layer.COMMON,
            Subject.NONE));
  }

  void stroke(Path path, Pen pen) {
    items.add(new Stroke(path, pen, Layer.COMMON, Subject.NONE));
  }

  /** A frame whose line's outer edge is the box. */
  void frame(double x, double down, double width, double height, Pen pen) {
    double half = pen.width() / 2;
    Box box = new Box(x + half, -(down + height) + half, x + width - half, -down - half);
    items.add(new Stroke(Path.polyline(Footprint.corners(box)), pen, Layer.COMMON, Subject.NONE));
  }

  void fill(Path outline, Ink ink) {
    items.add(new Fill(Outline.of(outline), ink, Layer.COMMON, Subject.NONE));
  }

  void hatch(Box box, double spacing, Pen pen) {
    Outline outline = Outline.of(Path.polyline(Footprint.corners(box)));
    items.add(new Hatch(outline, Math.PI / 4, spacing, pen, Layer.COMMON, Subject.NONE));
  }

  /** A picture with its upper left corner at a place. */
  void picture(Raster raster, double x, double down, double width, double height) {
    Box box = new Box(x, -(down + height), x + width, -down);
    items.add(new Picture(raster, box, Layer.COMMON, Subject.NONE));
  }

  void add(List<? extends Inked> inked) {
    items.addAll(inked);
  }

  List<Item> items() {
    return List.copyOf(items);
  }

  /** The frame of a format's page, as places are counted here. */
  static Box frame(PageFormat format) {
    return new Box(0, -format.grid(0).height(), format.grid(0).width(), 0);
  }

  /** The page on its paper, with a header above its frame. */
  Sheet on(PageFormat format, List<? extends Item> header) {
    List<Item> all = new ArrayList<>(items);
    all.addAll(header);
    return new Sheet(format.paper(frame(format)), all);
  }
}
