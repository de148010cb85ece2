package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.piece.GrainNode;
import org.hemwright.draft.plan.piece.NotchNode;
import org.hemwright.draft.plan.piece.OpeningNode;
import org.hemwright.draft.plan.piece.PieceNode;
import org.hemwright.draft.plan.piece.PieceNode.PieceEdge;
import org.hemwright.draft.plan.piece.PlaceForm;
import org.hemwright.draft.plan.piece.SimpleOutlineNode;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Along;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Origin;

/** Turns the lines of a piece into nodes, the last of which is the piece. */
final class PieceCompiler {
  private final Compilation shared;
  private final Compilers all;
  private final NodeList nodes;
  private final Problems problems;
  private final PieceDeclaration piece;
  private final Scope scope;
  private final PieceLines lines;
  private final List<Integer> notches = new ArrayList<>();
  private final Map<String, Integer> namedNotches = new LinkedHashMap<>();
  private int piecesOutline;
  private int foldIndex = Node.NONE;
  private int grain = Node.NONE;

  PieceCompiler(Compilation shared, Compilers all, PieceDeclaration piece) {
    this.shared = shared;
    this.all = all;
    this.nodes = shared.nodes();
    this.problems = shared.problems();
    this.piece = piece;
    this.scope = piece.scope();
    this.lines = new PieceLines(piece, shared.problems());
  }

  /** The names of the piece. */
  Scope scope() {
    return scope;
  }

  /** The piece's name. */
  String name() {
    return scope.name();
  }

  /** The names of its edges, in the designer's order. */
  List<String> edgeNames() {
    return piece.edges().stream().map(edge -> edge.name().text()).toList();
  }

  /** Whether it has an edge; otherwise it is told. */
  boolean hasEdge(Name edge) {
    return lines.edge(edge).isPresent();
  }

  /** The names of what is drawn inside it: placement and inner lines, drill marks. */
  List<String> markNames() {
    List<String> names = new ArrayList<>();
    scope
        .drawn()
        .forEach(
            (name, drawn) -> {
              if (drawn.what() == Drawn.What.PLACEMENT || drawn.what() == Drawn.What.INNER) {
                names.add(name);
              }
            });
    lines.all(Statement.Drill.class).forEach(drill -> names.add(drill.name().text()));
    return names;
  }

  /** The names of its darts, pleats and gathers, those left out that are merged into another. */
  List<String> intakeNames() {
    List<String> names = new ArrayList<>();
    lines.all(Statement.Dart.class).forEach(dart -> names.add(dart.name().text()));
    lines.all(Statement.Pivot.class).stream()
        .flatMap(pivot -> pivot.as().stream())
        .forEach(name -> names.add(name.text()));
    lines.all(Statement.Pleat.class).forEach(pleat -> names.add(pleat.name().text()));
    lines.all(Statement.Gathers.class).forEach(gathers -> names.add(gathers.name().text()));
    lines.all(Statement.Merge.class).forEach(merge -> names.remove(merge.dart().text()));
    return names;
  }

  /** Its edges' names where they are given, in the designer's order. */
  List<Name> edges() {
    return piece.edges().stream().map(PieceDeclaration.DeclaredEdge::name).toList();
  }

  /** The slots of notches that have names. */
  Map<String, Integer> namedNotches() {
    return namedNotches;
  }

  /** Compiles the outline and what lies on its edges, which seams may add to. */
  void compileEdges() {
    about(scope.name());
    new OutlineCompiler(shared, all).compile(piece, lines);
    about(scope.name());
    fold();
    piecesOutline =
        nodes.add(
            new SimpleOutlineNode(piece.outline(), foldIndex, edgeNames()),
            nodes.span(piece.outline()));
    for (Statement.NotchAt notch : lines.all(Statement.NotchAt.class)) {
      notch(notch);
    }
  }

  private void about(String subject) {
    nodes.set(new NodeList.Setting(scope.sizes(), scope.name(), subject, false));
  }

  private Origin origin(Statement line) {
    return problems.origin(line.span());
  }

  private void fold() {
    Optional<Statement.Fold> fold = lines.one(Statement.Fold.class);
    foldIndex = fold.flatMap(said -> lines.edge(said.edge())).orElse(Node.NONE);
    for (Statement.Cut cut : lines.all(Statement.Cut.class)) {
      if (cut.onFold() && fold.isEmpty() && !lines.unread("fold")) {
        problems.add(
            problems
                .at(cut.span(), "fold-missing", scope.name())
                .with("piece", scope.name())
                .with("edge", piece.edges().isEmpty() ? "centre" : lastEdge()));
      }
    }
  }

  private String lastEdge() {
    return piece.edges().get(piece.edges().size() - 1).name().text();
  }

  private void notch(Statement.NotchAt notch) {
    Optional<Integer> edge = lines.edge(notch.edge());
    if (edge.isEmpty()) {
      return;
    }
    about(scope.full(notch.edge().text()));
    if (!within(notch.sizes())) {
      return;
    }
    PlaceForm place = place(notch, edge.get());
    if (piece.isShaped() && place instanceof PlaceForm.AtPoint at) {
      place = new PlaceForm.AtPoint(piece.carried(nodes, at.point()));
    }
    int when = Node.NONE;
    if (notch.when().isPresent()) {
      when = all.numbers().slot(notch.when().get(), scope);
    }
    NotchNode node =
        new NotchNode(
            scope.name(),
            notch.edge().text(),
            piece.edges().get(edge.get()).slot(),
            place,
            when,
            notch.kind(),
            notch.as().map(Name::text),
            origin(notch));
    int slot =
        notch.as().isPresent()
            ? nodes.reserve(notch.along().span(), notch.as().get().text())
            : nodes.add(node, notch.along().span());
    nodes.fill(slot, node);
    notches.add(slot);
    notch.as().ifPresent(name -> name(name, slot));
  }

  private PlaceForm place(Statement.NotchAt notch, int edge) {
    if (notch.along() instanceof Along.Traced traced) {
      return new PlaceForm.AtPoints(
          all.tracings().marks(traced.mark(), edge, traced.span(), scope).stream()
              .map(point -> piece.carried(nodes, point))
              .toList());
    }
    return new Places(shared, all).along(notch.along(), scope);
  }

  private void name(Name name, int slot) {
    if (namedNotches.putIfAbsent(name.text(), slot) != null) {
      problems.add(
          problems
              .at(name.span(), "notch-twice", scope.full(name.text()))
              .with("name", name.text())
              .with("piece", scope.name()));
    }
  }

  /** Goes on in some of the piece's sizes only; false where there are none. */
  private boolean within(Optional<Statement.Sizes> sizes) {
    if (sizes.isEmpty()) {
      return true;
    }
    Optional<SizeRange> asked = shared.sizes().find(sizes.get());
    if (asked.isEmpty()) {
      return false;
    }
    SizeRange range = asked.get();
    SizeRange own = scope.sizes();
    if (!range.meets(own)) {
      problems.add(
          problems
              .at(sizes.get().span(), "sizes-outside-piece", scope.name())
              .with("piece", scope.name())
              .with("from", own.first().name())
              .with("to", own.last().name()));
      return false;
    }
    NodeList.Setting setting = nodes.setting();
    SizeRange shorter =
        new SizeRange(
            range.first().compareTo(own.first()) > 0 ? range.first() : own.first(),
            range.last().compareTo(own.last()) < 0 ? range.last() : own.last());
    nodes.set(new NodeList.Setting(shorter, setting.owner(), setting.subject(), false));
    return true;
  }

  /**
   * Compiles the rest and the piece.
   *
   * @param seamNotches the slots of the notches that seams put on it
   */
  PiecePlan finish(List<Integer> seamNotches) {
    about(scope.name());
    AllowanceCompiler allowances = new AllowanceCompiler(shared, all, piece, lines);
    List<PieceEdge> edges = allowances.edges(foldIndex);
    about(scope.name());
    grain();
    List<Integer> marks =
        new MarkCompiler(shared, all, piece).marks(grain, this::within, () -> about(scope.name()));
    about(scope.name());
    List<Integer> allNotches = new ArrayList<>(notches);
    allNotches.addAll(seamNotches);
    List<String> openings = new ArrayList<>();
    List<Integer> bodyOpenings = new ArrayList<>();
    for (Statement.Opening opening : lines.all(Statement.Opening.class)) {
      int slot = opening(opening);
      if (lines.edge(opening.edge()).isPresent()) {
        openings.add(opening.edge().text());
        bodyOpenings.add(slot);
      }
    }
    int stack =
        lines
            .one(Statement.Stack.class)
            .map(said -> piece.carried(nodes, shared.lookup().point(said.at(), scope)))
            .orElse(Node.NONE);
    CardCompiler card = new CardCompiler(shared, piece, lines);
    PieceNode node =
        new PieceNode(
            card.card(),
            piecesOutline,
            edges,
            allowances.corners(),
            allNotches,
            grain,
            marks,
            openings,
            bodyOpenings,
            stack);
    return new PiecePlan(node.card(), nodes.add(node, piece.section().name().span()));
  }

  private int opening(Statement.Opening opening) {
    about(scope.full(opening.edge().text()));
    OpeningNode node =
        new OpeningNode(
            opening.edge().text(),
            opening
                .over()
                .map(over -> shared.lookup().number(Reference.to(over), scope))
                .orElse(Node.NONE),
            opening.over().map(Name::text).orElse(""),
            opening.closure().map(Statement.Closure::kind),
            opening
                .closure()
                .map(closure -> all.numbers().slot(closure.length(), scope))
                .orElse(Node.NONE),
            origin(opening));
    return nodes.add(node, opening.span());
  }

  private void grain() {
    Optional<Statement.Grain> said = lines.one(Statement.Grain.class);
    if (said.isEmpty()) {
      return;
    }
    Statement.Grain line = said.get();
    Origin origin = origin(line);
    Node node;
    if (line.rule() instanceof Statement.GrainRule.Along along) {
      node = new GrainNode.Along(all.paths().slot(along.path(), scope), piece.outline(), origin);
    } else if (line.rule() instanceof Statement.GrainRule.Way way) {
      int direction = all.directions().slot(way.direction(), scope, Node.NONE);
      node = new GrainNode.Way(direction, piece.outline(), origin);
    } else if (line.rule() instanceof Statement.GrainRule.Traced traced) {
      node = all.tracings().grain(traced.line(), line.span(), scope, origin);
    } else {
      Statement.GrainRule.FromTo points = (Statement.GrainRule.FromTo) line.rule();
      node =
          new GrainNode.FromTo(
              piece.carried(nodes, shared.lookup().point(points.from(), scope)),
              piece.carried(nodes, shared.lookup().point(points.to(), scope)),
              origin);
    }
    grain = nodes.add(node, line.span());
  }

  /** Reads where along an edge something lies. */
  record Places(Compilation shared, Compilers all) {
    PlaceForm along(Along along, Scope scope) {
      if (along instanceof Along.AtPoint at) {
        return new PlaceForm.AtPoint(shared.lookup().point(at.point(), scope));
      } else if (along instanceof Along.Measured measured) {
        return new PlaceForm.Measured(
            all.numbers().slot(measured.amount(), scope), measured.fromEnd());
      } else if (along instanceof Along.Traced traced) {
        shared.problems().add(shared.problems().at(traced.span(), "traced-notch-only"));
        return new PlaceForm.AtPoint(shared.nodes().broken(traced.span()));
      }
      return new PlaceForm.Even(((Along.Even) along).parts());
    }
  }
}
