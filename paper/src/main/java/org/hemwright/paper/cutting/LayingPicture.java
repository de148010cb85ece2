package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.label.TextBlock;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.PieceCard;

/**
 * One laying with what it is of above it: view, size, width, fold, and what to buy.
 *
 * @param items from y = 0, its top, downward
 * @param width of the widest part (mm)
 * @param height how far down it reaches (mm)
 * @param pieces the pieces in it, by what is printed on them
 */
record LayingPicture(List<Item> items, double width, double height, Map<String, PieceCard> pieces) {
  private static final double TITLE = 11;
  private static final double TEXT = 9;
  private static final double LINE = 4.4;
  private static final double AFTER_WORDS = 1;

  LayingPicture {
    items = List.copyOf(items);
    pieces = new LinkedHashMap<>(pieces);
  }

  /**
   * The picture of a row that fits.
   *
   * @param words its language
   * @param widest how wide it may be (mm)
   * @param highest how high it may be (mm), its words included
   * @param named whether it names the fabric and its nap, which a page of one fabric does above
   */
  static LayingPicture of(
      LayingWords words, YardageRow row, double widest, double highest, boolean named) {
    ClothLaying laying = row.need().orElseThrow().laying();
    List<Item> items = new ArrayList<>();
    SetLine title = Face.SEMIBOLD.set(words.title(row), TITLE);
    items.add(words(title, 0, -title.capitalHeight()));
    double y = -title.capitalHeight();
    double wide = title.width();
    List<String> paragraphs = new ArrayList<>(List.of(words.facts(row, named)));
    words.stripes(row).ifPresent(paragraphs::add);
    for (String text : paragraphs) {
      for (SetLine line : TextBlock.broken(text, Face.REGULAR, TEXT, widest)) {
        y -= LINE;
        items.add(words(line, 0, y));
        wide = Math.max(wide, line.width());
      }
    }
    SpreadCloth cloth = SpreadCloth.within(row, widest, highest + y - AFTER_WORDS);
    double down = cloth.figureHeight() - y + AFTER_WORDS;
    wide = Math.max(wide, cloth.figureWidth());
    for (Item item : LayingFigure.of(row, cloth, words, widest)) {
      items.add(item.moved(new Vector(0, -down)));
    }
    List<PieceCard> cards =
        laying.pieces().stream().map(laid -> laid.piece().piece().card()).toList();
    return new LayingPicture(items, wide, down, byMark(cards));
  }

  /** Cards by what is printed on the pieces: 1, 4a, 4b, 10. */
  static Map<String, PieceCard> byMark(Collection<PieceCard> cards) {
    Map<String, PieceCard> byMark = new LinkedHashMap<>();
    cards.stream()
        .sorted(Comparator.comparingInt(PieceCard::number).thenComparingInt(PieceCard::part))
        .forEach(card -> byMark.putIfAbsent(card.mark(), card));
    return byMark;
  }

  /** "Cotton jersey"; where it may be bought with a nap, whether this is laid for one. */
  static String fabric(YardageRow row) {
    String nap =
        row.fabric().naps().size() == 1
            ? ""
            : row.nap() == Fabric.Nap.ONE_WAY ? ", with nap" : ", without nap";
    return row.fabric().title() + nap;
  }

  static Words words(SetLine line, double x, double y) {
    return new Words(line, new Point(x, y), 0, Inks.BLACK, Layer.COMMON, Subject.NONE);
  }
}
