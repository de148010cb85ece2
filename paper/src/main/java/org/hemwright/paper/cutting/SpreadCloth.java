package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Subject;

/**
 * The cloth of one laying as it is spread on the table, drawn small: how far it reaches, where it
 * is opened out, and where on paper a place of it is. Millimetres on paper; the cut end is at x =
 * 0, the fold or one selvedge at y = 0, and what is opened out may reach below that.
 *
 * @param tableEnd the far end of what lies on the table (mm of cloth)
 * @param rightOut whether it is folded with its right side outward
 * @param scale millimetres on paper for one of cloth
 */
record SpreadCloth(ClothLaying laying, double tableEnd, boolean rightOut, double scale) {
  /** A strip of a band or two is not drawn larger than this. */
  private static final double LARGEST = 0.1;

  /** For words above and below the cloth, and to its left where the fold is there (mm). */
  private static final double BESIDE = 4.6;

  /** So far may numbers reach out to the left of the cloth, into what the page leaves free. */
  private static final double ASIDE = 2;

  /**
   * The cloth of a row that fits, so small that with its words it is no wider and no higher than
   * this.
   */
  static SpreadCloth within(YardageRow row, double widest, double highest) {
    Need need = row.need().orElseThrow();
    double end = tableEnd(need.laying(), need.length());
    boolean rightOut = LayingWords.isRightShown(row.fabric());
    SpreadCloth full = new SpreadCloth(need.laying(), end, rightOut, 1);
    double room = widest - full.left();
    double high = highest - 2 * BESIDE;
    double scale = Math.min(room / end, high / (full.tableTop() - full.tableFoot()));
    return new SpreadCloth(need.laying(), end, rightOut, Math.min(LARGEST, scale));
  }

  private ClothSheet sheet() {
    return laying.sheet();
  }

  Fold fold() {
    return sheet().fold();
  }

  /** Whether something is cut from cloth opened out after what is cut from it folded. */
  boolean isOpened() {
    return fold() != Fold.SINGLE && laying.pieces().stream().anyMatch(LaidPiece::open);
  }

  /** Whether some of it, or all, lies single. */
  boolean isSingle() {
    return fold() == Fold.SINGLE || fold() == Fold.PARTIAL;
  }

  private static double tableEnd(ClothLaying laying, double length) {
    return laying.sheet().fold() == Fold.CROSSWISE
        ? length - laying.openFrom()
        : Math.max(length, laying.tableLength());
  }

  /** The nearest of what lies on the table (mm of cloth). */
  private double tableFoot() {
    return isOpened() ? -sheet().depth() : 0;
  }

  /** The farthest across the table (mm of cloth). */
  private double tableTop() {
    return isOpened()
        ? Math.max(sheet().tableWidth(), sheet().width() - sheet().depth())
        : sheet().tableWidth();
  }

  /** What words take to its left. */
  private double left() {
    return fold() == Fold.CROSSWISE ? BESIDE : 0;
  }

  /** How high the figure is, words included. */
  double figureHeight() {
    return (tableTop() - tableFoot()) * scale + 2 * BESIDE;
  }

  /** How wide it is, words included. */
  double figureWidth() {
    return tableEnd * scale + left();
  }

  /** Moves the figure so that its lower left corner, words included, is at the origin. */
  Vector up() {
    return new Vector(left(), BESIDE - tableFoot() * scale);
  }

  /** Where words and numbers may stand, on a figure that may be so wide. */
  Box frame(double widest) {
    return new Box(
        -left() - ASIDE,
        tableFoot() * scale - BESIDE,
        Math.max(end(), widest - left()),
        tableTop() * scale + BESIDE);
  }

  double end() {
    return tableEnd * scale;
  }

  /** Where folded cloth is opened out; its end where it is not. */
  double opens() {
    return isOpened() ? laying.openFrom() * scale : end();
  }

  /** The end of the cloth as it was first spread. */
  double firstEnd() {
    return isSingle() ? end() : opens();
  }

  double wide() {
    return sheet().tableWidth() * scale;
  }

  /** How deep it is folded. */
  double depth() {
    return sheet().depth() * scale;
  }

  /** The near side of what is opened out. */
  double openedLow() {
    return -sheet().depth() * scale;
  }

  /** The far side of what is opened out. */
  double openedHigh() {
    return openedLow() + sheet().width() * scale;
  }

  /** By how much a piece is drawn lower than it lies on the table (mm of cloth). */
  double down(LaidPiece laid) {
    return laid.open() && fold() != Fold.SINGLE ? sheet().depth() : 0;
  }

  /** A place of a piece, on paper. */
  Point onPaper(LaidPiece laid, Point own) {
    Point there = laid.motion().apply(own);
    return new Point(there.x() * scale, (there.y() - down(laid)) * scale);
  }

  /** What a piece covers, on paper. */
  Outline onPaper(LaidPiece laid) {
    double down = down(laid);
    List<Point> round = new ArrayList<>();
    for (Spot corner : laid.covered().corners()) {
      round.add(new Point(corner.x() * scale, (corner.y() - down) * scale));
    }
    return ClothInk.outline(round);
  }

  /** The cloth itself, its sides told apart. */
  List<Inked> ink() {
    List<Inked> ink = new ArrayList<>();
    switch (fold()) {
      case SINGLE -> ink.addAll(ClothInk.cloth(0, 0, end(), wide(), true));
      case PARTIAL -> {
        ink.addAll(ClothInk.cloth(0, depth(), end(), wide(), true));
        ink.addAll(ClothInk.cloth(0, 0, end(), depth(), rightOut));
      }
      case LENGTHWISE, DOUBLE, CROSSWISE ->
          ink.addAll(ClothInk.cloth(0, 0, opens(), wide(), rightOut));
    }
    if (isOpened()) {
      ink.addAll(ClothInk.cloth(opens(), openedLow(), end(), openedHigh(), true));
    }
    return ink;
  }

  /** Its stripes or checks. */
  List<Inked> bars() {
    double middle = laying.barAcross() * scale;
    List<Inked> bars =
        new ArrayList<>(BarInk.bars(laying, 0, firstEnd(), 0, wide(), middle, scale));
    if (isOpened()) {
      double low = openedLow();
      double high = openedHigh();
      bars.addAll(BarInk.bars(laying, firstEnd(), end(), low, high, (low + high) / 2, scale));
    }
    return bars;
  }

  /** Folds, selvedges and ends, which words keep off. */
  List<StraightLine> borders() {
    List<Double> along = new ArrayList<>(List.of(0.0, wide()));
    if (fold() == Fold.PARTIAL || fold() == Fold.DOUBLE) {
      along.addAll(
          List.of(depth() - ClothInk.SELVEDGE_APART, depth(), depth() + ClothInk.SELVEDGE_APART));
    }
    List<StraightLine> borders = new ArrayList<>();
    along.forEach(y -> borders.add(line(0, y, opens(), y)));
    List.of(0.0, opens()).forEach(x -> borders.add(line(x, 0, x, wide())));
    if (isOpened()) {
      borders.add(line(opens(), openedLow(), end(), openedLow()));
      borders.add(line(opens(), openedHigh(), end(), openedHigh()));
      borders.add(line(opens(), openedLow(), opens(), openedHigh()));
      borders.add(line(end(), openedLow(), end(), openedHigh()));
    }
    return borders;
  }

  private static StraightLine line(double x1, double y1, double x2, double y2) {
    return new StraightLine(new Point(x1, y1), new Point(x2, y2));
  }

  /** What takes its hatch and bars from beneath words that stand on it; nothing beside it. */
  Optional<Fill> cleared(Box box) {
    return colourAt(box.centre()).map(ink -> plain(box, ink));
  }

  /** A box in one colour, so that no hatch runs through words on it. */
  static Fill plain(Box box, Ink ink) {
    return new Fill(
        ClothInk.box(box.minX(), box.minY(), box.maxX(), box.maxY()),
        ink,
        Layer.COMMON,
        Subject.NONE);
  }

  private Optional<Ink> colourAt(Point at) {
    if (new Box(0, 0, firstEnd(), wide()).contains(at)) {
      boolean rightSide =
          rightOut || fold() == Fold.SINGLE || (fold() == Fold.PARTIAL && at.y() > depth());
      return Optional.of(ClothInk.colour(rightSide));
    }
    return isOpened() && new Box(opens(), openedLow(), end(), openedHigh()).contains(at)
        ? Optional.of(ClothInk.colour(true))
        : Optional.empty();
  }
}
