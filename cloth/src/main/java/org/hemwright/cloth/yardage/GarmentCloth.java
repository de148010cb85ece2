package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Piece;

/**
 * What views take of one fabric: the same pieces, in every size.
 *
 * @param fabric the fabric
 * @param views those that take just these pieces of it
 * @param pieces for each size of the run, in its order; none where a size has none of them
 */
record GarmentCloth(Fabric fabric, List<View> views, List<List<ClothPiece>> pieces) {
  GarmentCloth {
    views = List.copyOf(views);
    pieces = pieces.stream().map(List::copyOf).toList();
  }

  /** For each fabric and each set of pieces that views take of it, in the order of the pattern. */
  static List<GarmentCloth> of(SizeRun run, double gap) {
    List<GarmentCloth> all = new ArrayList<>();
    for (Fabric fabric : run.pattern().fabrics()) {
      List<List<ClothPiece>> every = new ArrayList<>();
      for (SizedPattern sized : run.sizes()) {
        every.add(pieces(sized, fabric, gap));
      }
      Map<Set<String>, List<View>> sets = new LinkedHashMap<>();
      for (View view : run.pattern().views()) {
        Set<String> names = new LinkedHashSet<>();
        for (List<ClothPiece> ofSize : every) {
          ofSize.stream().map(ClothPiece::name).filter(view.pieces()::contains).forEach(names::add);
        }
        if (!names.isEmpty()) {
          sets.computeIfAbsent(names, unused -> new ArrayList<>()).add(view);
        }
      }
      sets.forEach(
          (names, views) ->
              all.add(
                  new GarmentCloth(
                      fabric,
                      views,
                      every.stream()
                          .map(ofSize -> ofSize.stream().filter(p -> names.contains(p.name())))
                          .map(stream -> stream.toList())
                          .toList())));
    }
    return all;
  }

  private static List<ClothPiece> pieces(SizedPattern sized, Fabric fabric, double gap) {
    List<ClothPiece> pieces = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      int times = 0;
      for (Cut cut : piece.card().cuts()) {
        if (cut.fabric().equals(fabric.name())) {
          times++;
          String id = times == 1 ? piece.name() : piece.name() + "-" + times;
          ClothPiece.of(id, piece, cut, gap).ifPresent(pieces::add);
        }
      }
    }
    return pieces;
  }

  /** Whether another is this one: no two of a pattern share a fabric and a view. */
  boolean is(GarmentCloth other) {
    return fabric.equals(other.fabric) && views.equals(other.views);
  }

  /** Whether another takes these pieces and more of the same fabric, in one size. */
  boolean isPartOf(GarmentCloth other, int size) {
    return !is(other)
        && other.fabric.equals(fabric)
        && !pieces.get(size).isEmpty()
        && other.pieces.get(size).containsAll(pieces.get(size));
  }
}
