package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.seam.Elastic;

/**
 * Every point, length and width of a piece steps from size to size as evenly as the chart does
 * (handbook section 2, "A good nest"); the step may change from some size on, but no size sticks
 * out of the line that its neighbours draw.
 */
record GradeEvenCheck(CheckSettings settings) implements Check {
  @Override
  public String id() {
    return "grade-even";
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<Finding> findings = new ArrayList<>();
    for (PieceRun draft : PieceRun.of(run)) {
      Stray stray = new Stray(PieceRun.chart(run.pattern().chart(), draft.sizes()));
      Map<Integer, Finding> told = new TreeMap<>();
      corners(draft, stray, told);
      edges(draft, stray, told);
      List<Finding> others = new ArrayList<>();
      for (GradedValue value : GradedValue.allowances(draft)) {
        others.addAll(strays(draft, stray, value).values());
      }
      for (GradedValue value : GradedValue.marks(draft)) {
        strays(draft, stray, value)
            .forEach(
                (size, finding) -> {
                  if (!told.containsKey(size)) {
                    others.add(finding);
                  }
                });
      }
      List<String> exchanged =
          ExchangedSizes.of(draft).stream()
              .flatMap(at -> Stream.of(draft.size(at - 1), draft.size(at)))
              .toList();
      Stream.concat(told.values().stream(), others.stream())
          .filter(finding -> finding.sizes().stream().noneMatch(exchanged::contains))
          .forEach(findings::add);
    }
    elastics(run, findings);
    List<String> chart = run.pattern().chart().sizes().stream().map(Size::name).toList();
    return new FindingOrder(chart).of(findings);
  }

  /** A corner out of place is told once for the piece: the worst. */
  private void corners(PieceRun draft, Stray stray, Map<Integer, Finding> told) {
    for (GradedValue value : GradedValue.corners(draft)) {
      strays(draft, stray, value)
          .forEach((size, finding) -> told.merge(size, finding, this::worse));
    }
  }

  /** An edge is told where no corner is. */
  private void edges(PieceRun draft, Stray stray, Map<Integer, Finding> told) {
    Map<Integer, Finding> own = new TreeMap<>();
    for (GradedValue value : GradedValue.edges(draft)) {
      strays(draft, stray, value).forEach((size, finding) -> own.merge(size, finding, this::worse));
    }
    own.forEach(told::putIfAbsent);
  }

  private Finding worse(Finding one, Finding other) {
    return one.found().orElse(0) >= other.found().orElse(0) ? one : other;
  }

  private Map<Integer, Finding> strays(PieceRun draft, Stray stray, GradedValue value) {
    double[] off = value.strays(stray);
    Map<Integer, Finding> found = new TreeMap<>();
    for (int i : Stray.beyond(off, settings.grade().stray())) {
      Finding.Builder finding =
          Finding.warn(value.code(), value.subject())
              .sizes(List.of(draft.size(i)))
              .with("piece", draft.card().name())
              .with("by", Argument.mm(off[i]))
              .values(off[i], 0, "mm")
              .at(value.place(i));
      value.words().forEach(finding::with);
      found.put(i, finding.build());
    }
    return found;
  }

  private void elastics(SizeRun run, List<Finding> findings) {
    List<String> names =
        run.sizes().stream()
            .flatMap(s -> s.elastics().stream())
            .map(Elastic::name)
            .distinct()
            .toList();
    for (String name : names) {
      List<SizedPattern> sizes = new ArrayList<>();
      List<Elastic> elastics = new ArrayList<>();
      for (SizedPattern sized : run.sizes()) {
        Optional<Elastic> own =
            sized.elastics().stream().filter(e -> e.name().equals(name)).findFirst();
        if (own.isPresent()) {
          sizes.add(sized);
          elastics.add(own.get());
        }
      }
      Stray stray = new Stray(PieceRun.chart(run.pattern().chart(), sizes));
      double[] lengths = elastics.stream().mapToDouble(Elastic::finished).toArray();
      double[] widths = elastics.stream().mapToDouble(Elastic::width).toArray();
      double[] overlaps = elastics.stream().mapToDouble(Elastic::overlap).toArray();
      double[] byLength = stray.of(lengths);
      double[] byWidth = stray.of(widths);
      double[] byOverlap = stray.of(overlaps);
      for (int i = 0; i < lengths.length; i++) {
        double worst = Math.max(Math.abs(byWidth[i]), Math.abs(byOverlap[i]));
        worst = Math.max(worst, Math.abs(byLength[i]));
        if (worst > settings.grade().stray()) {
          findings.add(
              Finding.warn("grade-stray-elastic", "elastic " + name)
                  .sizes(List.of(sizes.get(i).size().name()))
                  .with("elastic", name)
                  .with("by", Argument.mm(worst))
                  .values(worst, 0, "mm")
                  .at(Place.in(elastics.get(i).origin()))
                  .build());
        }
      }
    }
  }
}
