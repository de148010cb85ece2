package org.hemwright.draft.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.draft.syntax.Quoted;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;

/**
 * The ways to change a number that is stepped by size: in this size, from here up, or in all. Steps
 * are added where the reach needs a border that is not there yet.
 */
final class SteppedGrips {
  private final Document document;
  private final SizeChart chart;
  private final Statement.Let let;
  private final NumberRule.Stepped stepped;
  private final Size size;

  SteppedGrips(Plan plan, Statement.Let let, NumberRule.Stepped stepped, Size size) {
    this.document = plan.document();
    this.chart = plan.chart();
    this.let = let;
    this.stepped = stepped;
    this.size = size;
  }

  /** Where a step starts: a size, and what stands from there. */
  private record Stair(int from, Expression value) {}

  List<Grip> find() {
    List<Stair> stairs = stairs(stepped);
    boolean plain = stairs.stream().allMatch(stair -> stair.value() instanceof Expression.Literal);
    if (!plain || stairs.stream().anyMatch(stair -> stair.from() < 0)) {
      return List.of();
    }
    List<Grip> grips = new ArrayList<>();
    grip(Grip.Reach.FROM_HERE, bordered(List.of(size.position()))).ifPresent(grips::add);
    grip(Grip.Reach.THIS, bordered(List.of(size.position(), size.position() + 1)))
        .ifPresent(grips::add);
    grip(Grip.Reach.ALL, document.text()).ifPresent(grips::add);
    return grips;
  }

  private List<Stair> stairs(NumberRule.Stepped rule) {
    List<Stair> stairs = new ArrayList<>();
    stairs.add(new Stair(0, rule.first()));
    for (NumberRule.Step step : rule.steps()) {
      int from = chart.size(step.from().name()).map(Size::position).orElse(-1);
      stairs.add(new Stair(from, step.value()));
    }
    return stairs;
  }

  /** The document with a step at each of some sizes, which says what stands there already. */
  private String bordered(List<Integer> borders) {
    String text = document.text();
    Source source = Source.of(document);
    List<Stair> stairs = stairs(stepped);
    List<String> added = new ArrayList<>();
    List<Integer> at = new ArrayList<>();
    for (int border : borders) {
      boolean there = stairs.stream().anyMatch(stair -> stair.from() == border);
      if (!there && border < chart.sizes().size()) {
        int last = 0;
        for (int i = 0; i < stairs.size(); i++) {
          last = stairs.get(i).from() <= border ? i : last;
        }
        String name = chart.sizes().get(border).name();
        added.add(
            ", then "
                + source.text(stairs.get(last).value().span())
                + " from size "
                + Quoted.size(name));
        at.add(end(last));
      }
    }
    for (int i = added.size() - 1; i >= 0; i--) {
      text = text.substring(0, at.get(i)) + added.get(i) + text.substring(at.get(i));
    }
    return text;
  }

  /** Where the words of a step end: after its size, or after the first value. */
  private int end(int stair) {
    return stair == 0
        ? stepped.first().span().end()
        : stepped.steps().get(stair - 1).from().span().end();
  }

  private Optional<Grip> grip(Grip.Reach reach, String text) {
    Document changed = DocumentReader.read(document.file(), text);
    if (changed.findings().size() != document.findings().size()) {
      return Optional.empty();
    }
    return rule(changed.statements())
        .map(
            rule -> {
              List<Span> spans = new ArrayList<>();
              for (Stair stair : stairs(rule)) {
                if (concerned(reach, stair.from())) {
                  spans.add(stair.value().span());
                }
              }
              return new Grip(
                  Grip.Kind.LET,
                  let.name().text(),
                  Optional.of(reach),
                  text,
                  List.of(spans),
                  Source.of(changed).line(rule.span().start()));
            });
  }

  private boolean concerned(Grip.Reach reach, int from) {
    return switch (reach) {
      case ALL -> true;
      case FROM_HERE -> from >= size.position();
      case THIS -> from == size.position();
    };
  }

  /** The same rule in the changed document: its name stands where it stood. */
  private Optional<NumberRule.Stepped> rule(List<Statement> statements) {
    for (Statement statement : statements) {
      if (statement instanceof Statement.Let each
          && each.name().span().equals(let.name().span())
          && each.rule() instanceof NumberRule.Stepped rule) {
        return Optional.of(rule);
      }
      if (statement instanceof Statement.Section section) {
        Optional<NumberRule.Stepped> inside = rule(section.body());
        if (inside.isPresent()) {
          return inside;
        }
      }
    }
    return Optional.empty();
  }
}
