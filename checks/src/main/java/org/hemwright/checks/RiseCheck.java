package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * The rise of trousers, from the fork up to the top of the waist, is no shorter than the body's
 * (handbook section 1, "body rise"), but as far as the cloth stretches along with comfort. Asked
 * where the chart has {@code body_rise}.
 */
record RiseCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "rise";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    OptionalDouble body = BodyMeasurement.of("body_rise", sized, pattern);
    List<Finding> findings = new ArrayList<>();
    if (body.isPresent()) {
      for (GarmentRise rise : GarmentRise.of(sized)) {
        judge(rise, body.getAsDouble(), pattern).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private Optional<Finding> judge(GarmentRise rise, double body, Pattern pattern) {
    Piece piece = rise.piece();
    double along =
        piece.grain().map(grain -> Cloth.stretch(piece, grain.direction(), pattern)).orElse(0.0);
    double wanted = (body + settings.wear().riseLeast()) / (1 + along * settings.wear().comfort());
    double missing = wanted - rise.length();
    if (missing <= settings.sewing().seamWarn()) {
      return Optional.empty();
    }
    Finding.Builder finding = Finding.fail(id(), piece.name() + "." + rise.edge().name());
    if (along > 0) {
      finding
          .with("needed", Argument.of(Quantity.ratio(body / rise.length() - 1)))
          .with("along", Argument.of(Quantity.ratio(along * settings.wear().comfort())));
    }
    return Optional.of(
        finding
            .with("piece", piece.name())
            .with("rise", Argument.mm(rise.length()))
            .with("body", Argument.mm(body))
            .with("by", Argument.mm(missing))
            .values(rise.length(), wanted, "mm")
            .at(Place.on(rise.edge().origin(), piece.name(), rise.fork()))
            .build()
            .as(missing > settings.wear().riseFail() ? Status.FAIL : Status.WARN));
  }
}
