package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/**
 * Where the number and the grain arrow of a piece stand inside it, clear of its cut line.
 *
 * @param line the number as set
 * @param number what it takes of the piece, with a little white round it
 * @param upright whether it runs up rather than rightward
 * @param arrow what the grain arrow takes; absent where there is no room for one
 */
record PieceMarks(SetLine line, Box number, boolean upright, Optional<Box> arrow) {
  /** From the middle of a cut line to words (mm); half a line's width of it is ink. */
  static final double CLEAR = 0.7;

  static final double LARGE = 11;
  static final double SMALL = 9;

  /** White round a number that stands on a hatch (mm). */
  static final double ROUND = 0.35;

  static final double ARROW_HIGH = 1.8;

  private static final double LONGEST_ARROW = 16;
  private static final double LONG_ENOUGH = 10;
  private static final double SHORTEST_ARROW = 6.5;
  private static final double SHORTER = 0.8;
  private static final double APART = 0.4;
  private static final double FINE = 0.25;
  private static final int MOST_STEPS = 16;

  /**
   * The marks of a piece; absent where there is no room for its number.
   *
   * @param text the number
   * @param shape the piece on paper
   * @param kept boxes in it that bear something else
   * @param lines drawn on it, which marks keep off where they can
   */
  static Optional<PieceMarks> of(
      String text, PieceShape shape, List<Box> kept, List<StraightLine> lines) {
    Optional<PieceMarks> clear = best(text, new Finder(shape, kept, lines));
    return clear.isPresent() || lines.isEmpty()
        ? clear
        : best(text, new Finder(shape, kept, List.of()));
  }

  /** The largest number with the longest arrow; upright only where it has no room otherwise. */
  private static Optional<PieceMarks> best(String text, Finder finder) {
    SetLine large = Face.SEMIBOLD.set(text, LARGE);
    SetLine small = Face.SEMIBOLD.set(text, SMALL);
    Optional<PieceMarks> best = Optional.empty();
    for (SetLine line : List.of(large, small)) {
      for (boolean arrowFirst : new boolean[] {false, true}) {
        Optional<PieceMarks> next =
            arrowFirst ? finder.arrowFirst(line) : finder.numberFirst(line, false);
        if (next.isPresent()
            && best.stream().noneMatch(marks -> marks.reach() >= next.get().reach())) {
          best = next;
        }
        if (best.isPresent() && best.get().reach() >= LONG_ENOUGH) {
          return best;
        }
      }
    }
    return best.isPresent() ? best : finder.numberFirst(small, true);
  }

  /** How long its arrow is (mm). */
  private double reach() {
    return arrow.map(Box::width).orElse(0.0);
  }

  /** Where the words begin, on their baseline. */
  Point foot() {
    return upright
        ? new Point(number.maxX() - ROUND, number.minY() + ROUND)
        : new Point(number.minX() + ROUND, number.minY() + ROUND);
  }

  double angle() {
    return upright ? Math.PI / 2 : 0;
  }

  /** Looks for room in one piece. */
  private record Finder(PieceShape shape, List<Box> kept, List<StraightLine> lines) {
    /** The number in the middle, the arrow where there is room beside it. */
    Optional<PieceMarks> numberFirst(SetLine line, boolean upright) {
      Point middle = shape.bounds().centre();
      return number(line, upright, List.of())
          .map(number -> new PieceMarks(line, number, upright, arrow(middle, List.of(number))));
    }

    /** The arrow in the middle, the number where there is room beside it. */
    Optional<PieceMarks> arrowFirst(SetLine line) {
      return arrow(shape.bounds().centre(), List.of())
          .flatMap(
              arrow ->
                  number(line, false, List.of(arrow))
                      .map(number -> new PieceMarks(line, number, false, Optional.of(arrow))));
    }

    private Optional<Box> number(SetLine line, boolean upright, List<Box> off) {
      double along = line.width() + 2 * ROUND;
      double across = line.capitalHeight() + 2 * ROUND;
      return room(
          upright ? across : along,
          upright ? along : across,
          CLEAR - ROUND,
          shape.bounds().centre(),
          off);
    }

    private Optional<Box> arrow(Point near, List<Box> off) {
      for (double reach = LONGEST_ARROW; reach >= SHORTEST_ARROW; reach *= SHORTER) {
        Optional<Box> box = room(reach, ARROW_HIGH, CLEAR, near, off);
        if (box.isPresent()) {
          return box;
        }
      }
      return Optional.empty();
    }

    /** The free box of a size whose middle is nearest to a point. */
    private Optional<Box> room(double wide, double high, double margin, Point near, List<Box> off) {
      Box bounds = shape.bounds();
      double alongRoom = bounds.width() - wide - 2 * margin;
      double acrossRoom = bounds.height() - high - 2 * margin;
      if (alongRoom < 0 || acrossRoom < 0) {
        return Optional.empty();
      }
      double left = bounds.minX() + margin + wide / 2;
      double low = bounds.minY() + margin + high / 2;
      int columns = steps(alongRoom);
      int rows = steps(acrossRoom);
      List<Point> places = new ArrayList<>();
      for (int i = 0; i <= columns; i++) {
        for (int k = 0; k <= rows; k++) {
          places.add(new Point(left + alongRoom * i / columns, low + acrossRoom * k / rows));
        }
      }
      places.add(near);
      places.sort(Comparator.comparingDouble(near::distanceTo));
      return places.stream()
          .map(place -> about(place, wide, high))
          .filter(box -> isFree(box, margin, off))
          .findFirst();
    }

    private static int steps(double room) {
      return Math.max(1, (int) Math.ceil(Math.min(MOST_STEPS, room / FINE)));
    }

    private boolean isFree(Box box, double margin, List<Box> off) {
      Box wide = box.grown(APART);
      return off.stream().noneMatch(wide::overlaps)
          && kept.stream().noneMatch(wide::overlaps)
          && lines.stream().noneMatch(line -> line.meets(wide))
          && shape.holds(box.grown(margin));
    }
  }

  /** The box of a size about its middle. */
  static Box about(Point middle, double wide, double high) {
    return new Box(
        middle.x() - wide / 2, middle.y() - high / 2, middle.x() + wide / 2, middle.y() + high / 2);
  }
}
