package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.EdgePlace;
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

  /** A sleeve or a leg that a seam closes to a tube hangs along its grain. */
  private Optional<Finding> tube(Seam seam, SizedPattern sized) {
    Seam.Join join = seam.joins().get(0);
    if (join.layers().size() != 2
        || join.layers().stream().anyMatch(layer -> layer.run().size() > 1)) {
      return Optional.empty();
    }
    EdgePlace first = join.layers().get(0).run().get(0);
    EdgePlace second = join.layers().get(1).run().get(0);
    Optional<Piece> piece = sized.piece(first.piece());
    Optional<Edge> one = piece.flatMap(own -> own.edge(first.edge()));
    Optional<Edge> other = piece.flatMap(own -> own.edge(second.edge()));
    if (!first.piece().equals(second.piece())
        || first.edge().equals(second.edge())
        || one.isEmpty()
        || other.isEmpty()
        || piece.get().grain().isEmpty()
        || one.get().path().length() < settings.making().lengthenFrom()) {
      return Optional.empty();
    }
    Vector up = chord(one.get().path()).unit();
    Vector down = chord(other.get().path()).unit();
    Grain grain = piece.get().grain().get();
    double off =
        Math.min(Cloth.between(up, grain.direction()), Cloth.between(down, grain.direction()));
    if (depth(piece.get(), one.get().path()) <= settings.making().bandDepth()) {
      return Optional.empty();
    }
    // The halves of a circle that one seam closes run the same way round: they are no tube.
    boolean closes = up.dot(down) < -StrictMath.cos(ALONG);
    return closes && off > Math.PI / 2 - ALONG
        ? Optional.of(
            Finding.warn("grain-across", piece.get().name())
                .with("piece", piece.get().name())
                .with("seam", seam.name())
                .with("off", Argument.of(Quantity.angle(off)))
                .values(Math.toDegrees(off), 0, "deg")
                .at(Place.on(grain.origin(), piece.get().name(), grain.from()))
                .build())
        : Optional.empty();
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

  /** A piece and its facing, drawn the same way up, have one grain. */
  private void facings(Seam seam, SizedPattern sized, List<Finding> findings) {
    List<EdgePlace> places =
        seam.joins().get(0).layers().stream().flatMap(layer -> layer.run().stream()).toList();
    for (int i = 0; i < places.size(); i++) {
      for (EdgePlace other : places.subList(i + 1, places.size())) {
        facing(seam, places.get(i), other, sized).ifPresent(findings::add);
      }
    }
  }

  private Optional<Finding> facing(
      Seam seam, EdgePlace first, EdgePlace second, SizedPattern sized) {
    Optional<Piece> here = sized.piece(first.piece());
    Optional<Piece> there = sized.piece(second.piece());
    Optional<Edge> one = here.flatMap(p -> p.edge(first.edge()));
    Optional<Edge> other = there.flatMap(p -> p.edge(second.edge()));
    if (one.isEmpty()
        || other.isEmpty()
        || first.piece().equals(second.piece())
        || here.get().grain().isEmpty()
        || there.get().grain().isEmpty()
        || !isSameCurve(here.get(), one.get(), there.get(), other.get())) {
      return Optional.empty();
    }
    Grain own = here.get().grain().get();
    Grain mate = there.get().grain().get();
    double off = Cloth.between(own.direction(), mate.direction());
    return off <= settings.making().grainApart()
        ? Optional.empty()
        : Optional.of(
            Finding.warn("grain-facing", there.get().name())
                .with("piece", there.get().name())
                .with("other", here.get().name())
                .with("seam", seam.name())
                .with("off", Argument.of(Quantity.angle(off)))
                .values(Math.toDegrees(off), 0, "deg")
                .at(Place.on(mate.origin(), there.get().name(), mate.from()))
                .build());
  }

  /** Whether two edges are curved, sewn to one length and drawn the same way up. */
  private static boolean isSameCurve(Piece here, Edge one, Piece there, Edge other) {
    boolean curved =
        one.path().length() - chord(one.path()).length() > SAME
            && other.path().length() - chord(other.path()).length() > SAME;
    boolean alike =
        Math.abs(here.sewnLength(one) - there.sewnLength(other)) <= SAME
            && Cloth.between(chord(one.path()), chord(other.path())) <= WAY;
    return curved && alike;
  }

  /** What is laid on a piece, as a pocket is, lies on its grain or on the bias. */
  private Optional<Finding> patch(Seam seam, SizedPattern sized) {
    Seam.Join join = seam.joins().get(0);
    Optional<Patch> laid = Patch.of(join, sized);
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

  /**
   * A piece sewn onto a placement line of another.
   *
   * @param grain of the patch
   * @param off the angle between the grains as they lie on each other
   */
  private record Patch(Piece patch, Piece under, Grain grain, double off) {
    /** Ends closer than this do not tell which way it lies (mm). */
    private static final double TELLING = 20;

    static Optional<Patch> of(Seam.Join join, SizedPattern sized) {
      for (Seam.Layer layer : join.layers()) {
        EdgePlace place = layer.run().get(0);
        Optional<Piece> under = sized.piece(place.piece());
        Optional<Mark.Placement> line =
            under.stream()
                .flatMap(piece -> piece.marks(Mark.Placement.class).stream())
                .filter(mark -> mark.name().equals(place.edge()))
                .findFirst();
        Optional<Seam.Layer> other =
            join.layers().stream().filter(each -> !each.equals(layer)).findFirst();
        if (layer.run().size() == 1 && line.isPresent() && other.isPresent()) {
          return onto(under.get(), line.get(), other.get(), sized);
        }
      }
      return Optional.empty();
    }

    private static Optional<Patch> onto(
        Piece under, Mark.Placement line, Seam.Layer laid, SizedPattern sized) {
      Optional<Piece> patch = sized.piece(laid.run().get(0).piece());
      Optional<Grain> grain = patch.flatMap(Piece::grain);
      Vector there = chord(line.path());
      if (grain.isEmpty() || under.grain().isEmpty() || there.length() < TELLING) {
        return Optional.empty();
      }
      List<Path> run =
          laid.run().stream()
              .flatMap(place -> patch.get().edge(place.edge()).stream())
              .map(Edge::path)
              .toList();
      Optional<Vector> here = ends(run);
      return here.map(
          own ->
              new Patch(
                  patch.get(),
                  under,
                  grain.get(),
                  Math.abs(
                      Cloth.between(own, grain.get().direction())
                          - Cloth.between(there, under.grain().get().direction()))));
    }

    /** From one end of some edges that follow on each other to the other end. */
    private static Optional<Vector> ends(List<Path> run) {
      List<Point> free = new ArrayList<>();
      for (Path path : run) {
        for (Point end : List.of(path.start(), path.end())) {
          if (!free.removeIf(known -> known.distanceTo(end) <= Tolerance.DRAWN_LENGTH)) {
            free.add(end);
          }
        }
      }
      return free.size() == 2 && free.get(0).distanceTo(free.get(1)) >= TELLING
          ? Optional.of(free.get(1).minus(free.get(0)))
          : Optional.empty();
    }
  }

  private static Vector chord(Path path) {
    return path.end().minus(path.start());
  }
}
