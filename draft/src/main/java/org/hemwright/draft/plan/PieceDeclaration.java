package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.piece.Carried;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;

/**
 * A piece whose names are known and whose rules are still to be read.
 *
 * @param scope its names
 * @param drafted the slot kept for its outline as drafted; the outline's own where nothing shapes
 *     it
 * @param outline the slot kept for its outline
 * @param edges its edges, in the designer's order
 */
record PieceDeclaration(
    Statement.PieceSection section,
    Scope scope,
    int drafted,
    int outline,
    List<DeclaredEdge> edges) {
  PieceDeclaration {
    edges = List.copyOf(edges);
  }

  /**
   * An edge of it.
   *
   * @param slot the slot kept for its path, in the designer's direction
   */
  record DeclaredEdge(Name name, int slot) {}

  /** Whether its edges are told as sewn: it is shaped, or taken from another piece as it is. */
  boolean isShaped() {
    return isShaped(section);
  }

  /** Whether its edges are told as sewn. */
  static boolean isShaped(Statement.PieceSection piece) {
    return piece.body().stream().anyMatch(Statement.OutlineAs.class::isInstance) || isFolded(piece);
  }

  /** Whether lines of its own shape its outline after it is drafted. */
  boolean isFolded() {
    return isFolded(section);
  }

  private static boolean isFolded(Statement.PieceSection piece) {
    return piece.body().stream()
        .anyMatch(
            line ->
                line instanceof Statement.Dart
                    || line instanceof Statement.Pivot
                    || line instanceof Statement.Merge
                    || line instanceof Statement.Slash
                    || line instanceof Statement.Pleat
                    || line instanceof Statement.Gathers);
  }

  /** The slot of a drafted point where the shaped piece has it. */
  int carried(NodeList nodes, int point) {
    return isShaped() ? nodes.add(new Carried.OfPoint(outline, point), nodes.span(point)) : point;
  }

  /** The slot of a drafted line where the shaped piece has it. */
  int carriedLine(NodeList nodes, int path) {
    return isShaped() ? nodes.add(new Carried.OfPath(outline, path), nodes.span(path)) : path;
  }

  /** Whether an edge has no name of its own, but that of the line it takes. */
  boolean isNamedAsItsLine(int index) {
    DeclaredEdge edge = edges.get(index);
    Drawn drawn = scope.drawn().get(edge.name.text());
    return drawn != null && drawn.slot() != edge.slot;
  }

  /** The place of an edge in the list; -1 where there is none of that name. */
  int indexOf(String edge) {
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).name().text().equals(edge)) {
        return i;
      }
    }
    return -1;
  }
}
