package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.syntax.Name;
import org.hemwright.pattern.body.SizeRange;

/** Pieces from which others are made. */
final class PieceSources {
  private final Compilation shared;
  private final Map<Scope, PieceDeclaration> pieces = new LinkedHashMap<>();

  PieceSources(Compilation shared) {
    this.shared = shared;
  }

  /** Lets other pieces be made from a piece. */
  void add(PieceDeclaration piece) {
    pieces.put(piece.scope(), piece);
  }

  /**
   * A piece to make another from.
   *
   * @param outline the slot of its outline
   * @param edges the names of its edges, in the designer's order
   */
  record Source(int outline, List<String> edges) {
    Source {
      edges = List.copyOf(edges);
    }
  }

  /** The piece of a name, in the sizes of another; where there is none, it is told. */
  Optional<Source> find(Name name, Scope from, boolean drafted) {
    Optional<List<Scope>> variants = shared.lookup().variants(name, from.sizes(), name.span());
    if (variants.isEmpty()) {
      return Optional.empty();
    }
    List<Integer> slots = new ArrayList<>();
    List<SizeRange> ranges = new ArrayList<>();
    List<List<String>> names = new ArrayList<>();
    for (Scope variant : variants.get()) {
      PieceDeclaration piece = pieces.get(variant);
      if (piece == null) {
        tell(name, "copy-of-part", "part");
        return Optional.empty();
      }
      slots.add(drafted ? piece.drafted() : piece.outline());
      ranges.add(variant.sizes());
      names.add(piece.edges().stream().map(edge -> edge.name().text()).toList());
    }
    if (names.stream().distinct().count() > 1) {
      tell(name, "copy-variants-differ", "piece");
      return Optional.empty();
    }
    int slot =
        slots.size() == 1
            ? slots.get(0)
            : shared.nodes().add(new ChoiceNode.BySize(slots, ranges), name.span());
    return Optional.of(new Source(slot, names.get(0)));
  }

  private void tell(Name name, String code, String what) {
    shared
        .problems()
        .add(shared.problems().at(name.span(), code, name.text()).with(what, name.text()));
  }
}
