package org.hemwright.cloth.laying;

/**
 * Throws a crowd out of a dead end: two big copies of unlike shapes change places, and the smaller
 * copies that lay where the larger of the two comes to lie move into the space that it left.
 */
final class Disruption {

  private static final int TRIES = 50;

  private final Crowd crowd;
  private final Room room;
  private final Chance chance;
  private final double[] areaOfShape;
  private final double totalArea;

  Disruption(Crowd crowd, Room room, Chance chance, double[] areaOfShape) {
    this.crowd = crowd;
    this.room = room;
    this.chance = chance;
    this.areaOfShape = areaOfShape.clone();
    double sum = 0;
    for (int copy = 0; copy < crowd.size; copy++) {
      sum += area(copy);
    }
    totalArea = sum;
  }

  private double area(int copy) {
    return areaOfShape[crowd.shapeOf[copy]];
  }

  /** Disrupts the crowd; leaves it alone where all copies are alike. */
  void disrupt() {
    int a = drawByArea();
    int b = drawByArea();
    for (int t = 0; t < TRIES && crowd.shapeOf[a] == crowd.shapeOf[b]; t++) {
      b = drawByArea();
    }
    if (a == b) {
      return;
    }
    int large = area(a) >= area(b) ? a : b;
    int small = large == a ? b : a;
    double goX = middleX(small) - middleX(large);
    double goY = middleY(small) - middleY(large);
    double reachX = crowd.width[crowd.cut(large)] / 2;
    double reachY = crowd.height[crowd.cut(large)] / 2;
    int[] cut = new int[crowd.size];
    double[] x = new double[crowd.size];
    double[] y = new double[crowd.size];
    for (int copy = 0; copy < crowd.size; copy++) {
      boolean inTheWay =
          copy == small
              || (area(copy) < area(large)
                  && Math.abs(middleX(copy) - middleX(small)) < reachX
                  && Math.abs(middleY(copy) - middleY(small)) < reachY);
      double sense = copy == large ? 1 : inTheWay ? -1 : 0;
      cut[copy] = crowd.cut(copy);
      x[copy] = room.nearestX(cut[copy], crowd.length(), crowd.x(copy) + sense * goX);
      y[copy] = room.nearestY(cut[copy], crowd.y(copy) + sense * goY);
    }
    crowd.arrange(crowd.length(), cut, x, y);
  }

  private double middleX(int copy) {
    return crowd.x(copy) + crowd.width[crowd.cut(copy)] / 2;
  }

  private double middleY(int copy) {
    return crowd.y(copy) + crowd.height[crowd.cut(copy)] / 2;
  }

  /** A copy, likelier the larger it is. */
  private int drawByArea() {
    double left = chance.share() * totalArea;
    for (int copy = 0; copy < crowd.size; copy++) {
      left -= area(copy);
      if (left < 0) {
        return copy;
      }
    }
    return crowd.size - 1;
  }
}
