package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.piece.Piece;

/**
 * A term of a seam whose names are known.
 *
 * @param term as written
 * @param parts the cut parts that have its edge
 * @param edge the edge's index in the outline's order; −1 for a placement line
 */
record Sought(SeamRequest.Term term, List<CutPart> parts, int edge) {
  Sought {
    parts = List.copyOf(parts);
  }

  /** The index of the edge of that name, or −1. */
  static int edgeIndex(Piece piece, String name) {
    for (int i = 0; i < piece.edges().size(); i++) {
      if (piece.edges().get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** Whether it names a placement line, which lies inside its piece. */
  boolean placed() {
    return edge < 0;
  }

  /** Whether it takes the whole edge from corner to corner. */
  boolean whole() {
    return term.from().isEmpty() && term.to().isEmpty();
  }

  /** Whether the walk along it starts at a corner, not at a notch. */
  boolean startsAtCorner() {
    return !placed() && (term.reversed() ? term.to() : term.from()).isEmpty();
  }

  /** Whether the walk along it ends at a corner. */
  boolean endsAtCorner() {
    return !placed() && (term.reversed() ? term.from() : term.to()).isEmpty();
  }

  /** Where the walk along it starts on a part. */
  EdgeEnd start(CutPart part) {
    return new EdgeEnd(part, edge, term.reversed() != part.edge(edge).reversed());
  }

  /** Whether an end is of this edge on one of the parts. */
  boolean has(EdgeEnd end) {
    return end.edge() == edge && parts.contains(end.part());
  }

  /** The same edge walked the other way. */
  Sought turned() {
    return new Sought(term.turned(), parts, edge);
  }

  /** Its place on a part, as written. */
  EdgePlace place(CutPart part) {
    return new EdgePlace(
        part.piece().name(),
        part.copy().name(),
        part.half(),
        term.edge(),
        term.from(),
        term.to(),
        term.reversed());
  }

  /** A strand for each part. */
  List<Strand> alone(JoinedEnds joined) {
    List<Strand> strands = new ArrayList<>();
    for (CutPart part : parts) {
      int hand = placed() ? 0 : start(part).hand();
      boolean ring =
          !placed() && whole() && closes(joined, start(part).otherEnd(), start(part)).isPresent();
      strands.add(new Strand(List.of(place(part)), List.of(part), hand, ring));
    }
    return strands;
  }

  /** The start of a walk, where it lies round the corner from the walk's end. */
  static Optional<EdgeEnd> closes(JoinedEnds joined, EdgeEnd end, EdgeEnd start) {
    return joined.round(end, start::equals);
  }
}
