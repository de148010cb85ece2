package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * The room that one copy has beside another without meeting it, as straight sides about the place
 * where it lies: as long as it stays on each of them, and moves no farther than a reach, the two do
 * not overlap. A notch has several sides; at a corner one of two is chosen, the one with more room.
 *
 * <p>Found from the boundary of the pair's {@link NoFitRegion}: the nearest stretch of it gives a
 * side, and what is left of the boundary on the free side of that gives the next.
 */
final class FreeSides {

  /** More sides than this are not needed; a layout that lacks one is found out and given up. */
  private static final int MOST = 12;

  /** Nearer than this, in grid steps, touches. */
  private static final double TOUCHES = 16;

  /** What reaches no farther beyond a side, in grid steps, lies on it. */
  private static final double ON_IT = 1;

  /** At a corner with less room than this share of its distance it is rounded off. */
  private static final double OBLIQUE = 0.1;

  private static final int S = NoFitRegion.STRIDE;

  private final LayTask task;
  private final double[][][] touching;
  private final double[] sideX = new double[MOST];
  private final double[] sideY = new double[MOST];
  private final double[] room = new double[MOST];

  /** The stretches of boundary within reach, seen from the copy: both ends, and the direction. */
  private double[] ends = new double[4 * 64];

  private double[] along = new double[2 * 64];
  private int stretches;

  /** The nearest point of the stretch last looked at. */
  private double nearX;

  private double nearY;

  FreeSides(LayTask task) {
    this.task = task;
    touching = new double[task.forms.count()][task.forms.count()][];
  }

  /** The direction of a side away from the fixed copy, of length 1. */
  double x(int side) {
    return sideX[side];
  }

  double y(int side) {
    return sideY[side];
  }

  /** How far the moving copy may go against that direction, in grid steps; not below 0. */
  double room(int side) {
    return room[side];
  }

  /**
   * Finds the sides.
   *
   * @param dx the moving copy's corner seen from the fixed one's, in grid steps
   * @param reach how far it moves at most along and across
   * @return how many there are
   */
  int find(int fixed, int moving, double dx, double dy, double reach) {
    Cut a = task.forms.cuts().get(fixed);
    Cut b = task.forms.cuts().get(moving);
    boolean far =
        dx > (double) a.width() + reach
            || -dx > (double) b.width() + reach
            || dy > (double) a.height() + reach
            || -dy > (double) b.height() + reach;
    if (far) {
      return 0;
    }
    gather(touching(b.form(), a.form()), dx, dy, reach);
    int count = 0;
    while (count < MOST && stretches > 0) {
      addSide(count);
      keepBeyond(count);
      count++;
    }
    return count;
  }

  private double[] touching(int moving, int fixed) {
    double[] boundary = touching[moving][fixed];
    if (boundary == null) {
      boundary = task.table.touching(moving, fixed);
      touching[moving][fixed] = boundary;
    }
    return boundary;
  }

  private void gather(double[] boundary, double dx, double dy, double reach) {
    stretches = 0;
    for (int at = 0; at < boundary.length; at += S) {
      double x = boundary[at] - dx;
      double y = boundary[at + 1] - dy;
      double farX = x + boundary[at + 2] * boundary[at + 4];
      double farY = y + boundary[at + 3] * boundary[at + 4];
      if (Math.max(x, farX) < -reach
          || Math.min(x, farX) > reach
          || Math.max(y, farY) < -reach
          || Math.min(y, farY) > reach) {
        continue;
      }
      if (2 * stretches == along.length) {
        along = Arrays.copyOf(along, 4 * stretches);
        ends = Arrays.copyOf(ends, 8 * stretches);
      }
      along[2 * stretches] = boundary[at + 2];
      along[2 * stretches + 1] = boundary[at + 3];
      ends[4 * stretches] = x;
      ends[4 * stretches + 1] = y;
      ends[4 * stretches + 2] = farX;
      ends[4 * stretches + 3] = farY;
      boolean inReach =
          clip(stretches, 1, 0, -reach)
              && clip(stretches, -1, 0, -reach)
              && clip(stretches, 0, 1, -reach)
              && clip(stretches, 0, -1, -reach);
      stretches += inReach ? 1 : 0;
    }
  }

  /** The nearest stretch's side; of several at one corner the one with most room. */
  private void addSide(int side) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int s = 0; s < stretches; s++) {
      nearest = Math.min(nearest, distance(s));
    }
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int s = 0; s < stretches; s++) {
      if (distance(s) <= nearest + TOUCHES) {
        double apart = ends[4 * s + 1] * along[2 * s] - ends[4 * s] * along[2 * s + 1];
        if (apart > most) {
          most = apart;
          best = s;
        }
      }
    }
    distance(best);
    if (nearest > TOUCHES && most < OBLIQUE * nearest) {
      double away = Math.sqrt(nearX * nearX + nearY * nearY);
      sideX[side] = -nearX / away;
      sideY[side] = -nearY / away;
      room[side] = away;
    } else {
      sideX[side] = along[2 * best + 1];
      sideY[side] = -along[2 * best];
      room[side] = Math.max(0, most);
    }
    drop(best);
  }

  private void drop(int stretch) {
    stretches--;
    System.arraycopy(ends, 4 * stretches, ends, 4 * stretch, 4);
    System.arraycopy(along, 2 * stretches, along, 2 * stretch, 2);
  }

  /** Keeps of the boundary what lies on the free side. */
  private void keepBeyond(int side) {
    for (int s = stretches - 1; s >= 0; s--) {
      if (!clip(s, sideX[side], sideY[side], ON_IT - room[side])) {
        drop(s);
      }
    }
  }

  /** Cuts a stretch down to its points p with n · p of at least c; whether any is left. */
  private boolean clip(int stretch, double nx, double ny, double c) {
    int k = 4 * stretch;
    double p = nx * ends[k] + ny * ends[k + 1] - c;
    double q = nx * ends[k + 2] + ny * ends[k + 3] - c;
    if (p < 0 && q < 0) {
      return false;
    }
    if (p < 0) {
      double share = p / (p - q);
      ends[k] += share * (ends[k + 2] - ends[k]);
      ends[k + 1] += share * (ends[k + 3] - ends[k + 1]);
    } else if (q < 0) {
      double share = q / (q - p);
      ends[k + 2] += share * (ends[k] - ends[k + 2]);
      ends[k + 3] += share * (ends[k + 1] - ends[k + 3]);
    }
    return true;
  }

  private double distance(int stretch) {
    int k = 4 * stretch;
    double vx = ends[k + 2] - ends[k];
    double vy = ends[k + 3] - ends[k + 1];
    double square = vx * vx + vy * vy;
    double share = square == 0 ? 0 : -(ends[k] * vx + ends[k + 1] * vy) / square;
    double within = Math.max(0, Math.min(1, share));
    nearX = ends[k] + within * vx;
    nearY = ends[k + 1] + within * vy;
    return Math.sqrt(nearX * nearX + nearY * nearY);
  }
}
