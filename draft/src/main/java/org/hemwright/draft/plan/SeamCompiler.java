package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.plan.node.EaseNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.piece.PlaceForm;
import org.hemwright.draft.plan.piece.SeamNotchNode;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Along;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.Statement.SeamClause;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.seam.SeamRequest;

/** Turns seams into plans, and the notches they put on all their layers into nodes. */
final class SeamCompiler {
  private final Compilation shared;
  private final Compilers all;
  private final NodeList nodes;
  private final Problems problems;
  private final List<PieceCompiler> pieces;

  /** The slots of notches that seams put on a piece, by its name. */
  private final Map<String, List<Integer>> notches = new LinkedHashMap<>();

  SeamCompiler(Compilation shared, Compilers all, List<PieceCompiler> pieces) {
    this.shared = shared;
    this.all = all;
    this.nodes = shared.nodes();
    this.problems = shared.problems();
    this.pieces = pieces;
  }

  /** The slots of the notches that seams put on a piece. */
  List<Integer> notchesOn(String piece) {
    return notches.getOrDefault(piece, List.of());
  }

  /** Compiles a seam; nothing where it names what is not there. */
  Optional<SeamPlan> compile(Statement.SeamSection seam) {
    nodes.set(new NodeList.Setting(shared.document().sizes(), "", seam.name().text(), false));
    boolean known = true;
    List<SeamRequest.Run> layers = new ArrayList<>();
    for (Statement.Run run : seam.layers()) {
      List<SeamRequest.Term> terms = new ArrayList<>();
      for (Statement.PlaceTerm term : run.places()) {
        known &= known(term);
        terms.add(term(term));
      }
      layers.add(new SeamRequest.Run(terms));
    }
    SeamPlan plan = clauses(seam, layers);
    if (known) {
      for (Statement line : seam.body()) {
        if (line instanceof Statement.SeamNotch notch) {
          notch(seam, notch);
        }
      }
    }
    return known && layers.size() > 1 ? Optional.of(plan) : Optional.empty();
  }

  private SeamRequest.Term term(Statement.PlaceTerm term) {
    return new SeamRequest.Term(
        term.every(),
        term.piece().text(),
        term.copy().map(Name::text),
        term.edge().text(),
        term.from().map(Name::text),
        term.to().map(Name::text),
        term.reversed(),
        problems.origin(term.span()));
  }

  /** Whether the piece and the edge that a term names are there; otherwise it is told. */
  private boolean known(Statement.PlaceTerm term) {
    List<Scope> named = shared.lookup().sections(term.piece().text());
    if (named.isEmpty()) {
      SizeRange none = shared.document().sizes();
      shared.lookup().variants(term.piece(), none, term.piece().span());
      return false;
    }
    boolean known = true;
    for (Scope scope : named) {
      List<Name> edges = sewn(scope);
      Optional<Name> edge =
          edges.stream().filter(each -> each.text().equals(term.edge().text())).findFirst();
      if (edge.isPresent()) {
        problems.used(edge.get().span());
      } else {
        known = false;
        tellNoEdge(term, scope, edges);
      }
    }
    return known;
  }

  /** The edges and placement lines of a piece. */
  private List<Name> sewn(Scope scope) {
    List<Name> sewn = new ArrayList<>();
    for (PieceCompiler piece : pieces) {
      if (piece.scope() == scope) {
        sewn.addAll(piece.edges());
      }
    }
    scope
        .drawn()
        .forEach(
            (name, each) -> {
              if (each.what() == Drawn.What.PLACEMENT) {
                sewn.add(new Name(name, each.given()));
              }
            });
    return sewn;
  }

  private void tellNoEdge(Statement.PlaceTerm term, Scope scope, List<Name> edges) {
    if (scope.excuses(term.edge().text()) || edges.isEmpty()) {
      return;
    }
    Unknown.tellNamed(problems, term.edge(), "edge-or-placement", scope.name(), edges);
  }

  private SeamPlan clauses(Statement.SeamSection seam, List<SeamRequest.Run> layers) {
    int least = Node.NONE;
    int most = Node.NONE;
    boolean stretched = false;
    boolean eased = false;
    Optional<SeamRequest.Even> even = Optional.empty();
    for (SeamClause clause : seam.clauses()) {
      if (clause instanceof SeamClause.Even marks) {
        even =
            Optional.of(
                new SeamRequest.Even(
                    Math.max(2, marks.parts()), marks.marks().stream().map(Name::text).toList()));
        continue;
      }
      if (eased) {
        problems.add(
            problems
                .at(seam.span(), "ease-twice", seam.name().text())
                .with("seam", seam.name().text()));
        continue;
      }
      eased = true;
      if (clause instanceof SeamClause.Ease ease) {
        least = all.numbers().slot(ease.least(), shared.document());
        if (ease.most().isPresent()) {
          most = all.numbers().slot(ease.most().get(), shared.document());
        }
      } else {
        SeamClause.Stretched stretch = (SeamClause.Stretched) clause;
        least = all.numbers().slot(stretch.by(), shared.document());
        stretched = true;
      }
    }
    int check =
        least == Node.NONE
            ? Node.NONE
            : nodes.add(new EaseNode(least, most, stretched), seam.span());
    return new SeamPlan(
        seam.name().text(),
        layers,
        least,
        most,
        check,
        stretched,
        even,
        problems.origin(seam.span()));
  }

  private void notch(Statement.SeamSection seam, Statement.SeamNotch notch) {
    List<List<SeamNotchNode.Stop>> layers = new ArrayList<>();
    List<String> owners = new ArrayList<>();
    for (Statement.Run run : seam.layers()) {
      List<SeamNotchNode.Stop> stops = new ArrayList<>();
      for (Statement.PlaceTerm term : run.places()) {
        if (term.every()) {
          problems.add(
              problems
                  .at(notch.span(), "notch-on-every", seam.name().text())
                  .with("seam", seam.name().text())
                  .with("edge", term.piece().text() + "." + term.edge().text()));
          return;
        }
        stops.add(stop(term));
        owners.add(term.piece().text());
      }
      layers.add(stops);
    }
    SeamNotchNode node =
        new SeamNotchNode(
            seam.name().text(),
            layers,
            place(seam, notch.along()),
            notch.kind(),
            notch.as().map(Name::text),
            problems.origin(notch.span()));
    int slot = nodes.add(node, notch.along().span());
    owners.stream()
        .distinct()
        .forEach(piece -> notches.computeIfAbsent(piece, name -> new ArrayList<>()).add(slot));
  }

  private SeamNotchNode.Stop stop(Statement.PlaceTerm term) {
    Reference edge = new Reference(Optional.of(term.piece()), term.edge(), term.span());
    return new SeamNotchNode.Stop(
        term.piece().text(),
        term.edge().text(),
        shared.lookup().path(edge, shared.document()),
        named(term, term.from()),
        named(term, term.to()),
        term.reversed());
  }

  private int named(Statement.PlaceTerm term, Optional<Name> notch) {
    if (notch.isEmpty()) {
      return Node.NONE;
    }
    List<Integer> slots = new ArrayList<>();
    List<SizeRange> ranges = new ArrayList<>();
    List<String> known = new ArrayList<>();
    for (PieceCompiler piece : pieces) {
      if (piece.name().equals(term.piece().text())) {
        known.addAll(piece.namedNotches().keySet());
        Integer slot = piece.namedNotches().get(notch.get().text());
        if (slot != null) {
          slots.add(slot);
          ranges.add(piece.scope().sizes());
        }
      }
    }
    if (slots.isEmpty()) {
      Unknown.tell(problems, notch.get(), "notch", term.piece().text(), known);
      return nodes.broken(notch.get().span());
    }
    return slots.size() == 1
        ? slots.get(0)
        : nodes.add(new ChoiceNode.BySize(slots, ranges), notch.get().span());
  }

  /** A bare point is one of the piece that the first layer starts with. */
  private PlaceForm place(Statement.SeamSection seam, Along along) {
    PieceCompiler.Places places = new PieceCompiler.Places(shared, all);
    if (along instanceof Along.AtPoint at && at.point().piece().isEmpty()) {
      Name first = seam.layers().get(0).places().get(0).piece();
      Reference inside = new Reference(Optional.of(first), at.point().name(), at.point().span());
      return places.along(new Along.AtPoint(inside, at.span()), shared.document());
    }
    return places.along(along, shared.document());
  }
}
