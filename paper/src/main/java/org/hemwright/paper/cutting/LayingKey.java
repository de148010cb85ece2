package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;
import org.hemwright.paper.label.TextBlock;
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

/** What the shades and lines of a cutting layout mean: a sample of each with its words, in rows. */
final class LayingKey {
  private static final double TEXT = 9;
  private static final double SAMPLE = 9;
  private static final double SAMPLE_HIGH = 3.4;
  private static final double AFTER_SAMPLE = 1.6;
  private static final double BETWEEN = 5;
  private static final double LINE = 4.4;
  static final double ROW = 5.6;

  private final LayingWords words;
  private final double width;
  private final List<Inked> items = new ArrayList<>();
  private double x;
  private double y;

  /** How far the row that is being set reaches down for what takes more than a line (mm). */
  private double below;

  private LayingKey(LayingWords words, double width) {
    this.words = words;
    this.width = width;
  }

  /** Something that a layout shows. */
  enum Entry {
    CLOTH_RIGHT,
    CLOTH_WRONG,
    CLOTH_ALIKE,
    PIECE_UP,
    PIECE_DOWN,
    FOLD,
    SELVEDGE,
    GRAIN,
    GRAIN_ONE_WAY,
    ON_FOLD,
    TURNED_OVER,
    BAR,
    BAR_UNEVEN
  }

  /**
   * A key.
   *
   * @param items downward from y = 0, which is its top
   * @param height how far down it reaches (mm)
   */
  record Drawn(List<Inked> items, double height) {
    Drawn {
      items = List.copyOf(items);
    }
  }

  /** What the layout of a row shows. */
  static List<Entry> entries(YardageRow row) {
    ClothLaying laying = row.need().orElseThrow().laying();
    Fold fold = laying.sheet().fold();
    boolean rightOut = LayingWords.isRightShown(row.fabric());
    List<Entry> entries = new ArrayList<>();
    boolean single =
        fold == Fold.SINGLE
            || fold == Fold.PARTIAL
            || laying.pieces().stream().anyMatch(LaidPiece::open);
    if (row.fabric().sidesAlike()) {
      entries.add(Entry.CLOTH_ALIKE);
    } else if (single || rightOut) {
      entries.add(Entry.CLOTH_RIGHT);
    }
    if (fold != Fold.SINGLE && !rightOut) {
      entries.add(Entry.CLOTH_WRONG);
    }
    entries.add(Entry.PIECE_UP);
    if (laying.pieces().stream().anyMatch(LaidPiece::faceDown)) {
      entries.add(Entry.PIECE_DOWN);
    }
    if (fold != Fold.SINGLE) {
      entries.add(Entry.FOLD);
      entries.add(Entry.ON_FOLD);
    }
    entries.add(Entry.SELVEDGE);
    entries.add(row.nap() == Fabric.Nap.ONE_WAY ? Entry.GRAIN_ONE_WAY : Entry.GRAIN);
    if (laying.pieces().stream().anyMatch(laid -> PieceInk.isTurnedOver(laid, row.fabric()))) {
      entries.add(Entry.TURNED_OVER);
    }
    laying
        .repeat()
        .map(repeat -> repeat.isUneven() ? Entry.BAR_UNEVEN : Entry.BAR)
        .ifPresent(entries::add);
    return entries;
  }

  static Drawn of(List<Entry> entries, LayingWords words, double width) {
    LayingKey key = new LayingKey(words, width);
    key.y = -ROW;
    for (Entry entry : entries) {
      key.add(entry);
    }
    return new Drawn(key.items, key.below - key.y);
  }

  private String text(Entry entry) {
    return words.sign(
        switch (entry) {
          case CLOTH_RIGHT -> LayingWords.Sign.RIGHT_SIDE;
          case CLOTH_WRONG -> LayingWords.Sign.WRONG_SIDE;
          case CLOTH_ALIKE -> LayingWords.Sign.SIDES_ALIKE;
          case PIECE_UP -> LayingWords.Sign.PRINTED_UP;
          case PIECE_DOWN -> LayingWords.Sign.PRINTED_DOWN;
          case FOLD -> LayingWords.Sign.FOLD;
          case SELVEDGE -> LayingWords.Sign.SELVEDGE;
          case GRAIN -> LayingWords.Sign.GRAIN;
          case GRAIN_ONE_WAY -> LayingWords.Sign.GRAIN_ONE_WAY;
          case ON_FOLD -> LayingWords.Sign.ON_FOLD;
          case TURNED_OVER -> LayingWords.Sign.TURNED_OVER;
          case BAR -> LayingWords.Sign.BAR;
          case BAR_UNEVEN -> LayingWords.Sign.BAR_UNEVEN;
        });
  }

  private void add(Entry entry) {
    double words = SAMPLE + AFTER_SAMPLE;
    List<SetLine> lines = TextBlock.broken(text(entry), Face.REGULAR, TEXT, width - words);
    double wide = words + lines.stream().mapToDouble(SetLine::width).max().orElse(0);
    if (x > 0 && x + wide > width) {
      x = 0;
      y -= ROW + below;
      below = 0;
    }
    sample(entry);
    for (int i = 0; i < lines.size(); i++) {
      double foot = y + (SAMPLE_HIGH - lines.get(i).capitalHeight()) / 2 - i * LINE;
      items.add(
          new Words(
              lines.get(i), new Point(x + words, foot), 0, Inks.BLACK, Layer.COMMON, Subject.NONE));
    }
    below = Math.max(below, (lines.size() - 1) * LINE);
    x += wide + BETWEEN;
  }

  private void sample(Entry entry) {
    double right = x + SAMPLE;
    double high = y + SAMPLE_HIGH;
    double middle = y + SAMPLE_HIGH / 2;
    switch (entry) {
      case CLOTH_RIGHT, CLOTH_WRONG, CLOTH_ALIKE ->
          items.addAll(ClothInk.cloth(x, y, right, high, entry != Entry.CLOTH_WRONG));
      case PIECE_UP, PIECE_DOWN -> {
        Outline box = ClothInk.box(x, y, right, high);
        items.addAll(ClothInk.area(box, entry == Entry.PIECE_DOWN, Subject.NONE));
        items.add(new Stroke(box.path(), ClothInk.PIECE, Layer.COMMON, Subject.NONE));
      }
      case ON_FOLD -> {
        items.add(ClothInk.line(x, y, right, y, ClothInk.FOLD));
        items.addAll(ClothInk.onFold(x + SAMPLE / 2, y, 0.7 * SAMPLE, SAMPLE_HIGH, Subject.NONE));
      }
      case TURNED_OVER -> items.add(ClothInk.line(x, middle, right, middle, ClothInk.AXIS));
      case FOLD -> items.add(ClothInk.line(x, middle, right, middle, ClothInk.FOLD));
      case SELVEDGE -> items.addAll(ClothInk.selvedge(x, right, middle, -1));
      case BAR, BAR_UNEVEN -> {
        for (double at : new double[] {0.15, 0.5, 0.85}) {
          double bar = x + at * SAMPLE;
          items.add(ClothInk.line(bar, y, bar, high, ClothInk.BAR));
          if (entry == Entry.BAR_UNEVEN) {
            double beside = bar + BarInk.BESIDE * 0.35 * SAMPLE;
            items.add(ClothInk.line(beside, y, beside, high, ClothInk.BESIDE_BAR));
          }
        }
        items.add(BarInk.diamond(x + SAMPLE / 2, middle, Subject.NONE));
      }
      case GRAIN, GRAIN_ONE_WAY ->
          items.addAll(
              new Signs(Layer.COMMON, Subject.NONE, Inks.BLACK, 0.6)
                  .grain(new Point(x, middle), new Point(right, middle), entry != Entry.GRAIN));
    }
  }
}
