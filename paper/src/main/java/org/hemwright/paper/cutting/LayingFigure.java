package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import org.hemwright.paper.nest.Signs;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Ink;
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
  private static final double TEXT = 9;

  /** A strip of a band or two is not drawn larger than this. */
  private static final double LARGEST = 0.1;

  /** For words above and below the cloth, and to its left where the fold is there (mm). */
  private static final double BESIDE = 4.6;

  /** So far may numbers reach out to the left of the cloth, into what the page leaves free. */
  private static final double ASIDE = 2;

  private static final double OFF_EDGE = 1.2;
  private static final double NEAR_FOLD = 0.01;
  private static final double LARGE_DOT = 1;
  private static final double SMALL_DOT = 0.6;
  private static final double SLIM = 2;
  private static final int PLACES = 20;

  private final ClothLaying laying;
  private final double length;
  private final LayingWords words;
  private final boolean oneWay;
  private final boolean rightOut;
  private final Fabric fabric;
  private final double scale;
  private final List<Outline> outlines = new ArrayList<>();
  private final FigureRoom room;
  private final List<Item> items = new ArrayList<>();

  private LayingFigure(YardageRow row, LayingWords words, double scale, double widest) {
    laying = row.need().orElseThrow().laying();
    length = row.need().orElseThrow().length();
    oneWay = row.nap() == Fabric.Nap.ONE_WAY;
    fabric = row.fabric();
    rightOut = LayingWords.isRightOut(fabric);
    this.words = words;
    this.scale = scale;
    laying.pieces().forEach(laid -> outlines.add(onPaper(laid)));
    Box frame =
        new Box(
            -left(laying) - ASIDE,
            foot(laying) * scale - BESIDE,
            Math.max(end(), widest - left(laying)),
            top(laying) * scale + BESIDE);
    room = new FigureRoom(frame, outlines.stream().map(PieceShape::of).toList(), borders());
  }

  /**
   * How many millimetres on paper a millimetre of cloth takes, so that the figure is no wider and
   * no higher than this.
   */
  static double scale(ClothLaying laying, double length, double widest, double highest) {
    double room = widest - left(laying);
    double high = highest - 2 * BESIDE;
    return Math.min(
        LARGEST, Math.min(room / tableEnd(laying, length), high / (top(laying) - foot(laying))));
  }

  /** The far end of what lies on the table (mm of cloth). */
  private static double tableEnd(ClothLaying laying, double length) {
    return laying.sheet().fold() == Fold.CROSSWISE
        ? length - laying.openFrom()
        : Math.max(length, laying.tableLength());
  }

  /** What words take to the left of the cloth (mm on paper). */
  private static double left(ClothLaying laying) {
    return laying.sheet().fold() == Fold.CROSSWISE ? BESIDE : 0;
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

  /**
   * The figure's ink; its lower left corner, words included, is near the origin.
   *
   * @param row that fits
   * @param widest how wide it may be (mm on paper)
   */
  static List<Item> of(YardageRow row, LayingWords words, double scale, double widest) {
    LayingFigure figure = new LayingFigure(row, words, scale, widest);
    figure.cloth();
    figure.pieces();
    figure.edges();
    figure.numbers();
    Vector up = new Vector(left(figure.laying), BESIDE - foot(figure.laying) * scale);
    return figure.items.stream().map(item -> item.moved(up)).toList();
  }

  /** How high the figure is on paper (mm), words included. */
  static double height(ClothLaying laying, double scale) {
    return (top(laying) - foot(laying)) * scale + 2 * BESIDE;
  }

  /** How wide it is on paper (mm), words included. */
  static double width(ClothLaying laying, double length, double scale) {
    return tableEnd(laying, length) * scale + left(laying);
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
        within(selvedge, end, depth);
      }
      case DOUBLE -> {
        items.add(ClothInk.line(0, 0, end, 0, ClothInk.FOLD));
        items.add(ClothInk.line(0, wide, end, wide, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end, depth, -1));
        items.addAll(ClothInk.selvedge(0, end, depth, 1));
        below(words.sign(LayingWords.Sign.FOLD_HERE), 0, end, 0);
        above(words.sign(LayingWords.Sign.FOLD_HERE), 0, end, wide);
        within(words.sign(LayingWords.Sign.SELVEDGES_HERE), end, depth);
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

  /** Folds, selvedges and ends of the cloth, which words keep off. */
  private List<StraightLine> borders() {
    ClothSheet sheet = laying.sheet();
    double wide = sheet.tableWidth() * scale;
    List<Double> along = new ArrayList<>(List.of(0.0, wide));
    if (sheet.fold() == Fold.PARTIAL || sheet.fold() == Fold.DOUBLE) {
      double depth = sheet.depth() * scale;
      along.addAll(
          List.of(depth - ClothInk.SELVEDGE_APART, depth, depth + ClothInk.SELVEDGE_APART));
    }
    List<StraightLine> borders = new ArrayList<>();
    along.forEach(y -> borders.add(line(0, y, opens(), y)));
    List<Double> across = new ArrayList<>(List.of(0.0, opens()));
    across.forEach(x -> borders.add(line(x, 0, x, wide)));
    if (isOpened(laying)) {
      double low = -sheet.depth() * scale;
      double high = low + sheet.width() * scale;
      borders.add(line(opens(), low, end(), low));
      borders.add(line(opens(), high, end(), high));
      borders.add(line(opens(), low, opens(), high));
      borders.add(line(end(), low, end(), high));
    }
    return borders;
  }

  private static StraightLine line(double x1, double y1, double x2, double y2) {
    return new StraightLine(new Point(x1, y1), new Point(x2, y2));
  }

  private void pieces() {
    for (int i = 0; i < outlines.size(); i++) {
      LaidPiece laid = laying.pieces().get(i);
      items.addAll(ClothInk.area(outlines.get(i), laid.faceDown(), subject(laid)));
    }
    bars();
    for (int i = 0; i < outlines.size(); i++) {
      LaidPiece laid = laying.pieces().get(i);
      axis(laid)
          .ifPresent(
              axis ->
                  items.add(
                      new Stroke(
                          Path.straight(axis.from(), axis.to()),
                          ClothInk.AXIS,
                          Layer.COMMON,
                          subject(laid))));
      cutEdge(laid, outlines.get(i));
      items.addAll(BarInk.notches(laid, ids(), down(laid), scale));
    }
  }

  private Set<String> ids() {
    Set<String> ids = new HashSet<>();
    laying.pieces().forEach(laid -> ids.add(laid.piece().id()));
    return ids;
  }

  /** Where a half is turned over to be cut as a whole. */
  private Optional<StraightLine> axis(LaidPiece laid) {
    if (!isTurnedOver(laid)) {
      return Optional.empty();
    }
    return laid.piece()
        .foldLine()
        .map(ends -> new StraightLine(onPaper(laid, ends.get(0)), onPaper(laid, ends.get(1))));
  }

  private Point onPaper(LaidPiece laid, Point own) {
    Point there = laid.motion().apply(own);
    return new Point(there.x() * scale, (there.y() - down(laid)) * scale);
  }

  private boolean isTurnedOver(LaidPiece laid) {
    return isTurnedOver(laid, fabric);
  }

  /** Whether a piece that is printed as a half is cut as a whole. */
  private static boolean isTurnedOver(LaidPiece laid, Fabric fabric) {
    boolean half = laid.piece().onFold() && fabric.liesFolded();
    return half && laid.item().layers() != ClothItem.Layers.ON_FOLD;
  }

  private void bars() {
    ClothSheet sheet = laying.sheet();
    double wide = sheet.tableWidth() * scale;
    double end = sheet.fold() == Fold.SINGLE || sheet.fold() == Fold.PARTIAL ? end() : opens();
    double middle = laying.barAcross() * scale;
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
    return ClothInk.outline(round);
  }

  private static String number(LaidPiece laid) {
    return laid.piece().piece().card().mark();
  }

  /** The numbers: inside the pieces where there is room, else beside them. */
  private void numbers() {
    List<Integer> small = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      LaidPiece laid = laying.pieces().get(i);
      List<Box> kept =
          BarInk.notches(laid, ids(), down(laid), scale).stream().map(Inked::bounds).toList();
      Optional<PieceMarks> marks =
          PieceMarks.of(number(laid), room.pieces().get(i), kept, axis(laid).stream().toList());
      marks.ifPresent(found -> mark(laid, found));
      if (marks.isEmpty()) {
        small.add(i);
      }
    }
    small.forEach(this::beside);
  }

  private void mark(LaidPiece laid, PieceMarks marks) {
    if (laid.faceDown() || isTurnedOver(laid)) {
      items.add(underlay(marks.number(), Inks.PAPER));
      marks.arrow().ifPresent(box -> items.add(underlay(box, Inks.PAPER)));
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

  /** One colour beneath words, so that no hatch runs through them. */
  private static Fill underlay(Box box, Ink ink) {
    return new Fill(
        ClothInk.box(box.minX(), box.minY(), box.maxX(), box.maxY()),
        ink,
        Layer.COMMON,
        Subject.NONE);
  }

  /** Takes the hatch and the bars of the cloth from beneath words that stand on it. */
  private void clear(Box box) {
    clothAt(box.centre()).ifPresent(ink -> items.add(underlay(box, ink)));
  }

  /** The colour of the cloth at a place on the figure; absent beside it. */
  private Optional<Ink> clothAt(Point at) {
    ClothSheet sheet = laying.sheet();
    double low = -sheet.depth() * scale;
    double wide = sheet.tableWidth() * scale;
    boolean flat = sheet.fold() == Fold.SINGLE || sheet.fold() == Fold.PARTIAL;
    double opens = flat ? end() : opens();
    if (new Box(0, 0, opens, wide).contains(at)) {
      boolean rightSide =
          rightOut
              || sheet.fold() == Fold.SINGLE
              || (sheet.fold() == Fold.PARTIAL && at.y() > sheet.depth() * scale);
      return Optional.of(ClothInk.colour(rightSide));
    }
    return isOpened(laying)
            && new Box(opens(), low, end(), low + sheet.width() * scale).contains(at)
        ? Optional.of(ClothInk.colour(true))
        : Optional.empty();
  }

  /** The number of a piece too small for it; over the piece where there is no room anywhere. */
  private void beside(int piece) {
    LaidPiece laid = laying.pieces().get(piece);
    SetLine line = Face.SEMIBOLD.set(number(laid), PieceMarks.SMALL);
    double wide = line.width() + 2 * PieceMarks.ROUND;
    double high = line.capitalHeight() + 2 * PieceMarks.ROUND;
    Optional<Callout> found = Callout.of(wide, high, piece, room);
    if (found.isEmpty()) {
      Box box = PieceMarks.about(outlines.get(piece).bounds().centre(), wide, high);
      items.add(underlay(box, Inks.PAPER));
      number(laid, line, box);
      return;
    }
    Callout callout = found.get();
    Box box = callout.box();
    clear(box);
    Box piecesBox = outlines.get(piece).bounds();
    boolean slim = Math.min(piecesBox.width(), piecesBox.height()) < SLIM;
    Signs signs = new Signs(Layer.COMMON, subject(laid), Inks.BLACK, slim ? SMALL_DOT : LARGE_DOT);
    items.addAll(signs.leader(callout.leader().from(), callout.leader().to()));
    number(laid, line, box);
    room.lead(callout.leader());
  }

  private void number(LaidPiece laid, SetLine line, Box box) {
    Point foot = new Point(box.minX() + PieceMarks.ROUND, box.minY() + PieceMarks.ROUND);
    items.add(new Words(line, foot, 0, Inks.BLACK, Layer.COMMON, subject(laid)));
    room.mark(box);
  }

  private void below(String text, double left, double right, double y) {
    SetLine line = Face.REGULAR.set(text, TEXT);
    edge(line, left, right, y - OFF_EDGE - line.capitalHeight());
  }

  private void above(String text, double left, double right, double y) {
    edge(Face.REGULAR.set(text, TEXT), left, right, y + OFF_EDGE);
  }

  /** Words along an edge of the cloth, in its middle. */
  private void edge(SetLine line, double left, double right, double y) {
    double from = left + Math.max(0, (right - left - line.width()) / 2);
    put(line, new Point(from, y), 0);
  }

  /** Words on the cloth beside a line that runs along it, where no piece lies. */
  private void within(String text, double end, double y) {
    SetLine line = Face.REGULAR.set(text, TEXT);
    double off = ClothInk.SELVEDGE_APART + OFF_EDGE;
    double high = line.capitalHeight() + line.descent();
    double wide = line.width();
    for (int place = 0; place <= PLACES; place++) {
      int steps = (place + 1) / 2;
      double aside = (place % 2 == 0 ? steps : -steps) * end / PLACES;
      double x = (end - wide) / 2 + aside;
      for (double low : new double[] {y + off, y - off - high}) {
        Box box = new Box(x, low, x + wide, low + high);
        if (x > 0 && x + wide < end && room.isClear(box)) {
          clear(box);
          put(line, new Point(x, low + line.descent()), 0);
          return;
        }
      }
    }
  }

  private void aside(String text, double low, double high) {
    SetLine line = Face.REGULAR.set(text, TEXT);
    put(line, new Point(-OFF_EDGE, (low + high - line.width()) / 2), Math.PI / 2);
  }

  private void put(SetLine line, Point at, double angle) {
    Words set = new Words(line, at, angle, Inks.BLACK, Layer.COMMON, Subject.NONE);
    items.add(set);
    room.mark(set.bounds());
  }

  /** Which kinds of things the figure shows, for its key. */
  static List<LayingKey.Entry> shown(YardageRow row) {
    ClothLaying laying = row.need().orElseThrow().laying();
    boolean rightOut = LayingWords.isRightOut(row.fabric());
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
    if (laying.pieces().stream().anyMatch(laid -> isTurnedOver(laid, row.fabric()))) {
      entries.add(LayingKey.Entry.TURNED_OVER);
    }
    laying
        .repeat()
        .map(repeat -> repeat.isUneven() ? LayingKey.Entry.BAR_UNEVEN : LayingKey.Entry.BAR)
        .ifPresent(entries::add);
    return entries;
  }
}
