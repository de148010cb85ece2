package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.Silhouette;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Piece;

/**
 * What is left of a length of cloth once a view is cut from it, and what of the view's other cloths
 * could be cut from that, by one who takes the same cloth for them: small pieces of interfacing, a
 * band of rib or of the jersey itself.
 *
 * @param along how long the largest rectangle is that is left (mm, along the selvedge)
 * @param across how wide that is (mm)
 * @param fits by the name of another fabric, its pieces that find room there with all their copies
 */
public record LeftOver(double along, double across, Map<String, List<String>> fits) {
  public LeftOver {
    fits = new LinkedHashMap<>(fits);
  }

  /** By the name of another fabric; a copy. */
  @Override
  public Map<String, List<String>> fits() {
    return new LinkedHashMap<>(fits);
  }

  /**
   * What a row leaves of the cloth that is bought for it, or of a length that is there.
   *
   * @param owned that length (mm, before it shrinks); nothing where the cloth is bought
   * @return nothing where the row does not fit the cloth
   */
  public static Optional<LeftOver> of(SizeRun run, YardageRow row, OptionalDouble owned) {
    if (row.need().isEmpty() || (owned.isPresent() && !row.isCutFrom(owned.getAsDouble()))) {
      return Optional.empty();
    }
    Need need = row.need().get();
    double shrunk = need.length() / need.bought();
    double length = owned.orElse(need.buy().longest()) * shrunk;
    Remnant remnant = new Remnant(need.laying(), length);
    Remnant.Rectangle largest = remnant.largest();
    Map<String, List<String>> fits = new LinkedHashMap<>();
    Optional<SizedPattern> sized = run.size(row.size().name());
    for (Fabric other : run.pattern().fabrics()) {
      if (sized.isPresent() && standsIn(run.pattern().fabrics(), row.fabric(), other)) {
        List<String> own = fitting(pieces(sized.get(), row, other), row, remnant.copy());
        if (!own.isEmpty()) {
          fits.put(other.name(), own);
        }
      }
    }
    return Optional.of(new LeftOver(largest.along(), largest.across(), fits));
  }

  /**
   * Whether one cloth may be taken for another: the pattern's first for a later one, both knit or
   * both woven. Nobody cuts a shirt from interfacing.
   */
  private static boolean standsIn(List<Fabric> all, Fabric cloth, Fabric other) {
    return cloth.equals(all.get(0)) && !other.equals(cloth) && other.kind() == cloth.kind();
  }

  /** Whether all pieces of another fabric find room. */
  public boolean takesAll(SizeRun run, YardageRow row, String fabric) {
    List<String> all =
        run.pattern().fabrics().stream()
            .filter(other -> other.name().equals(fabric))
            .flatMap(
                other ->
                    run.size(row.size().name()).stream()
                        .flatMap(sized -> pieces(sized, row, other).stream()))
            .map(ClothPiece::name)
            .distinct()
            .toList();
    return fits.getOrDefault(fabric, List.of()).containsAll(all);
  }

  private static List<ClothPiece> pieces(SizedPattern sized, YardageRow row, Fabric fabric) {
    List<ClothPiece> pieces = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (int cut = 0; cut < piece.card().cuts().size(); cut++) {
        if (row.view().pieces().contains(piece.name())
            && piece.card().cuts().get(cut).fabric().equals(fabric.name())) {
          Cuttable.of(piece, cut, "", 0).map(Cuttable::whole).ifPresent(pieces::add);
        }
      }
    }
    pieces.sort(Comparator.comparingDouble(piece -> -piece.shape().area()));
    return pieces;
  }

  private static boolean takes(Remnant remnant, Silhouette shape, Fabric.Nap nap) {
    return remnant.takes(shape) || (nap == Fabric.Nap.EITHER_WAY && remnant.takes(shape.turned()));
  }

  /** Those of which every copy finds room, the largest first, each where the others leave it. */
  private static List<String> fitting(List<ClothPiece> pieces, YardageRow row, Remnant remnant) {
    Map<String, Boolean> all = new LinkedHashMap<>();
    for (ClothPiece piece : pieces) {
      boolean fits = all.getOrDefault(piece.name(), true);
      for (int copy = 0; copy < piece.count() && fits; copy++) {
        Silhouette shape = copy < piece.asDrawn() ? piece.shape() : piece.shape().mirrored();
        fits =
            takes(remnant, shape, row.nap())
                || (row.fabric().sidesAlike() && takes(remnant, shape.mirrored(), row.nap()));
      }
      all.put(piece.name(), fits);
    }
    return all.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey).toList();
  }
}
