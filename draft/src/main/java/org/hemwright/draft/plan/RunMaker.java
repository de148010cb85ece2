package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Program;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.pattern.Dial;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.SeamRequest;
import org.hemwright.pattern.seam.SeamResolution;

/** Takes a size run out of the values, and resolves its seams. */
final class RunMaker {
  private final Plan plan;
  private final Program program;
  private final List<Finding> findings = new ArrayList<>();

  RunMaker(Plan plan) {
    this.plan = plan;
    this.program = plan.program();
  }

  SizeRun run(List<Values> sizes) {
    List<Sized> made = sizes.parallelStream().map(this::sized).toList();
    made.forEach(each -> findings.addAll(each.findings));
    List<SizedPattern> sized = made.stream().map(Sized::pattern).toList();
    List<Dial> dials = sizes.isEmpty() ? List.of() : dials(sizes.get(0));
    PatternFacts facts = plan.facts();
    List<PieceCard> cards = plan.parts().pieces().stream().map(PiecePlan::card).toList();
    Pattern pattern =
        new Pattern(
            facts.details(),
            plan.chart(),
            facts.base(),
            facts.fabrics(),
            dials,
            facts.views(),
            cards,
            facts.paper(),
            facts.acceptances(),
            facts.making(),
            measured());
    return new SizeRun(pattern, sized);
  }

  /** The chart's measurements that the document names. */
  private List<String> measured() {
    return plan.chart().columns().stream()
        .map(SizeChart.Column::name)
        .filter(name -> plan.parts().numbers().containsKey(name))
        .toList();
  }

  /** Why seams could not be resolved, for each size. */
  List<Finding> findings() {
    return findings;
  }

  private List<Dial> dials(Values values) {
    List<Dial> dials = new ArrayList<>();
    for (DialPlan dial : plan.parts().dials()) {
      double value = values.number(dial.slot());
      double from = values.number(dial.from());
      double to = values.number(dial.to());
      Optional<QuantityKind> kind = program.kind(dial.slot()).quantity();
      if (kind.isPresent() && from <= value && value <= to) {
        dials.add(new Dial(dial.name(), kind.get(), value, from, to, dial.text(), dial.origin()));
      }
    }
    return dials;
  }

  private record Sized(SizedPattern pattern, List<Finding> findings) {}

  private Sized sized(Values values) {
    List<Piece> pieces = new ArrayList<>();
    for (PiecePlan piece : plan.parts().pieces()) {
      if (values.has(piece.slot())) {
        pieces.add(values.thing(piece.slot(), Piece.class));
      }
    }
    List<Elastic> elastics = new ArrayList<>();
    for (ElasticPlan elastic : plan.parts().elastics()) {
      if (values.has(elastic.check())) {
        elastics.add(
            new Elastic(
                elastic.name(),
                elastic.piece(),
                values.number(elastic.numbers().width()),
                values.number(elastic.numbers().length()),
                values.number(elastic.numbers().overlap()),
                elastic.edge(),
                elastic.round(),
                elastic.over(),
                elastic.numbers().stretch() == Node.NONE
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(values.number(elastic.numbers().stretch())),
                elastic.origin()));
      }
    }
    SeamResolution seams = seams(values, pieces);
    return new Sized(
        new SizedPattern(values.size(), pieces, seams.seams(), elastics, numbers(values)),
        seams.findings().stream()
            .map(finding -> finding.in(List.of(values.size().name())))
            .toList());
  }

  private SeamResolution seams(Values values, List<Piece> pieces) {
    List<SeamRequest> requests = new ArrayList<>();
    for (SeamPlan seam : plan.parts().seams()) {
      seam.in(values).ifPresent(requests::add);
    }
    Set<String> absent = new LinkedHashSet<>();
    plan.parts().pieces().forEach(piece -> absent.add(piece.card().name()));
    pieces.forEach(piece -> absent.remove(piece.name()));
    return plan.seamMemory().resolve(requests, pieces, absent);
  }

  private Map<String, Quantity> numbers(Values values) {
    Map<String, Quantity> numbers = new LinkedHashMap<>();
    for (SizeChart.Column column : plan.chart().columns()) {
      OptionalDouble cell = column.cells().get(values.size().position()).value();
      cell.ifPresent(amount -> numbers.put(column.name(), new Quantity(column.kind(), amount)));
    }
    plan.parts()
        .numbers()
        .forEach(
            (name, slots) -> {
              for (int slot : slots) {
                Kind kind = program.kind(slot);
                if (values.has(slot) && kind.quantity().isPresent()) {
                  numbers.put(name, new Quantity(kind.quantity().get(), values.number(slot)));
                }
              }
            });
    return numbers;
  }
}
