package org.hemwright.checks;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.construction.Assembly;
import org.hemwright.pattern.construction.Strip;
import org.hemwright.pattern.construction.Trouble;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * The steps of every view make the garment: one question for each that {@link Trouble.Question}
 * asks, from "is every edge dealt with once?" to "does the maker find the places?" (handbook
 * section 7, "Step record"). Silent where the document does not say how it is made.
 *
 * @param question which
 * @param followed the views of each size as they are put together, for all the questions
 */
record ConstructionCheck(Trouble.Question question, OncePerRun<List<Assembly>> followed)
    implements Check {
  @Override
  public String id() {
    return question.id();
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<List<Assembly>> assemblies = followed.of(run);
    return BySize.findings(
        run,
        index ->
            assemblies.get(index).stream()
                .flatMap(assembly -> assembly.troubles(question).stream())
                .map(trouble -> told(trouble, run.sizes().get(index), run.pattern()))
                .toList());
  }

  private static Finding told(Trouble trouble, SizedPattern sized, Pattern pattern) {
    Finding.Builder finding =
        trouble.kind().fails()
            ? Finding.fail(trouble.kind().code(), trouble.about())
            : Finding.warn(trouble.kind().code(), trouble.about());
    finding.with("name", trouble.name());
    trouble.strip().ifPresent(strip -> finding.with("edge", strip.text()));
    if (isOfParts(trouble)) {
      finding.with("parts", trouble.name());
    }
    trouble.mate().ifPresent(mate -> finding.with("mate", mate));
    trouble.step().ifPresent(step -> finding.with("step", step.id()));
    trouble
        .other()
        .ifPresent(
            other ->
                finding
                    .with("other", other.id())
                    .with("line", String.valueOf(other.origin().line())));
    trouble
        .stitch()
        .ifPresent(
            stitch -> finding.with("stitch", new Argument.Term("with-" + stitch.kind().key())));
    if (trouble.found().isPresent() && trouble.wanted().isPresent()) {
      double found = trouble.found().getAsDouble();
      double wanted = trouble.wanted().getAsDouble();
      if (isCount(trouble.kind())) {
        finding
            .with("found", Argument.of((long) found))
            .with("wanted", Argument.of((long) wanted))
            .values(found, wanted, "");
      } else {
        finding
            .with("found", Argument.of(Quantity.length(found)))
            .with("wanted", Argument.of(Quantity.length(wanted)))
            .values(found, wanted, "mm");
      }
    }
    Origin origin = origin(trouble, sized, pattern);
    trouble
        .strip()
        .flatMap(strip -> place(strip, origin, sized))
        .ifPresentOrElse(finding::at, () -> finding.at(origin));
    return finding.build();
  }

  /** Whether it is about the seam of a piece that is cut apart, whose edges bear its name. */
  private static boolean isOfParts(Trouble trouble) {
    return trouble
        .strip()
        .filter(strip -> trouble.about().equals("seam " + strip.edge()))
        .isPresent();
  }

  private static boolean isCount(Trouble.Kind kind) {
    return kind == Trouble.Kind.BUTTON_COUNT || kind == Trouble.Kind.PARTS_UNMARKED;
  }

  /** The step, or else what the document says of the thing that lacks one. */
  private static Origin origin(Trouble trouble, SizedPattern sized, Pattern pattern) {
    return trouble
        .step()
        .map(Step::origin)
        .or(() -> seam(trouble, sized))
        .or(() -> elastic(trouble, sized))
        .or(
            () ->
                trouble
                    .strip()
                    .flatMap(strip -> sized.piece(strip.piece()))
                    .flatMap(piece -> piece.edge(trouble.strip().orElseThrow().edge()))
                    .map(edge -> edge.origin()))
        .orElseGet(() -> pattern.making().steps().get(0).origin());
  }

  private static Optional<Origin> seam(Trouble trouble, SizedPattern sized) {
    return sized.seams().stream()
        .filter(seam -> trouble.about().equals("seam " + seam.name()))
        .map(Seam::origin)
        .findFirst();
  }

  private static Optional<Origin> elastic(Trouble trouble, SizedPattern sized) {
    return sized.elastics().stream()
        .filter(elastic -> trouble.about().equals("elastic " + elastic.name()))
        .map(Elastic::origin)
        .findFirst();
  }

  private static Optional<Place> place(Strip strip, Origin origin, SizedPattern sized) {
    return sized
        .piece(strip.piece())
        .flatMap(piece -> piece.edge(strip.edge()))
        .map(edge -> edge.path())
        .map(path -> Place.on(origin, strip.piece(), path.at(path.length() / 2).point()));
  }
}
