package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.HouseType;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.piece.PieceCard;

/** Cutting layouts as sheets: each by itself, or many on pages, with a list of pieces and a key. */
public final class LayingSheets {
  /** Two of them, with what is said above and below, stand on a page of Letter. */
  private static final double FIGURE_HEIGHT = 98;

  /** One of them stands on a page of A4 or Letter in large print, with the list of its pieces. */
  private static final double LARGE_HEIGHT = 122;

  private static final double EDGE = 3;

  private static final double PAGE_WIDTH = 190;
  private static final double PAGE_HEIGHT = 254;
  private static final double PAPER_WIDTH = 210;
  private static final double PAPER_HEIGHT = 279.4;
  private static final double COLUMN = 92;

  /** Layouts of more pieces than this are drawn larger, four to a page rather than six. */
  private static final int CROWDED = 12;

  private static final double SLACK = 1e-6;
  private static final double BETWEEN = 6;
  private static final double HEAD = 14;
  private static final double TEXT = 9;
  private static final double PROOF_ABOVE = 1.5;
  private static final double LINE = 4.4;
  private static final double AFTER_NUMBER = 1;
  private static final double BETWEEN_PIECES = 4;

  private final SizeRun run;
  private final LayingWords words;
  private final Optional<String> proof;
  private final HouseType type;

  private LayingSheets(SizeRun run, LayingWords words, Optional<String> proof, HouseType type) {
    this.run = run;
    this.words = words;
    this.proof = proof;
    this.type = type;
  }

  /** One layout of a row that fits, as a picture of its own. */
  public static Sheet single(SizeRun run, YardageRow row) {
    return single(run, row, LayingWords.english(run));
  }

  /** The same in the words of a language. */
  public static Sheet single(SizeRun run, YardageRow row, LayingWords words) {
    LayingSheets sheets = new LayingSheets(run, words, Optional.empty(), HouseType.OURS);
    List<Item> items = new ArrayList<>();
    LayingPrint print = LayingPrint.USUAL;
    double foot = sheets.single(row, print, items);
    LayingKey.Drawn key = LayingKey.of(LayingKey.entries(row), words, print.width());
    items.addAll(moved(key.items(), 0, foot));
    return framed(print, items, foot - key.height());
  }

  /**
   * Layouts on pages that print on A4 and on Letter alike, two beside each other, the key and the
   * list of pieces at the foot of each page.
   *
   * @param rows that fit, of one fabric, at least one
   * @param proof what marks every page as a proof, if anything does
   * @param type the fonts of the house
   */
  public static List<Sheet> pages(
      SizeRun run, List<YardageRow> rows, Optional<String> proof, HouseType type) {
    return new LayingSheets(run, LayingWords.english(run), proof, type).pages(rows);
  }

  /** One layout without a key, for a page that has one. */
  public static Sheet withoutKey(
      SizeRun run, YardageRow row, LayingWords words, LayingPrint print) {
    LayingSheets sheets = new LayingSheets(run, words, Optional.empty(), HouseType.OURS);
    List<Item> items = new ArrayList<>();
    return framed(print, items, sheets.single(row, print, items));
  }

  /**
   * The key to several layouts.
   *
   * @param rows that fit, at least one
   */
  public static Sheet key(List<YardageRow> rows, LayingWords words, LayingPrint print) {
    TreeSet<LayingKey.Entry> entries = new TreeSet<>();
    for (YardageRow row : rows) {
      entries.addAll(LayingKey.entries(row));
    }
    LayingKey.Drawn key = LayingKey.of(List.copyOf(entries), words, print.width());
    return framed(print, moved(key.items(), 0, 0), -key.height());
  }

  /** Adds a layout and the list of its pieces; answers where that ends. */
  private double single(YardageRow row, LayingPrint print, List<Item> items) {
    double highest = FIGURE_HEIGHT;
    if (print == LayingPrint.LARGE) {
      List<PieceCard> cards = new ArrayList<>();
      row.need()
          .orElseThrow()
          .laying()
          .pieces()
          .forEach(laid -> cards.add(laid.piece().piece().card()));
      highest =
          LARGE_HEIGHT + list(LayingPicture.byMark(cards), print.width(), -1, new ArrayList<>());
    }
    LayingPicture picture = LayingPicture.of(words, row, print.width(), highest, true);
    items.addAll(picture.items());
    return list(picture.pieces(), print.width(), -picture.height() - 1, items);
  }

  private static Sheet framed(LayingPrint print, List<Item> items, double foot) {
    return new Sheet(new Box(-EDGE, foot - EDGE, print.width() + EDGE, EDGE), items);
  }

  private List<Sheet> pages(List<YardageRow> rows) {
    TreeSet<LayingKey.Entry> entries = new TreeSet<>();
    List<PieceCard> cards = new ArrayList<>();
    int most = 0;
    for (YardageRow row : rows) {
      List<LaidPiece> laid = row.need().orElseThrow().laying().pieces();
      entries.addAll(LayingKey.entries(row));
      laid.forEach(each -> cards.add(each.piece().piece().card()));
      most = Math.max(most, laid.size());
    }
    List<Item> foot = new ArrayList<>();
    LayingKey.Drawn key = LayingKey.of(List.copyOf(entries), words, PAGE_WIDTH);
    double listed = list(LayingPicture.byMark(cards), PAGE_WIDTH, 0, foot);
    foot.addAll(moved(key.items(), 0, listed));
    double footHeight = key.height() - listed + BETWEEN;
    int lines = most > CROWDED ? 2 : 3;
    double highest = (PAGE_HEIGHT - HEAD - footHeight + BETWEEN) / lines - BETWEEN - SLACK;
    List<LayingPicture> pictures =
        rows.stream().map(row -> LayingPicture.of(words, row, COLUMN, highest, false)).toList();
    List<Sheet> pages = new ArrayList<>();
    List<Item> page = begun(LayingPicture.fabric(rows.get(0)), pages.size() + 1);
    double top = -HEAD;
    for (int i = 0; i < pictures.size(); i += 2) {
      List<LayingPicture> pair = pictures.subList(i, Math.min(i + 2, pictures.size()));
      double high = pair.stream().mapToDouble(LayingPicture::height).max().orElse(0);
      if (top < -HEAD && top - high < -(PAGE_HEIGHT - footHeight)) {
        pages.add(finished(page, foot, footHeight));
        page = begun(LayingPicture.fabric(rows.get(0)), pages.size() + 1);
        top = -HEAD;
      }
      for (int k = 0; k < pair.size(); k++) {
        double x = k * (PAGE_WIDTH - COLUMN);
        for (Item item : pair.get(k).items()) {
          page.add(item.moved(new Vector(x, top)));
        }
      }
      top -= high + BETWEEN;
    }
    pages.add(finished(page, foot, footHeight));
    return pages;
  }

  private List<Item> begun(String fabric, int number) {
    List<Item> page = new ArrayList<>();
    SetLine title = type.title(run.pattern().details().title(), 18);
    page.add(LayingPicture.words(title, 0, -title.capitalHeight()));
    SetLine what =
        type.line(
            fabric
                + " \u00b7 version "
                + run.pattern().details().version()
                + " \u00b7 layouts, page "
                + number,
            TEXT);
    page.add(LayingPicture.words(what, PAGE_WIDTH - what.width(), -title.capitalHeight()));
    if (proof.isPresent()) {
      SetLine mark = Face.SEMIBOLD.set(proof.get(), TEXT);
      page.add(LayingPicture.words(mark, PAGE_WIDTH - mark.width(), PROOF_ABOVE));
    }
    return page;
  }

  private static Sheet finished(List<Item> page, List<Item> foot, double footHeight) {
    for (Item item : foot) {
      page.add(item.moved(new Vector(0, footHeight - PAGE_HEIGHT)));
    }
    double aside = (PAPER_WIDTH - PAGE_WIDTH) / 2;
    double above = (PAPER_HEIGHT - PAGE_HEIGHT) / 2;
    return new Sheet(new Box(-aside, -PAGE_HEIGHT - above, PAGE_WIDTH + aside, above), page);
  }

  /** Which number is which piece, one beside the other; answers where they end. */
  private double list(Map<String, PieceCard> pieces, double width, double top, List<Item> items) {
    double x = 0;
    double y = top - LINE;
    for (Map.Entry<String, PieceCard> piece : pieces.entrySet()) {
      SetLine number = Face.SEMIBOLD.set(piece.getKey(), TEXT);
      SetLine title = Face.REGULAR.set(words.piece(piece.getValue()), TEXT);
      double wide = number.width() + AFTER_NUMBER + title.width();
      if (x > 0 && x + wide > width) {
        x = 0;
        y -= LINE;
      }
      double line = y + LINE - number.capitalHeight();
      items.add(LayingPicture.words(number, x, line));
      items.add(LayingPicture.words(title, x + number.width() + AFTER_NUMBER, line));
      x += wide + BETWEEN_PIECES;
    }
    return y;
  }

  private static List<Item> moved(List<Inked> items, double x, double y) {
    List<Item> moved = new ArrayList<>();
    items.forEach(item -> moved.add(item.moved(new Vector(x, y))));
    return moved;
  }
}
