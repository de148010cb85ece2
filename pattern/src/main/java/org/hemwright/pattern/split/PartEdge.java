package org.hemwright.pattern.split;

import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.Edge;

/**
 * An edge of a part.
 *
 * @param edge the edge, as the part has it
 * @param source which stretch of the whole piece's edge it is; absent along a cut
 */
record PartEdge(Edge edge, Optional<Source> source) {
  /** All of an edge of the whole piece. */
  static PartEdge whole(Edge edge) {
    return new PartEdge(edge, Optional.of(Source.all(edge.name(), edge.path())));
  }

  /** A new edge, along a cut. */
  static PartEdge cut(Edge edge) {
    return new PartEdge(edge, Optional.empty());
  }

  Path path() {
    return edge.path();
  }

  /** What lies between two places along it (mm). */
  PartEdge part(double from, double to) {
    if (from == 0 && to >= path().length()) {
      return this;
    }
    return new PartEdge(
        with(edge.name(), path().part(from, to)), source.map(own -> own.part(from, to)));
  }

  PartEdge named(String name) {
    return new PartEdge(with(name, path()), source);
  }

  private Edge with(String name, Path path) {
    return new Edge(name, path, edge.onFold(), edge.allowance(), edge.reversed(), edge.origin());
  }

  /** Where the designer's own drawing of it begins. */
  Point drawnStart() {
    return edge.reversed() ? path().end() : path().start();
  }

  /** Whether it is a stretch of that edge of the whole piece. */
  boolean isOf(String wholeEdge) {
    return source.filter(own -> own.edge().equals(wholeEdge)).isPresent();
  }

  /** Whether both are stretches of one edge. */
  boolean isOfSameEdge(PartEdge other) {
    return source.map(Source::edge).equals(other.source.map(Source::edge))
        && edge.name().equals(other.edge.name());
  }
}
