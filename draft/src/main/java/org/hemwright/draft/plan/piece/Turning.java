package org.hemwright.draft.plan.piece;

import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * Decides which of the drawn edges of an outline are walked against their direction, so that each
 * starts where the one before it ends. Between two edges that a straight stretch joins, the nearer
 * ends are taken; of equals, the direction in which they are drawn.
 */
final class Turning {
  /** Outweighs any straight stretch, so that edges that should touch decide first. */
  private static final double GAP_WEIGHT = Tolerance.FARTHEST;

  private final List<Path> drawn;
  private final boolean[] bridged;

  /**
   * Edges to be turned.
   *
   * @param drawn the drawn edges, in order round the piece
   * @param bridged for each whether a straight stretch leads to the next
   */
  Turning(List<Path> drawn, boolean[] bridged) {
    this.drawn = drawn;
    this.bridged = bridged;
  }

  /** For each drawn edge whether it is walked against its direction. */
  boolean[] turned() {
    boolean[] best = new boolean[drawn.size()];
    double least = Double.POSITIVE_INFINITY;
    for (int first = 0; first < 2; first++) {
      boolean[] turned = new boolean[drawn.size()];
      double cost = from(first, turned);
      if (cost < least) {
        least = cost;
        best = turned;
      }
    }
    return best;
  }

  /** The best way that starts with the first edge turned or not (the rule of Viterbi). */
  private double from(int first, boolean[] turned) {
    int count = drawn.size();
    double[] cost = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    cost[first] = 0;
    int[][] came = new int[count][2];
    for (int i = 1; i < count; i++) {
      double[] next = new double[2];
      for (int state = 0; state < 2; state++) {
        double plain = cost[0] + join(i - 1, 0, i, state);
        double other = cost[1] + join(i - 1, 1, i, state);
        came[i][state] = other < plain ? 1 : 0;
        next[state] = Math.min(plain, other);
      }
      cost = next;
    }
    double plain = cost[0] + join(count - 1, 0, 0, first);
    double other = cost[1] + join(count - 1, 1, 0, first);
    int state = other < plain ? 1 : 0;
    for (int i = count - 1; i >= 0; i--) {
      turned[i] = state == 1;
      state = came[i][state];
    }
    return Math.min(plain, other);
  }

  private double join(int before, int beforeTurned, int after, int afterTurned) {
    Point end = end(drawn.get(before), beforeTurned == 0);
    Point start = end(drawn.get(after), afterTurned == 1);
    double gap = end.distanceTo(start);
    if (bridged[before]) {
      return gap;
    }
    return gap <= Tolerance.SAME_POINT ? 0 : gap * GAP_WEIGHT;
  }

  private static Point end(Path path, boolean last) {
    return last ? path.end() : path.start();
  }
}
