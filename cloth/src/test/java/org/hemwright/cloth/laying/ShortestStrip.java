package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The true least length of a few simple pieces on a strip, to judge the search by; it shares
 * nothing with it but the shapes' corners.
 *
 * <p>A piece is given as convex parts. Two convex parts do not overlap when one of their edges has
 * them on its two sides: the outside of their no-fit polygon is the union of as many half-planes as
 * it has edges. With one half-plane chosen for each pair of parts the least length is a linear
 * program (Alvarez-Valdes, Martinez and Tamarit 2013); this goes through all choices, and leaves
 * out those whose program without the pairs not yet chosen is no shorter than a layout already
 * found (branch and bound). The solution of every program is proven by its dual, whoever solved it.
 */
final class ShortestStrip {

  /** A layout must be shorter by this share of the strip's width to count as shorter. */
  private static final double SAME = 1e-8;

  /** An overlap up to this share of the strip's width is none. */
  private static final double TOUCHING = 1e-8;

  /** Rounding allowed in the proof of a program, in strip widths. */
  private static final double PROOF = 1e-9;

  private final double width;
  private final double[][][][] parts;
  private final boolean[] likeNext;
  private final double leastByArea;
  private double best;

  /** A convex part of a piece. */
  private record Part(int piece, int part) {}

  /**
   * A half-plane: one part stands off from another in a direction.
   *
   * @param apart how far the second piece's place must be from the first's, along (x, y)
   * @param parting whether this keeps the two parts apart; otherwise it only leaves out what
   *     another choice has seen
   */
  private record HalfPlane(
      Part first, Part second, double x, double y, double apart, boolean parting) {

    boolean parts(Part one, Part other) {
      return parting
          && ((first.equals(one) && second.equals(other))
              || (first.equals(other) && second.equals(one)));
    }

    HalfPlane otherSide() {
      return new HalfPlane(first, second, -x, -y, -apart, false);
    }
  }

  /**
   * A piece to be laid.
   *
   * @param parts convex parts that cover it, each counter-clockwise
   */
  record Piece(LooseShape shape, List<List<Spot>> parts) {}

  private ShortestStrip(double width, double[][][][] parts, boolean[] likeNext, double area) {
    this.width = width;
    this.parts = parts;
    this.likeNext = likeNext;
    this.leastByArea = area / width;
  }

  /** The least length on a strip of this width, in the pieces' unit. */
  static double of(double width, List<Piece> pieces) {
    List<Piece> copies = new ArrayList<>();
    double area = 0;
    double row = 0;
    for (Piece piece : pieces) {
      for (int copy = 0; copy < piece.shape().demand(); copy++) {
        copies.add(piece);
        area += piece.shape().area();
        row += longest(piece);
      }
    }
    double best = row;
    int[] turn = new int[copies.size()];
    do {
      double[][][][] parts = new double[copies.size()][][][];
      boolean[] likeNext = new boolean[copies.size()];
      boolean ordered = true;
      for (int i = 0; i < copies.size(); i++) {
        parts[i] = turned(copies.get(i), turn[i]);
        boolean same = i + 1 < copies.size() && copies.get(i).equals(copies.get(i + 1));
        likeNext[i] = same && turn[i] == turn[i + 1];
        ordered &= !same || turn[i] <= turn[i + 1];
      }
      if (ordered) {
        ShortestStrip strip = new ShortestStrip(width, parts, likeNext, area);
        strip.best = best;
        strip.branch(new ArrayList<>());
        best = strip.best;
      }
    } while (next(turn, copies));
    return best;
  }

  private static boolean next(int[] turn, List<Piece> copies) {
    for (int i = 0; i < turn.length; i++) {
      if (++turn[i] < copies.get(i).shape().turns().size()) {
        return true;
      }
      turn[i] = 0;
    }
    return false;
  }

  private static double longest(Piece piece) {
    double longest = 0;
    for (int turn = 0; turn < piece.shape().turns().size(); turn++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (double[][] part : turned(piece, turn)) {
        for (double[] corner : part) {
          low = Math.min(low, corner[0]);
          high = Math.max(high, corner[0]);
        }
      }
      longest = Math.max(longest, high - low);
    }
    return longest;
  }

  /** A piece's parts in one of its turns, written out here anew: a plain rotation. */
  private static double[][][] turned(Piece piece, int turn) {
    Turn how = piece.shape().turns().get(turn);
    double cos = Math.rint(Math.cos(Math.toRadians(how.degrees())) * 1e12) / 1e12;
    double sin = Math.rint(Math.sin(Math.toRadians(how.degrees())) * 1e12) / 1e12;
    double[][][] parts = new double[piece.parts().size()][][];
    for (int p = 0; p < parts.length; p++) {
      List<Spot> part = piece.parts().get(p);
      parts[p] = new double[part.size()][];
      for (int c = 0; c < part.size(); c++) {
        double x = part.get(c).x();
        double y = part.get(c).y();
        parts[p][c] = new double[] {x * cos - y * sin, x * sin + y * cos};
      }
    }
    return parts;
  }

  private void branch(List<HalfPlane> chosen) {
    if (best <= leastByArea + SAME * width) {
      return;
    }
    double[] places = solve(chosen);
    if (places.length == 0 || places[places.length - 1] > best - SAME * width) {
      return;
    }
    List<HalfPlane> ways = waysToPartTheDeepest(places, chosen);
    if (ways.isEmpty()) {
      best = places[places.length - 1];
      return;
    }
    ways.sort(Comparator.comparingDouble(way -> lack(way, places)));
    int before = chosen.size();
    for (HalfPlane way : ways) {
      chosen.add(way);
      branch(chosen);
      chosen.remove(chosen.size() - 1);
      chosen.add(way.otherSide());
    }
    while (chosen.size() > before) {
      chosen.remove(chosen.size() - 1);
    }
  }

  /** How far a place falls short of a half-plane. */
  private static double lack(HalfPlane h, double[] places) {
    return h.apart
        - h.x * (places[2 * h.second.piece] - places[2 * h.first.piece])
        - h.y * (places[2 * h.second.piece + 1] - places[2 * h.first.piece + 1]);
  }

  /** The half-planes of the two parts that overlap most; none when no two overlap. */
  private List<HalfPlane> waysToPartTheDeepest(double[] places, List<HalfPlane> chosen) {
    List<HalfPlane> deepest = new ArrayList<>();
    double depth = TOUCHING * width;
    for (int i = 0; i < parts.length; i++) {
      for (int k = i + 1; k < parts.length; k++) {
        for (int a = 0; a < parts[i].length; a++) {
          for (int b = 0; b < parts[k].length; b++) {
            Part one = new Part(i, a);
            Part other = new Part(k, b);
            List<HalfPlane> ways = new ArrayList<>();
            addEdges(one, other, ways);
            addEdges(other, one, ways);
            double least = ways.stream().mapToDouble(way -> lack(way, places)).min().orElseThrow();
            if (least > depth && chosen.stream().noneMatch(h -> h.parts(one, other))) {
              depth = least;
              deepest = ways;
            }
          }
        }
      }
    }
    return deepest;
  }

  /** Beyond each edge of the one part: the other lies wholly to its right. */
  private void addEdges(Part first, Part second, List<HalfPlane> ways) {
    double[][] a = parts[first.piece][first.part];
    for (int e = 0; e < a.length; e++) {
      double[] p = a[e];
      double[] q = a[(e + 1) % a.length];
      double length = Math.hypot(q[0] - p[0], q[1] - p[1]);
      double nx = (q[1] - p[1]) / length;
      double ny = (p[0] - q[0]) / length;
      double least = Double.POSITIVE_INFINITY;
      for (double[] corner : parts[second.piece][second.part]) {
        least = Math.min(least, nx * corner[0] + ny * corner[1]);
      }
      ways.add(new HalfPlane(first, second, nx, ny, nx * p[0] + ny * p[1] - least, true));
    }
  }

  /**
   * Places of all pieces' origins and, last, the length: the shortest that keeps to the half-planes
   * chosen. Nothing where none does. In the program each piece is counted from where it touches the
   * strip's corner, and in strip widths.
   */
  private double[] solve(List<HalfPlane> chosen) {
    int n = parts.length;
    List<double[]> rows = new ArrayList<>();
    List<Double> bounds = new ArrayList<>();
    double[][] low = new double[n][];
    for (int i = 0; i < n; i++) {
      double[] box = box(parts[i]);
      low[i] = box;
      double[] along = new double[2 * n + 1];
      along[2 * i] = -1;
      along[2 * n] = 1;
      rows.add(along);
      bounds.add((box[2] - box[0]) / width);
      double[] across = new double[2 * n + 1];
      across[2 * i + 1] = -1;
      rows.add(across);
      bounds.add((box[3] - box[1]) / width - 1);
      if (likeNext[i]) {
        double[] order = new double[2 * n + 1];
        order[2 * i] = -1;
        order[2 * i + 2] = 1;
        rows.add(order);
        bounds.add(0.0);
      }
    }
    for (HalfPlane h : chosen) {
      double[] row = new double[2 * n + 1];
      int i = h.first.piece;
      int k = h.second.piece;
      row[2 * k] = h.x;
      row[2 * k + 1] = h.y;
      row[2 * i] = -h.x;
      row[2 * i + 1] = -h.y;
      rows.add(row);
      bounds.add((h.apart + h.x * (low[k][0] - low[i][0]) + h.y * (low[k][1] - low[i][1])) / width);
    }
    double[] length = new double[2 * n + 1];
    length[2 * n] = 1;
    double[] places = proven(length, rows, bounds);
    for (int v = 0; v < places.length; v++) {
      places[v] = places[v] * width - (v < 2 * n ? low[v / 2][v % 2] : 0);
    }
    return places;
  }

  /**
   * The solution of a program, with its proof looked through: the values keep to every row, and the
   * prices show that nothing costs less; or, where there is none, that nothing keeps to the rows.
   */
  private static double[] proven(double[] cost, List<double[]> rows, List<Double> bounds) {
    double[] bound = bounds.stream().mapToDouble(b -> b).toArray();
    LinearProgram.Answer answer = LinearProgram.solve(cost, rows.toArray(new double[0][]), bound);
    double[] priced = new double[cost.length];
    double worth = 0;
    double paid = 0;
    for (int r = 0; r < bound.length; r++) {
      double price = answer.prices[r];
      double kept = 0;
      for (int v = 0; v < cost.length; v++) {
        priced[v] += price * rows.get(r)[v];
        kept += answer.exists() ? rows.get(r)[v] * answer.values[v] : 0;
      }
      worth += price * bound[r];
      assertThat(price).isNotNegative();
      assertThat(!answer.exists() || kept >= bound[r] - PROOF).isTrue();
    }
    for (int v = 0; v < cost.length; v++) {
      assertThat(priced[v]).isLessThanOrEqualTo((answer.exists() ? cost[v] : 0) + PROOF);
      paid += answer.exists() ? cost[v] * answer.values[v] : 0;
    }
    if (answer.exists()) {
      assertThat(worth).isCloseTo(paid, within(PROOF));
    } else {
      assertThat(worth).isPositive();
    }
    return answer.values;
  }

  private static double[] box(double[][][] piece) {
    double[] box = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (double[][] part : piece) {
      for (double[] corner : part) {
        box[0] = Math.min(box[0], corner[0]);
        box[1] = Math.min(box[1], corner[1]);
        box[2] = Math.max(box[2], corner[0]);
        box[3] = Math.max(box[3], corner[1]);
      }
    }
    return box;
  }
}
