package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/**
 * The number of a piece too small for it, beside the piece, and a straight line to a dot on it.
 *
 * @param box what the number takes, with a little white round it
 * @param leader from the dot to the box
 */
record Callout(Box box, StraightLine leader) {
  private static final double NEAREST = 2;
  private static final double FARTHEST = 26;
  private static final double STEP = 1;
  private static final int WAYS = 36;
  private static final double[] SHARES = {0.5, 0.25, 0.75, 0.1, 0.9};

  /** What it costs, in millimetres of leader, to run over another piece, or over something set. */
  private static final double OVER_PIECE = 30;

  private static final double OVER_MARKS = 80;

  /** So little of a leader at least is seen outside of its piece (mm). */
  private static final double SEEN = 1;

  /**
   * The best place for a number: near, its line over no other piece; absent where there is none.
   *
   * @param wide what it takes, in width (mm)
   * @param high and in height
   * @param piece which of the room's pieces
   */
  static Optional<Callout> of(double wide, double high, int piece, FigureRoom room) {
    PieceShape shape = room.pieces().get(piece);
    Optional<Callout> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Point dot : dots(shape)) {
      for (Point middle : middles(dot, high, room.frame())) {
        Box box = PieceMarks.about(middle, wide, high);
        StraightLine leader = leader(dot, box);
        double length = leader.length();
        // A place costs its leader's length at least: most need no closer look.
        if (length > SEEN && length < least && room.isClear(box) && !isHidden(leader, shape)) {
          double cost = cost(leader, piece, room);
          if (cost < least) {
            least = cost;
            best = Optional.of(new Callout(box, leader));
          }
        }
      }
    }
    return best;
  }

  /** Whether too little of it shows outside of the piece. */
  private static boolean isHidden(StraightLine leader, PieceShape shape) {
    Vector back = leader.from().minus(leader.to()).unit().times(SEEN);
    return shape.contains(leader.to()) || shape.contains(leader.to().plus(back));
  }

  private static double cost(StraightLine leader, int piece, FigureRoom room) {
    double cost = leader.length();
    for (int other = 0; other < room.pieces().size(); other++) {
      if (other != piece && room.pieces().get(other).isCrossedBy(leader)) {
        cost += OVER_PIECE;
      }
    }
    return cost + OVER_MARKS * room.marksUnder(leader);
  }

  /** Points well inside the piece, its middle first. */
  private static List<Point> dots(PieceShape shape) {
    List<Point> dots = new ArrayList<>();
    Box bounds = shape.bounds();
    for (double along : SHARES) {
      double x = bounds.minX() + along * bounds.width();
      double y = bounds.minY() + along * bounds.height();
      if (bounds.width() > bounds.height()) {
        inside(shape, new Point(x, bounds.minY()), new Point(x, bounds.maxY()))
            .ifPresent(dots::add);
      } else {
        inside(shape, new Point(bounds.minX(), y), new Point(bounds.maxX(), y))
            .ifPresent(dots::add);
      }
    }
    return dots;
  }

  /** The middle of the longest part of a line that lies in the piece. */
  private static Optional<Point> inside(PieceShape shape, Point from, Point to) {
    int parts = 60;
    int most = 0;
    int last = 0;
    int run = 0;
    for (int i = 0; i <= parts; i++) {
      run = shape.contains(from.toward(to, (double) i / parts)) ? run + 1 : 0;
      if (run > most) {
        most = run;
        last = i;
      }
    }
    return most == 0
        ? Optional.empty()
        : Optional.of(from.toward(to, (last - (most - 1) / 2.0) / parts));
  }

  /** Where the middle of a number may stand: round a dot, and along the figure's two rims. */
  private static List<Point> middles(Point dot, double high, Box frame) {
    List<Vector> ways = new ArrayList<>();
    for (int way = 0; way < WAYS; way++) {
      ways.add(Vector.atAngle(2 * Math.PI * way / WAYS));
    }
    List<Point> middles = new ArrayList<>();
    for (double far = NEAREST; far <= FARTHEST; far += STEP) {
      for (int way = 0; way < WAYS; way++) {
        middles.add(dot.plus(ways.get(way).times(far)));
      }
    }
    for (double aside = -FARTHEST; aside <= FARTHEST; aside += STEP) {
      middles.add(new Point(dot.x() + aside, frame.maxY() - high / 2));
      middles.add(new Point(dot.x() + aside, frame.minY() + high / 2));
    }
    return middles;
  }

  /** From a dot to the box, toward its middle. */
  private static StraightLine leader(Point dot, Box box) {
    Vector way = box.centre().minus(dot);
    double along = Math.abs(way.dx()) == 0 ? 1 : box.width() / 2 / Math.abs(way.dx());
    double up = Math.abs(way.dy()) == 0 ? 1 : box.height() / 2 / Math.abs(way.dy());
    double share = Math.min(1, Math.min(along, up));
    return new StraightLine(dot, box.centre().minus(way.times(share)));
  }
}
