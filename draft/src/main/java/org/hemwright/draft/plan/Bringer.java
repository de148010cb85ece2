package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.plan.name.Drawn.What;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.node.PathNode;
import org.hemwright.draft.plan.node.PointNode;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.SizeRange;

/**
 * Brings the points and paths of a part or piece into another, moved, under their own names. What a
 * part has been brought it passes on.
 */
final class Bringer {
  private enum State {
    UNDER_WAY,
    DONE
  }

  private final Compilation shared;
  private final Compilers all;
  private final Declarer declared;
  private final IdentityHashMap<Scope, Statement.Section> sectionOf = new IdentityHashMap<>();
  private final IdentityHashMap<Scope, State> states = new IdentityHashMap<>();

  Bringer(Compilation shared, Compilers all, Declarer declared) {
    this.shared = shared;
    this.all = all;
    this.declared = declared;
  }

  /** Brings everything. */
  void bring() {
    for (Statement.Section section : declared.sections()) {
      sectionOf.put(declared.scope(section), section);
    }
    for (Statement.Section section : declared.sections()) {
      into(declared.scope(section));
    }
  }

  private void into(Scope scope) {
    Statement.Section section = sectionOf.get(scope);
    if (section == null || states.containsKey(scope)) {
      return;
    }
    states.put(scope, State.UNDER_WAY);
    for (Statement line : section.body()) {
      if (line instanceof Statement.Bring bring) {
        into(scope, bring);
      }
    }
    states.put(scope, State.DONE);
  }

  private void into(Scope scope, Statement.Bring bring) {
    Optional<List<Scope>> variants =
        shared.lookup().variants(bring.part(), scope.sizes(), bring.part().span());
    if (variants.isEmpty()) {
      scope.excuseAll();
      return;
    }
    for (Scope variant : variants.get()) {
      into(variant);
      if (states.get(variant) == State.UNDER_WAY) {
        shared
            .problems()
            .add(
                shared
                    .problems()
                    .at(bring.part().span(), "bring-round")
                    .with("part", bring.part().text())
                    .with("into", scope.name()));
        scope.excuseAll();
        return;
      }
    }
    shared.nodes().set(new NodeList.Setting(scope.sizes(), scope.name(), scope.name(), false));
    names(scope, bring, variants.get());
  }

  private void names(Scope scope, Statement.Bring bring, List<Scope> variants) {
    NodeList nodes = shared.nodes();
    Map<String, Drawn> moved = new LinkedHashMap<>();
    boolean alias = bring.moves().isEmpty() && variants.size() == 1;
    Map<String, Drawn> brought = new LinkedHashMap<>(variants.get(0).drawn());
    for (Map.Entry<String, Drawn> each : brought.entrySet()) {
      String name = each.getKey();
      Drawn drawn = each.getValue();
      if (drawn.what() == What.POINT || drawn.what() == What.PATH) {
        int slot = alias ? drawn.slot() : nodes.reserve(bring.span(), scope.full(name));
        Drawn before =
            scope
                .drawn()
                .putIfAbsent(
                    name, new Drawn(drawn.what(), slot, bring.part().span(), drawn.given()));
        if (before != null) {
          shared
              .problems()
              .add(
                  shared
                      .problems()
                      .at(bring.part().span(), "name-brought-twice", scope.full(name))
                      .with("name", name)
                      .with("part", bring.part().text())
                      .with("line", shared.problems().line(before.span())));
        }
        moved.put(name, new Drawn(drawn.what(), slot, bring.span(), drawn.given()));
      }
    }
    if (alias) {
      return;
    }
    int motion = all.moves().slot(bring.moves(), scope);
    moved.forEach((name, drawn) -> fill(scope, bring, variants, name, drawn, motion));
  }

  private void fill(
      Scope scope,
      Statement.Bring bring,
      List<Scope> variants,
      String name,
      Drawn target,
      int motion) {
    NodeList nodes = shared.nodes();
    nodes.about(scope.full(name));
    List<Integer> from = new ArrayList<>();
    List<SizeRange> ranges = new ArrayList<>();
    boolean point = target.what().isPoint();
    for (Scope variant : variants) {
      Drawn drawn = variant.drawn().get(name);
      if (drawn == null || drawn.what().isPoint() != point) {
        shared
            .problems()
            .add(
                shared
                    .problems()
                    .at(bring.part().span(), "name-in-some-sizes", scope.full(name))
                    .with("name", name)
                    .with("part", bring.part().text()));
        return;
      }
      from.add(drawn.slot());
      ranges.add(variant.sizes());
    }
    int still =
        from.size() == 1
            ? from.get(0)
            : nodes.add(new ChoiceNode.BySize(from, ranges), bring.span());
    Node moved;
    if (motion == Node.NONE) {
      moved = point ? new PointNode.Same(still) : new PathNode.Same(still);
    } else {
      moved = point ? new PointNode.Moved(still, motion) : new PathNode.Moved(still, motion);
    }
    nodes.fill(target.slot(), moved, bring.span());
  }
}
