package org.hemwright.cloth.rule;

import java.util.Arrays;

/**
 * Where on a stripe or check things begin, worked out from what must lie alike: for each of them a
 * place from 0 up to the repeat, so that repeats do not count. What is tied moves together; what is
 * tied to nothing begins on a bar. A mirror image counts its place the other way.
 */
final class Phases {
  private final double repeat;
  private final double near;
  private final boolean[] even;
  private final int[] root;
  private final int[] sense;
  private final double[] behind;
  private final boolean[] known;

  /**
   * So many things, nothing known of them.
   *
   * @param near places this near to each other (mm) are one
   * @param even which of them would best begin on a bar, where there is a choice
   */
  Phases(double repeat, double near, boolean[] even) {
    this.repeat = repeat;
    this.near = near;
    this.even = even.clone();
    root = new int[even.length];
    Arrays.setAll(root, i -> i);
    sense = new int[even.length];
    Arrays.fill(sense, 1);
    behind = new double[even.length];
    known = new boolean[even.length];
  }

  /** How far two places are from lying on the same place of a repeat (mm). */
  static double apart(double place, double other, double repeat) {
    double steps = (place - other) / repeat;
    return Math.abs(steps - Math.rint(steps)) * repeat;
  }

  /** Where a thing begins, 0 up to the repeat (mm). */
  double of(int thing) {
    double steps = Math.floor(behind[thing] / repeat);
    double place = behind[thing] - steps * repeat;
    return apart(place, 0, repeat) < 1e-9 ? 0 : place;
  }

  /** Has a thing begin at a place, and with it all that is tied to it, unless that is known. */
  void begin(int thing, double place) {
    if (!known[root[thing]]) {
      move(root[thing], sense[thing] * (place - behind[thing]));
      known[root[thing]] = true;
    }
  }

  /**
   * A point on a thing.
   *
   * @param thing which one
   * @param mirrored whether on its mirror image
   * @param along how far from where the thing begins, in its own sense (mm)
   */
  record Spot(int thing, boolean mirrored, double along) {
    int sign() {
      return mirrored ? -1 : 1;
    }
  }

  /**
   * Has two points lie on the same place of the repeat.
   *
   * @return by how much they do not, since other ties came first (mm); 0 where they do
   */
  double tie(Spot one, Spot other) {
    int first = root[one.thing];
    int second = root[other.thing];
    if (first == second) {
      return tieToItself(one, other);
    }
    if (known[first] && known[second]) {
      return lack(place(other) - place(one));
    }
    boolean moveFirst = known[second];
    Spot kept = moveFirst ? other : one;
    Spot moved = moveFirst ? one : other;
    int turn = kept.sign() * moved.sign();
    double begins = turn * (behind[kept.thing] + kept.along) - moved.along;
    int senseOfMoved = turn * sense[kept.thing];
    join(moved.thing, root[kept.thing], senseOfMoved, begins);
    return 0;
  }

  /** Hangs a thing, and all that is tied to it, on another root. */
  private void join(int thing, int newRoot, int newSense, double begins) {
    int oldRoot = root[thing];
    int turn = newSense * sense[thing];
    double step = sense[thing] * (begins - behind[thing]);
    move(oldRoot, step);
    for (int i = 0; i < root.length; i++) {
      if (root[i] == oldRoot) {
        root[i] = newRoot;
        sense[i] *= turn;
      }
    }
  }

  private void move(int whole, double step) {
    for (int i = 0; i < root.length; i++) {
      if (root[i] == whole) {
        behind[i] += sense[i] * step;
      }
    }
  }

  private double lack(double apart) {
    double lack = apart(apart, 0, repeat);
    return lack <= near ? 0 : lack;
  }

  private double place(Spot spot) {
    return spot.sign() * (behind[spot.thing] + spot.along);
  }

  /** Two that move together lie alike already, or once both are moved as they must be. */
  private double tieToItself(Spot one, Spot other) {
    int whole = root[one.thing];
    double lack = place(other) - place(one);
    int drift = one.sign() * sense[one.thing] - other.sign() * sense[other.thing];
    if (drift == 0 || known[whole]) {
      return lack(lack);
    }
    // moved by a step, the two come nearer by twice that, so there are two ways: the one on which
    // more of what is even begins on a bar
    move(whole, lack / drift);
    int onBar = evenOnBar(whole);
    move(whole, repeat / 2);
    if (evenOnBar(whole) <= onBar) {
      move(whole, -repeat / 2);
    }
    known[whole] = true;
    return 0;
  }

  private int evenOnBar(int whole) {
    int count = 0;
    for (int i = 0; i < root.length; i++) {
      boolean onBar = apart(behind[i], 0, repeat) <= near;
      count += root[i] == whole && even[i] && onBar ? 1 : 0;
    }
    return count;
  }
}
