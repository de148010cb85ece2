package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.SetLine;

/**
 * The signs of the printed pattern, the same on every piece and in the key: arrows, brackets,
 * crosses, ticks (common practice, no source; handbook section 6 lists what they must say).
 *
 * @param layer whose signs they are
 * @param subject what they are about
 * @param ink their colour
 * @param scale how many times their size on paper, for pictures seen from afar
 */
public record Signs(Layer layer, Subject subject, Ink ink, double scale) {
  private static final double HEAD_LENGTH = 5;
  private static final double HEAD_HALF = 1.3;
  private static final double DRILL_RADIUS = 1.6;
  private static final double DRILL_REACH = 3;
  private static final double BRACKET_HEAD = 3.6;
  private static final double LEADER_DOT = 0.8;

  /** Signs of their size on paper. */
  public Signs(Layer layer, Subject subject, Ink ink) {
    this(layer, subject, ink, 1);
  }

  /** Signs in black, common to all sizes. */
  public static Signs common(Subject subject) {
    return new Signs(Layer.COMMON, subject, Inks.BLACK);
  }

  /** A straight line. */
  public Stroke line(Point from, Point to, Pen pen) {
    return new Stroke(Path.straight(from, to), pen.in(ink), layer, subject);
  }

  /**
   * The grain arrow.
   *
   * @param oneWay whether the piece must point that way on the cloth: then the foot has a bar and
   *     no head
   */
  public List<Inked> grain(Point foot, Point head, boolean oneWay) {
    Vector along = head.minus(foot).unit();
    double shaft = HEAD_LENGTH * scale * 0.8;
    List<Inked> items = new ArrayList<>();
    Point start = oneWay ? foot : foot.plus(along.times(shaft));
    items.add(line(start, head.minus(along.times(shaft)), Pens.SIGN));
    items.add(head(head, along, HEAD_LENGTH * scale));
    if (oneWay) {
      items.add(
          line(
              foot.plus(along.left().times(HEAD_HALF * scale)),
              foot.plus(along.right().times(HEAD_HALF * scale)),
              Pens.SIGN));
    } else {
      items.add(head(foot, along.negated(), HEAD_LENGTH * scale));
    }
    return items;
  }

  /** The stretch arrow: heads at both ends, and a wave between them as of cloth pulled. */
  public List<Inked> stretch(Point from, Point to) {
    Vector along = to.minus(from).unit();
    List<Inked> items = new ArrayList<>();
    items.add(openHead(from, along.negated()));
    items.add(openHead(to, along));
    double length = from.distanceTo(to);
    int waves = Math.max(2, (int) Math.round(length / 5));
    double step = length / waves;
    List<Path> wave = new ArrayList<>();
    for (int i = 0; i < waves; i++) {
      Point start = from.plus(along.times(i * step));
      Point end = from.plus(along.times((i + 1) * step));
      wave.add(CircularArc.between(start, end, step * 0.9, i % 2 == 0, false));
    }
    Path all = wave.get(0);
    for (int i = 1; i < waves; i++) {
      all = all.then(wave.get(i));
    }
    items.add(new Stroke(all, Pens.SIGN.in(ink), layer, subject));
    return items;
  }

  /**
   * The fold bracket, its arms pointing at the fold.
   *
   * @param from one end, on the fold
   * @param to the other end, on the fold
   * @param inward unit, into the piece
   * @param depth how far the bracket stands off the fold (mm)
   */
  public List<Inked> fold(Point from, Point to, Vector inward, double depth) {
    Point near = from.plus(inward.times(depth));
    Point far = to.plus(inward.times(depth));
    double head = BRACKET_HEAD * scale;
    double off = 0.6 * scale;
    Vector clear = inward.times(off + head * 0.8);
    List<Inked> items = new ArrayList<>();
    items.add(
        new Stroke(
            Path.polyline(List.of(from.plus(clear), near, far, to.plus(clear))),
            Pens.SIGN.in(ink),
            layer,
            subject));
    items.add(head(from.plus(inward.times(off)), inward.negated(), head));
    items.add(head(to.plus(inward.times(off)), inward.negated(), head));
    return items;
  }

  /** A point to transfer to the cloth: a circle and a cross. */
  public List<Inked> drill(Point at) {
    Point east = at.plus(new Vector(DRILL_RADIUS, 0));
    return List.of(
        new Stroke(CircularArc.about(at, east, 2 * Math.PI), Pens.INNER.in(ink), layer, subject),
        line(at.plus(new Vector(-DRILL_REACH, 0)), at.plus(new Vector(DRILL_REACH, 0)), Pens.INNER),
        line(
            at.plus(new Vector(0, -DRILL_REACH)), at.plus(new Vector(0, DRILL_REACH)), Pens.INNER));
  }

  /** One stroke of a notch. */
  public Stroke notch(Point from, Point to) {
    return line(from, to, Pens.NOTCH);
  }

  /** A leader from a dot on the piece to words beside it. */
  public List<Inked> leader(Point dot, Point end) {
    Point east = dot.plus(new Vector(LEADER_DOT, 0));
    return List.of(
        new Fill(Outline.of(CircularArc.about(dot, east, 2 * Math.PI)), ink, layer, subject),
        line(dot, end, Pens.INNER));
  }

  /** Words that start at a point. */
  public Words words(SetLine line, Point at, double angle) {
    return new Words(line, at, angle, ink, layer, subject);
  }

  private Fill head(Point tip, Vector along, double length) {
    Point base = tip.minus(along.times(length));
    Vector aside = along.left().times(HEAD_HALF * length / HEAD_LENGTH);
    Point notch = tip.minus(along.times(length * 0.8));
    return new Fill(
        Outline.of(Path.polyline(List.of(tip, base.plus(aside), notch, base.minus(aside), tip))),
        ink,
        layer,
        subject);
  }

  private Stroke openHead(Point tip, Vector along) {
    Point base = tip.minus(along.times(HEAD_LENGTH * 0.7));
    Vector aside = along.left().times(HEAD_HALF * 1.2);
    return new Stroke(
        Path.polyline(List.of(base.plus(aside), tip, base.minus(aside))),
        Pens.SIGN.in(ink),
        layer,
        subject);
  }
}
