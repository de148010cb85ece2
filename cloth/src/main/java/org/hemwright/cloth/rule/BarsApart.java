package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;

/**
 * How far bars that meet at a matched notch part along the rest of the seam, since one edge slants
 * more to the grain than the other: school geometry of the two stitch lines, as many millimetres
 * along each from the notch. Bars that run across the cloth are meant.
 *
 * @param seam the seam's name
 * @param notch the notch at which they meet
 * @param piece the piece's name on the first layer
 * @param mate that on the other
 * @param most the farthest apart that they lie (mm)
 */
public record BarsApart(String seam, String notch, String piece, String mate, double most) {
  /** Places along a seam that are looked at, so far apart (mm). */
  private static final double STEP = 5;

  private record Between(String seam, String notch, String piece, String mate) {}

  /**
   * Every two layers of a seam that a notch of these names brings together, in the order of the
   * seams; a left and a right seam once. Where a layer goes on to another piece, the first is told
   * of as far as it goes.
   */
  public static List<BarsApart> of(SizedPattern sized, List<String> notches) {
    Map<Between, Double> most = new LinkedHashMap<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        Seam.Layer base = join.layers().get(0);
        for (Seam.Layer layer : join.layers().subList(1, join.layers().size())) {
          for (String notch : notches) {
            new Walk(sized, base, layer).addTo(seam.name(), notch, most);
          }
        }
      }
    }
    List<BarsApart> apart = new ArrayList<>();
    most.forEach(
        (where, far) ->
            apart.add(new BarsApart(where.seam, where.notch, where.piece, where.mate, far)));
    return apart;
  }

  /** Two layers of one seam, walked together from a notch. */
  private record Walk(SizedPattern sized, Seam.Layer base, Seam.Layer other) {
    void addTo(String seam, String notch, Map<Between, Double> most) {
      List<Double> first = distances(base, notch);
      List<Double> second = distances(other, notch);
      for (int i = 0; i < first.size() && first.size() == second.size(); i++) {
        Optional<LayerWalk.Spot> one = LayerWalk.spot(base, sized, first.get(i));
        Optional<LayerWalk.Spot> two = LayerWalk.spot(other, sized, second.get(i));
        if (one.isPresent() && two.isPresent()) {
          String piece = one.get().place().piece();
          String mate = two.get().place().piece();
          double back = far(first.get(i), second.get(i), -1);
          double far = Math.max(back, far(first.get(i), second.get(i), 1));
          most.merge(new Between(seam, notch, piece, mate), far, Math::max);
        }
      }
    }

    private List<Double> distances(Seam.Layer layer, String notch) {
      return LayerWalk.of(layer, sized).stops().stream()
          .filter(stop -> stop.isNotch() && stop.name().filter(notch::equals).isPresent())
          .map(LayerWalk.Stop::distance)
          .toList();
    }

    /** The farthest apart on one side of the notches, as far as both pieces go. */
    private double far(double first, double second, int way) {
      double room =
          way < 0
              ? Math.min(first, second)
              : Math.min(
                  LayerWalk.length(base, sized) - first, LayerWalk.length(other, sized) - second);
      OptionalDouble startOfOne = along(base, first, first);
      OptionalDouble startOfTwo = along(other, second, second);
      double far = 0;
      for (double next = 0; next < room + STEP; next += STEP) {
        double walked = Math.min(next, room);
        OptionalDouble one = along(base, first, first + way * walked);
        OptionalDouble two = along(other, second, second + way * walked);
        if (one.isEmpty() || two.isEmpty()) {
          return far;
        }
        double gone = one.getAsDouble() - startOfOne.orElseThrow();
        double goneToo = two.getAsDouble() - startOfTwo.orElseThrow();
        far = Math.max(far, Math.abs(gone - goneToo));
      }
      return far;
    }

    /** How far along its grain a place lies; absent where it is on another piece than the notch. */
    private OptionalDouble along(Seam.Layer layer, double notch, double at) {
      Optional<String> own = LayerWalk.spot(layer, sized, notch).map(spot -> spot.place().piece());
      Optional<LayerWalk.Spot> spot = LayerWalk.spot(layer, sized, at);
      if (spot.isEmpty() || !own.equals(Optional.of(spot.get().place().piece()))) {
        return OptionalDouble.empty();
      }
      return sized.piece(own.orElseThrow()).stream()
          .mapToDouble(piece -> along(piece, spot.get().point()))
          .findFirst();
    }

    private static double along(Piece piece, Point at) {
      Vector grain = piece.grain().map(own -> own.direction()).orElse(new Vector(0, 1));
      return at.minus(Point.ORIGIN).dot(grain);
    }
  }
}
