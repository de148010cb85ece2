package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.nest.Signs;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.fabric.Fabric;

/** One laying, drawn small: cloth, folds, selvedges, pieces with their numbers and grain. */
final class LayingFigure {
  private static final double NUMBER = 11;
  private static final double LEAST_NUMBER = 9;
  private static final double TEXT = 9;
  private static final double MARGIN = 0.7;
  private static final double ARROW = 16;
  private static final double SHORTEST_ARROW = 6;
  private static final double ARROW_HIGH = 1.8;
  private static final double BESIDE = 4.6;
  private static final double NEAR_FOLD = 0.01;
  private static final double TIGHT = 0.3;
  private static final double[] ALONG = {0.5, 0.25, 0.75, 0.1, 0.9, 0.38, 0.62};

  private final ClothLaying laying;
  private final double length;
  private final LayingWords words;
  private final boolean oneWay;
  private final boolean rightOut;
  private final double scale;
  private final List<Item> items = new ArrayList<>();
  private final List<Inked> outside = new ArrayList<>();

  private LayingFigure(YardageRow row, LayingWords words, double scale) {
    laying = row.need().orElseThrow().laying();
    length = row.need().orElseThrow().length();
    oneWay = row.nap() == Fabric.Nap.ONE_WAY;
    rightOut = isRightOut(row.fabric());
    this.words = words;
    this.scale = scale;
  }

  /**
   * How many millimetres on paper a millimetre of cloth takes, so that the figure is no wider and
   * no higher than this.
   */
  static double scale(ClothLaying laying, double length, double widest, double highest) {
    double room = widest - BESIDE;
    double high = highest - 2 * BESIDE;
    return Math.min(room / tableEnd(laying, length), high / (top(laying) - foot(laying)));
  }

  /** The far end of what lies on the table (mm of cloth). */
  private static double tableEnd(ClothLaying laying, double length) {
    return laying.sheet().fold() == Fold.CROSSWISE
        ? length - laying.openFrom()
        : Math.max(length, laying.tableLength());
  }

  private static double foot(ClothLaying laying) {
    return isOpened(laying) ? -laying.sheet().depth() : 0;
  }

  private static double top(ClothLaying laying) {
    ClothSheet sheet = laying.sheet();
    return isOpened(laying)
        ? Math.max(sheet.tableWidth(), sheet.width() - sheet.depth())
        : sheet.tableWidth();
  }

  /** Whether something is cut from cloth opened out after what is cut from it folded. */
  private static boolean isOpened(ClothLaying laying) {
    return laying.sheet().fold() != Fold.SINGLE
        && laying.pieces().stream().anyMatch(LaidPiece::open);
  }

  /** Whether folded cloth lies right side out: stripes must be seen (handbook section 5, Folds). */
  private static boolean isRightOut(Fabric fabric) {
    return fabric.repeat().isPresent();
  }

  /**
   * The figure's ink; its lower left corner, words included, is near the origin.
   *
   * @param row that fits
   */
  static List<Item> of(YardageRow row, LayingWords words, double scale) {
    LayingFigure figure = new LayingFigure(row, words, scale);
    figure.cloth();
    figure.pieces();
    figure.edges();
    figure.items.addAll(figure.outside);
    Vector up = new Vector(BESIDE, BESIDE - foot(figure.laying) * scale);
    return figure.items.stream().map(item -> item.moved(up)).toList();
  }

  /** How high the figure is on paper (mm), words included. */
  static double height(ClothLaying laying, double scale) {
    return (top(laying) - foot(laying)) * scale + 2 * BESIDE;
  }

  /** How wide it is on paper (mm), words included. */
  static double width(ClothLaying laying, double length, double scale) {
    return tableEnd(laying, length) * scale + BESIDE;
  }

  private double end() {
    return tableEnd(laying, length) * scale;
  }

  private double opens() {
    return isOpened(laying) ? laying.openFrom() * scale : end();
  }

  private void cloth() {
    ClothSheet sheet = laying.sheet();
    double wide = sheet.tableWidth() * scale;
    switch (sheet.fold()) {
      case SINGLE -> items.addAll(ClothInk.cloth(0, 0, end(), wide, true));
      case PARTIAL -> {
        double depth = sheet.depth() * scale;
        items.addAll(ClothInk.cloth(0, depth, end(), wide, true));
        items.addAll(ClothInk.cloth(0, 0, end(), depth, rightOut));
      }
      case LENGTHWISE, DOUBLE, CROSSWISE ->
          items.addAll(ClothInk.cloth(0, 0, opens(), wide, rightOut));
    }
    if (isOpened(laying)) {
      double low = -sheet.depth() * scale;
      items.addAll(ClothInk.cloth(opens(), low, end(), low + sheet.width() * scale, true));
    }
  }

  private void edges() {
    ClothSheet sheet = laying.sheet();
    double wide = sheet.tableWidth() * scale;
    double depth = sheet.depth() * scale;
    double end = sheet.fold() == Fold.SINGLE || sheet.fold() == Fold.PARTIAL ? end() : opens();
    String selvedge = words.sign(LayingWords.Sign.SELVEDGE_HERE);
    switch (sheet.fold()) {
      case SINGLE -> {
        items.addAll(ClothInk.selvedge(0, end, 0, 1));
        items.addAll(ClothInk.selvedge(0, end, wide, -1));
        below(selvedge, 0, end, 0);
        above(selvedge, 0, end, wide);
      }
      case LENGTHWISE -> {
        items.add(ClothInk.line(0, 0, end, 0, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end, wide, -1));
        below(words.sign(LayingWords.Sign.FOLD_HERE), 0, end, 0);
        above(words.sign(LayingWords.Sign.SELVEDGES_HERE), 0, end, wide);
      }
      case PARTIAL -> {
        items.add(ClothInk.line(0, 0, end, 0, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end, depth, -1));
        items.addAll(ClothInk.selvedge(0, end, wide, -1));
        below(words.sign(LayingWords.Sign.FOLD_HERE), 0, end, 0);
        above(selvedge, 0, end, wide);
      }
      case DOUBLE -> {
        items.add(ClothInk.line(0, 0, end, 0, ClothInk.FOLD));
        items.add(ClothInk.line(0, wide, end, wide, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end, depth, -1));
        items.addAll(ClothInk.selvedge(0, end, depth, 1));
        below(words.sign(LayingWords.Sign.FOLD_HERE), 0, end, 0);
        above(words.sign(LayingWords.Sign.FOLD_HERE), 0, end, wide);
      }
      case CROSSWISE -> {
        items.add(ClothInk.line(0, 0, 0, wide, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end(), 0, 1));
        items.addAll(ClothInk.selvedge(0, end(), wide, -1));
        aside(words.sign(LayingWords.Sign.FOLD_HERE), 0, wide);
        below(words.sign(LayingWords.Sign.SELVEDGES_HERE), 0, end, 0);
        above(words.sign(LayingWords.Sign.SELVEDGES_HERE), 0, end, wide);
      }
    }
    if (sheet.fold() != Fold.CROSSWISE) {
      items.add(ClothInk.line(0, 0, 0, wide, ClothInk.END));
    }
    ends(end, wide);
  }

  /** The end of the folded cloth, the line where it is opened, and what lies beyond. */
  private void ends(double end, double wide) {
    if (!isOpened(laying)) {
      items.add(ClothInk.line(end(), 0, end(), wide, ClothInk.END));
      return;
    }
    ClothSheet sheet = laying.sheet();
    double low = -sheet.depth() * scale;
    double high = low + sheet.width() * scale;
    items.add(ClothInk.line(end, low, end, high, ClothInk.OPENED));
    items.add(ClothInk.line(end(), low, end(), high, ClothInk.END));
    items.addAll(ClothInk.selvedge(end, end(), low, 1));
    items.addAll(ClothInk.selvedge(end, end(), high, -1));
    below(words.sign(LayingWords.Sign.OPENED_HERE), end, end(), low);
  }

  private void pieces() {
    List<Outline> outlines = new ArrayList<>();
    for (LaidPiece laid : laying.pieces()) {
      Outline outline = onPaper(laid);
      outlines.add(outline);
      items.addAll(ClothInk.area(outline, laid.faceDown(), subject(laid)));
    }
    bars();
    for (int i = 0; i < outlines.size(); i++) {
      LaidPiece laid = laying.pieces().get(i);
      cutEdge(laid, outlines.get(i));
      items.addAll(BarInk.notches(laid, down(laid), scale));
    }
    List<Integer> small = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      if (!label(laying.pieces().get(i), outlines.get(i))) {
        small.add(i);
      }
    }
    small.forEach(i -> beside(laying.pieces().get(i), outlines.get(i)));
  }

  private void bars() {
    ClothSheet sheet = laying.sheet();
    double wide = sheet.tableWidth() * scale;
    double end = sheet.fold() == Fold.SINGLE || sheet.fold() == Fold.PARTIAL ? end() : opens();
    double middle = sheet.fold() == Fold.SINGLE ? wide / 2 : 0;
    items.addAll(BarInk.bars(laying, 0, end, 0, wide, middle, scale));
    if (isOpened(laying)) {
      double low = -sheet.depth() * scale;
      double high = low + sheet.width() * scale;
      items.addAll(BarInk.bars(laying, end, end(), low, high, (low + high) / 2, scale));
    }
  }

  /** The line that is cut: all round, but not along a fold. */
  private void cutEdge(LaidPiece laid, Outline outline) {
    List<Curve> round = outline.path().curves();
    double fold = laid.origin().y() * scale;
    boolean halved = laid.item().layers() == ClothItem.Layers.ON_FOLD;
    List<Curve> part = new ArrayList<>();
    for (Curve curve : round) {
      boolean onFold =
          halved
              && Math.abs(curve.start().y() - fold) < NEAR_FOLD
              && Math.abs(curve.end().y() - fold) < NEAR_FOLD;
      if (!onFold) {
        part.add(curve);
      } else if (!part.isEmpty()) {
        stroke(laid, part);
        part.clear();
      }
    }
    if (!part.isEmpty()) {
      stroke(laid, part);
    }
  }

  private void stroke(LaidPiece laid, List<Curve> part) {
    items.add(new Stroke(Path.of(part), ClothInk.PIECE, Layer.COMMON, subject(laid)));
  }

  private static Subject subject(LaidPiece laid) {
    return Subject.piece(laid.piece().name());
  }

  /** By how much it is drawn lower than it lies on the table (mm of cloth). */
  private double down(LaidPiece laid) {
    return laid.open() && laying.sheet().fold() != Fold.SINGLE ? laying.sheet().depth() : 0;
  }

  private Outline onPaper(LaidPiece laid) {
    double down = down(laid);
    List<Point> round = new ArrayList<>();
    for (Spot corner : laid.covered().corners()) {
      round.add(new Point(corner.x() * scale, (corner.y() - down) * scale));
    }
    round.add(round.get(0));
    return Outline.of(Path.polyline(round));
  }

  /**
   * The number inside the piece, and beside it the grain arrow where there is room for both;
   * whether there is room for the number.
   */
  private boolean label(LaidPiece laid, Outline outline) {
    SetLine large = Face.SEMIBOLD.set(number(laid), NUMBER);
    SetLine small = Face.SEMIBOLD.set(number(laid), LEAST_NUMBER);
    for (double angle : new double[] {0, Math.PI / 2}) {
      if (label(laid, outline, large, angle, MARGIN)
          || label(laid, outline, small, angle, MARGIN)
          || label(laid, outline, small, angle, TIGHT)) {
        return true;
      }
    }
    return false;
  }

  private static String number(LaidPiece laid) {
    return laid.piece().piece().card().mark();
  }

  private boolean label(
      LaidPiece laid, Outline outline, SetLine line, double angle, double margin) {
    Room room = new Room(List.of(outline.path()));
    room.takeLine(outline.path(), margin);
    Point middle = outline.bounds().centre();
    Optional<TurnedBox> box =
        room.find(angle, line.width() + margin, line.capitalHeight() + margin, middle);
    box.ifPresent(
        found -> {
          if (laid.faceDown()) {
            items.add(underlay(found));
          }
          Point foot = found.at(margin / 2, margin / 2);
          items.add(new Words(line, foot, angle, Inks.BLACK, Layer.COMMON, subject(laid)));
          room.take(found, MARGIN);
          arrow(laid, room, middle);
        });
    return box.isPresent();
  }

  /** White beneath words on a hatch. */
  private static Fill underlay(TurnedBox box) {
    List<Point> corners = new ArrayList<>(box.corners());
    corners.add(corners.get(0));
    return new Fill(Outline.of(Path.polyline(corners)), Inks.PAPER, Layer.COMMON, Subject.NONE);
  }

  private void arrow(LaidPiece laid, Room room, Point near) {
    for (double reach = ARROW; reach >= SHORTEST_ARROW; reach *= 0.8) {
      Optional<TurnedBox> box = room.find(0, reach, ARROW_HIGH, near);
      if (box.isPresent()) {
        Point left = box.get().at(0, ARROW_HIGH / 2);
        Point right = box.get().at(reach, ARROW_HIGH / 2);
        Signs signs = new Signs(Layer.COMMON, subject(laid), Inks.BLACK, 0.6);
        List<Inked> arrow =
            laid.turned() ? signs.grain(right, left, oneWay) : signs.grain(left, right, oneWay);
        if (laid.faceDown()) {
          items.add(underlay(box.get()));
        }
        items.addAll(arrow);
        return;
      }
    }
  }

  /** The number of a piece too small for it, above or below the cloth, with a line to the piece. */
  private void beside(LaidPiece laid, Outline outline) {
    if (!beside(laid, outline, true)) {
      beside(laid, outline, false);
    }
  }

  /**
   * The same where its words are free.
   *
   * @param clear whether the line may cross no words either
   */
  private boolean beside(LaidPiece laid, Outline outline, boolean clear) {
    SetLine line = Face.SEMIBOLD.set(number(laid), LEAST_NUMBER);
    Box box = outline.bounds();
    double wide = top(laying) * scale;
    boolean up = box.centre().y() > wide / 2;
    double y = up ? wide + 1.2 : foot(laying) * scale - 1.2 - line.capitalHeight();
    for (double share : ALONG) {
      double x = box.minX() + box.width() * share;
      Point at = new Point(x - line.width() / 2, y);
      Words words = new Words(line, at, 0, Inks.BLACK, Layer.COMMON, subject(laid));
      Point end = new Point(x, up ? wide + 0.8 : foot(laying) * scale - 0.8);
      Point start = new Point(x, box.centre().y());
      if (isFree(words) && !(clear && crossesWords(start, end))) {
        Signs signs = new Signs(Layer.COMMON, subject(laid), Inks.BLACK, 1);
        outside.addAll(signs.leader(start, end));
        outside.add(words);
        return true;
      }
    }
    return false;
  }

  /** Whether a line up or down crosses the number of another piece. */
  private boolean crossesWords(Point start, Point end) {
    Box way = Box.of(start, end).grown(MARGIN / 2);
    return items.stream().anyMatch(item -> item instanceof Words && item.bounds().overlaps(way));
  }

  private void below(String text, double left, double right, double y) {
    SetLine line = Face.REGULAR.set(text, TEXT);
    edge(line, left, right, y - 1.2 - line.capitalHeight());
  }

  private void above(String text, double left, double right, double y) {
    edge(Face.REGULAR.set(text, TEXT), left, right, y + 1.2);
  }

  /** Words along an edge, in its middle or where else they lie on no others. */
  private void edge(SetLine line, double left, double right, double y) {
    double room = right - left - line.width();
    for (double share : ALONG) {
      Point at = new Point(left + room * share, y);
      Words words = new Words(line, at, 0, Inks.BLACK, Layer.COMMON, Subject.NONE);
      if (room > 0 && isFree(words)) {
        outside.add(words);
        return;
      }
    }
  }

  private boolean isFree(Words words) {
    Box own = words.bounds().grown(MARGIN);
    return outside.stream()
        .noneMatch(other -> other instanceof Words && other.bounds().overlaps(own));
  }

  private void aside(String text, double low, double high) {
    SetLine line = Face.REGULAR.set(text, TEXT);
    put(line, new Point(-1.2, (low + high - line.width()) / 2), Math.PI / 2);
  }

  private void put(SetLine line, Point at, double angle) {
    outside.add(new Words(line, at, angle, Inks.BLACK, Layer.COMMON, Subject.NONE));
  }

  /** Which kinds of things the figure shows, for its key. */
  static List<LayingKey.Entry> shown(YardageRow row) {
    ClothLaying laying = row.need().orElseThrow().laying();
    boolean rightOut = isRightOut(row.fabric());
    Fold fold = laying.sheet().fold();
    List<LayingKey.Entry> entries = new ArrayList<>();
    boolean open = fold == Fold.SINGLE || fold == Fold.PARTIAL || isOpened(laying);
    if (open || rightOut) {
      entries.add(LayingKey.Entry.CLOTH_RIGHT);
    }
    if (fold != Fold.SINGLE && !rightOut) {
      entries.add(LayingKey.Entry.CLOTH_WRONG);
    }
    entries.add(LayingKey.Entry.PIECE_UP);
    if (laying.pieces().stream().anyMatch(LaidPiece::faceDown)) {
      entries.add(LayingKey.Entry.PIECE_DOWN);
    }
    if (fold != Fold.SINGLE) {
      entries.add(LayingKey.Entry.FOLD);
    }
    entries.add(LayingKey.Entry.SELVEDGE);
    boolean oneWay = row.nap() == Fabric.Nap.ONE_WAY;
    entries.add(oneWay ? LayingKey.Entry.GRAIN_ONE_WAY : LayingKey.Entry.GRAIN);
    BarInk.repeat(laying)
        .map(repeat -> repeat.isUneven() ? LayingKey.Entry.BAR_UNEVEN : LayingKey.Entry.BAR)
        .ifPresent(entries::add);
    return entries;
  }
}
