package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.nest.Signs;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.style.Inks;

/** How cloth, pieces and their edges look on a cutting layout, and in its key. */
final class ClothInk {
  static final Pen PIECE = Pen.solid(0.4, Inks.BLACK);
  static final Pen FOLD = new Pen(0.6, List.of(5.0, 1.0, 1.0, 1.0), Inks.BLACK);
  static final Pen SELVEDGE = Pen.solid(0.25, Inks.BLACK);
  static final Pen END = Pen.solid(0.25, Inks.QUIET);
  static final Pen OPENED = new Pen(0.3, List.of(1.6, 1.2), Inks.BLACK);
  static final Pen AXIS = new Pen(0.25, List.of(2.0, 0.6, 0.6, 0.6), Inks.BLACK);
  static final Pen BAR = Pen.solid(0.15, new Ink(0xa4, 0xa4, 0xa4));
  static final Pen BESIDE_BAR = new Pen(0.15, List.of(0.9, 0.7), new Ink(0xa4, 0xa4, 0xa4));
  static final Ink NOTCH = Inks.BLACK;
  static final double SELVEDGE_APART = 0.9;

  /** Nothing is drawn smaller than this (mm): what is, on a very long cloth, is a dot. */
  static final double LEAST = 0.01;

  private static final Ink CLOTH_RIGHT = new Ink(0xf4, 0xf1, 0xea);
  private static final Ink CLOTH_WRONG = new Ink(0xdd, 0xd8, 0xcd);
  private static final Ink PIECE_UP = Inks.PAPER;
  private static final Ink PIECE_DOWN = new Ink(0xc4, 0xc4, 0xc4);
  private static final Pen CLOTH_HATCH = Pen.solid(0.12, new Ink(0x8a, 0x84, 0x78));
  private static final Pen PIECE_HATCH = Pen.solid(0.15, new Ink(0x60, 0x60, 0x60));
  private static final double CLOTH_SPACING = 1.9;
  private static final double PIECE_SPACING = 1.1;

  /** How large a fold bracket is beside that of a printed piece, for each millimetre it is high. */
  private static final double BRACKET = 0.16;

  private ClothInk() {}

  /** An upright box of cloth. */
  static List<Inked> cloth(double left, double low, double right, double high, boolean rightSide) {
    Outline area = box(left, low, right, high);
    Fill fill = new Fill(area, colour(rightSide), Layer.COMMON, Subject.NONE);
    return rightSide
        ? List.of(fill)
        : List.of(
            fill,
            new Hatch(area, Math.PI / 4, CLOTH_SPACING, CLOTH_HATCH, Layer.COMMON, Subject.NONE));
  }

  /** The colour of one side of the cloth. */
  static Ink colour(boolean rightSide) {
    return rightSide ? CLOTH_RIGHT : CLOTH_WRONG;
  }

  /** What a piece covers, without its edge. */
  static List<Inked> area(Outline outline, boolean faceDown, Subject subject) {
    Fill fill = new Fill(outline, faceDown ? PIECE_DOWN : PIECE_UP, Layer.COMMON, subject);
    return faceDown
        ? List.of(
            fill,
            new Hatch(outline, -Math.PI / 4, PIECE_SPACING, PIECE_HATCH, Layer.COMMON, subject))
        : List.of(fill);
  }

  /**
   * The bracket of a piece that lies on a fold, as the printed piece bears it.
   *
   * @param middle of the fold's stretch (mm)
   * @param fold where the fold runs
   * @param wide how long the bracket is
   * @param high how far it stands off the fold; below it where negative
   */
  static List<Inked> onFold(double middle, double fold, double wide, double high, Subject subject) {
    return new Signs(Layer.COMMON, subject, Inks.BLACK, BRACKET * Math.abs(high))
        .fold(
            new Point(middle - wide / 2, fold),
            new Point(middle + wide / 2, fold),
            new Vector(0, Math.signum(high)),
            Math.abs(high));
  }

  /** A selvedge: two lines, the second on the cloth's side of the first. */
  static List<Inked> selvedge(double left, double right, double y, double inward) {
    return List.of(
        line(left, y, right, y, SELVEDGE),
        line(left, y + inward * SELVEDGE_APART, right, y + inward * SELVEDGE_APART, SELVEDGE));
  }

  static Stroke line(double x1, double y1, double x2, double y2, Pen pen) {
    Point from = new Point(x1, y1);
    Point to = new Point(x2, y2);
    Point end = from.isAt(to) ? new Point(x1 + LEAST, y1) : to;
    return new Stroke(Path.straight(from, end), pen, Layer.COMMON, Subject.NONE);
  }

  static Outline box(double left, double low, double right, double high) {
    Point far = new Point(Math.max(right, left + LEAST), Math.max(high, low + LEAST));
    return Box.of(new Point(left, low), far).outline();
  }

  /** The outline through corners, of which several may be one point on so small a drawing. */
  static Outline outline(List<Point> corners) {
    List<Point> round = new ArrayList<>();
    for (Point corner : corners) {
      if (round.isEmpty() || !corner.isAt(round.get(round.size() - 1))) {
        round.add(corner);
      }
    }
    while (round.size() > 1 && round.get(round.size() - 1).isAt(round.get(0))) {
      round.remove(round.size() - 1);
    }
    if (round.size() < 3) {
      Box all = Box.of(round.get(0), round.get(round.size() - 1));
      return box(all.minX(), all.minY(), all.maxX(), all.maxY());
    }
    round.add(round.get(0));
    return Outline.of(Path.polyline(round));
  }
}
