package org.hemwright.draft.plan.name;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hemwright.draft.plan.name.Scope.NamedNumber;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.node.NumberNode;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Reference;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;

/** Finds the slot that a name stands for, or tells what is wrong with the name. */
public final class Lookup {
  private static final String NUMBER = "named-number";

  private final Scope document;
  private final SizeChart chart;
  private final NodeList nodes;
  private final Problems problems;
  private final Map<String, List<Scope>> sections = new LinkedHashMap<>();
  private final Map<String, Name> given = new LinkedHashMap<>();

  /** Names of a document over a chart. */
  public Lookup(Scope document, SizeChart chart, NodeList nodes, Problems problems) {
    this.document = document;
    this.chart = chart;
    this.nodes = nodes;
    this.problems = problems;
  }

  /** Adds a part or piece, named there. */
  public void add(Scope section, Name name) {
    given.putIfAbsent(section.name(), name);
    sections.computeIfAbsent(section.name(), each -> new ArrayList<>()).add(section);
  }

  /** Some of the parts and pieces, where they are named. */
  public List<Name> given(List<String> names) {
    return given.values().stream().filter(name -> names.contains(name.text())).toList();
  }

  /** The parts and pieces of a name, in the order of the document. */
  public List<Scope> sections(String name) {
    Name named = given.get(name);
    if (named != null) {
      problems.used(named.span());
    }
    return List.copyOf(sections.getOrDefault(name, List.of()));
  }

  /** The slot of a number. */
  public int number(Reference reference, Scope from) {
    if (reference.piece().isPresent()) {
      return outside(reference, from, scope -> numberSlot(scope, reference), NUMBER);
    }
    String name = reference.name().text();
    NamedNumber number = from.numbers().get(name);
    if (number == null) {
      number = document.numbers().get(name);
    }
    if (number == null) {
      return measured(reference.name(), from);
    }
    problems.used(number.span());
    return number.slot();
  }

  private int measured(Name name, Scope from) {
    Optional<SizeChart.Column> column = chart.column(name.text());
    if (column.isEmpty() && !name.text().equals("pi")) {
      return missing(name, from, NUMBER);
    }
    NodeList.Setting here = nodes.setting();
    nodes.set(new NodeList.Setting(document.sizes(), "", name.text(), true));
    int slot = nodes.reserve(name.span(), name.text());
    nodes.fill(
        slot,
        column
            .<NumberNode>map(NumberNode.Measurement::new)
            .orElseGet(() -> new NumberNode.Constant(Math.PI)));
    nodes.set(here);
    document.numbers().put(name.text(), new NamedNumber(slot, name.span()));
    problems.used(name.span());
    return slot;
  }

  /** The slot of a point or level. */
  public int point(Reference reference, Scope from) {
    return drawn(reference, from, true);
  }

  /** The slot of a line, curve, arc, path, edge, inner or placement line. */
  public int path(Reference reference, Scope from) {
    return drawn(reference, from, false);
  }

  private int drawn(Reference reference, Scope from, boolean point) {
    String wanted = point ? "point" : "path";
    if (reference.piece().isPresent()) {
      return outside(reference, from, scope -> drawnSlot(scope, reference, point), wanted);
    }
    Optional<Integer> slot = drawnSlot(from, reference, point);
    return slot.orElseGet(() -> missing(reference.name(), from, wanted));
  }

  private Optional<Integer> numberSlot(Scope scope, Reference reference) {
    Optional<NamedNumber> number =
        Optional.ofNullable(scope.numbers().get(reference.name().text()));
    number.ifPresent(named -> problems.used(named.span()));
    return number.map(NamedNumber::slot);
  }

  private Optional<Integer> drawnSlot(Scope scope, Reference reference, boolean point) {
    Drawn drawn = scope.drawn().get(reference.name().text());
    if (drawn == null) {
      return Optional.empty();
    }
    problems.used(drawn.given());
    if (drawn.what().isPoint() == point) {
      return Optional.of(drawn.slot());
    }
    problems.add(
        problems
            .at(reference.span(), point ? "path-for-point" : "point-for-path", reference.text())
            .with("name", reference.text())
            .with("what", drawn.what().words()));
    return Optional.of(nodes.broken(reference.span()));
  }

  private int outside(
      Reference reference, Scope from, Function<Scope, Optional<Integer>> find, String wanted) {
    Optional<List<Scope>> variants =
        variants(reference.piece().orElseThrow(), from.sizes(), reference.span());
    if (variants.isEmpty()) {
      return nodes.broken(reference.span());
    }
    List<Integer> slots = new ArrayList<>();
    List<SizeRange> ranges = new ArrayList<>();
    for (Scope variant : variants.get()) {
      slots.add(
          find.apply(variant).orElseGet(() -> missingInside(reference.name(), variant, wanted)));
      ranges.add(variant.sizes());
    }
    return slots.size() == 1
        ? slots.get(0)
        : nodes.add(new ChoiceNode.BySize(slots, ranges), reference.span());
  }

  /**
   * The parts or pieces of a name that are drawn in some sizes, which together must be drawn in all
   * of these; otherwise it is told.
   */
  public Optional<List<Scope>> variants(Name name, SizeRange sizes, Span span) {
    List<Scope> named = sections(name.text());
    if (named.isEmpty()) {
      if (!document.excuses(name.text())) {
        Unknown.tellNamed(problems, name, "piece-or-part", List.copyOf(given.values()));
      }
      return Optional.empty();
    }
    List<Scope> drawn = named.stream().filter(scope -> scope.sizes().meets(sizes)).toList();
    List<String> without =
        chart.sizes().stream()
            .filter(sizes::contains)
            .filter(size -> drawn.stream().noneMatch(scope -> scope.sizes().contains(size)))
            .map(Size::name)
            .toList();
    if (!without.isEmpty()) {
      problems.add(
          problems
              .at(span, "piece-not-in-sizes", name.text())
              .with("piece", name.text())
              .sizes(without));
      return Optional.empty();
    }
    return Optional.of(drawn);
  }

  private int missingInside(Name name, Scope piece, String wanted) {
    if (!piece.excuses(name.text())) {
      boolean number = wanted.equals(NUMBER);
      List<Name> known = known(piece, wanted);
      String what = number ? NUMBER : "bare-" + wanted;
      Unknown.tellNamed(problems, name, what, piece.name(), known);
    }
    return nodes.broken(name.span());
  }

  private int missing(Name name, Scope from, String wanted) {
    String text = name.text();
    if (!from.excuses(text)) {
      tellMissing(name, from, wanted);
    }
    return nodes.broken(name.span());
  }

  private void tellMissing(Name name, Scope from, String wanted) {
    List<Name> known = knownAround(from, wanted);
    Optional<String> near = NearName.to(name.text(), known.stream().map(Name::text).toList());
    Optional<Name> given =
        known.stream()
            .filter(each -> near.filter(each.text()::equals).isPresent())
            .filter(each -> !each.span().equals(name.span()))
            .findFirst();
    Finding.Builder finding = missingFinding(name, from, wanted, near);
    problems.addUnknown(finding, name, from.name(), given);
  }

  private Finding.Builder missingFinding(
      Name name, Scope from, String wanted, Optional<String> near) {
    String text = name.text();
    boolean number = wanted.equals(NUMBER);
    if (number && from.drawn().containsKey(text)) {
      return problems
          .at(name.span(), "drawn-for-number", text)
          .with("name", text)
          .with("what", from.drawn().get(text).what().words());
    }
    if (!number && (from.numbers().containsKey(text) || isNumber(text))) {
      return problems
          .at(name.span(), "number-for-drawn", text)
          .with("name", text)
          .with("wanted", new Argument.Term(wanted));
    }
    List<String> elsewhere = elsewhere(text, number);
    if (near.isEmpty() && !elsewhere.isEmpty()) {
      Finding.Builder finding =
          problems
              .at(name.span(), "name-elsewhere", text)
              .with("name", text)
              .with("full", elsewhere.get(0))
              .with("pieces", Argument.of(elsewhere));
      return elsewhere.size() == 1
          ? finding.mendedBy(problems.replace(name.span(), elsewhere.get(0)))
          : finding;
    }
    Finding.Builder finding =
        problems
            .at(name.span(), number ? "number-unknown" : "drawn-unknown", text)
            .with("name", text)
            .with("wanted", new Argument.Term(wanted))
            .with("heading", text.replace('_', ' '))
            .with("chart", chart.file());
    near.ifPresent(
        meant -> finding.with("near", meant).mendedBy(problems.replace(name.span(), meant)));
    return finding;
  }

  private boolean isNumber(String text) {
    return document.numbers().containsKey(text) || chart.column(text).isPresent();
  }

  private List<String> elsewhere(String text, boolean number) {
    Set<String> full = new LinkedHashSet<>();
    for (List<Scope> named : sections.values()) {
      for (Scope scope : named) {
        if (number ? scope.numbers().containsKey(text) : scope.drawn().containsKey(text)) {
          full.add(scope.full(text));
        }
      }
    }
    return List.copyOf(full);
  }

  /** The names in a scope that stand for what is wanted, where they are given. */
  private static List<Name> known(Scope scope, String wanted) {
    List<Name> known = new ArrayList<>();
    if (wanted.equals(NUMBER)) {
      scope.numbers().forEach((name, number) -> known.add(new Name(name, number.span())));
      return known;
    }
    scope
        .drawn()
        .forEach(
            (name, drawn) -> {
              if (drawn.what().isPoint() == wanted.equals("point")) {
                known.add(new Name(name, drawn.given()));
              }
            });
    return known;
  }

  private List<Name> knownAround(Scope scope, String wanted) {
    List<Name> known = new ArrayList<>(known(scope, wanted));
    if (wanted.equals(NUMBER)) {
      document.numbers().forEach((name, number) -> known.add(new Name(name, number.span())));
      Span nowhere = new Span(0, 0);
      chart.columns().forEach(column -> known.add(new Name(column.name(), nowhere)));
    }
    return known;
  }
}
