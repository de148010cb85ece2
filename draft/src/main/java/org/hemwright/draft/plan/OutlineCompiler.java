package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.PieceDeclaration.DeclaredEdge;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.piece.EdgeForm;
import org.hemwright.draft.plan.piece.EdgeNode;
import org.hemwright.draft.plan.piece.FacingNode;
import org.hemwright.draft.plan.piece.OutlineCopyNode;
import org.hemwright.draft.plan.piece.OutlineNode;
import org.hemwright.draft.plan.piece.RectangleNode;
import org.hemwright.draft.plan.piece.SewnEdgeNode;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.plan.trace.TracedOutlineNode;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.PathTerm;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;

/** Turns an outline or a rectangle into nodes: the edges, and what they make together. */
final class OutlineCompiler {
  private static final int SIDES = 4;

  private final Compilers all;
  private final NodeList nodes;
  private final Problems problems;
  private final Compilation shared;
  private int drafted;

  OutlineCompiler(Compilation shared, Compilers all) {
    this.shared = shared;
    this.all = all;
    this.nodes = shared.nodes();
    this.problems = shared.problems();
  }

  /** Fills the slots kept for the outline and its edges. */
  void compile(PieceDeclaration piece, PieceLines lines) {
    drafted = piece.drafted();
    List<Statement> outlines = lines.outlines();
    if (outlines.size() > 1) {
      twice(piece, lines, outlines.get(1));
    } else if (!outlines.isEmpty()) {
      compile(piece, lines, outlines.get(0));
    } else if (!lines.anyUnread()) {
      problems.add(
          problems
              .at(piece.section().name().span(), "outline-missing", piece.scope().name())
              .with("piece", piece.scope().name()));
    }
    if (piece.isShaped()) {
      shape(piece, lines);
    }
  }

  private void compile(PieceDeclaration piece, PieceLines lines, Statement line) {
    if (line instanceof Statement.Outline outline) {
      outline(piece, outline);
    } else if (line instanceof Statement.Rectangle rectangle) {
      rectangle(piece, rectangle);
    } else if (line instanceof Statement.OutlineTraced traced) {
      traced(piece, traced);
    } else if (line instanceof Statement.OutlineAs copy) {
      copy(piece, copy, lines);
    } else {
      facing(piece, (Statement.Facing) line);
    }
  }

  private void twice(PieceDeclaration piece, PieceLines lines, Statement second) {
    boolean both =
        lines.one(Statement.Outline.class).isPresent()
            && lines.one(Statement.Rectangle.class).isPresent();
    Statement at = both ? lines.one(Statement.Rectangle.class).orElseThrow() : second;
    problems.add(
        problems
            .at(at.span(), both ? "outline-and-rectangle" : "outline-twice", piece.scope().name())
            .with("piece", piece.scope().name()));
  }

  /** An outline of the drawing that the piece is traced from. */
  private void traced(PieceDeclaration piece, Statement.OutlineTraced traced) {
    nodes.about(piece.scope().name());
    int shape = all.tracings().shape(piece.scope());
    Node node = shape == Node.NONE ? new Broken() : new TracedOutlineNode(shape);
    nodes.fill(drafted, node, traced.span());
    for (int i = 0; i < piece.edges().size(); i++) {
      DeclaredEdge edge = piece.edges().get(i);
      fill(piece, edge, whole(piece, i), edge.name().span());
    }
  }

  /** The outline of another piece, some of its edges moved. */
  private void copy(PieceDeclaration piece, Statement.OutlineAs copy, PieceLines lines) {
    nodes.about(piece.scope().name());
    List<OutlineCopyNode.Change> changes = new ArrayList<>();
    for (Statement.OutlineChange change : copy.changes()) {
      int amount = all.numbers().slot(change.amount(), piece.scope());
      lines
          .edge(change.edge())
          .ifPresent(edge -> changes.add(new OutlineCopyNode.Change(edge, change.in(), amount)));
    }
    if (!copy.drafted() && piece.isFolded()) {
      problems.add(
          problems
              .at(copy.piece().span(), "copy-shaped-again", piece.scope().name())
              .with("piece", copy.piece().text()));
    }
    Optional<PieceSources.Source> source = source(piece, copy.piece(), copy.drafted());
    Node node = new Broken();
    if (source.isPresent()) {
      node =
          new OutlineCopyNode(
              source.get().outline(), copy.piece().text(), source.get().edges(), changes);
    }
    nodes.fill(drafted, node, copy.span());
    for (int i = 0; i < piece.edges().size(); i++) {
      DeclaredEdge edge = piece.edges().get(i);
      fill(piece, edge, whole(piece, i), copy.span());
    }
  }

  private Optional<PieceSources.Source> source(
      PieceDeclaration piece, Name name, boolean asDrafted) {
    if (name.text().equals(piece.scope().name())) {
      problems.add(problems.at(name.span(), "copy-round", name.text()).with("piece", name.text()));
      return Optional.empty();
    }
    return all.sources().find(name, piece.scope(), asDrafted);
  }

  /** A strip inside another piece. */
  private void facing(PieceDeclaration piece, Statement.Facing facing) {
    nodes.about(piece.scope().name());
    int depth = all.numbers().slot(facing.depth(), piece.scope());
    Optional<PieceSources.Source> source = source(piece, facing.piece(), false);
    List<Integer> along = new ArrayList<>();
    if (source.isPresent()) {
      for (Name edge : facing.along()) {
        int index = source.get().edges().indexOf(edge.text());
        if (index >= 0) {
          along.add(index);
        } else {
          Unknown.tell(
              problems, edge, "edge-of-piece", facing.piece().text(), source.get().edges());
        }
      }
    }
    boolean known = source.isPresent() && along.size() == facing.along().size();
    Node node = new Broken();
    if (known) {
      node = new FacingNode(source.get().outline(), source.get().edges(), along, depth);
    }
    nodes.fill(drafted, node, facing.span());
    for (int i = 0; i < piece.edges().size(); i++) {
      DeclaredEdge edge = piece.edges().get(i);
      fill(piece, edge, whole(piece, i), edge.name().span());
    }
  }

  /** The outline as lines of the piece shape it, in place of the one that is drafted. */
  private void shape(PieceDeclaration piece, PieceLines lines) {
    Node node = new ShapeCompiler(shared, all, piece, lines, drafted).node();
    nodes.about(piece.scope().name());
    nodes.fill(piece.outline(), node, nodes.span(drafted));
  }

  private void rectangle(PieceDeclaration piece, Statement.Rectangle rectangle) {
    nodes.about(piece.scope().name());
    int width = all.numbers().slot(rectangle.width(), piece.scope());
    int height = all.numbers().slot(rectangle.height(), piece.scope());
    if (rectangle.edges().size() != SIDES) {
      throw new IllegalArgumentException("a rectangle has four edges");
    }
    nodes.fill(drafted, new RectangleNode(width, height), rectangle.span());
    for (int i = 0; i < SIDES; i++) {
      DeclaredEdge edge = piece.edges().get(i);
      fill(piece, edge, whole(piece, i), edge.name().span());
    }
  }

  private void outline(PieceDeclaration piece, Statement.Outline outline) {
    List<EdgeForm> forms = new ArrayList<>();
    for (int i = 0; i < outline.edges().size(); i++) {
      nodes.about(piece.scope().full(piece.edges().get(i).name().text()));
      forms.add(edge(piece, outline.edges().get(i), i));
    }
    nodes.about(piece.scope().name());
    if (mayBeJoined(piece, outline, forms)) {
      nodes.fill(drafted, new OutlineNode(forms), outline.span());
    } else {
      nodes.fill(drafted, new Broken(), outline.span());
    }
  }

  private EdgeForm edge(PieceDeclaration piece, Statement.OutlineEdge edge, int index) {
    Scope scope = piece.scope();
    DeclaredEdge declared = piece.edges().get(index);
    String name = edge.name().text();
    Node whole = whole(piece, index);
    if (edge.path() instanceof PathTerm.StraightOn) {
      fill(piece, declared, whole, edge.span());
      return new EdgeForm(name, Node.NONE, false, false);
    }
    List<PathTerm> parts =
        edge.path() instanceof PathTerm.Chain chain ? chain.parts() : List.of(edge.path());
    boolean before = parts.get(0) instanceof PathTerm.StraightOn;
    boolean after = parts.get(parts.size() - 1) instanceof PathTerm.StraightOn;
    if (!before && !after && piece.isShaped()) {
      int core = nodes.add(all.paths().node(edge.path(), scope), edge.path().span());
      fill(piece, declared, whole, edge.span());
      return new EdgeForm(name, core, false, false);
    } else if (!before && !after) {
      fill(piece, declared, all.paths().node(edge.path(), scope), edge.path().span());
      return new EdgeForm(name, declared.slot(), false, false);
    }
    List<PathTerm> drawn = parts.subList(before ? 1 : 0, parts.size() - (after ? 1 : 0));
    int core =
        drawn.isEmpty()
            ? nodes.broken(edge.span())
            : nodes.add(all.paths().chain(drawn, scope), edge.path().span());
    fill(piece, declared, whole, edge.span());
    return new EdgeForm(name, core, before, after);
  }

  /** An edge taken out of the whole outline. */
  private static Node whole(PieceDeclaration piece, int index) {
    return piece.isShaped()
        ? new SewnEdgeNode(piece.outline(), index)
        : new EdgeNode(piece.outline(), index);
  }

  private void fill(PieceDeclaration piece, DeclaredEdge edge, Node node, Span span) {
    nodes.about(piece.scope().full(edge.name().text()));
    nodes.fill(edge.slot(), node, span);
  }

  /** Whether the outline has corners enough, each at the end of something that is drawn. */
  private boolean mayBeJoined(
      PieceDeclaration piece, Statement.Outline outline, List<EdgeForm> forms) {
    int count = forms.size();
    if (count < 2) {
      problems.add(
          problems
              .at(outline.span(), "outline-one-edge", piece.scope().name())
              .with("piece", piece.scope().name()));
      return false;
    }
    for (int i = 0; i < count; i++) {
      EdgeForm edge = forms.get(i);
      EdgeForm next = forms.get((i + 1) % count);
      if ((edge.isStraight() || edge.straightAfter())
          && (next.isStraight() || next.straightBefore())) {
        problems.add(
            problems
                .at(outline.edges().get((i + 1) % count).span(), "straights-in-a-row")
                .with("before", edge.name())
                .with("after", next.name()));
        return false;
      }
    }
    return true;
  }
}
