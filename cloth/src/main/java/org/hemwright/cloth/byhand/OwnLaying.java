package org.hemwright.cloth.byhand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.pattern.fabric.Fabric;

/**
 * A laying by hand, of one row of the yardage table.
 *
 * @param cloth which row
 * @param places where every piece lies
 */
public record OwnLaying(OfCloth cloth, List<OwnPlace> places) {
  public OwnLaying {
    places = List.copyOf(places);
  }

  /**
   * Which row of the yardage table.
   *
   * @param view the view's name
   * @param fabric the fabric's name
   * @param nap whether it is laid for cloth with a nap
   * @param size the size's name
   * @param width of the cloth as sold (mm)
   * @param fold how it is folded
   */
  public record OfCloth(
      String view, String fabric, Fabric.Nap nap, String size, double width, Fold fold) {
    /** Of a row. */
    public static OfCloth of(YardageRow row) {
      return new OfCloth(
          row.view().name(),
          row.fabric().name(),
          row.nap(),
          row.size().name(),
          row.width(),
          row.fold());
    }
  }

  /** What the search or the designer laid, as places. */
  public static List<OwnPlace> places(ClothLaying laying) {
    return laying.pieces().stream().map(OwnPlace::of).toList();
  }

  /**
   * The laying with the pieces of another, each where it lies here; absent where the two do not
   * have the same pieces, so that nothing can be said of it.
   */
  public Optional<ClothLaying> on(ClothLaying like) {
    List<LaidPiece> laid = new ArrayList<>();
    for (LaidPiece piece : like.pieces()) {
      places.stream()
          .filter(place -> place.item().equals(piece.item().id()) && place.copy() == piece.copy())
          .findFirst()
          .ifPresent(
              place ->
                  laid.add(
                      new LaidPiece(piece.item(), piece.copy(), place.motion(), piece.open())));
    }
    return laid.size() == like.pieces().size() && laid.size() == places.size()
        ? Optional.of(ClothLaying.of(like.sheet(), laid))
        : Optional.empty();
  }

  /** A row that takes this laying, in the place of its own. */
  static YardageRow taking(YardageRow row, ClothLaying laying) {
    return row.with(new Need(laying, laying.length(), laying.length()));
  }
}
