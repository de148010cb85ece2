package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Elastic;

/**
 * An elastic in one size with its casing and the body that it holds and passes: what the document
 * says; of one whereof nothing is said, by its name.
 *
 * @param piece whose casing holds it
 * @param round the measurement that it holds; blank where unsaid
 * @param held that measurement (mm)
 * @param over the measurement that it must pass; blank where unsaid
 * @param passed that measurement (mm)
 * @param stretch how far it can be counted on to stretch, as a share
 */
record HeldElastic(
    Elastic elastic,
    Piece piece,
    Optional<Casing> casing,
    String round,
    OptionalDouble held,
    String over,
    OptionalDouble passed,
    double stretch) {
  static List<HeldElastic> of(SizedPattern sized, Pattern pattern, CheckSettings settings) {
    List<HeldElastic> held = new ArrayList<>();
    for (Elastic elastic : sized.elastics()) {
      Optional<Piece> piece = sized.piece(elastic.piece());
      if (piece.isPresent()) {
        boolean unsaid = elastic.round().isEmpty() && elastic.over().isEmpty();
        boolean named = unsaid && elastic.name().contains("waist");
        String round = elastic.round().orElse(named ? "waist" : "");
        String over = elastic.over().orElse(named ? "hip" : "");
        held.add(
            new HeldElastic(
                elastic,
                piece.get(),
                Casing.of(piece.get(), elastic.edge(), sized),
                round,
                BodyMeasurement.of(round, sized, pattern),
                over,
                BodyMeasurement.of(over, sized, pattern),
                elastic.stretch().orElse(settings.wear().elasticStretch())));
      }
    }
    return held;
  }
}
