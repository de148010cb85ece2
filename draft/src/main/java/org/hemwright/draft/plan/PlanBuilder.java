package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.make.Garment;
import org.hemwright.draft.plan.make.MakeReader;
import org.hemwright.draft.plan.name.Lookup;
import org.hemwright.draft.plan.name.Registry;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.name.SizeNames;
import org.hemwright.draft.plan.node.DialNode;
import org.hemwright.draft.plan.node.ElasticNode;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.node.NumberNode;
import org.hemwright.draft.plan.node.Program;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.Acceptance;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.traced.TracedInputs;

/** Makes a plan: names first, then rules, then order, then quantities. */
final class PlanBuilder {
  private final Document document;
  private final SizeChart chart;
  private final Source source;
  private final Problems problems;
  private final NodeList nodes;
  private final Compilation shared;
  private final Compilers all;
  private final List<DialPlan> dials = new ArrayList<>();
  private final List<PiecePlan> pieces = new ArrayList<>();
  private final List<SeamPlan> seams = new ArrayList<>();
  private final List<ElasticPlan> elastics = new ArrayList<>();

  PlanBuilder(Document document, SizeChart chart, TracedInputs inputs) {
    this.document = document;
    this.chart = chart;
    this.source = Source.of(document);
    this.problems = new Problems(source);
    SizeNames sizes = new SizeNames(chart, problems);
    Scope names = Scope.document(sizes.all());
    this.nodes = new NodeList(source, sizes.all());
    this.shared =
        new Compilation(
            problems, nodes, new Lookup(names, chart, nodes, problems), sizes, names, inputs);
    this.all = new Compilers(shared);
  }

  Planned build() {
    HeadingReader headings = new HeadingReader(document, problems);
    Details details = headings.details();
    Declarer declared = new Declarer(shared, source);
    declared.declare(document);
    declared.pieces().forEach(all.girths()::add);
    declared.pieces().forEach(all.sources()::add);
    Size base = headings.base(shared);
    all.tracings().read(declared, base);
    new Bringer(shared, all, declared).bring();
    definitions(declared);
    List<PieceCompiler> compilers = pieces(declared);
    new SplitNames(problems).read(document);
    Registries registries = new Registries();
    registries.read(compilers);
    List<View> views = new ViewReader(shared, registries.fabrics).read(document, details, pieces);
    PaperChoices paper = new PaperReader(shared.sizes(), problems).read(document);
    List<Acceptance> accepted = acceptances();
    Making making = making(compilers, registries, views);
    List<Fabric> fabrics =
        registries.fabrics.all().stream()
            .map(each -> making.fused().contains(each.name()) ? fused(each) : each)
            .toList();
    PatternFacts facts = new PatternFacts(details, base, fabrics, views, paper, accepted, making);
    int[] order = Order.of(nodes, problems);
    String unit = details.units() == Details.Units.INCHES ? "in" : "cm";
    Kind[] kinds = Typing.of(nodes, order, problems, unit);
    Program program = new Program(nodes, order, kinds, chart);
    Parts parts = new Parts(dials, pieces, seams, elastics, numbers(declared), things(declared));
    return new Planned(new Plan(document, chart, program, facts, parts), problems.findings());
  }

  /** What is fused has no nap that shows, unless it is woven or printed one way. */
  private static Fabric fused(Fabric fabric) {
    return fabric.nap() == Fabric.Nap.EITHER_WAY ? fabric.with(Fabric.Trait.NO_NAP) : fabric;
  }

  /** How the garment is made, over the names that it has. */
  private Making making(List<PieceCompiler> compilers, Registries registries, List<View> views) {
    Map<String, Garment.PieceNames> names = new LinkedHashMap<>();
    for (int i = 0; i < compilers.size(); i++) {
      PieceCompiler compiler = compilers.get(i);
      List<String> copies = pieces.get(i).card().copies().stream().map(Copy::name).toList();
      names.merge(
          compiler.name(),
          new Garment.PieceNames(
              compiler.edgeNames(), compiler.markNames(), compiler.intakeNames(), copies),
          Garment.PieceNames::and);
    }
    Map<String, List<String>> joined = new LinkedHashMap<>();
    seams.forEach(seam -> joined.putIfAbsent(seam.name(), seam.pieces()));
    Map<String, String> held = new LinkedHashMap<>();
    elastics.forEach(elastic -> held.putIfAbsent(elastic.name(), elastic.piece()));
    Garment garment =
        new Garment(
            names,
            joined,
            held,
            registries.fabrics.all().stream().map(Fabric::name).toList(),
            views);
    return new MakeReader(
            garment,
            shared.sizes(),
            shared.document(),
            nodes,
            problems,
            number -> all.numbers().slot(number, shared.document()))
        .read(document);
  }

  /** What the designer accepts; one whose sizes are not known is told and left out. */
  private List<Acceptance> acceptances() {
    List<Acceptance> all = new ArrayList<>();
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Accept accept) {
        Optional<SizeRange> sizes = accept.sizes().flatMap(shared.sizes()::find);
        if (sizes.isPresent() || accept.sizes().isEmpty()) {
          all.add(
              new Acceptance(
                  accept.check(),
                  accept.subject(),
                  sizes,
                  accept.reason(),
                  problems.origin(accept.span())));
        }
      }
    }
    return all;
  }

  private void everywhere(String subject) {
    nodes.set(new NodeList.Setting(shared.document().sizes(), "", subject, false));
  }

  private void definitions(Declarer declared) {
    DefinitionCompiler definitions = new DefinitionCompiler(shared, all);
    for (Statement statement : document.statements()) {
      everywhere("");
      if (statement instanceof Statement.Dial dial) {
        dial(dial);
      } else if (statement instanceof Statement.PartSection
          || statement instanceof Statement.PieceSection) {
        Scope scope = declared.scope(statement);
        nodes.set(new NodeList.Setting(scope.sizes(), scope.name(), scope.name(), false));
        for (Statement line : ((Statement.Section) statement).body()) {
          definitions.compile(line, scope);
        }
      } else {
        definitions.compile(statement, shared.document());
      }
    }
  }

  private void dial(Statement.Dial dial) {
    everywhere(dial.name().text());
    Scope.NamedNumber named = shared.document().numbers().get(dial.name().text());
    if (named == null || !named.span().equals(dial.name().span())) {
      return;
    }
    NumberNode.Literal value = nodes.literal(dial.value());
    nodes.fill(named.slot(), value, dial.value().span());
    int from = nodes.add(nodes.literal(dial.from()), dial.from().span());
    int to = nodes.add(nodes.literal(dial.to()), dial.to().span());
    nodes.add(new DialNode(named.slot(), from, to), dial.value().span());
    dials.add(
        new DialPlan(
            dial.name().text(),
            named.slot(),
            value.index(),
            from,
            to,
            dial.text(),
            problems.origin(dial.span())));
  }

  private List<PieceCompiler> pieces(Declarer declared) {
    List<PieceCompiler> compilers = new ArrayList<>();
    for (PieceDeclaration piece : declared.pieces()) {
      PieceCompiler compiler = new PieceCompiler(shared, all, piece);
      compiler.compileEdges();
      compilers.add(compiler);
    }
    return compilers;
  }

  private static List<PlannedThing> things(Declarer declared) {
    List<PlannedThing> things = new ArrayList<>();
    for (Statement.Section section : declared.sections()) {
      Scope scope = declared.scope(section);
      scope
          .drawn()
          .forEach(
              (name, drawn) ->
                  things.add(
                      new PlannedThing(
                          scope.name(),
                          name,
                          drawn.what(),
                          drawn.slot(),
                          drawn.span(),
                          drawn.given(),
                          scope.sizes())));
    }
    return things;
  }

  private Map<String, List<Integer>> numbers(Declarer declared) {
    Map<String, List<Integer>> numbers = new LinkedHashMap<>();
    List<Scope> scopes = new ArrayList<>();
    scopes.add(shared.document());
    declared.sections().forEach(section -> scopes.add(declared.scope(section)));
    for (Scope scope : scopes) {
      scope
          .numbers()
          .forEach(
              (name, number) -> {
                if (!name.equals("pi") || !scope.name().isEmpty()) {
                  numbers
                      .computeIfAbsent(scope.full(name), full -> new ArrayList<>())
                      .add(number.slot());
                }
              });
    }
    return numbers;
  }

  /** Fabrics, seams and elastics, which have names of their own. */
  private final class Registries {
    private final Registry<Fabric> fabrics = new Registry<>("fabric", problems, shared.document());
    private final Registry<Statement> sewn =
        new Registry<>("seam-or-elastic", problems, shared.document());

    void read(List<PieceCompiler> compilers) {
      FabricReader reader = new FabricReader(problems);
      SeamCompiler seamCompiler = new SeamCompiler(shared, all, compilers);
      for (Statement statement : document.statements()) {
        if (statement instanceof Statement.FabricSection section) {
          fabrics.add(section.name(), reader.read(section, fabrics.all().isEmpty()));
        } else if (statement instanceof Statement.SeamSection seam) {
          sewn.add(seam.name(), seam);
          seamCompiler.compile(seam).ifPresent(seams::add);
        } else if (statement instanceof Statement.Elastic elastic) {
          sewn.add(elastic.name(), elastic);
          elastic(elastic, compilers);
        }
      }
      for (PieceCompiler compiler : compilers) {
        pieces.add(compiler.finish(seamCompiler.notchesOn(compiler.name())));
      }
      everywhere("");
    }

    private void elastic(Statement.Elastic elastic, List<PieceCompiler> compilers) {
      everywhere(elastic.name().text());
      Scope names = shared.document();
      Optional<Name> round =
          clause(elastic, Statement.ElasticClause.Round.class)
              .map(Statement.ElasticClause.Round::measurement);
      Optional<Name> over =
          clause(elastic, Statement.ElasticClause.Over.class)
              .map(Statement.ElasticClause.Over::measurement);
      ElasticNode numbers =
          new ElasticNode(
              all.numbers().slot(elastic.width(), names),
              all.numbers().slot(elastic.length(), names),
              all.numbers().slot(elastic.overlap(), names),
              measurement(round),
              measurement(over),
              clause(elastic, Statement.ElasticClause.Stretching.class)
                  .map(said -> all.numbers().slot(said.by(), names))
                  .orElse(Node.NONE));
      int check = nodes.add(numbers, elastic.span());
      Name piece = elastic.place().piece().orElse(elastic.place().name());
      Optional<Name> edge = elastic.place().piece().map(owner -> elastic.place().name());
      List<PieceCompiler> named =
          compilers.stream().filter(each -> each.name().equals(piece.text())).toList();
      if (named.isEmpty()) {
        shared.lookup().variants(piece, names.sizes(), piece.span());
        return;
      }
      if (edge.isPresent() && !named.stream().allMatch(each -> each.hasEdge(edge.get()))) {
        return;
      }
      elastics.add(
          new ElasticPlan(
              elastic.name().text(),
              piece.text(),
              edge.map(Name::text),
              check,
              numbers,
              round.map(Name::text),
              over.map(Name::text),
              problems.origin(elastic.span())));
    }

    private int measurement(Optional<Name> name) {
      return name.map(said -> shared.lookup().number(Reference.to(said), shared.document()))
          .orElse(Node.NONE);
    }

    private <C extends Statement.ElasticClause> Optional<C> clause(
        Statement.Elastic elastic, Class<C> kind) {
      return elastic.clauses().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }
  }
}
