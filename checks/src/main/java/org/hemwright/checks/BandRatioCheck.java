package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.Seam;

/**
 * A band or cuff has the right share of its opening: a knit band that holds by itself is shorter
 * than the edge it is sewn to, as far as its cloth stretches; a casing for elastic is as long as
 * the edge, and the elastic does the holding (handbook section 4, "Band length").
 */
record BandRatioCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "band-ratio";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      Seam.Join join = seam.joins().get(0);
      if (join.layers().size() == 2) {
        for (int i = 0; i < 2; i++) {
          Band.of(join.layers().get(i), join.layers().get(1 - i), sized)
              .flatMap(band -> judge(seam, band, sized, pattern))
              .ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  /**
   * A straight strip, closed to a loop, on an edge.
   *
   * @param length of its edge (mm)
   * @param opening of the edge that it is sewn to (mm)
   */
  private record Band(
      Piece piece, Seam.Layer layer, Seam.Layer other, double length, double opening) {
    static Optional<Band> of(Seam.Layer layer, Seam.Layer other, SizedPattern sized) {
      Optional<Piece> piece = sized.piece(layer.run().get(0).piece());
      boolean own =
          other.run().stream().anyMatch(p -> p.piece().equals(layer.run().get(0).piece()));
      if (piece.isEmpty()
          || own
          || !LengthenCheck.isStrip(piece.get())
          || !SewnLoop.isOneEdge(layer, sized)) {
        return Optional.empty();
      }
      double length = LayerWalk.of(layer, sized).length();
      double opening = LayerWalk.of(other, sized).length();
      return length > 0 && opening > 0
          ? Optional.of(new Band(piece.get(), layer, other, length, opening))
          : Optional.empty();
    }

    double ratio() {
      return length / opening;
    }

    /** The way along it on its drawing. */
    Vector direction() {
      Path path = piece.edge(layer.run().get(0).edge()).orElseThrow().path();
      return path.end().minus(path.start());
    }
  }

  private Optional<Finding> judge(Seam seam, Band band, SizedPattern sized, Pattern pattern) {
    WearLimits limits = settings.wear();
    boolean casing = sized.elastics().stream().anyMatch(e -> e.piece().equals(band.piece().name()));
    if (casing) {
      boolean off = Math.abs(band.ratio() - 1) > limits.casingOff();
      return off ? Optional.of(problem("band-casing", seam, band, 1, sized)) : Optional.empty();
    }
    if (!Cloth.isKnit(band.piece(), pattern)) {
      return Optional.empty();
    }
    double needed = 1 / band.ratio() - 1;
    double stretch = Cloth.stretch(band.piece(), band.direction(), pattern);
    double most = limits.bandStretch() * stretch;
    if (stretch > 0 && needed > most + limits.rounding()) {
      return Optional.of(problem("band-stretch", seam, band, 1 / (1 + most), sized));
    } else if (band.ratio() < limits.bandLeast() - limits.rounding()) {
      return Optional.of(problem("band-short", seam, band, limits.bandLeast(), sized));
    } else if (band.ratio() > limits.bandMost() + limits.rounding()) {
      return Optional.of(problem("band-slack", seam, band, limits.bandMost(), sized));
    }
    return Optional.empty();
  }

  private Finding problem(String code, Seam seam, Band band, double wanted, SizedPattern sized) {
    Finding.Builder finding =
        Finding.fail(code, "seam " + seam.name())
            .with("seam", seam.name())
            .with("band", band.layer().text())
            .with("edge", band.other().text())
            .with("length", Argument.mm(band.length()))
            .with("opening", Argument.mm(band.opening()))
            .with("ratio", Argument.of(Quantity.ratio(band.ratio())))
            .with("wanted", Argument.of(Quantity.ratio(wanted)))
            .with("needed", Argument.of(Quantity.ratio(Math.max(0, 1 / band.ratio() - 1))))
            .with("other_length", Argument.mm(wanted * band.opening()))
            .values(100 * band.ratio(), 100 * wanted, "%");
    LayerWalk.spot(band.layer(), sized, band.length() / 2)
        .ifPresent(spot -> finding.at(Place.on(seam.origin(), spot.place().piece(), spot.point())));
    boolean slack = code.equals("band-slack");
    return finding.build().as(slack ? Status.WARN : Status.FAIL);
  }
}
