package org.hemwright.exchange.photograph;

import boofcv.alg.filter.binary.GThresholdImageOps;
import boofcv.alg.shapes.polygon.DetectPolygonBinaryGrayRefine;
import boofcv.concurrency.BoofConcurrency;
import boofcv.factory.shape.ConfigPolygonDetector;
import boofcv.factory.shape.FactoryShapeDetector;
import boofcv.struct.ConfigLength;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_F64;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.ReferenceCard;

/**
 * Finds the reference card: dark four-sided shapes, of which five lie as the card's squares do.
 *
 * <p>Each shape in turn is taken for each square, in each of four turns; that foretells where the
 * other four are seen, and the guess under which all are found where they should be, and closest,
 * is the card.
 */
final class CardFinder {
  static {
    // Work shared among threads comes back in another order each time; the same picture should
    // give the same outline.
    BoofConcurrency.USE_CONCURRENT = false;
  }

  /** A square narrower than this share of the picture is not looked for. */
  private static final double SMALLEST = 0.006;

  /** A foretold corner is found within this share of the square's own side. */
  private static final double NEAR = 0.35;

  private static final int MOST_SHAPES = 150;

  private final Picture picture;
  private final List<List<Pixel>> shapes;

  private CardFinder(Picture picture) {
    this.picture = picture;
    this.shapes = shapes(picture);
  }

  /** The corners of the card's squares, twenty of them; empty where no card is seen. */
  static Optional<List<Sighting>> find(Picture picture) {
    return new CardFinder(picture).find();
  }

  private Optional<List<Sighting>> find() {
    List<List<Point>> squares = ReferenceCard.squares();
    Optional<List<Sighting>> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (List<Pixel> shape : shapes) {
      for (List<Point> square : squares) {
        for (int turn = 0; turn < 4; turn++) {
          Optional<List<Sighting>> guess = guess(shape, turn, square);
          if (guess.isPresent()) {
            double off = straightened(guess.get()).residual();
            if (off < least) {
              least = off;
              best = guess;
            }
          }
        }
      }
    }
    return best;
  }

  private Optional<List<Sighting>> guess(List<Pixel> shape, int turn, List<Point> square) {
    List<Sighting> first = new ArrayList<>();
    for (int corner = 0; corner < 4; corner++) {
      first.add(new Sighting(square.get(corner), shape.get((corner + turn) % 4)));
    }
    Straightening guess;
    try {
      guess = straightened(first);
    } catch (IllegalArgumentException flat) {
      return Optional.empty();
    }
    List<Sighting> all = new ArrayList<>();
    for (List<Point> other : ReferenceCard.squares()) {
      Optional<List<Sighting>> found =
          other.equals(square) ? Optional.of(first) : nearest(guess, other);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      all.addAll(found.get());
      if (!other.equals(square)) {
        // Two squares foretell the third better than one.
        guess = straightened(all.size() == 4 ? joined(first, all) : all);
      }
    }
    Straightening settled = straightened(all);
    double side = shape.get(0).distanceTo(shape.get(1));
    return settled.residual() < side * 0.05 ? Optional.of(all) : Optional.empty();
  }

  private Straightening straightened(List<Sighting> sightings) {
    return Straightening.of(sightings, picture.width(), picture.height());
  }

  private static List<Sighting> joined(List<Sighting> some, List<Sighting> others) {
    List<Sighting> joined = new ArrayList<>(some);
    joined.addAll(others);
    return joined;
  }

  private Optional<List<Sighting>> nearest(Straightening guess, List<Point> square) {
    List<Pixel> foretold = square.stream().map(guess::pixel).toList();
    double side = foretold.get(0).distanceTo(foretold.get(1));
    double least = NEAR * side * 4;
    Optional<List<Sighting>> best = Optional.empty();
    for (List<Pixel> shape : shapes) {
      for (int turn = 0; turn < 4; turn++) {
        double off = 0;
        for (int corner = 0; corner < 4; corner++) {
          off += foretold.get(corner).distanceTo(shape.get((corner + turn) % 4));
        }
        if (off < least) {
          least = off;
          List<Sighting> found = new ArrayList<>();
          for (int corner = 0; corner < 4; corner++) {
            found.add(new Sighting(square.get(corner), shape.get((corner + turn) % 4)));
          }
          best = Optional.of(found);
        }
      }
    }
    return best;
  }

  /**
   * Dark shapes of four sides, each counter-clockwise as a person sees it, corners to a fraction.
   */
  private static List<List<Pixel>> shapes(Picture picture) {
    GrayU8 grey = new GrayU8(picture.width(), picture.height());
    for (int y = 0; y < picture.height(); y++) {
      for (int x = 0; x < picture.width(); x++) {
        int light = Math.round(255 * Picture.Look.LIGHT.of(picture.colour(x, y)));
        grey.data[y * picture.width() + x] = (byte) light;
      }
    }
    int shorter = Math.min(picture.width(), picture.height());
    GrayU8 dark = new GrayU8(picture.width(), picture.height());
    // Dark is what is darker than its neighbourhood, so that a lamp at one side does no harm.
    GThresholdImageOps.blockOtsu(
        grey, dark, true, ConfigLength.fixed(Math.max(16, shorter / 12)), 0, 1.0, true);
    ConfigPolygonDetector config = new ConfigPolygonDetector(4, 4);
    config.detector.minimumContour = ConfigLength.relative(4 * SMALLEST, 20);
    config.detector.canTouchBorder = false;
    DetectPolygonBinaryGrayRefine<GrayU8> detector =
        FactoryShapeDetector.polygon(config, GrayU8.class);
    detector.process(grey, dark);
    SquareCorners exact = new SquareCorners(picture);
    List<List<Pixel>> shapes = new ArrayList<>();
    for (Polygon2D_F64 polygon : detector.getPolygons(null, null)) {
      List<Pixel> corners = new ArrayList<>();
      for (Point2D_F64 corner : polygon.vertexes.toList()) {
        corners.add(new Pixel(corner.x + 0.5, corner.y + 0.5));
      }
      if (area(corners) > 0) {
        Collections.reverse(corners);
      }
      if (shapes.size() < MOST_SHAPES) {
        exact.near(corners).ifPresent(seen -> shapes.add(List.copyOf(seen)));
      }
    }
    return shapes;
  }

  /** More than 0 where the corners go round clockwise as a person sees them: y runs down. */
  private static double area(List<Pixel> corners) {
    double twice = 0;
    for (int k = 0; k < corners.size(); k++) {
      Pixel a = corners.get(k);
      Pixel b = corners.get((k + 1) % corners.size());
      twice += a.x() * b.y() - a.y() * b.x();
    }
    return twice / 2;
  }
}
