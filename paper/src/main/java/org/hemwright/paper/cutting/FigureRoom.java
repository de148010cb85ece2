package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;

/** What stands on a figure already, so that numbers and words beside pieces keep off it. */
final class FigureRoom {
  /** Between a number and whatever is beside it (mm). */
  private static final double APART = 0.5;

  private final Box frame;
  private final List<PieceShape> pieces;
  private final List<StraightLine> borders;
  private final List<Box> marks = new ArrayList<>();
  private final List<StraightLine> leaders = new ArrayList<>();

  /**
   * A figure with nothing written on it.
   *
   * @param frame beyond which nothing may stand
   * @param borders folds, selvedges and ends of the cloth
   */
  FigureRoom(Box frame, List<PieceShape> pieces, List<StraightLine> borders) {
    this.frame = frame;
    this.pieces = List.copyOf(pieces);
    this.borders = List.copyOf(borders);
  }

  Box frame() {
    return frame;
  }

  List<PieceShape> pieces() {
    return pieces;
  }

  /** Keeps words or an arrow clear. */
  void mark(Box box) {
    marks.add(box);
  }

  /** Keeps a leader clear of words. */
  void lead(StraightLine leader) {
    leaders.add(leader);
  }

  /** Whether a box lies on no piece, on no line of the cloth and on nothing set. */
  boolean isClear(Box box) {
    Box wide = box.grown(APART);
    return box.minX() >= frame.minX()
        && box.maxX() <= frame.maxX()
        && box.minY() >= frame.minY()
        && box.maxY() <= frame.maxY()
        && marks.stream().noneMatch(wide::overlaps)
        && borders.stream().noneMatch(line -> line.meets(wide))
        && leaders.stream().noneMatch(line -> line.meets(wide))
        && pieces.stream().noneMatch(piece -> piece.covers(wide));
  }

  /** Over how many words, arrows and other leaders a line would run. */
  long marksUnder(StraightLine line) {
    return marks.stream().filter(box -> line.meets(box.grown(APART))).count()
        + leaders.stream().filter(line::crosses).count();
  }
}
