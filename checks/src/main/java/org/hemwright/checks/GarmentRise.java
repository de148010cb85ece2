package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * The rise of one piece of trousers in one size, from the fork up to the top of the waist.
 *
 * @param edge the crotch's
 * @param fork where it starts
 * @param length with the band that is sewn on the waist (mm)
 */
record GarmentRise(Piece piece, Edge edge, Point fork, double length) {
  /**
   * Every rise. A fork is where an edge that is sewn to its own mirror image meets an edge that is
   * sewn to another piece with such an edge.
   */
  static List<GarmentRise> of(SizedPattern sized) {
    List<GarmentRise> rises = new ArrayList<>();
    Set<String> crotches = crotches(sized);
    for (Piece piece : sized.pieces()) {
      for (int i = 0; i < piece.edges().size(); i++) {
        if (crotches.contains(piece.name() + "." + piece.edges().get(i).name())) {
          of(piece, i, crotches, sized).ifPresent(rises::add);
        }
      }
    }
    return rises;
  }

  private static Optional<GarmentRise> of(
      Piece piece, int crotch, Set<String> crotches, SizedPattern sized) {
    Optional<Grain> grain = piece.grain();
    for (boolean last : new boolean[] {false, true}) {
      EdgeTip fork = new EdgeTip(piece, "", EdgePlace.Half.WHOLE, crotch, last);
      EdgeTip top = new EdgeTip(piece, "", EdgePlace.Half.WHOLE, crotch, !last).beside();
      if (grain.isPresent() && isInseam(fork.beside(), crotches, sized)) {
        Edge waist = top.drawn();
        Point side = top.last() ? waist.path().start() : waist.path().end();
        double rise = Math.abs(side.minus(fork.point()).dot(grain.get().direction()));
        return Optional.of(
            new GarmentRise(
                piece, piece.edges().get(crotch), fork.point(), rise + band(piece, waist, sized)));
      }
    }
    return Optional.empty();
  }

  /** Edges that are sewn to themselves on another copy. */
  private static Set<String> crotches(SizedPattern sized) {
    Set<String> names = new LinkedHashSet<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        EdgePlace first = join.layers().get(0).run().get(0);
        EdgePlace second = join.layers().get(1).run().get(0);
        boolean single = join.layers().stream().allMatch(layer -> layer.run().size() == 1);
        if (single
            && first.piece().equals(second.piece())
            && first.edge().equals(second.edge())
            && !first.copy().equals(second.copy())) {
          names.add(first.piece() + "." + first.edge());
        }
      }
    }
    return names;
  }

  /** Whether an edge is sewn to another whose neighbour is a crotch too. */
  private static boolean isInseam(EdgeTip tip, Set<String> crotches, SizedPattern sized) {
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        if (join.layers().stream().noneMatch(layer -> isOf(layer, tip))) {
          continue;
        }
        boolean takes = false;
        boolean mate = false;
        for (Seam.Layer layer : join.layers()) {
          for (boolean start : new boolean[] {true, false}) {
            Optional<EdgeTip> end = EdgeTip.of(layer, start, sized);
            if (layer.run().size() == 1 && end.isPresent()) {
              boolean own = end.get().text().equals(tip.text());
              takes |= own && end.get().last() == tip.last();
              mate |= !own && crotches.contains(end.get().beside().text());
            }
          }
        }
        if (takes && mate) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a layer is the edge of a tip, and nothing else. */
  private static boolean isOf(Seam.Layer layer, EdgeTip tip) {
    EdgePlace place = layer.run().get(0);
    return layer.run().size() == 1
        && place.piece().equals(tip.piece().name())
        && place.edge().equals(tip.drawn().name());
  }

  /** How much a band sewn on the waist adds to it. */
  private static double band(Piece piece, Edge waist, SizedPattern sized) {
    for (Seam seam : sized.seams()) {
      for (Seam.Layer layer : seam.joins().get(0).layers()) {
        boolean other =
            seam.joins().get(0).layers().stream()
                .flatMap(each -> each.run().stream())
                .anyMatch(p -> p.piece().equals(piece.name()) && p.edge().equals(waist.name()));
        Optional<Piece> strip = sized.piece(layer.run().get(0).piece());
        if (other
            && strip.isPresent()
            && !strip.get().name().equals(piece.name())
            && LengthenCheck.isStrip(strip.get())) {
          Edge sewn = strip.get().edge(layer.run().get(0).edge()).orElseThrow();
          double area = Math.abs(strip.get().stitchLine().signedArea());
          double depth = area / sewn.path().length();
          return isFolded(strip.get(), sewn, sized) ? depth / 2 : depth;
        }
      }
    }
    return 0;
  }

  /** Whether a strip's sewn edge is sewn to the edge across from it as well. */
  private static boolean isFolded(Piece strip, Edge sewn, SizedPattern sized) {
    int count = strip.edges().size();
    String across = strip.edges().get((strip.edges().indexOf(sewn) + count / 2) % count).name();
    return sized.seams().stream()
        .map(seam -> SewnLoop.places(seam).stream().filter(p -> p.piece().equals(strip.name())))
        .map(places -> places.map(EdgePlace::edge).toList())
        .anyMatch(edges -> edges.contains(sewn.name()) && edges.contains(across));
  }
}
