package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.trace.TracedArrowNode;
import org.hemwright.draft.plan.trace.TracedPathNode;
import org.hemwright.draft.plan.trace.TracedPointNode;
import org.hemwright.draft.plan.trace.TracedShapeNode;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.OutlineGrading;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.pattern.traced.TracingProblem;

/**
 * The pieces that are traced from drawings: their outlines, taken once, and nodes for whatever else
 * of a drawing the document names.
 */
final class Tracings {
  private final Compilation shared;
  private final Drawings drawings;
  private final IdentityHashMap<Scope, Traced> traced = new IdentityHashMap<>();

  Tracings(Compilation shared) {
    this.shared = shared;
    this.drawings = new Drawings(shared);
  }

  /**
   * A piece that is traced.
   *
   * @param drawing in true size; empty where it could not be read
   * @param shape the slot of its shape, or {@link Node#NONE}
   * @param edges as traced; none where the outline is drawn in words
   * @param allowances what was taken off each
   */
  private record Traced(
      Optional<TracedDrawing> drawing, int shape, List<Path> edges, List<Double> allowances) {
    Traced {
      edges = List.copyOf(edges);
      allowances = List.copyOf(allowances);
    }
  }

  /** Takes every traced outline from its drawing. */
  void read(Declarer declared, Size base) {
    for (PieceDeclaration piece : declared.pieces()) {
      piece.section().traced().ifPresent(from -> read(piece, from, base, declared));
    }
  }

  private void read(
      PieceDeclaration piece, Statement.TracedFrom from, Size base, Declarer declared) {
    NodeList nodes = shared.nodes();
    Scope scope = piece.scope();
    nodes.set(new NodeList.Setting(scope.sizes(), scope.name(), scope.name(), false));
    Optional<TracedDrawing> drawing = drawings.read(from);
    Size drawn = from.size().flatMap(shared.sizes()::find).orElse(base);
    if (!scope.sizes().contains(drawn)) {
      shared
          .problems()
          .add(
              shared
                  .problems()
                  .at(
                      from.size().map(NumberRule.SizeWord::span).orElse(from.span()),
                      "traced-size-which",
                      scope.name())
                  .with("size", drawn.name())
                  .with("first", scope.sizes().first().name())
                  .with("last", scope.sizes().last().name()));
    }
    Optional<Statement.OutlineTraced> line = outline(piece);
    int shape = Node.NONE;
    List<Path> edges = List.of();
    List<Double> allowances = List.of();
    if (line.isPresent()) {
      shape = nodes.broken(line.get().span());
      OutlineRequest request = request(line.get());
      allowances =
          request.edges().stream()
              .filter(edge -> !edge.isLeftOut())
              .map(OutlineRequest.EdgeRequest::allowance)
              .toList();
      Optional<List<Path>> taken = drawing.flatMap(read -> edges(read, request, line.get().span()));
      if (taken.isPresent()) {
        edges = taken.get();
        GradeReader grades =
            new GradeReader(
                new TracedGrading(shared, piece, drawn, drawing.orElseThrow(), edges),
                declared.pieces());
        Optional<OutlineGrading> grading = grades.grading(request, this::other);
        int filled = shape;
        grading.ifPresent(how -> nodes.fill(filled, new TracedShapeNode(how), line.get().span()));
      }
    }
    traced.put(scope, new Traced(drawing, shape, edges, allowances));
    nodes.set(new NodeList.Setting(shared.document().sizes(), "", "", false));
  }

  static Optional<Statement.OutlineTraced> outline(PieceDeclaration piece) {
    return piece.section().body().stream()
        .filter(Statement.OutlineTraced.class::isInstance)
        .map(Statement.OutlineTraced.class::cast)
        .findFirst();
  }

  /** The edges of the same outline in another drawing. */
  private Optional<List<Path>> other(OutlineRequest request, Statement.AlsoTraced also) {
    return drawings
        .read(also.file(), also.span())
        .flatMap(read -> edges(read, request, also.span()));
  }

  private Optional<List<Path>> edges(TracedDrawing drawing, OutlineRequest request, Span at) {
    try {
      return Optional.of(OutlineTracing.edges(drawing, request));
    } catch (TracingProblem problem) {
      drawings.tell(problem, at);
      return Optional.empty();
    }
  }

  private static OutlineRequest request(Statement.OutlineTraced line) {
    OutlineRequest.Start start;
    if (line.start() instanceof Statement.TracedStart.Dot dot) {
      start = new OutlineRequest.Start.Dot(dot.name());
    } else {
      Statement.TracedStart.Farthest far = (Statement.TracedStart.Farthest) line.start();
      start = new OutlineRequest.Start.Farthest(far.top(), far.left());
    }
    double usual = line.usual().map(Tracings::value).orElse(0.0);
    List<OutlineRequest.EdgeRequest> edges = new ArrayList<>();
    for (Statement.TracedEdge edge : line.edges()) {
      edges.add(
          new OutlineRequest.EdgeRequest(
              edge.name().map(Name::text).orElse(""),
              edge.until(),
              edge.allowance().map(Tracings::value).orElse(usual)));
    }
    double corner = line.corner().map(Tracings::value).orElse(OutlineRequest.USUAL_CORNER);
    return new OutlineRequest(line.line(), start, line.clockwise(), corner, edges);
  }

  static double value(Expression.Literal literal) {
    return literal.value() * literal.unit().factor();
  }

  // --- what else of a drawing the document names ------------------------------------------------

  /** The slot of a piece's traced shape, or {@link Node#NONE}. */
  int shape(Scope scope) {
    Traced piece = traced.get(scope);
    return piece == null ? Node.NONE : piece.shape();
  }

  /** The lines of a name in the drawing of a piece; where there are none, it is told. */
  private List<TracedLine> lines(String name, Span span, Scope scope) {
    Traced piece = traced.get(scope);
    if (piece == null) {
      shared.problems().add(shared.problems().at(span, "traced-piece-not"));
      return List.of();
    }
    if (piece.drawing().isEmpty()) {
      return List.of();
    }
    try {
      return OutlineTracing.lines(piece.drawing().get(), name);
    } catch (TracingProblem problem) {
      drawings.tell(problem, span);
      return List.of();
    }
  }

  private Optional<TracedLine> one(String name, Span span, Scope scope) {
    List<TracedLine> lines = lines(name, span, scope);
    if (lines.size() > 1) {
      drawings.tell(
          new TracingProblem("traced-lines-several")
              .with("name", name)
              .with("count", Argument.of(lines.size())),
          span);
      return Optional.empty();
    }
    return lines.stream().findFirst();
  }

  /** The node of a dot. */
  Node point(String mark, Span span, Scope scope) {
    return one(mark, span, scope)
        .<Node>map(line -> new TracedPointNode(shape(scope), line.middle()))
        .orElseGet(Broken::new);
  }

  /** The node of a line. */
  Node path(String name, Span span, Scope scope) {
    return one(name, span, scope)
        .<Node>map(line -> new TracedPathNode(shape(scope), line.path()))
        .orElseGet(Broken::new);
  }

  /** The node of a grain arrow. */
  Node grain(String name, Span span, Scope scope, Origin origin) {
    Line longest = null;
    for (TracedLine line : lines(name, span, scope)) {
      for (Curve curve : line.path().curves()) {
        if (curve instanceof Line straight
            && (longest == null || straight.length() > longest.length())) {
          longest = straight;
        }
      }
    }
    boolean known = traced.containsKey(scope) && traced.get(scope).drawing().isPresent();
    if (longest == null && known && !lines(name, span, scope).isEmpty()) {
      drawings.tell(new TracingProblem("traced-grain-bent").with("name", name), span);
    }
    return longest == null
        ? new Broken()
        : new TracedArrowNode(shape(scope), longest.start(), longest.end(), origin);
  }

  /** The slots of the points where short lines or dots of a name mark an edge. */
  List<Integer> marks(String name, int edge, Span span, Scope scope) {
    Traced piece = traced.get(scope);
    List<TracedLine> lines = lines(name, span, scope);
    List<Integer> slots = new ArrayList<>();
    if (piece == null || piece.edges().isEmpty()) {
      return slots;
    }
    List<PathPlace> places = new ArrayList<>();
    for (TracedLine line : lines) {
      MarkedEdge here = MarkedEdge.on(piece.edges().get(edge), line.path());
      double least = here.away();
      for (Path other : piece.edges()) {
        least = Math.min(least, MarkedEdge.on(other, line.path()).away());
      }
      if (here.away() <= least + Tolerance.DRAWN_LENGTH
          && here.isMeant(piece.allowances().get(edge))) {
        places.add(here.place());
      }
    }
    places.sort(Comparator.comparingDouble(PathPlace::distance));
    for (PathPlace place : places) {
      slots.add(shared.nodes().add(new TracedPointNode(piece.shape(), place.point()), span));
    }
    if (slots.isEmpty() && !lines.isEmpty()) {
      drawings.tell(
          new TracingProblem("traced-notch-none")
              .with("name", name)
              .with("count", Argument.of(lines.size())),
          span);
    }
    return slots;
  }
}
