package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.draft.plan.PieceDeclaration.DeclaredEdge;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.plan.name.Drawn.What;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.PathTerm;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Finding;

/** Goes through a document once and keeps a slot for every name, so that order does not matter. */
final class Declarer {
  private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{N}_]*");

  private final Compilation shared;
  private final Problems problems;
  private final NodeList nodes;
  private final List<Statement.Section> sections = new ArrayList<>();
  private final IdentityHashMap<Statement, Scope> scopes = new IdentityHashMap<>();
  private final List<PieceDeclaration> pieces = new ArrayList<>();
  private final Source source;

  /** The lines whose name is missing. */
  private final Set<Integer> nameless = new TreeSet<>();

  private EdgeNames edgeNames = EdgeNames.NONE;

  Declarer(Compilation shared, Source source) {
    this.source = source;
    this.shared = shared;
    this.problems = shared.problems();
    this.nodes = shared.nodes();
  }

  /** Declares everything. */
  void declare(Document document) {
    edgeNames = new EdgeNames(document);
    for (Finding finding : document.findings()) {
      if (finding.code().equals("name-missing")) {
        finding.origin().ifPresent(origin -> nameless.add(origin.line()));
      }
    }
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Unread unread) {
        excuse(shared.document(), unread);
      } else if (statement instanceof Statement.Dial dial) {
        number(shared.document(), dial.name());
      } else if (statement instanceof Statement.Let let) {
        number(shared.document(), let.name());
      } else if (statement instanceof Statement.Solve solve) {
        number(shared.document(), solve.name());
      }
    }
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.PartSection part) {
        section(part, part.name(), shared.document().sizes(), part.body());
      } else if (statement instanceof Statement.PieceSection piece) {
        SizeRange sizes =
            piece.sizes().flatMap(shared.sizes()::find).orElse(shared.document().sizes());
        piece(piece, section(piece, piece.name(), sizes, piece.body()));
      }
    }
    refuseSharedSizes();
  }

  /** The names of a part or piece. */
  Scope scope(Statement section) {
    Scope scope = scopes.get(section);
    return scope == null ? shared.document() : scope;
  }

  /** The parts and pieces, in the order of the document. */
  List<Statement.Section> sections() {
    return sections;
  }

  /** The pieces, in the order of the document. */
  List<PieceDeclaration> pieces() {
    return pieces;
  }

  private void excuse(Scope scope, Statement.Unread unread) {
    unread.name().ifPresent(name -> scope.excuse(name.text()));
    int first = source.line(unread.span().start());
    int last = source.line(unread.span().end());
    if (nameless.stream().anyMatch(line -> first <= line && line <= last)) {
      problems.nameless(scope.name());
    }
    Matcher word = WORD.matcher(problems.text(unread.span()));
    while (word.find()) {
      scope.excuse(word.group());
    }
    for (Statement line : unread.body()) {
      if (line instanceof Statement.Definition definition) {
        scope.excuse(definition.name().text());
      }
    }
  }

  private Scope section(
      Statement.Section section, Name name, SizeRange sizes, List<Statement> body) {
    Scope scope = shared.document().section(name.text(), sizes);
    sections.add(section);
    scopes.put(section, scope);
    shared.lookup().add(scope, name);
    nodes.set(new NodeList.Setting(sizes, name.text(), "", false));
    for (Statement line : body) {
      declare(scope, line);
    }
    nodes.set(new NodeList.Setting(shared.document().sizes(), "", "", false));
    return scope;
  }

  private void declare(Scope scope, Statement line) {
    if (line instanceof Statement.Unread unread) {
      excuse(scope, unread);
    } else if (line instanceof Statement.Let let) {
      number(scope, let.name());
    } else if (line instanceof Statement.Solve solve) {
      number(scope, solve.name());
    } else if (line instanceof Statement.Point point) {
      drawn(scope, point.name(), What.POINT);
    } else if (line instanceof Statement.Path path) {
      drawn(scope, path.name(), What.PATH);
    } else if (line instanceof Statement.Inner inner) {
      drawn(scope, inner.name(), What.INNER);
    } else if (line instanceof Statement.Placement placement) {
      drawn(scope, placement.name(), What.PLACEMENT);
    } else if (line instanceof Statement.Level level) {
      drawn(scope, level.name(), What.LEVEL);
    }
  }

  private void number(Scope scope, Name name) {
    int slot = nodes.reserve(name.span(), scope.full(name.text()));
    Scope.NamedNumber number = new Scope.NamedNumber(slot, name.span());
    if (shared.sizes().chart().column(name.text()).isPresent()) {
      problems.add(
          problems
              .at(name.span(), "name-of-measurement", scope.full(name.text()))
              .with("name", name.text())
              .with("chart", shared.sizes().chart().file()));
      return;
    }
    boolean outer =
        scope.around().filter(around -> around.numbers().containsKey(name.text())).isPresent();
    if (outer || scope.numbers().putIfAbsent(name.text(), number) != null) {
      Scope.NamedNumber before =
          outer ? shared.document().numbers().get(name.text()) : scope.numbers().get(name.text());
      twice(scope, name, before == null ? name.span() : before.span());
    }
  }

  private int drawn(Scope scope, Name name, What what) {
    int slot = nodes.reserve(name.span(), scope.full(name.text()));
    Drawn drawn = new Drawn(what, slot, name.span(), name.span());
    Drawn before = scope.drawn().putIfAbsent(name.text(), drawn);
    if (before != null) {
      twice(scope, name, before.span());
    }
    return slot;
  }

  /** An edge that bears the name of the line it takes is that line, and needs no other slot. */
  private int edge(Scope scope, Statement.OutlineEdge edge) {
    boolean sameName =
        edge.path() instanceof PathTerm.Named named
            && named.reference().piece().isEmpty()
            && named.reference().name().text().equals(edge.name().text());
    return sameName
        ? nodes.reserve(edge.name().span(), scope.full(edge.name().text()))
        : drawn(scope, edge.name(), What.EDGE);
  }

  private void twice(Scope scope, Name name, Span before) {
    problems.add(
        problems
            .at(name.span(), "name-twice", scope.full(name.text()))
            .with("name", name.text())
            .with("line", problems.line(before)));
  }

  private void piece(Statement.PieceSection piece, Scope scope) {
    nodes.set(new NodeList.Setting(scope.sizes(), scope.name(), scope.name(), false));
    int outline = nodes.reserve(piece.name().span(), scope.name());
    int drafted =
        PieceDeclaration.isShaped(piece)
            ? nodes.reserve(piece.name().span(), scope.name())
            : outline;
    List<DeclaredEdge> edges = new ArrayList<>();
    for (Statement line : piece.body()) {
      if (!edges.isEmpty()) {
        break;
      }
      if (line instanceof Statement.Outline drawn) {
        for (Statement.OutlineEdge edge : drawn.edges()) {
          edges.add(new DeclaredEdge(edge.name(), edge(scope, edge)));
        }
      } else {
        for (Name edge : edgeNames.of(line)) {
          edges.add(new DeclaredEdge(edge, drawn(scope, edge, What.EDGE)));
        }
      }
    }
    nodes.set(new NodeList.Setting(shared.document().sizes(), "", "", false));
    pieces.add(new PieceDeclaration(piece, scope, drafted, outline, edges));
  }

  /** Two parts or pieces of one name must be drawn in sizes of their own. */
  private void refuseSharedSizes() {
    Map<String, List<Statement>> named = new LinkedHashMap<>();
    for (Statement section : sections) {
      named.computeIfAbsent(scope(section).name(), name -> new ArrayList<>()).add(section);
    }
    for (List<Statement> sections : named.values()) {
      for (int i = 1; i < sections.size(); i++) {
        refuseShared(sections.get(i), sections.subList(0, i));
      }
    }
  }

  private void refuseShared(Statement section, List<Statement> before) {
    Scope scope = scope(section);
    Span span =
        section instanceof Statement.PieceSection piece
            ? piece.name().span()
            : ((Statement.PartSection) section).name().span();
    for (Statement other : before) {
      if (scope.sizes().meets(scope(other).sizes())) {
        boolean both =
            section instanceof Statement.PieceSection one
                && one.sizes().isPresent()
                && other instanceof Statement.PieceSection two
                && two.sizes().isPresent();
        problems.add(
            problems
                .at(span, both ? "pieces-share-sizes" : "piece-twice", scope.name())
                .with("name", scope.name())
                .with("line", problems.line(other.span())));
      }
    }
  }
}
