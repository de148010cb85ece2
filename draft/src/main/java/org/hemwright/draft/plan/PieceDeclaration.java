package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;

/**
 * A piece whose names are known and whose rules are still to be read.
 *
 * @param scope its names
 * @param outline the slot kept for its outline
 * @param edges its edges, in the designer's order
 */
record PieceDeclaration(
    Statement.PieceSection section, Scope scope, int outline, List<DeclaredEdge> edges) {
  PieceDeclaration {
    edges = List.copyOf(edges);
  }

  /**
   * An edge of it.
   *
   * @param slot the slot kept for its path, in the designer's direction
   */
  record DeclaredEdge(Name name, int slot) {}

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
