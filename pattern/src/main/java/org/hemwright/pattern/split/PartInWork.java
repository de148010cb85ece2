package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/** A part of a piece while it is being cut: its edges round it, and what is drawn on it. */
record PartInWork(Piece whole, PartEdges edges, PartMarks marks) {
  /**
   * A part cut in two.
   *
   * @param first the one that holds the corner at which the part begins
   * @param trouble the code of what stands in the way
   */
  record Halves(PartInWork first, PartInWork second, Optional<String> trouble) {}

  /** A piece before any cut. */
  static PartInWork whole(Piece piece) {
    return new PartInWork(
        piece,
        new PartEdges(piece.edges().stream().map(PartEdge::whole).toList()),
        PartMarks.whole(piece));
  }

  /** Half of a piece that is drawn as a half: its fold is an edge to be sewn. */
  static PartInWork halfOnFold(Piece piece, Mark.Split split) {
    List<PartEdge> edges = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      PartEdge whole = PartEdge.whole(edge);
      if (edge.onFold()) {
        Edge opened =
            new Edge(
                split.name(),
                edge.path(),
                false,
                new Allowance.Plain(split.allowance()),
                edge.reversed(),
                split.origin());
        // a cut that bears the fold's own name still answers for the fold where seams name it
        boolean sameName = split.name().equals(edge.name());
        edges.add(sameName ? new PartEdge(opened, whole.source()) : PartEdge.cut(opened));
      } else {
        edges.add(whole);
      }
    }
    return new PartInWork(piece, new PartEdges(edges), PartMarks.whole(piece));
  }

  /** Cuts the part along a line; absent where the line does not run across it. */
  Optional<Halves> cut(Path line, Mark.Split split, int index) {
    Optional<PartEdges.Place> start = edges.place(line.start());
    Optional<PartEdges.Place> end = edges.place(line.end());
    if (start.isEmpty() || end.isEmpty() || !edges.isCrossedBy(line)) {
      return Optional.empty();
    }
    List<PartEdge> ahead = edges.between(start.get(), end.get());
    List<PartEdge> back = edges.between(end.get(), start.get());
    if (ahead.isEmpty() || back.isEmpty()) {
      return Optional.empty();
    }
    Optional<Path> fitted = fitted(line, ahead.get(0), back.get(0));
    if (fitted.isEmpty()) {
      return Optional.empty();
    }
    Path cut = fitted.get();
    String seam = Divided.seam(split, index);
    Allowance allowance = new Allowance.Plain(split.allowance());
    ahead.add(PartEdge.cut(new Edge(seam, cut.reversed(), false, allowance, true, split.origin())));
    back.add(PartEdge.cut(new Edge(seam, cut, false, allowance, false, split.origin())));
    // parts are counted along the piece as the designer drew it
    PartEdge lead = edges.edges().get(0);
    Predicate<PartEdge> same = lead::isOfSameEdge;
    Predicate<PartEdge> begins = same.and(edge -> edge.drawnStart().isAt(lead.drawnStart()));
    boolean beginsAhead = ahead.stream().anyMatch(begins);
    PartEdges first = PartEdges.ledBy(begins, beginsAhead ? ahead : back);
    PartEdges second = PartEdges.ledBy(same, beginsAhead ? back : ahead);
    boolean through = isInIntake(start.get()) || isInIntake(end.get());
    return Optional.of(
        new Halves(
            new PartInWork(whole, first, marks.on(first, cut)),
            new PartInWork(whole, second, marks.on(second, cut)),
            through ? Optional.of("split-through-intake") : Optional.empty()));
  }

  /** The line with its ends exactly where the edges were cut; absent where it falls short. */
  private static Optional<Path> fitted(Path line, PartEdge ahead, PartEdge back) {
    Point from = ahead.path().start();
    Point to = back.path().start();
    if (line.curves().size() == 1
        && line.length() - line.start().distanceTo(line.end()) <= Tolerance.NO_LENGTH) {
      return Optional.of(Path.straight(from, to));
    }
    return line.start().isAt(from) && line.end().isAt(to) ? Optional.of(line) : Optional.empty();
  }

  private boolean isInIntake(PartEdges.Place place) {
    Optional<Source> source = edges.edges().get(place.edge()).source();
    if (source.isEmpty()) {
      return false;
    }
    double at = source.get().from() + place.at();
    return whole.intakes().stream()
        .filter(intake -> intake.edge().equals(source.get().edge()))
        .anyMatch(
            intake ->
                at > intake.from() + Tolerance.DRAWN_LENGTH
                    && at < intake.to() - Tolerance.DRAWN_LENGTH);
  }

  /** Which stretches of the whole piece it holds, under the names that they have here. */
  List<PieceParts.Stretch> stretches(int part) {
    List<PieceParts.Stretch> all = new ArrayList<>();
    for (PartEdge edge : edges.numbered()) {
      edge.source().ifPresent(source -> all.add(stretch(source, part, edge.edge().name())));
    }
    for (PartMarks.Drawn drawn : marks.drawn()) {
      drawn.source().ifPresent(source -> all.add(stretch(source, part, source.edge())));
    }
    return all;
  }

  private static PieceParts.Stretch stretch(Source source, int part, String name) {
    return new PieceParts.Stretch(source.edge(), source.from(), source.to(), part, name);
  }
}
