package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.nest.Signs;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.fabric.Fabric;

/** The pieces of one laying: what they cover, where they are cut, their numbers and grain. */
final class PieceInk {
  private static final double NEAR_FOLD = 0.01;
  private static final double BRACKET_HIGH = 2.4;
  private static final double BRACKET_LOW = 1.5;
  private static final double LONGEST_BRACKET = 14;
  private static final double LARGE_DOT = 1;
  private static final double SMALL_DOT = 0.6;
  private static final double SLIM = 2;

  private final SpreadCloth cloth;
  private final Fabric fabric;
  private final boolean oneWay;
  private final List<LaidPiece> pieces;
  private final List<Outline> outlines;
  private final Set<String> ids;

  PieceInk(YardageRow row, SpreadCloth cloth) {
    this.cloth = cloth;
    fabric = row.fabric();
    oneWay = row.nap() == Fabric.Nap.ONE_WAY;
    pieces = cloth.laying().pieces();
    outlines = pieces.stream().map(cloth::onPaper).toList();
    ids = pieces.stream().map(laid -> laid.piece().id()).collect(Collectors.toSet());
  }

  /** What each covers, on paper. */
  List<PieceShape> shapes() {
    return outlines.stream().map(PieceShape::of).toList();
  }

  /** What the pieces cover, without their edges. */
  List<Inked> areas() {
    List<Inked> items = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      LaidPiece laid = pieces.get(i);
      items.addAll(ClothInk.area(outlines.get(i), laid.faceDown(), subject(laid)));
    }
    return items;
  }

  /** Where they are turned over and cut, and which of their notches meet bars. */
  List<Inked> lines() {
    List<Inked> items = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      LaidPiece laid = pieces.get(i);
      axis(laid)
          .ifPresent(
              axis ->
                  items.add(
                      new Stroke(
                          Path.straight(axis.from(), axis.to()),
                          ClothInk.AXIS,
                          Layer.COMMON,
                          subject(laid))));
      for (List<Curve> part : cutEdge(laid, outlines.get(i))) {
        items.add(new Stroke(Path.of(part), ClothInk.PIECE, Layer.COMMON, subject(laid)));
      }
      items.addAll(notches(laid));
      items.addAll(bracket(laid, outlines.get(i)));
    }
    return items;
  }

  private List<Inked> notches(LaidPiece laid) {
    return BarInk.notches(laid, ids, cloth.down(laid), cloth.scale());
  }

  /** Where a half is turned over to be cut as a whole. */
  private Optional<StraightLine> axis(LaidPiece laid) {
    if (!isTurnedOver(laid, fabric)) {
      return Optional.empty();
    }
    return laid.piece()
        .foldLine()
        .map(
            ends ->
                new StraightLine(
                    cloth.onPaper(laid, ends.get(0)), cloth.onPaper(laid, ends.get(1))));
  }

  /** Whether a piece that is printed as a half is cut as a whole. */
  static boolean isTurnedOver(LaidPiece laid, Fabric fabric) {
    boolean half = laid.piece().onFold() && fabric.liesFolded();
    return half && laid.item().layers() != ClothItem.Layers.ON_FOLD;
  }

  /** The line that is cut: all round, but not along a fold. */
  private List<List<Curve>> cutEdge(LaidPiece laid, Outline outline) {
    List<List<Curve>> parts = new ArrayList<>();
    List<Curve> part = new ArrayList<>();
    for (Curve curve : outline.path().curves()) {
      if (!isOnFold(laid, curve)) {
        part.add(curve);
      } else if (!part.isEmpty()) {
        parts.add(List.copyOf(part));
        part.clear();
      }
    }
    if (!part.isEmpty()) {
      parts.add(part);
    }
    return parts;
  }

  private boolean isOnFold(LaidPiece laid, Curve curve) {
    double fold = laid.origin().y() * cloth.scale();
    return laid.item().layers() == ClothItem.Layers.ON_FOLD
        && Math.abs(curve.start().y() - fold) < NEAR_FOLD
        && Math.abs(curve.end().y() - fold) < NEAR_FOLD;
  }

  /**
   * The bracket of a piece that lies on a fold, so that none beside the fold is taken for one; none
   * where the piece is too slim for it.
   */
  private List<Inked> bracket(LaidPiece laid, Outline outline) {
    Box bounds = outline.bounds();
    double reach = Math.min(BRACKET_HIGH, bounds.height() / 2);
    if (reach < BRACKET_LOW) {
      return List.of();
    }
    double fold = laid.origin().y() * cloth.scale();
    double high = bounds.centre().y() > fold ? reach : -reach;
    return outline.path().curves().stream()
        .filter(curve -> isOnFold(laid, curve))
        .max(Comparator.comparingDouble(curve -> curve.start().distanceTo(curve.end())))
        .map(
            curve -> {
              double wide = curve.start().distanceTo(curve.end());
              double middle = (curve.start().x() + curve.end().x()) / 2;
              return ClothInk.onFold(
                  middle, fold, Math.min(wide / 2, LONGEST_BRACKET), high, subject(laid));
            })
        .orElse(List.of());
  }

  private static Subject subject(LaidPiece laid) {
    return Subject.piece(laid.piece().name());
  }

  private static String number(LaidPiece laid) {
    return laid.piece().piece().card().mark();
  }

  /** The numbers: inside the pieces where there is room, else beside them. */
  List<Inked> numbers(FigureRoom room) {
    List<Inked> items = new ArrayList<>();
    List<Integer> small = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      LaidPiece laid = pieces.get(i);
      List<Box> kept = new ArrayList<>();
      notches(laid).forEach(notch -> kept.add(notch.bounds()));
      bracket(laid, outlines.get(i)).forEach(line -> kept.add(line.bounds()));
      Optional<PieceMarks> marks =
          PieceMarks.of(number(laid), room.pieces().get(i), kept, axis(laid).stream().toList());
      marks.ifPresent(found -> mark(laid, found, room, items));
      if (marks.isEmpty()) {
        small.add(i);
      }
    }
    small.forEach(piece -> beside(piece, room, items));
    return items;
  }

  private void mark(LaidPiece laid, PieceMarks marks, FigureRoom room, List<Inked> items) {
    if (laid.faceDown() || isTurnedOver(laid, fabric)) {
      items.add(SpreadCloth.plain(marks.number(), Inks.PAPER));
      marks.arrow().ifPresent(box -> items.add(SpreadCloth.plain(box, Inks.PAPER)));
    }
    items.add(
        new Words(
            marks.line(), marks.foot(), marks.angle(), Inks.BLACK, Layer.COMMON, subject(laid)));
    room.mark(marks.number());
    marks
        .arrow()
        .ifPresent(
            box -> {
              Point left = new Point(box.minX(), box.centre().y());
              Point right = new Point(box.maxX(), box.centre().y());
              Signs signs = new Signs(Layer.COMMON, subject(laid), Inks.BLACK, 0.6);
              items.addAll(
                  laid.turned()
                      ? signs.grain(right, left, oneWay)
                      : signs.grain(left, right, oneWay));
              room.mark(box);
            });
  }

  /** The number of a piece too small for it; over the piece where there is no room anywhere. */
  private void beside(int piece, FigureRoom room, List<Inked> items) {
    LaidPiece laid = pieces.get(piece);
    Box bounds = outlines.get(piece).bounds();
    SetLine line = Face.SEMIBOLD.set(number(laid), PieceMarks.SMALL);
    double wide = line.width() + 2 * PieceMarks.ROUND;
    double high = line.capitalHeight() + 2 * PieceMarks.ROUND;
    Optional<Callout> found = Callout.of(wide, high, piece, room);
    if (found.isEmpty()) {
      Box box = PieceMarks.about(bounds.centre(), wide, high);
      items.add(SpreadCloth.plain(box, Inks.PAPER));
      items.add(number(laid, line, box));
      room.mark(box);
      return;
    }
    Callout callout = found.get();
    cloth.cleared(callout.box()).ifPresent(items::add);
    boolean slim = Math.min(bounds.width(), bounds.height()) < SLIM;
    Signs signs = new Signs(Layer.COMMON, subject(laid), Inks.BLACK, slim ? SMALL_DOT : LARGE_DOT);
    items.addAll(signs.leader(callout.leader().from(), callout.leader().to()));
    items.add(number(laid, line, callout.box()));
    room.mark(callout.box());
    room.lead(callout.leader());
  }

  private static Words number(LaidPiece laid, SetLine line, Box box) {
    Point foot = new Point(box.minX() + PieceMarks.ROUND, box.minY() + PieceMarks.ROUND);
    return new Words(line, foot, 0, Inks.BLACK, Layer.COMMON, subject(laid));
  }
}
