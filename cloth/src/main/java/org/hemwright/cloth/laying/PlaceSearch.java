package org.hemwright.cloth.laying;

/**
 * Looks for the best place for one copy of a {@link Crowd} while the others stay: places drawn over
 * the whole strip and near the present one, the best of them then improved by steps down the slope
 * of the overlap, and the best of all by steps along x, y and the diagonals.
 */
final class PlaceSearch {

  /** How much farther than just clear a copy goes, in grid steps, so that rounding keeps it so. */
  private static final double CLEAR = 2 * DepthTable.TOUCHING;

  private final Crowd crowd;
  private final Room room;
  private final Chance chance;
  private final SearchRules rules;

  /** The best places drawn so far, best first. */
  private final int[] keptCut;

  private final double[] keptX;
  private final double[] keptY;
  private final double[] keptValue;
  private int kept;

  /** The place at hand. */
  private int copy;

  private int cut;
  private double x;
  private double y;
  private double value;

  PlaceSearch(Crowd crowd, Room room, Chance chance, SearchRules rules) {
    this.crowd = crowd;
    this.room = room;
    this.chance = chance;
    this.rules = rules;
    keptCut = new int[rules.kept()];
    keptX = new double[rules.kept()];
    keptY = new double[rules.kept()];
    keptValue = new double[rules.kept()];
  }

  /** Moves a copy to the best place found; leaves it where it is when none is better. */
  void improve(int moved) {
    copy = moved;
    int oldCut = crowd.cut(copy);
    double oldX = crowd.x(copy);
    double oldY = crowd.y(copy);
    double oldValue = crowd.weightedOverlapOf(copy);
    kept = 0;
    keep(oldCut, oldX, oldY, oldValue);
    drawWide();
    drawClose(oldCut, oldX, oldY);
    int bestCut = oldCut;
    double bestX = oldX;
    double bestY = oldY;
    double bestValue = oldValue;
    for (int start = 0; start < kept && bestValue > 0; start++) {
      take(keptCut[start], keptX[start], keptY[start], keptValue[start]);
      if (room.onBars(cut)) {
        descend(rules.firstStep(), rules.middleStep());
      } else {
        goDown();
      }
      if (value < bestValue) {
        bestCut = cut;
        bestX = x;
        bestY = y;
        bestValue = value;
      }
    }
    take(bestCut, bestX, bestY, bestValue);
    descend(rules.middleStep(), rules.lastStep());
    crowd.put(copy, cut, x, y);
    crowd.note(copy);
  }

  private void take(int newCut, double newX, double newY, double newValue) {
    cut = newCut;
    x = newX;
    y = newY;
    value = newValue;
  }

  private void drawWide() {
    double length = crowd.length();
    for (int i = 0; i < rules.wideDraws() && keptValue[0] > 0; i++) {
      int drawn = room.drawCut(crowd.shapeOf[copy], chance);
      if (room.lastX(drawn, length) >= 0) {
        look(drawn, room.drawX(drawn, length, chance), room.drawY(drawn, chance));
      }
    }
  }

  private void drawClose(int oldCut, double oldX, double oldY) {
    double length = crowd.length();
    double middleX = oldX + crowd.width[oldCut] / 2;
    double middleY = oldY + crowd.height[oldCut] / 2;
    double reach = Math.min(crowd.width[oldCut], crowd.height[oldCut]);
    for (int i = 0; i < rules.closeDraws() && keptValue[0] > 0; i++) {
      int drawn = room.drawCut(crowd.shapeOf[copy], chance);
      if (room.lastX(drawn, length) >= 0) {
        double nearX = middleX - crowd.width[drawn] / 2 + chance.between(-reach, reach);
        double nearY = middleY - crowd.height[drawn] / 2 + chance.between(-reach, reach);
        look(drawn, room.nearestX(drawn, length, nearX), room.nearestY(drawn, nearY));
      }
    }
  }

  private void look(int drawn, double px, double py) {
    double enough = kept < keptValue.length ? Double.POSITIVE_INFINITY : keptValue[kept - 1];
    double found = crowd.weightedOverlap(copy, drawn, px, py, enough);
    if (found < enough) {
      keep(drawn, px, py, found);
    }
  }

  private void keep(int drawn, double px, double py, double found) {
    if (kept < keptValue.length) {
      kept++;
    }
    int at = kept - 1;
    while (at > 0 && keptValue[at - 1] > found) {
      keptCut[at] = keptCut[at - 1];
      keptX[at] = keptX[at - 1];
      keptY[at] = keptY[at - 1];
      keptValue[at] = keptValue[at - 1];
      at--;
    }
    keptCut[at] = drawn;
    keptX[at] = px;
    keptY[at] = py;
    keptValue[at] = found;
  }

  /**
   * Steps from the place at hand down the slope, each first as far as takes the overlap to nothing
   * if the slope stays as it is (Polyak 1969), then less and less far; the best place is taken. On
   * the way the overlap may grow: where several copies are in the way each step comes clear of some
   * of them only.
   */
  private void goDown() {
    double length = crowd.length();
    double least = rules.middleStep() * Math.min(crowd.width[cut], crowd.height[cut]);
    double atX = x;
    double atY = y;
    double share = 1;
    for (int step = 0; step <= rules.steps(); step++) {
      double here = crowd.weightedOverlap(copy, cut, atX, atY);
      if (here < value) {
        take(cut, atX, atY, here);
      }
      double slopeX = crowd.slopeX();
      double slopeY = crowd.slopeY();
      double steepness = Math.sqrt(slopeX * slopeX + slopeY * slopeY);
      double far = share * here / steepness;
      if (here == 0 || steepness == 0 || far < least) {
        return;
      }
      far += CLEAR;
      atX = room.nearestX(cut, length, atX - far * slopeX / steepness);
      atY = room.nearestY(cut, atY - far * slopeY / steepness);
      share *= step < rules.wholeSteps() ? 1 : rules.shorten();
    }
  }

  /**
   * Steps from the place at hand to better ones; both steps are shares of the cut's lesser side.
   */
  private void descend(double firstStep, double lastStep) {
    double side = Math.min(crowd.width[cut], crowd.height[cut]);
    double stepX = firstStep * side;
    double stepY = stepX;
    double least = lastStep * side;
    while (value > 0 && Math.max(stepX, stepY) > least) {
      int axis = chance.below(4);
      boolean alongX = axis != 1;
      boolean alongY = axis != 0;
      double dx = alongX ? stepX : 0;
      double dy = !alongY ? 0 : axis == 3 ? -stepY : stepY;
      double factor = step(dx, dy) ? rules.grow() : rules.halve();
      if (alongX) {
        stepX *= factor;
      }
      if (alongY) {
        stepY *= factor;
      }
    }
  }

  private boolean step(double stepX, double dy) {
    double length = crowd.length();
    double dx = stepX > 0 ? Math.max(stepX, room.repeat(cut)) : 0;
    double aheadX = room.nearestX(cut, length, x + dx);
    double aheadY = room.nearestY(cut, y + dy);
    double backX = room.nearestX(cut, length, x - dx);
    double backY = room.nearestY(cut, y - dy);
    double ahead = crowd.weightedOverlap(copy, cut, aheadX, aheadY, value);
    double back = crowd.weightedOverlap(copy, cut, backX, backY, Math.min(ahead, value));
    if (Math.min(ahead, back) >= value) {
      return false;
    }
    if (back < ahead) {
      take(cut, backX, backY, back);
    } else {
      take(cut, aheadX, aheadY, ahead);
    }
    return true;
  }
}
