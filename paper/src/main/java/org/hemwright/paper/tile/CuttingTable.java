package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.words.AllowanceWords;
import org.hemwright.paper.words.PieceWords;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.LengthKind;

/** Pages that give plain rectangles by their measures, for the maker to rule on the cloth. */
final class CuttingTable {
  private static final double TEXT = 10;
  private static final double ROW = 5.6;
  private static final double FOOT = 250;
  private static final double[] COLUMNS = {0, 24, 74, 122};

  private final SizeRun run;
  private final Speech speech;
  private final List<Leaf> pages = new ArrayList<>();
  private Leaf leaf = new Leaf();
  private double down;

  private CuttingTable(SizeRun run) {
    this.run = run;
    speech = Speech.of(run);
    head();
  }

  /** The pages for some rectangles; none for none. */
  static List<Leaf> pages(SizeRun run, List<PlainRectangle> rectangles) {
    if (rectangles.isEmpty()) {
      return List.of();
    }
    CuttingTable table = new CuttingTable(run);
    rectangles.forEach(table::rectangle);
    table.pages.add(table.leaf);
    return List.copyOf(table.pages);
  }

  private void head() {
    leaf.words(0, 14, "Pieces to cut by measure", Face.LIGHT, 26);
    leaf.wordsBefore(
        KeyPanel.WIDTH,
        14,
        speech.details().title() + ", version " + speech.details().version(),
        Face.REGULAR,
        11);
    leaf.rule(0, 19, KeyPanel.WIDTH, Pens.SIGN);
    down = 32;
  }

  private void rectangle(PlainRectangle rectangle) {
    if (down + 40 > FOOT) {
      next();
    }
    Map<String, Piece> pieces = new LinkedHashMap<>();
    rectangle.nest().shapes().forEach(shape -> pieces.put(shape.size().name(), shape.piece()));
    String number = Integer.toString(rectangle.nest().card().number());
    double x = leaf.words(0, down, number, Face.LIGHT, 30) + 4;
    leaf.words(x, down, rectangle.nest().card().title(), Face.SEMIBOLD, 15);
    down += 7;
    List<String> facts = new ArrayList<>();
    facts.add("Piece " + number + " of " + PieceWords.count(run));
    for (Cut cut : rectangle.nest().card().cuts()) {
      facts.add(PieceWords.cut(run, cut, rectangle.nest().whole()));
    }
    facts.addAll(AllowanceWords.of(speech, pieces));
    boolean along =
        rectangle.measures().values().stream().allMatch(PlainRectangle.Measures::grainAlongLength);
    facts.add(along ? "Grain along the length" : "Grain along the width");
    down =
        leaf.text(0, down, String.join(". ", facts) + ".", Face.REGULAR, TEXT, KeyPanel.WIDTH) + 8;
    columns();
    for (Map.Entry<Size, PlainRectangle.Measures> row : rectangle.measures().entrySet()) {
      if (down > FOOT) {
        next();
        columns();
      }
      row(row.getKey(), row.getValue());
    }
    down += 12;
  }

  private void columns() {
    String[] heads = {"Size", "Length", "Width", "Notches on a long edge, from the left end"};
    for (int i = 0; i < heads.length; i++) {
      leaf.words(COLUMNS[i], down, heads[i], Face.SEMIBOLD, 9);
    }
    leaf.rule(0, down + 2, KeyPanel.WIDTH, Pens.RULE);
    down += ROW + 1.5;
  }

  private void row(Size size, PlainRectangle.Measures measures) {
    leaf.words(COLUMNS[0], down, size.name(), Face.REGULAR, TEXT);
    leaf.words(
        COLUMNS[1],
        down,
        speech.length(measures.length(), LengthKind.FINISHED),
        Face.REGULAR,
        TEXT);
    leaf.words(
        COLUMNS[2], down, speech.length(measures.width(), LengthKind.FINISHED), Face.REGULAR, TEXT);
    String notches =
        measures.notches().stream()
            .map(place -> speech.firstUnit(place))
            .collect(Collectors.joining(", "));
    down =
        leaf.text(COLUMNS[3], down, notches, Face.REGULAR, TEXT, KeyPanel.WIDTH - COLUMNS[3]) + ROW;
  }

  private void next() {
    pages.add(leaf);
    leaf = new Leaf();
    head();
  }
}
