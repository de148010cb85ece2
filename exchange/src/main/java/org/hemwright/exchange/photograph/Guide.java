package org.hemwright.exchange.photograph;

import java.util.List;

/** What in a picture tells how large things are. */
public sealed interface Guide {
  /** The reference card, to be found. */
  record Card() implements Guide {}

  /**
   * The reference card, pointed at where it is not found.
   *
   * @param corners the outer corners of its frame: lower left, lower right, upper right, upper
   *     left, as the card is read
   */
  record CardCorners(List<Pixel> corners) implements Guide {
    private static final double LEAST_TURN = 400;

    public CardCorners {
      corners = List.copyOf(corners);
      if (corners.size() != 4) {
        throw new IllegalArgumentException("a card has four corners");
      }
    }

    /** Whether they go round an area, all one way, and not in a row. */
    boolean areApart() {
      double first = turn(0);
      for (int k = 0; k < 4; k++) {
        if (Math.abs(turn(k)) < LEAST_TURN || (turn(k) > 0) != (first > 0)) {
          return false;
        }
      }
      return true;
    }

    /** Twice the area between a corner and its neighbours (pixels). */
    private double turn(int at) {
      Pixel a = corners.get(at);
      Pixel b = corners.get((at + 1) % 4);
      Pixel c = corners.get((at + 2) % 4);
      return (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
    }
  }

  /**
   * A ruler in a picture that is straight already, as a scan is.
   *
   * @param from one mark on it
   * @param to another
   * @param length between the two (mm), more than 0
   */
  record Ruler(Pixel from, Pixel to, double length) implements Guide {
    public Ruler {
      if (!(length > 0)) {
        throw new IllegalArgumentException("a ruler has a length");
      }
    }
  }
}
