package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.Seam;

/**
 * Every piece has a grain arrow that lies on it; a piece on the fold has it along its fold, as
 * cloth is folded; two pieces that a long seam joins hang on the same grain (handbook section 1,
 * "Grain"), and so do a piece and its shaped facing (section 3, "same grain"), and a patch and what
 * it is laid on, but for the bias; what a long seam closes to a tube hangs along it; a band across
 * the end of a sleeve or a leg has its own along the seam (common practice, no source).
 */
record GrainCheck(CheckSettings settings) implements EachSizeCheck {
  /** A seam hangs with the grain where it leaves it by less than this. */
  private static final double ALONG = Math.toRadians(35);

  /** Edges that differ by no more are sewn to one length (mm). */
  private static final double SAME = 1;

  /** Edges that lie this far apart are drawn the same way up. */
  private static final double WAY = Math.toRadians(12);

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
      tube(seam, sized).ifPresent(findings::add);
      facings(seam, sized, findings);
      patch(seam, sized).ifPresent(findings::add);
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
    Optional<HungEdge.Pair> joined = HungEdge.joinedBy(seam, sized);
    if (joined.isEmpty() || joined.get().isOfOnePiece() || isShort(joined.get())) {
      return Optional.empty();
    }
    HungEdge one = joined.get().one();
    HungEdge other = joined.get().other();
    HungEdge told = one.offGrain() > other.offGrain() ? one : other;
    HungEdge like = one.offGrain() > other.offGrain() ? other : one;
    double here = told.offGrain();
    double there = like.offGrain();
    if (there > ALONG || here - there <= settings.making().grainApart()) {
      return Optional.empty();
    }
    boolean across = here > Math.PI / 2 - ALONG;
    if (across && like.depth() <= settings.making().bandDepth()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn("grain-mates", told.piece().name())
            .with("piece", told.piece().name())
            .with("other", like.piece().name())
            .with("seam", seam.name())
            .with("here", Argument.of(Quantity.angle(here)))
            .with("there", Argument.of(Quantity.angle(there)))
            .values(Math.toDegrees(here), Math.toDegrees(there), "deg")
            .at(arrow(told))
            .build());
  }

  /** A sleeve or a leg that a seam closes to a tube hangs along its grain. */
  private Optional<Finding> tube(Seam seam, SizedPattern sized) {
    Optional<HungEdge.Pair> joined = HungEdge.joinedBy(seam, sized);
    if (joined.isEmpty() || !joined.get().isOfOnePiece() || isShort(joined.get())) {
      return Optional.empty();
    }
    HungEdge one = joined.get().one();
    HungEdge other = joined.get().other();
    if (one.edge().name().equals(other.edge().name())
        || one.depth() <= settings.making().bandDepth()) {
      return Optional.empty();
    }
    // The halves of a circle that one seam closes run the same way round: they are no tube.
    boolean closes = one.chord().unit().dot(other.chord().unit()) < -StrictMath.cos(ALONG);
    double off = Math.min(one.offGrain(), other.offGrain());
    return closes && off > Math.PI / 2 - ALONG
        ? Optional.of(
            Finding.warn("grain-across", one.piece().name())
                .with("piece", one.piece().name())
                .with("seam", seam.name())
                .with("off", Argument.of(Quantity.angle(off)))
                .values(Math.toDegrees(off), 0, "deg")
                .at(arrow(one))
                .build())
        : Optional.empty();
  }

  private boolean isShort(HungEdge.Pair joined) {
    return joined.one().length() < settings.making().lengthenFrom();
  }

  private static Place arrow(HungEdge edge) {
    return Place.on(edge.grain().origin(), edge.piece().name(), edge.grain().from());
  }

  /** A piece and its facing, drawn the same way up, have one grain. */
  private void facings(Seam seam, SizedPattern sized, List<Finding> findings) {
    List<HungEdge> edges =
        seam.joins().get(0).layers().stream()
            .flatMap(layer -> layer.run().stream())
            .flatMap(place -> HungEdge.at(place, sized).stream())
            .toList();
    for (int i = 0; i < edges.size(); i++) {
      for (HungEdge other : edges.subList(i + 1, edges.size())) {
        facing(seam, edges.get(i), other).ifPresent(findings::add);
      }
    }
  }

  private Optional<Finding> facing(Seam seam, HungEdge one, HungEdge other) {
    String piece = one.piece().name();
    String facing = other.piece().name();
    double off = Cloth.between(one.grain().direction(), other.grain().direction());
    return piece.equals(facing)
            || !one.isSameCurve(other, SAME, WAY)
            || off <= settings.making().grainApart()
        ? Optional.empty()
        : Optional.of(
            Finding.warn("grain-facing", facing)
                .with("piece", facing)
                .with("other", piece)
                .with("seam", seam.name())
                .with("off", Argument.of(Quantity.angle(off)))
                .values(Math.toDegrees(off), 0, "deg")
                .at(arrow(other))
                .build());
  }

  /** What is laid on a piece, as a pocket is, lies on its grain or on the bias. */
  private Optional<Finding> patch(Seam seam, SizedPattern sized) {
    Seam.Join join = seam.joins().get(0);
    Optional<LaidPatch> laid = LaidPatch.of(join, sized);
    if (laid.isEmpty()) {
      return Optional.empty();
    }
    double off = laid.get().off();
    boolean onBias = Math.abs(off - Math.PI / 4) <= settings.making().arrowOff();
    return off <= settings.making().grainApart() || onBias
        ? Optional.empty()
        : Optional.of(
            Finding.warn("grain-patch", laid.get().patch().name())
                .with("piece", laid.get().patch().name())
                .with("other", laid.get().under().name())
                .with("seam", seam.name())
                .with("off", Argument.of(Quantity.angle(off)))
                .values(Math.toDegrees(off), 0, "deg")
                .at(
                    Place.on(
                        laid.get().grain().origin(),
                        laid.get().patch().name(),
                        laid.get().grain().from()))
                .build());
  }
}
