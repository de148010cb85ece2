package org.hemwright.pattern.piece;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;

/**
 * One piece in one size, as drawn: a half where it has a fold edge.
 *
 * <p>All coordinates are millimetres in the piece's own plane, x right and y up. The stitch line
 * runs counter-clockwise and is the edges' paths end to end. The cut line is not held but derived:
 * see {@link CutLine}.
 *
 * @param card what it says of itself
 * @param stitchLine closed, counter-clockwise
 * @param edges round the stitch line, at least two, names all different
 * @param corners one for each edge: corner i is where edge i begins
 * @param notches in the order of the document
 * @param grain its grain arrow; a check asks for it where it is absent
 * @param marks what else is drawn on it, in the order of the document
 * @param openings the names of edges that the body passes through when the garment goes on
 * @param stackPoint where all sizes coincide in the nest
 * @param intakes darts, pleats and gathers on its edges, in the order of the document
 * @param bodyOpenings the edges that the body passes through, with what each must pass
 */
public record Piece(
    PieceCard card,
    Outline stitchLine,
    List<Edge> edges,
    List<Corner> corners,
    List<Notch> notches,
    Optional<Grain> grain,
    List<Mark> marks,
    List<String> openings,
    Point stackPoint,
    List<Intake> intakes,
    List<BodyOpening> bodyOpenings) {
  public Piece {
    edges = List.copyOf(edges);
    corners = List.copyOf(corners);
    notches = List.copyOf(notches);
    marks = List.copyOf(marks);
    openings = List.copyOf(openings);
    intakes = List.copyOf(intakes);
    bodyOpenings = List.copyOf(bodyOpenings);
    if (edges.size() < 2 || corners.size() != edges.size()) {
      throw new IllegalArgumentException(
          "a piece has two edges or more and a corner for each: " + card.name());
    }
  }

  /** A piece without darts, pleats and gathers, whose openings say only which edges they are. */
  public Piece(
      PieceCard card,
      Outline stitchLine,
      List<Edge> edges,
      List<Corner> corners,
      List<Notch> notches,
      Optional<Grain> grain,
      List<Mark> marks,
      List<String> openings,
      Point stackPoint) {
    this(
        card,
        stitchLine,
        edges,
        corners,
        notches,
        grain,
        marks,
        openings,
        stackPoint,
        List.of(),
        List.of());
  }

  /** The same piece, with the darts, pleats, gathers and body openings given. */
  public Piece with(List<Intake> takenIn, List<BodyOpening> passed) {
    return new Piece(
        card,
        stitchLine,
        edges,
        corners,
        notches,
        grain,
        marks,
        openings,
        stackPoint,
        takenIn,
        passed);
  }

  /** The same piece, with the darts, pleats, gathers and body openings of another. */
  public Piece sewnAs(Piece other) {
    return with(other.intakes, other.bodyOpenings);
  }

  /** The piece's name in the document. */
  public String name() {
    return card.name();
  }

  /** The edge of that name. */
  public Optional<Edge> edge(String name) {
    for (Edge edge : edges) {
      if (edge.name().equals(name)) {
        return Optional.of(edge);
      }
    }
    return Optional.empty();
  }

  /** An edge of the piece as it is sewn, told in the direction of its path. */
  public SewnEdge sewn(Edge edge) {
    return SewnEdge.of(this, edge);
  }

  /** The length of an edge as it is sewn (mm): darts and pleats closed, gathers drawn up. */
  public double sewnLength(Edge edge) {
    return intakes.isEmpty() ? edge.path().length() : sewn(edge).length();
  }

  /** The intakes of one kind, in order. */
  public <I extends Intake> List<I> intakes(Class<I> kind) {
    return intakes.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** The fold edge, if the drawing is a half. */
  public Optional<Edge> foldEdge() {
    return edges.stream().filter(Edge::onFold).findFirst();
  }

  /** The marks of one kind, in order. */
  public <M extends Mark> List<M> marks(Class<M> kind) {
    return marks.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
