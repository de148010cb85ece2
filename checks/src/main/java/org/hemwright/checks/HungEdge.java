package org.hemwright.checks;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** A sewn edge of a piece that has a grain arrow. */
record HungEdge(Piece piece, Edge edge, Grain grain) {
  /** The edge at a place; nothing where it is none, or its piece has no arrow. */
  static Optional<HungEdge> at(EdgePlace place, SizedPattern sized) {
    return sized
        .piece(place.piece())
        .flatMap(
            piece ->
                piece
                    .edge(place.edge())
                    .flatMap(edge -> piece.grain().map(grain -> new HungEdge(piece, edge, grain))));
  }

  /** The two edges that a seam of two layers joins, where each is one edge of such a piece. */
  static Optional<Pair> joinedBy(Seam seam, SizedPattern sized) {
    List<Seam.Layer> layers = seam.joins().get(0).layers();
    if (layers.size() != 2 || layers.stream().anyMatch(layer -> layer.run().size() > 1)) {
      return Optional.empty();
    }
    Optional<HungEdge> one = at(layers.get(0).run().get(0), sized);
    Optional<HungEdge> other = at(layers.get(1).run().get(0), sized);
    return one.flatMap(first -> other.map(second -> new Pair(first, second)));
  }

  /** Two edges that are sewn together. */
  record Pair(HungEdge one, HungEdge other) {
    boolean isOfOnePiece() {
      return one.piece().name().equals(other.piece().name());
    }
  }

  double length() {
    return edge.path().length();
  }

  /** From where it begins to where it ends (mm). */
  Vector chord() {
    return edge.path().end().minus(edge.path().start());
  }

  /** By how much the grain leaves it (radians, 0 to π/2). */
  double offGrain() {
    return Cloth.between(chord(), grain.direction());
  }

  /** How far its piece reaches from it (mm): the depth of a cuff or a waistband. */
  double depth() {
    Vector square = chord().unit().left();
    double least = 0;
    double most = 0;
    for (Edge each : piece.edges()) {
      double at = each.path().start().minus(edge.path().start()).dot(square);
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  }

  /** Whether another is curved as this is: as long to within this (mm), drawn the same way up. */
  boolean isSameCurve(HungEdge other, double same, double way) {
    boolean curved =
        length() - chord().length() > same && other.length() - other.chord().length() > same;
    boolean alike =
        Math.abs(piece.sewnLength(edge) - other.piece.sewnLength(other.edge)) <= same
            && Cloth.between(chord(), other.chord()) <= way;
    return curved && alike;
  }
}
