package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;

/** One laying, drawn small: cloth, folds, selvedges, pieces with their numbers and grain. */
final class LayingFigure {
  private LayingFigure() {}

  /**
   * The figure's ink; its lower left corner, words included, is near the origin.
   *
   * @param row that fits
   * @param cloth its cloth
   * @param widest how wide the figure may be (mm on paper)
   */
  static List<Item> of(YardageRow row, SpreadCloth cloth, LayingWords words, double widest) {
    PieceInk pieces = new PieceInk(row, cloth);
    FigureRoom room = new FigureRoom(cloth.frame(widest), pieces.shapes(), cloth.borders());
    List<Inked> ink = new ArrayList<>();
    ink.addAll(cloth.ink());
    ink.addAll(pieces.areas());
    ink.addAll(cloth.bars());
    ink.addAll(pieces.lines());
    ink.addAll(EdgeInk.of(cloth, words, room));
    ink.addAll(pieces.numbers(room));
    Vector up = cloth.up();
    return ink.stream().<Item>map(item -> item.moved(up)).toList();
  }
}
