package org.hemwright.exchange.photograph;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.Contour;
import boofcv.alg.filter.binary.GThresholdImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_I32;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.hemwright.exchange.photograph.Picture.Look;

/**
 * Finds what lies on the ground of a picture: closed edges, each place seen to a fraction of a
 * pixel.
 *
 * <p>Ground is what most of the picture's border shows. It is told from what lies on it by that one
 * of five looks (light, red, green, blue, colour) that parts the pixels best, at the threshold of
 * Otsu (1979, <i>IEEE Transactions on Systems, Man and Cybernetics</i> 9).
 */
final class PieceEdges {
  /** The picture's border, of which the ground is the greater part (share of its shorter side). */
  private static final double BORDER = 0.02;

  /** The direction of the edge is taken from so many pixels either way. */
  private static final int ROUND = 5;

  /**
   * An edge.
   *
   * @param places counter-clockwise as a person sees them
   * @param cutOff whether it runs out of the picture
   */
  record Loop(List<Pixel> places, boolean cutOff) {
    Loop {
      places = List.copyOf(places);
    }

    /** The area within (pixels). */
    double area() {
      double twice = 0;
      for (int k = 0; k < places.size(); k++) {
        Pixel a = places.get(k);
        Pixel b = places.get((k + 1) % places.size());
        twice += a.x() * b.y() - a.y() * b.x();
      }
      return Math.abs(twice) / 2;
    }

    /** Whether a place lies within. */
    boolean holds(Pixel place) {
      boolean inside = false;
      for (int k = 0; k < places.size(); k++) {
        Pixel a = places.get(k);
        Pixel b = places.get((k + 1) % places.size());
        if ((a.y() > place.y()) != (b.y() > place.y())
            && place.x() < a.x() + (place.y() - a.y()) * (b.x() - a.x()) / (b.y() - a.y())) {
          inside = !inside;
        }
      }
      return inside;
    }
  }

  private PieceEdges() {}

  /** All edges round something larger than a share of the picture, the largest first. */
  static List<Loop> find(Picture picture, double leastShare) {
    Parting parting = Parting.best(picture);
    GrayU8 pieces = pieces(picture, parting);
    EdgeSight sight = new EdgeSight(picture, parting.look());
    double least = leastShare * picture.width() * picture.height();
    List<Loop> loops = new ArrayList<>();
    for (Contour contour : BinaryImageOps.contour(pieces, ConnectRule.FOUR, null)) {
      List<Pixel> rough = new ArrayList<>();
      boolean cutOff = false;
      for (Point2D_I32 pixel : contour.external) {
        rough.add(new Pixel(pixel.x + 0.5, pixel.y + 0.5));
        cutOff |=
            pixel.x == 0
                || pixel.y == 0
                || pixel.x == picture.width() - 1
                || pixel.y == picture.height() - 1;
      }
      if (rough.size() > 4 * ROUND && new Loop(rough, cutOff).area() >= least) {
        List<Pixel> seen = seen(rough, sight);
        if (seen.size() > 4 * ROUND) {
          loops.add(new Loop(counterClockwise(seen), cutOff));
        }
      }
    }
    loops.sort(Comparator.comparingDouble(Loop::area).reversed());
    return loops;
  }

  private static List<Pixel> seen(List<Pixel> rough, EdgeSight sight) {
    int count = rough.size();
    List<Pixel> seen = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Pixel before = rough.get((k - ROUND + count) % count);
      Pixel after = rough.get((k + ROUND) % count);
      double length = before.distanceTo(after);
      if (length > ROUND) {
        double dx = (after.x() - before.x()) / length;
        double dy = (after.y() - before.y()) / length;
        sight.near(rough.get(k), -dy, dx).ifPresent(seen::add);
      }
    }
    return seen;
  }

  private static List<Pixel> counterClockwise(List<Pixel> places) {
    double twice = 0;
    for (int k = 0; k < places.size(); k++) {
      Pixel a = places.get(k);
      Pixel b = places.get((k + 1) % places.size());
      twice += a.x() * b.y() - a.y() * b.x();
    }
    if (twice < 0) {
      return places;
    }
    List<Pixel> turned = new ArrayList<>(places);
    Collections.reverse(turned);
    return turned;
  }

  private static GrayU8 pieces(Picture picture, Parting parting) {
    int width = picture.width();
    int height = picture.height();
    GrayU8 pieces = new GrayU8(width, height);
    int border = Math.max(1, (int) (BORDER * Math.min(width, height)));
    long above = 0;
    long all = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        boolean bright = parting.look().of(picture.colour(x, y)) > parting.threshold();
        pieces.data[y * width + x] = (byte) (bright ? 1 : 0);
        if (x < border || y < border || x >= width - border || y >= height - border) {
          all++;
          above += bright ? 1 : 0;
        }
      }
    }
    if (2 * above > all) {
      BinaryImageOps.invert(pieces, pieces);
    }
    // Grain and lint of a pixel or two is neither piece nor ground.
    return BinaryImageOps.removePointNoise(pieces, null);
  }

  /**
   * What tells a piece from the ground.
   *
   * @param threshold from 0 to 1
   * @param clear how much of the spread of all pixels lies between the two kinds, 0 to 1
   */
  record Parting(Look look, double threshold, double clear) {
    private static final int STEPS = 256;

    static Parting best(Picture picture) {
      Parting best = new Parting(Look.LIGHT, 0.5, -1);
      int every = Math.max(1, (int) Math.sqrt(picture.width() * (double) picture.height() / 4e5));
      for (Look look : Look.values()) {
        int[] counts = new int[STEPS];
        int total = 0;
        for (int y = 0; y < picture.height(); y += every) {
          for (int x = 0; x < picture.width(); x += every) {
            counts[Math.min(STEPS - 1, (int) (look.of(picture.colour(x, y)) * STEPS))]++;
            total++;
          }
        }
        int threshold = GThresholdImageOps.computeOtsu(counts, STEPS, total);
        double clear = clear(counts, threshold, total);
        if (clear > best.clear() + 1e-9) {
          best = new Parting(look, (threshold + 1.0) / STEPS, clear);
        }
      }
      return best;
    }

    private static double clear(int[] counts, int threshold, int total) {
      double low = 0;
      double lowSum = 0;
      double sum = 0;
      double squares = 0;
      for (int k = 0; k < counts.length; k++) {
        double share = counts[k] / (double) total;
        sum += share * k;
        squares += share * k * k;
        if (k <= threshold) {
          low += share;
          lowSum += share * k;
        }
      }
      double all = squares - sum * sum;
      if (low <= 0 || low >= 1 || all <= 0) {
        return 0;
      }
      double apart = (sum - lowSum) / (1 - low) - lowSum / low;
      return low * (1 - low) * apart * apart / all;
    }
  }
}
