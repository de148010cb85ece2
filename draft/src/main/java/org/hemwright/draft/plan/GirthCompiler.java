package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.piece.GirthNode;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.SizeRange;

/** Turns {@code girth of panel at hip} into nodes. */
final class GirthCompiler {
  private final Compilation shared;
  private final Map<Scope, PieceDeclaration> pieces = new LinkedHashMap<>();

  GirthCompiler(Compilation shared) {
    this.shared = shared;
  }

  /** Lets a piece be measured. */
  void add(PieceDeclaration piece) {
    pieces.put(piece.scope(), piece);
  }

  /** The node of a girth. */
  Node node(Expression.GirthOf girth, Scope scope) {
    NodeList nodes = shared.nodes();
    Optional<List<Scope>> variants =
        shared.lookup().variants(girth.piece(), scope.sizes(), girth.piece().span());
    if (variants.isEmpty()) {
      return new Broken();
    }
    List<Integer> slots = new ArrayList<>();
    List<SizeRange> ranges = new ArrayList<>();
    Node last = new Broken();
    for (Scope variant : variants.get()) {
      PieceDeclaration piece = pieces.get(variant);
      if (piece == null) {
        shared
            .problems()
            .add(
                shared
                    .problems()
                    .at(girth.piece().span(), "girth-of-part")
                    .with("part", girth.piece().text()));
        return new Broken();
      }
      last = new GirthNode(piece.outline(), at(girth, variant, scope), times(piece.section()));
      slots.add(nodes.add(last, girth.span()));
      ranges.add(variant.sizes());
    }
    return slots.size() == 1 ? last : new ChoiceNode.BySize(slots, ranges);
  }

  /** A bare name is first looked for in the piece that is measured. */
  private int at(Expression.GirthOf girth, Scope measured, Scope from) {
    Reference at = girth.at();
    boolean inside =
        at.piece().isEmpty()
            && (measured.drawn().containsKey(at.name().text())
                || !from.drawn().containsKey(at.name().text()));
    return shared.lookup().point(at, inside ? measured : from);
  }

  /** How often the drawn width is there when all copies of the first cut are opened. */
  private static int times(Statement.PieceSection piece) {
    int count = 1;
    int halves = 1;
    boolean first = true;
    for (Statement line : piece.body()) {
      if (line instanceof Statement.Cut cut && first) {
        count = cut.count();
        first = false;
      } else if (line instanceof Statement.Fold) {
        halves = 2;
      }
    }
    return count * halves;
  }
}
