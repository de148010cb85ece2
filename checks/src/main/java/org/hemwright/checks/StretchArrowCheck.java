package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * A piece cut from a knit shows which way it stretches most: across the grain, unless its cloth
 * stretches more along; and that way goes round the body (handbook section 1, "Grain"). A woven
 * piece shows none.
 */
record StretchArrowCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "stretch-arrow";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      Optional<Fabric> fabric =
          piece.card().cuts().stream()
              .limit(1)
              .flatMap(cut -> pattern.fabric(cut.fabric()).stream())
              .findFirst();
      fabric.ifPresent(cloth -> judge(piece, cloth, sized, findings));
    }
    return findings;
  }

  private void judge(Piece piece, Fabric fabric, SizedPattern sized, List<Finding> findings) {
    List<Mark.Stretch> arrows = piece.marks(Mark.Stretch.class);
    boolean knit = fabric.kind() == Fabric.Kind.KNIT;
    if (!knit || arrows.isEmpty()) {
      if (knit == arrows.isEmpty()) {
        findings.add(
            Finding.warn(knit ? "stretch-arrow" : "stretch-woven", piece.name())
                .with("piece", piece.name())
                .with("fabric", fabric.name())
                .at(arrows.isEmpty() ? piece.card().origin() : arrows.get(0).origin())
                .build());
      }
      return;
    }
    Mark.Stretch arrow = arrows.get(0);
    boolean across = fabric.stretchAcross().orElse(0) >= fabric.stretchAlong().orElse(0);
    piece
        .grain()
        .ifPresent(
            grain -> {
              double off = Cloth.between(arrow.direction(), grain.direction());
              double wanted = across ? Math.PI / 2 : 0;
              if (Math.abs(off - wanted) > settings.making().arrowOff()) {
                findings.add(
                    Finding.warn(across ? "stretch-along" : "stretch-across", piece.name())
                        .with("piece", piece.name())
                        .with("fabric", fabric.name())
                        .with("angle", Argument.of(Quantity.angle(off)))
                        .values(Math.toDegrees(off), Math.toDegrees(wanted), "deg")
                        .at(Place.on(arrow.origin(), piece.name(), grain.from()))
                        .build());
              } else {
                round(piece, arrow, sized, findings);
              }
            });
  }

  /** Levels lie across the drawing, and so must the stretch; a ring stretches along itself. */
  private static void round(
      Piece piece, Mark.Stretch arrow, SizedPattern sized, List<Finding> findings) {
    Optional<Vector> round =
        piece.marks(Mark.Level.class).isEmpty()
            ? ring(piece, sized)
            : Optional.of(new Vector(1, 0));
    round
        .filter(direction -> Cloth.between(arrow.direction(), direction) > Math.PI / 4)
        .ifPresent(
            direction ->
                findings.add(
                    Finding.warn("stretch-round", piece.name())
                        .with("piece", piece.name())
                        .at(Place.on(arrow.origin(), piece.name(), piece.corners().get(0).point()))
                        .build()));
  }

  private static Optional<Vector> ring(Piece piece, SizedPattern sized) {
    return sized.seams().stream()
        .flatMap(seam -> seam.joins().stream())
        .flatMap(join -> join.layers().stream())
        .filter(layer -> layer.run().get(0).piece().equals(piece.name()))
        .filter(layer -> SewnLoop.isOneEdge(layer, sized))
        .flatMap(layer -> piece.edge(layer.run().get(0).edge()).stream())
        .max(Comparator.comparingDouble(edge -> edge.path().length()))
        .map(edge -> edge.path().end().minus(edge.path().start()));
  }
}
