package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.piece.EdgeNode;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.plan.shape.CutForm;
import org.hemwright.draft.plan.shape.DartForm;
import org.hemwright.draft.plan.shape.DartMove;
import org.hemwright.draft.plan.shape.EdgeSpot;
import org.hemwright.draft.plan.shape.GatherForm;
import org.hemwright.draft.plan.shape.PleatForm;
import org.hemwright.draft.plan.shape.ShapeForm;
import org.hemwright.draft.plan.shape.ShapedOutlineNode;
import org.hemwright.draft.syntax.Along;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.draft.syntax.ShapeClause;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.finding.Origin;

/** Turns darts, pivots, cuts, pleats and gathers into what shapes an outline. */
final class ShapeCompiler {
  private final Compilation shared;
  private final Compilers all;
  private final PieceDeclaration piece;
  private final PieceLines lines;
  private final int drafted;
  private final NodeList nodes;
  private final Problems problems;
  private final Scope scope;
  private final List<ShapeForm> forms = new ArrayList<>();
  private final List<String> named = new ArrayList<>();

  /**
   * For one piece.
   *
   * @param drafted the slot of its outline as drafted
   */
  ShapeCompiler(
      Compilation shared, Compilers all, PieceDeclaration piece, PieceLines lines, int drafted) {
    this.shared = shared;
    this.all = all;
    this.piece = piece;
    this.lines = lines;
    this.drafted = drafted;
    this.nodes = shared.nodes();
    this.problems = shared.problems();
    this.scope = piece.scope();
  }

  /** The node of the shaped outline. */
  ShapedOutlineNode node() {
    for (Statement line : piece.section().body()) {
      nodes.about(scope.name());
      form(line).ifPresent(forms::add);
    }
    nodes.about(scope.name());
    int fold =
        lines
            .one(Statement.Fold.class)
            .map(said -> piece.indexOf(said.edge().text()))
            .filter(index -> index >= 0)
            .orElse(Node.NONE);
    List<String> names = piece.edges().stream().map(edge -> edge.name().text()).toList();
    return new ShapedOutlineNode(drafted, fold, names, forms);
  }

  private Optional<ShapeForm> form(Statement line) {
    if (line instanceof Statement.Dart dart) {
      return dart(dart);
    } else if (line instanceof Statement.Pivot pivot) {
      return pivot(pivot);
    } else if (line instanceof Statement.Merge merge) {
      return merge(merge);
    } else if (line instanceof Statement.Slash slash) {
      return slash(slash);
    } else if (line instanceof Statement.Pleat pleat) {
      return pleat(pleat);
    } else if (line instanceof Statement.Gathers gathers) {
      return gathers(gathers);
    }
    return Optional.empty();
  }

  private Optional<ShapeForm> dart(Statement.Dart dart) {
    named(dart.name());
    Optional<EdgeSpot> spot = spot(dart.edge(), dart.along());
    int apex = shared.lookup().point(dart.apex(), scope);
    int wide =
        number(
            clause(dart.clauses(), ShapeClause.Opening.class)
                .map(ShapeClause.Opening::wide)
                .or(
                    () ->
                        clause(dart.clauses(), ShapeClause.Angle.class)
                            .map(ShapeClause.Angle::wide)));
    DartForm.Sewing how = sewing(dart.clauses(), dart.span());
    return spot.map(on -> new DartForm(dart.name().text(), on, apex, wide, how, dart.span()));
  }

  private Optional<ShapeForm> pivot(Statement.Pivot pivot) {
    boolean known = known(pivot.dart());
    pivot.as().ifPresent(this::named);
    Optional<EdgeSpot> spot = spot(pivot.edge(), pivot.along());
    int share = number(pivot.share());
    DartForm.Sewing how = sewing(pivot.clauses(), pivot.span());
    return known && spot.isPresent()
        ? Optional.of(
            new DartMove(
                pivot.dart().text(), share, spot, pivot.as().map(Name::text), how, pivot.span()))
        : Optional.empty();
  }

  private Optional<ShapeForm> merge(Statement.Merge merge) {
    boolean first = known(merge.dart());
    boolean known = known(merge.into()) && first;
    if (known && merge.dart().text().equals(merge.into().text())) {
      problems.add(
          problems
              .at(merge.into().span(), "merge-itself", scope.full(merge.into().text()))
              .with("dart", merge.into().text()));
      return Optional.empty();
    }
    return known
        ? Optional.of(
            new DartMove(
                merge.dart().text(),
                Node.NONE,
                Optional.empty(),
                Optional.of(merge.into().text()),
                sewing(List.of(), merge.span()),
                merge.span()))
        : Optional.empty();
  }

  private Optional<ShapeForm> slash(Statement.Slash slash) {
    Optional<EdgeSpot> far = spot(slash.far(), slash.along());
    Optional<EdgeSpot> near = spot(slash.near(), slash.there());
    Optional<ShapeClause.Spread> spread = clause(slash.clauses(), ShapeClause.Spread.class);
    int by =
        number(
            spread
                .map(ShapeClause.Spread::far)
                .or(
                    () ->
                        clause(slash.clauses(), ShapeClause.Turned.class)
                            .map(ShapeClause.Turned::angle)));
    int atNear = number(spread.flatMap(ShapeClause.Spread::near));
    int blend = blend(slash.clauses());
    boolean asCut = clause(slash.clauses(), ShapeClause.AsCut.class).isPresent();
    return far.isPresent() && near.isPresent()
        ? Optional.of(new CutForm(far.get(), near.get(), by, atNear, blend, asCut, slash.span()))
        : Optional.empty();
  }

  private Optional<ShapeForm> pleat(Statement.Pleat pleat) {
    named(pleat.name());
    Optional<EdgeSpot> spot = spot(pleat.edge(), pleat.along());
    Optional<EdgeSpot> to = spot(pleat.to(), pleat.there());
    int depth =
        number(clause(pleat.clauses(), ShapeClause.Depth.class).map(ShapeClause.Depth::depth));
    Optional<ShapeClause.Repeated> repeated = clause(pleat.clauses(), ShapeClause.Repeated.class);
    int apart = number(repeated.map(ShapeClause.Repeated::apart));
    PleatForm.Kind kind =
        clause(pleat.clauses(), ShapeClause.Fold.class)
            .map(fold -> PleatForm.Kind.valueOf(fold.kind().name()))
            .orElse(PleatForm.Kind.BOX);
    return spot.isPresent() && to.isPresent()
        ? Optional.of(
            new PleatForm(
                pleat.name().text(),
                spot.get(),
                to.get(),
                depth,
                kind,
                clause(pleat.clauses(), ShapeClause.Fading.class).isPresent(),
                repeated.map(ShapeClause.Repeated::times).orElse(1),
                apart,
                origin(pleat.span()),
                pleat.span()))
        : Optional.empty();
  }

  private Optional<ShapeForm> gathers(Statement.Gathers gathers) {
    named(gathers.name());
    Optional<Integer> edge = edge(gathers.edge());
    int from = point(gathers.from());
    int to = point(gathers.to());
    int drawnTo = all.numbers().slot(gathers.drawnTo(), scope);
    return edge.map(
        index ->
            new GatherForm(
                gathers.name().text(),
                index,
                gathers.edge().text(),
                from,
                to,
                drawnTo,
                origin(gathers.span()),
                gathers.span()));
  }

  private Origin origin(Span span) {
    return problems.origin(span);
  }

  private int point(Optional<Reference> point) {
    return point.map(named -> shared.lookup().point(named, scope)).orElse(Node.NONE);
  }

  private int number(Optional<Expression> number) {
    return number.map(given -> all.numbers().slot(given, scope)).orElse(Node.NONE);
  }

  private static <C extends ShapeClause> Optional<C> clause(
      List<ShapeClause> clauses, Class<C> kind) {
    return clauses.stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }

  private int blend(List<ShapeClause> clauses) {
    return number(clause(clauses, ShapeClause.Trued.class).map(ShapeClause.Trued::reach));
  }

  private DartForm.Sewing sewing(List<ShapeClause> clauses, Span span) {
    return new DartForm.Sewing(
        number(clause(clauses, ShapeClause.Stitched.class).map(ShapeClause.Stitched::shortOf)),
        blend(clauses),
        clause(clauses, ShapeClause.Pressed.class)
            .map(ShapeClause.Pressed::towardStart)
            .orElse(true),
        origin(span));
  }

  private Optional<EdgeSpot> spot(Name edge, Along along) {
    Optional<Integer> index = edge(edge);
    return index.map(
        found -> {
          int path = nodes.add(new EdgeNode(drafted, found), edge.span());
          return new EdgeSpot(
              found, edge.text(), path, new PieceCompiler.Places(shared, all).along(along, scope));
        });
  }

  /** An edge whose name is its own, so that its length is not taken for the drafted line's. */
  private Optional<Integer> edge(Name name) {
    Optional<Integer> index = lines.edge(name);
    if (index.isPresent() && piece.isNamedAsItsLine(index.get())) {
      problems.add(
          problems
              .at(name.span(), "edge-named-as-line", scope.full(name.text()))
              .with("edge", name.text()));
    }
    return index;
  }

  private void named(Name name) {
    if (named.contains(name.text())) {
      problems.add(
          problems
              .at(name.span(), "fold-twice", scope.full(name.text()))
              .with("name", name.text())
              .with("piece", scope.name()));
    }
    named.add(name.text());
  }

  /** Whether a dart of that name stands above; otherwise it is told. */
  private boolean known(Name dart) {
    boolean known = DartForm.names(forms, dart.text());
    if (!known && !named.contains(dart.text()) && !scope.excuses(dart.text())) {
      Unknown.tell(problems, dart, "dart-above", scope.name(), named);
    }
    return known;
  }
}
