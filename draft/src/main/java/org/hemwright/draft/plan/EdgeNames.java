package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;

/** The names of the edges that a line of a piece gives, those of a copied outline among them. */
final class EdgeNames {
  /** Of a document without pieces. */
  static final EdgeNames NONE = new EdgeNames();

  private final Map<String, Statement.PieceSection> pieces = new LinkedHashMap<>();

  private EdgeNames() {}

  EdgeNames(Document document) {
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.PieceSection piece) {
        pieces.putIfAbsent(piece.name().text(), piece);
      }
    }
  }

  /** The names that a line gives; none where it gives none, or copies round in a ring. */
  List<Name> of(Statement line) {
    if (line instanceof Statement.Outline drawn) {
      return drawn.edges().stream().map(Statement.OutlineEdge::name).toList();
    } else if (line instanceof Statement.Rectangle rectangle) {
      return rectangle.edges();
    } else if (line instanceof Statement.OutlineTraced traced) {
      return traced.names();
    } else if (line instanceof Statement.Facing facing) {
      return facing.edges();
    } else if (line instanceof Statement.OutlineAs copy) {
      List<Name> names = new ArrayList<>();
      for (String name : copied(copy, new LinkedHashSet<>())) {
        names.add(new Name(name, copy.piece().span()));
      }
      return names;
    }
    return List.of();
  }

  private List<String> copied(Statement.OutlineAs copy, Set<String> seen) {
    Statement.PieceSection source = pieces.get(copy.piece().text());
    if (source == null || !seen.add(copy.piece().text())) {
      return List.of();
    }
    for (Statement line : source.body()) {
      List<String> names =
          line instanceof Statement.OutlineAs other
              ? copied(other, seen)
              : of(line).stream().map(Name::text).toList();
      if (!names.isEmpty()) {
        return names;
      }
    }
    return List.of();
  }
}
