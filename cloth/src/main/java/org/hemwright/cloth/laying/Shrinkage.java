package org.hemwright.cloth.laying;

/** Makes a crowd's strip shorter or longer, and the copies go with it. */
final class Shrinkage {

  private final Crowd crowd;
  private final Room room;
  private final Chance chance;

  Shrinkage(Crowd crowd, Room room, Chance chance) {
    this.crowd = crowd;
    this.room = room;
    this.chance = chance;
  }

  /** Takes a slice out of the strip at a random x: copies beyond it move up, and some overlap. */
  void shorten(double newLength) {
    double slice = crowd.length() - newLength;
    double at = chance.between(0, crowd.length());
    double[] x = new double[crowd.size];
    for (int copy = 0; copy < crowd.size; copy++) {
      double middle = crowd.x(copy) + crowd.width[crowd.cut(copy)] / 2;
      x[copy] = middle > at ? crowd.x(copy) - slice : crowd.x(copy);
    }
    arrange(newLength, x);
  }

  /** Spreads all copies over a longer strip. */
  void lengthen(double newLength) {
    double[] x = new double[crowd.size];
    for (int copy = 0; copy < crowd.size; copy++) {
      x[copy] = crowd.x(copy) * (newLength / crowd.length());
    }
    arrange(newLength, x);
  }

  private void arrange(double newLength, double[] x) {
    int[] cut = new int[crowd.size];
    double[] y = new double[crowd.size];
    for (int copy = 0; copy < crowd.size; copy++) {
      cut[copy] = cutThatFits(copy, newLength);
      x[copy] = room.nearestX(cut[copy], newLength, x[copy]);
      y[copy] = room.nearestY(cut[copy], crowd.y(copy));
    }
    crowd.arrange(newLength, cut, x, y);
  }

  private int cutThatFits(int copy, double newLength) {
    int cut = crowd.cut(copy);
    if (room.lastX(cut, newLength) >= 0) {
      return cut;
    }
    for (int other : room.cutsOf(crowd.shapeOf[copy])) {
      if (room.lastX(other, newLength) >= 0) {
        return other;
      }
    }
    throw new IllegalArgumentException("a strip of " + newLength + " steps holds not every shape");
  }
}
