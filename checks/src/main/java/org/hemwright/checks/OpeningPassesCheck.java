package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.checks.OpeningRound.Kind;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * An opening, stretched as far as the stiffest of its cloth, its band and its seam allows, goes
 * over the largest part that it must pass (handbook section 4): a waist over the hip, a neck over
 * the head. A slit beside it adds both its sides. Asked only where the document says what it
 * passes, or the edge's name does, and the chart has that measurement. An elastic is asked about by
 * its own check.
 */
record OpeningPassesCheck(CheckSettings settings) implements EachSizeCheck {
  private static final Set<Kind> ASKED = Set.of(Kind.CLOTH, Kind.BAND, Kind.SEAM);

  @Override
  public String id() {
    return "opening-passes";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (View view : pattern.views()) {
      sized.elastics().stream()
          .filter(elastic -> view.pieces().contains(elastic.piece()))
          .flatMap(elastic -> unsaid(elastic, view, sized).stream())
          .forEach(findings::add);
      for (OpeningRound opening : OpeningRound.of(view, sized, pattern, settings)) {
        if (opening.body().isPresent()) {
          judge(opening, opening.body().getAsDouble()).ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  /** An elastic on edges of which the document does not say that a body goes through them. */
  private static Optional<Finding> unsaid(Elastic elastic, View view, SizedPattern sized) {
    Set<String> beside = new LinkedHashSet<>(Set.of(elastic.piece()));
    for (Seam seam : sized.seams()) {
      List<EdgePlace> places = SewnLoop.places(seam);
      if (places.stream().anyMatch(place -> place.piece().equals(elastic.piece()))) {
        places.stream().map(EdgePlace::piece).filter(view.pieces()::contains).forEach(beside::add);
      }
    }
    boolean said =
        beside.stream()
            .flatMap(name -> sized.piece(name).stream())
            .anyMatch(piece -> !piece.openings().isEmpty() || !piece.bodyOpenings().isEmpty());
    return said
        ? Optional.empty()
        : Optional.of(
            Finding.warn("opening-unsaid", "elastic " + elastic.name())
                .with("elastic", elastic.name())
                .with("pieces", Argument.of(List.copyOf(beside)))
                .at(elastic.origin())
                .build());
  }

  private Optional<Finding> judge(OpeningRound opening, double body) {
    OpeningRound.Holding stiffest = opening.stiffest(ASKED);
    double reach = opening.reach(stiffest);
    boolean fixed = stiffest.stretch() == 0;
    double wanted = fixed ? body + settings.wear().passWoven() : body;
    if (reach >= wanted - Tolerance.DRAWN_LENGTH) {
      return Optional.empty();
    }
    Piece first = opening.pieces().get(0);
    Edge edge = first.edge(opening.edge()).orElseThrow();
    Finding.Builder finding =
        Finding.fail(code(stiffest.kind(), fixed), "opening " + opening.edge());
    if (opening.slit() > 0) {
      finding
          .with("slit", Argument.mm(opening.slit()))
          .with("longer", Argument.mm(opening.slit() + (wanted - reach) / 2));
    }
    double needed = (wanted - 2 * opening.slit()) / stiffest.length() - 1;
    return Optional.of(
        finding
            .with("opening", opening.edge())
            .with(
                "pieces",
                Argument.of(opening.pieces().stream().map(Piece::name).distinct().toList()))
            .with("holding", stiffest.name())
            .with("part", opening.over())
            .with("length", Argument.mm(stiffest.length()))
            .with("body", Argument.mm(body))
            .with("reach", Argument.mm(reach))
            .with("wanted", Argument.mm(wanted))
            .with("stretch", Argument.of(Quantity.ratio(stiffest.stretch())))
            .with("needed", Argument.of(Quantity.ratio(Math.max(0, needed))))
            .values(reach, wanted, "mm")
            .at(
                Place.on(
                    edge.origin(), first.name(), edge.path().at(edge.path().length() / 2).point()))
            .build()
            .as(reach < body ? Status.FAIL : Status.WARN));
  }

  private static String code(Kind kind, boolean fixed) {
    return switch (kind) {
      case BAND -> "opening-band";
      case SEAM -> "opening-seam";
      case CLOTH, ELASTIC -> fixed ? "opening-fixed" : "opening-stretched";
    };
  }
}
