package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/** The marks of the figures on paper (mm), the same in every one and in the key. */
final class Draw {
  static final Pen EDGE = Pen.solid(0.35, Inks.BLACK);
  static final Pen FINE = Pen.solid(0.2, Inks.BLACK);
  static final Pen HIDDEN = new Pen(0.2, List.of(0.9, 0.9), Inks.BLACK);
  static final Pen STITCH = new Pen(0.45, List.of(1.6, 0.9), Inks.CHALK);
  static final Pen ACTION = Pen.solid(0.9, Inks.CHALK);
  static final Pen FOLD = new Pen(0.3, List.of(4.0, 0.9, 0.9, 0.9), Inks.BLACK);
  static final double TEXT = 9;

  private static final Ink WRONG = new Ink(0xd9, 0xd5, 0xcc);
  private static final Pen HATCH = Pen.solid(0.12, new Ink(0x77, 0x72, 0x68));
  private static final double SPACING = 1.5;
  private static final double HEAD = 3;

  private Draw() {}

  /** Cloth, by the side that is up. */
  static List<Inked> cloth(Outline outline, boolean wrongSide, Subject subject) {
    Fill fill = new Fill(outline, wrongSide ? WRONG : Inks.PAPER, Layer.COMMON, subject);
    return wrongSide
        ? List.of(fill, new Hatch(outline, Math.PI / 4, SPACING, HATCH, Layer.COMMON, subject))
        : List.of(fill);
  }

  static Stroke line(Path path, Pen pen) {
    return new Stroke(path, pen, Layer.COMMON, Subject.NONE);
  }

  static Stroke line(Point from, Point to, Pen pen) {
    return line(Path.straight(from, to), pen);
  }

  static Stroke line(double x1, double y1, double x2, double y2, Pen pen) {
    return line(new Point(x1, y1), new Point(x2, y2), pen);
  }

  static Outline box(double left, double low, double right, double high) {
    return Box.of(new Point(left, low), new Point(right, high)).outline();
  }

  /** A pin: a shaft across the seam with a head. */
  static List<Inked> pin(Point at, Vector across) {
    Vector unit = across.unit();
    Point head = at.plus(unit.times(2.6));
    Point tip = at.minus(unit.times(2.2));
    return List.of(line(tip, head, Pen.solid(0.3, Inks.BLACK)), disc(head, 0.75, Inks.BLACK));
  }

  /** A filled disc. */
  static Fill disc(Point centre, double radius, Ink ink) {
    return new Fill(
        Outline.of(CircularArc.about(centre, centre.plus(new Vector(radius, 0)), 2 * Math.PI)),
        ink,
        Layer.COMMON,
        Subject.NONE);
  }

  /** An arrow with a filled head. */
  static List<Inked> arrow(Point from, Point to) {
    return arrow(Path.straight(from, to));
  }

  /** An arrow along a path. */
  static List<Inked> arrow(Path path) {
    Vector along = path.endDirection();
    Point tip = path.end();
    Point base = tip.minus(along.times(HEAD));
    Vector aside = along.left().times(HEAD * 0.36);
    double shaft = Math.max(path.length() * 0.2, path.length() - HEAD * 0.8);
    List<Inked> items = new ArrayList<>();
    items.add(line(path.part(0, shaft), Pen.solid(0.5, Inks.BLACK)));
    items.add(
        new Fill(
            Outline.of(Path.polyline(List.of(tip, base.plus(aside), base.minus(aside), tip))),
            Inks.BLACK,
            Layer.COMMON,
            Subject.NONE));
    return items;
  }

  /** Words on a ground of their own, so that lines beneath do not cross them. */
  static List<Inked> words(String text, Point centre) {
    SetLine line = Face.SEMIBOLD.set(text, TEXT);
    double high = line.capitalHeight();
    Point at = new Point(centre.x() - line.width() / 2, centre.y() - high / 2);
    return List.of(
        new Fill(
            box(at.x() - 0.8, at.y() - 0.9, at.x() + line.width() + 0.8, at.y() + high + 0.9),
            Inks.PAPER,
            Layer.COMMON,
            Subject.NONE),
        new Words(line, at, 0, Inks.BLACK, Layer.COMMON, Subject.NONE));
  }

  /** Words that start at a point on the baseline. */
  static Words plain(String text, double x, double y) {
    return new Words(
        Face.REGULAR.set(text, TEXT), new Point(x, y), 0, Inks.BLACK, Layer.COMMON, Subject.NONE);
  }

  static double width(String text) {
    return Face.REGULAR.set(text, TEXT).width();
  }
}
