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
    return box.minX() >= frame.minX()
        && box.maxX() <= frame.maxX()
        && box.minY() >= frame.minY()
        && box.maxY() <= frame.maxY()
        && isFree(box.grown(APART));
  }

  /** Asked of thousands of boxes for one figure: loops, which need no warming up. */
  private boolean isFree(Box wide) {
    for (Box mark : marks) {
      if (wide.overlaps(mark)) {
        return false;
      }
    }
    for (PieceShape piece : pieces) {
      if (piece.covers(wide)) {
        return false;
      }
    }
    return !isMet(borders, wide) && !isMet(leaders, wide);
  }

  private static boolean isMet(List<StraightLine> lines, Box box) {
    for (StraightLine line : lines) {
      if (line.meets(box)) {
        return true;
      }
    }
    return false;
  }

  /** Over how many words, arrows and other leaders a line would run. */
  long marksUnder(StraightLine line) {
    return marks.stream().filter(box -> line.meets(box.grown(APART))).count()
        + leaders.stream().filter(line::crosses).count();
  }
}
