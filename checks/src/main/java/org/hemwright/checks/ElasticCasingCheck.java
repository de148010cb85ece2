package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.Elastic;

/**
 * An elastic fits the depth of its casing, holds what it is for, and reaches over what it passes
 * (handbook section 4, "Elastic length" and "Casing depth").
 */
record ElasticCasingCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "elastic-casing";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (HeldElastic held : HeldElastic.of(sized, pattern, settings)) {
      held.casing().ifPresent(c -> depth(held.elastic(), held.piece(), c, findings));
      body(held, findings);
    }
    return findings;
  }

  private void depth(Elastic elastic, Piece piece, Casing casing, List<Finding> findings) {
    double clearance = casing.depth() - elastic.width();
    boolean low = clearance < settings.wear().casingLeast() - Tolerance.DRAWN_LENGTH;
    if (low || clearance > settings.wear().casingMost() + Tolerance.DRAWN_LENGTH) {
      double wanted =
          elastic.width() + (low ? settings.wear().casingLeast() : settings.wear().casingMost());
      findings.add(
          problem(low ? "casing-shallow" : "casing-deep", elastic, piece)
              .with("depth", Argument.mm(casing.depth()))
              .with("width", Argument.mm(elastic.width()))
              .with("wanted", Argument.mm(wanted))
              .values(casing.depth(), wanted, "mm")
              .at(elastic.origin())
              .at(Place.on(casing.edge().origin(), piece.name(), casing.point()))
              .build()
              .as(clearance < 0 ? Status.FAIL : Status.WARN));
    }
  }

  private void body(HeldElastic elasticHeld, List<Finding> findings) {
    Elastic elastic = elasticHeld.elastic();
    Piece piece = elasticHeld.piece();
    String held = elasticHeld.round();
    String passed = elasticHeld.over();
    OptionalDouble waist = elasticHeld.held();
    OptionalDouble hip = elasticHeld.passed();
    double reach = elasticHeld.stretch();
    double finished = elastic.finished();
    double most = settings.wear().overlapMost();
    if (elastic.overlap() > most + Tolerance.DRAWN_LENGTH) {
      findings.add(
          problem("elastic-overlap", elastic, piece)
              .with("overlap", Argument.mm(elastic.overlap()))
              .with("most", Argument.mm(most))
              .values(elastic.overlap(), most, "mm")
              .at(elastic.origin())
              .build()
              .as(Status.WARN));
    }
    if (waist.isPresent()) {
      boolean loose = finished > waist.getAsDouble() + settings.sewing().seamWarn();
      double least = waist.getAsDouble() * settings.wear().elasticLeast();
      if (loose || finished < least) {
        double wanted = loose ? waist.getAsDouble() : least;
        findings.add(
            problem(loose ? "elastic-loose" : "elastic-tight", elastic, piece)
                .with("finished", Argument.mm(finished))
                .with("held", held)
                .with("waist", Argument.mm(waist.getAsDouble()))
                .with("wanted", Argument.mm(wanted))
                .values(finished, wanted, "mm")
                .at(elastic.origin())
                .build()
                .as(loose ? Status.FAIL : Status.WARN));
      }
    }
    if (hip.isPresent() && finished * (1 + reach) < hip.getAsDouble()) {
      double needed = hip.getAsDouble() / finished - 1;
      findings.add(
          problem("elastic-reach", elastic, piece)
              .with("finished", Argument.mm(finished))
              .with("passed", passed)
              .with("hip", Argument.mm(hip.getAsDouble()))
              .with("needed", Argument.of(Quantity.ratio(needed)))
              .with("stretch", Argument.of(Quantity.ratio(reach)))
              .values(100 * needed, 100 * reach, "%")
              .at(elastic.origin())
              .build());
    }
  }

  private static Finding.Builder problem(String code, Elastic elastic, Piece piece) {
    return Finding.fail(code, "elastic " + elastic.name())
        .with("elastic", elastic.name())
        .with("piece", piece.name());
  }
}
