package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Every piece has a grain arrow that lies on it; a piece on the fold has it along its fold, as
 * cloth is folded; and two pieces that a long seam joins hang on the same grain (handbook section
 * 1, "Grain"); a band across the end of a sleeve or a leg has its own along the seam (common
 * practice, no source).
 */
record GrainCheck(CheckSettings settings) implements EachSizeCheck {
  /** A seam hangs with the grain where it leaves it by less than this. */
  private static final double ALONG = Math.toRadians(35);

  @Override
  public String id() {
    return "grain";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      if (piece.grain().isEmpty()) {
        findings.add(
            Finding.fail(id(), piece.name())
                .with("piece", piece.name())
                .at(piece.card().origin())
                .build());
      } else {
        onPiece(piece, piece.grain().get()).ifPresent(findings::add);
        alongFold(piece, piece.grain().get()).ifPresent(findings::add);
      }
    }
    for (Seam seam : sized.seams()) {
      mates(seam, sized).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> onPiece(Piece piece, Grain grain) {
    boolean lies =
        List.of(grain.from(), grain.to(), grain.from().toward(grain.to(), 0.5)).stream()
            .anyMatch(
                point ->
                    piece.stitchLine().contains(point)
                        || piece.stitchLine().path().nearest(point).point().distanceTo(point)
                            <= Tolerance.DRAWN_LENGTH);
    return lies
        ? Optional.empty()
        : Optional.of(
            Finding.warn("grain-beside", piece.name())
                .with("piece", piece.name())
                .at(Place.on(grain.origin(), piece.name(), grain.from()))
                .build());
  }

  private Optional<Finding> alongFold(Piece piece, Grain grain) {
    Optional<Edge> fold = piece.foldEdge();
    if (fold.isEmpty() || !piece.card().onFold()) {
      return Optional.empty();
    }
    double off = Cloth.between(fold.get().path().startDirection(), grain.direction());
    return off <= settings.sewing().angleWarn()
        ? Optional.empty()
        : Optional.of(
            Finding.warn("grain-fold", piece.name())
                .with("piece", piece.name())
                .with("fold", fold.get().name())
                .with("angle", Argument.of(Quantity.angle(off)))
                .values(Math.toDegrees(off), 0, "deg")
                .at(Place.on(grain.origin(), piece.name(), grain.from()))
                .build());
  }

  /** Of two pieces joined along the grain, the second's hangs by the seam as the first's does. */
  private Optional<Finding> mates(Seam seam, SizedPattern sized) {
    Seam.Join join = seam.joins().get(0);
    if (join.layers().size() != 2
        || join.layers().stream().anyMatch(layer -> layer.run().size() > 1)) {
      return Optional.empty();
    }
    EdgePlace first = join.layers().get(0).run().get(0);
    EdgePlace second = join.layers().get(1).run().get(0);
    Optional<Piece> here = sized.piece(first.piece());
    Optional<Piece> there = sized.piece(second.piece());
    if (here.isEmpty() || there.isEmpty() || first.piece().equals(second.piece())) {
      return Optional.empty();
    }
    Optional<Edge> one = here.get().edge(first.edge());
    Optional<Edge> other = there.get().edge(second.edge());
    if (one.isEmpty()
        || other.isEmpty()
        || here.get().grain().isEmpty()
        || there.get().grain().isEmpty()
        || one.get().path().length() < settings.making().lengthenFrom()) {
      return Optional.empty();
    }
    double own = Cloth.between(chord(one.get().path()), here.get().grain().get().direction());
    double mate = Cloth.between(chord(other.get().path()), there.get().grain().get().direction());
    double off = Math.abs(own - mate);
    if (Math.min(own, mate) > ALONG || off <= settings.making().grainApart()) {
      return Optional.empty();
    }
    Piece told = own > mate ? here.get() : there.get();
    Piece like = own > mate ? there.get() : here.get();
    Path along = own > mate ? other.get().path() : one.get().path();
    boolean across = Math.max(own, mate) > Math.PI / 2 - ALONG;
    if (across && depth(like, along) <= settings.making().bandDepth()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn("grain-mates", told.name())
            .with("piece", told.name())
            .with("other", like.name())
            .with("seam", seam.name())
            .with("here", Argument.of(Quantity.angle(Math.max(own, mate))))
            .with("there", Argument.of(Quantity.angle(Math.min(own, mate))))
            .values(Math.toDegrees(Math.max(own, mate)), Math.toDegrees(Math.min(own, mate)), "deg")
            .at(Place.on(told.grain().get().origin(), told.name(), told.grain().get().from()))
            .build());
  }

  /** How far a piece reaches from one of its edges (mm): the depth of a cuff or a waistband. */
  private static double depth(Piece piece, Path edge) {
    Vector square = chord(edge).unit().left();
    double least = 0;
    double most = 0;
    for (Edge other : piece.edges()) {
      double at = other.path().start().minus(edge.start()).dot(square);
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  }

  private static Vector chord(Path path) {
    return path.end().minus(path.start());
  }
}
