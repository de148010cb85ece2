package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.split.SplitChoice;

/**
 * On which width that a fabric is sold in a piece is cut apart, since the whole of it finds no
 * room.
 *
 * @param choice the piece and how it is cut apart
 * @param fabric the cloth
 * @param width as sold (mm)
 * @param sizes in which it is, in order
 */
public record CutApart(SplitChoice choice, Fabric fabric, double width, List<Size> sizes) {
  public CutApart {
    sizes = List.copyOf(sizes);
  }

  private record Place(SplitChoice choice, Fabric fabric, double width) {}

  /** Where one piece is cut apart; no laying is made for it. By fabric, then width. */
  public static List<CutApart> of(SizeRun run, String piece, ClothSettings settings) {
    Map<Place, List<Size>> places = new LinkedHashMap<>();
    for (Fabric fabric : run.pattern().fabrics()) {
      for (double width : fabric.widths()) {
        ClothSheet flat = ClothSheet.flat(width, settings);
        for (SizedPattern sized : run.sizes()) {
          sized
              .piece(piece)
              .flatMap(own -> choice(own, fabric, flat))
              .ifPresent(
                  choice ->
                      places
                          .computeIfAbsent(
                              new Place(choice, fabric, width), unused -> new ArrayList<>())
                          .add(sized.size()));
        }
      }
    }
    List<CutApart> all = new ArrayList<>();
    places.forEach(
        (place, sizes) -> all.add(new CutApart(place.choice, place.fabric, place.width, sizes)));
    return all;
  }

  private static Optional<SplitChoice> choice(Piece piece, Fabric fabric, ClothSheet flat) {
    if (SplitChoice.of(piece).isEmpty()) {
      return Optional.empty();
    }
    for (int cut = 0; cut < piece.card().cuts().size(); cut++) {
      if (piece.card().cuts().get(cut).fabric().equals(fabric.name())) {
        Optional<Cuttable> cuttable = Cuttable.of(piece, cut, "", flat.settings().gap());
        if (cuttable.isPresent()) {
          List<String> ids = cuttable.get().on(flat).stream().map(ClothPiece::id).toList();
          return cuttable.get().choice(Set.copyOf(ids));
        }
      }
    }
    return Optional.empty();
  }
}
