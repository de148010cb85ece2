package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.cutting.LayingWords.Sign;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/** Folds, selvedges and ends of the cloth, with the words beside them. */
final class EdgeInk {
  private static final double TEXT = 9;
  private static final double OFF_EDGE = 1.2;

  /** Places along a line at which its words are tried. */
  private static final int PLACES = 20;

  private final SpreadCloth cloth;
  private final LayingWords words;
  private final FigureRoom room;
  private final List<Inked> items = new ArrayList<>();

  private EdgeInk(SpreadCloth cloth, LayingWords words, FigureRoom room) {
    this.cloth = cloth;
    this.words = words;
    this.room = room;
  }

  /** The ink; its words are kept clear in the room. */
  static List<Inked> of(SpreadCloth cloth, LayingWords words, FigureRoom room) {
    EdgeInk ink = new EdgeInk(cloth, words, room);
    ink.edges();
    ink.ends();
    return ink.items;
  }

  private void edges() {
    double wide = cloth.wide();
    double depth = cloth.depth();
    double end = cloth.firstEnd();
    switch (cloth.fold()) {
      case SINGLE -> {
        items.addAll(ClothInk.selvedge(0, end, 0, 1));
        items.addAll(ClothInk.selvedge(0, end, wide, -1));
        below(Sign.SELVEDGE_HERE, 0, end, 0);
        above(Sign.SELVEDGE_HERE, end, wide);
      }
      case LENGTHWISE -> {
        items.add(ClothInk.line(0, 0, end, 0, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end, wide, -1));
        below(Sign.FOLD_HERE, 0, end, 0);
        above(Sign.SELVEDGES_HERE, end, wide);
      }
      case PARTIAL -> {
        items.add(ClothInk.line(0, 0, end, 0, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end, depth, -1));
        items.addAll(ClothInk.selvedge(0, end, wide, -1));
        below(Sign.FOLD_HERE, 0, end, 0);
        above(Sign.SELVEDGE_HERE, end, wide);
        within(Sign.SELVEDGE_HERE, end, depth);
      }
      case DOUBLE -> {
        items.add(ClothInk.line(0, 0, end, 0, ClothInk.FOLD));
        items.add(ClothInk.line(0, wide, end, wide, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, end, depth, -1));
        items.addAll(ClothInk.selvedge(0, end, depth, 1));
        below(Sign.FOLD_HERE, 0, end, 0);
        above(Sign.FOLD_HERE, end, wide);
        within(Sign.SELVEDGES_HERE, end, depth);
      }
      case CROSSWISE -> {
        items.add(ClothInk.line(0, 0, 0, wide, ClothInk.FOLD));
        items.addAll(ClothInk.selvedge(0, cloth.end(), 0, 1));
        items.addAll(ClothInk.selvedge(0, cloth.end(), wide, -1));
        aside(Sign.FOLD_HERE, wide);
        below(Sign.SELVEDGES_HERE, 0, end, 0);
        above(Sign.SELVEDGES_HERE, end, wide);
      }
    }
    if (cloth.fold() != Fold.CROSSWISE) {
      items.add(ClothInk.line(0, 0, 0, wide, ClothInk.END));
    }
  }

  /** The end of the cloth; where it is opened out, the line where that begins, and its edges. */
  private void ends() {
    double end = cloth.end();
    if (!cloth.isOpened()) {
      items.add(ClothInk.line(end, 0, end, cloth.wide(), ClothInk.END));
      return;
    }
    double opens = cloth.firstEnd();
    double low = cloth.openedLow();
    double high = cloth.openedHigh();
    items.add(ClothInk.line(opens, low, opens, high, ClothInk.OPENED));
    items.add(ClothInk.line(end, low, end, high, ClothInk.END));
    items.addAll(ClothInk.selvedge(opens, end, low, 1));
    items.addAll(ClothInk.selvedge(opens, end, high, -1));
    below(Sign.OPENED_HERE, opens, end, low);
  }

  private SetLine set(Sign sign) {
    return Face.REGULAR.set(words.sign(sign), TEXT);
  }

  private void below(Sign sign, double left, double right, double y) {
    SetLine line = set(sign);
    along(line, left, right, y - OFF_EDGE - line.capitalHeight());
  }

  private void above(Sign sign, double right, double y) {
    along(set(sign), 0, right, y + OFF_EDGE);
  }

  /** Words along an edge of the cloth, in its middle. */
  private void along(SetLine line, double left, double right, double y) {
    double from = left + Math.max(0, (right - left - line.width()) / 2);
    put(line, new Point(from, y), 0);
  }

  /** Words on the cloth beside a line that runs along it, where no piece lies. */
  private void within(Sign sign, double end, double y) {
    SetLine line = set(sign);
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
          cloth.cleared(box).ifPresent(items::add);
          put(line, new Point(x, low + line.descent()), 0);
          return;
        }
      }
    }
  }

  /** Words up the left of the cloth, in the middle of its width. */
  private void aside(Sign sign, double wide) {
    SetLine line = set(sign);
    put(line, new Point(-OFF_EDGE, (wide - line.width()) / 2), Math.PI / 2);
  }

  private void put(SetLine line, Point at, double angle) {
    Words set = new Words(line, at, angle, Inks.BLACK, Layer.COMMON, Subject.NONE);
    items.add(set);
    room.mark(set.bounds());
  }
}
