package org.hemwright.paper.overlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.arrange.Footprint;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.compare.PieceMatch;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.NotchMark;
import org.hemwright.pattern.piece.NotchSize;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;

/** Draws the old line of a piece against the new, in one size. */
public final class Overlay {
  /** A piece this large is drawn with pens and words of their size on paper (mm). */
  private static final double AT_EASE = 240;

  private static final double POINTS = 10;
  private static final double TITLE = 16;
  private static final Ink BETWEEN = Inks.CHALK.tint(0.28);
  private static final Pen NEW_CUT = Pen.solid(0.6, Inks.BLACK);
  private static final Pen NEW_STITCH = Pen.solid(0.25, Inks.BLACK);
  private static final Pen OLD_CUT = new Pen(0.6, List.of(2.4, 1.6), Inks.QUIET);
  private static final Pen OLD_STITCH = new Pen(0.25, List.of(1.6, 1.2), Inks.QUIET);
  private static final Pen MEASURE = Pen.solid(1.4, Inks.CHALK);
  private static final Pen LEADER = Pen.solid(0.25, Inks.CHALK);
  private static final double CLEAR = 1.5;

  private final PieceMatch.Both both;
  private final LengthFormat lengths;
  private final Subject subject;
  private final Motion upright;
  private final double scale;
  private final List<Item> items = new ArrayList<>();

  /** How far to the right words stand that found no room inside (mm). */
  private double reach = Double.NEGATIVE_INFINITY;

  private Overlay(PieceMatch.Both both, LengthFormat lengths) {
    this.both = both;
    this.lengths = lengths;
    subject = Subject.piece(both.now().name());
    double up =
        both.old().grain().map(grain -> grain.direction().angleTo(new Vector(0, 1))).orElse(0.0);
    upright = Motion.turn(both.old().stackPoint(), up);
    Box box = both.old().stitchLine().moved(upright).bounds();
    scale = Math.max(1, Math.max(box.width(), box.height()) / AT_EASE);
  }

  /**
   * The drawing.
   *
   * @param both the piece in one size
   * @param title what it shows: "Skirt front, size 14"
   * @param was what the old line is called: "version 1.0"
   * @param is what the new line is called
   * @param apart where the cut lines lie farthest apart, on the new piece, and by how much (mm)
   * @param lengths how that is shown
   * @return nothing where a cut line cannot be drawn
   */
  public static Optional<Sheet> of(
      PieceMatch.Both both,
      String title,
      String was,
      String is,
      Optional<Apart> apart,
      LengthFormat lengths) {
    Optional<CutLine> old = AddedAllowance.to(both.old()).cutLine();
    Optional<CutLine> now = AddedAllowance.to(both.now()).cutLine();
    return old.isPresent() && now.isPresent()
        ? Optional.of(new Overlay(both, lengths).sheet(old.get(), now.get(), title, was, is, apart))
        : Optional.empty();
  }

  /** The place on the new piece that lies farthest from the old line, and how far (mm). */
  public record Apart(Point at, double mm) {}

  private Sheet sheet(
      CutLine old, CutLine now, String title, String was, String is, Optional<Apart> apart) {
    Motion onto = both.onto().then(upright);
    between(old, now, onto);
    lines(both.old(), old, upright, OLD_CUT, OLD_STITCH);
    lines(both.now(), now, onto, NEW_CUT, NEW_STITCH);
    Box box = old.outline().moved(upright).bounds().union(now.outline().moved(onto).bounds());
    apart.ifPresent(far -> measure(far, old.outline().path().moved(upright), onto, box));
    return framed(box, title, was, is);
  }

  /** Tints what lies between the old and the new course of each edge. */
  private void between(CutLine old, CutLine now, Motion onto) {
    for (int i = 0; i < both.now().edges().size(); i++) {
      Edge edge = both.now().edges().get(i);
      for (int j = 0; j < both.old().edges().size(); j++) {
        if (both.old().edges().get(j).name().equals(edge.name())) {
          Path is = now.edges().get(i).moved(onto);
          Path was = old.edges().get(j).moved(upright);
          strip(was, onto.isMirror() == upright.isMirror() ? is : is.reversed());
        }
      }
    }
  }

  private void strip(Path was, Path is) {
    List<Point> round = new ArrayList<>(was.flattened(Tolerance.PRINTED_FLAT));
    List<Point> back = new ArrayList<>(is.flattened(Tolerance.PRINTED_FLAT));
    java.util.Collections.reverse(back);
    round.addAll(back);
    round.add(round.get(0));
    List<Point> apart = new ArrayList<>();
    for (Point point : round) {
      if (apart.isEmpty() || !apart.get(apart.size() - 1).isAt(point)) {
        apart.add(point);
      }
    }
    if (apart.size() > 3) {
      Outline outline = Outline.of(Path.polyline(apart));
      items.add(new Fill(outline, BETWEEN, Layer.COMMON, subject));
    }
  }

  private void lines(Piece piece, CutLine cut, Motion motion, Pen cutPen, Pen stitchPen) {
    stroke(piece.stitchLine().path().moved(motion), stitchPen);
    stroke(cut.outline().path().moved(motion), cutPen);
    for (NotchMark mark : NotchMark.on(piece, cut, NotchSize.USUAL)) {
      for (NotchMark.Tick tick : mark.ticks()) {
        Point from = motion.apply(tick.at());
        Point to = motion.apply(tick.at().plus(tick.inward().times(Math.max(3, 4 * scale))));
        stroke(Path.straight(from, to), Pen.solid(cutPen.width(), cutPen.ink()));
      }
    }
  }

  private void stroke(Path path, Pen pen) {
    items.add(new Stroke(path, pen.times(Math.sqrt(scale)), Layer.COMMON, subject));
  }

  /** A thick line where the cut lines lie farthest apart, and beside it how far. */
  private void measure(Apart far, Path old, Motion onto, Box box) {
    Point is = onto.apply(far.at());
    Point was = old.nearest(is).point();
    String text = lengths.text(far.mm(), LengthKind.DIFFERENCE);
    SetLine line = Face.SEMIBOLD.set(text, POINTS * scale);
    Point middle = was.toward(is, 0.5);
    Room room = new Room(List.of(Path.polyline(Footprint.corners(box))));
    for (Item item : items) {
      if (item instanceof Stroke stroke) {
        room.takeLine(stroke.path(), CLEAR * scale);
      }
    }
    if (was.distanceTo(is) > Tolerance.PRINTED_AS_ONE) {
      stroke(Path.straight(was, is), MEASURE);
    }
    double high = line.capitalHeight() + line.descent();
    room.find(0, line.width(), high, middle)
        .ifPresentOrElse(
            free -> {
              words(line, free.at(0, line.descent()), Inks.CHALK);
              Point beside = nearest(free, line, middle);
              double way = beside.distanceTo(middle);
              if (way > 4 * scale) {
                Point from = middle.toward(beside, 1.5 * scale / way);
                Point to = middle.toward(beside, 1 - 1.5 * scale / way);
                stroke(Path.straight(from, to), LEADER);
              }
            },
            () -> {
              double x = box.maxX() + 4 * scale;
              words(line, new Point(x, middle.y() - line.capitalHeight() / 2), Inks.CHALK);
              reach = x + line.width();
            });
  }

  /** The point of a line of words that lies nearest to another point. */
  private static Point nearest(TurnedBox free, SetLine line, Point to) {
    Point corner = free.corner();
    double high = line.capitalHeight() + line.descent();
    double x = Math.max(corner.x(), Math.min(corner.x() + line.width(), to.x()));
    double y = Math.max(corner.y(), Math.min(corner.y() + high, to.y()));
    return new Point(x, y);
  }

  private void words(SetLine line, Point at, Ink ink) {
    items.add(new Words(line, at, 0, ink, Layer.COMMON, Subject.NONE));
  }

  private Sheet framed(Box box, String title, String was, String is) {
    double gap = 9 * scale;
    SetLine head = Face.LIGHT.set(title, TITLE * scale);
    double top = box.maxY() + gap;
    words(head, new Point(box.minX(), top), Inks.BLACK);
    double row = Face.mm(POINTS * scale) * 1.7;
    double foot = box.minY() - gap;
    double right = box.minX() + head.width();
    right = Math.max(right, key(box.minX(), foot, OLD_CUT, was));
    right = Math.max(right, key(box.minX(), foot - row, NEW_CUT, is));
    return new Sheet(
        new Box(
            box.minX() - gap,
            foot - row - gap,
            Math.max(Math.max(box.maxX(), reach), right) + gap,
            top + head.capitalHeight() + gap),
        items);
  }

  private double key(double x, double y, Pen pen, String text) {
    double sample = 16 * scale;
    SetLine line = Face.REGULAR.set(text, POINTS * scale);
    double middle = y + line.capitalHeight() / 2;
    stroke(Path.straight(new Point(x, middle), new Point(x + sample, middle)), pen);
    words(line, new Point(x + sample + 3 * scale, y), Inks.BLACK);
    return x + sample + 3 * scale + line.width();
  }
}
