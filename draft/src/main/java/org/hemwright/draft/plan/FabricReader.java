package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.fabric.Fabric;

/** Reads a fabric. */
final class FabricReader {
  private final Problems problems;

  FabricReader(Problems problems) {
    this.problems = problems;
  }

  /** The fabric of a section; knits point one way unless it says otherwise (handbook section 5). */
  Fabric read(Statement.FabricSection section) {
    List<Double> widths = new ArrayList<>();
    OptionalDouble across = OptionalDouble.empty();
    OptionalDouble along = OptionalDouble.empty();
    Fabric.Nap nap =
        section.kind() == Fabric.Kind.KNIT ? Fabric.Nap.ONE_WAY : Fabric.Nap.EITHER_WAY;
    OptionalDouble repeatAlong = OptionalDouble.empty();
    OptionalDouble repeatAcross = OptionalDouble.empty();
    List<Statement.FabricMatch> matched = new ArrayList<>();
    boolean widthsSaid = false;
    for (Statement line : section.body()) {
      if (line instanceof Statement.Widths said) {
        widthsSaid = true;
        widths(said, widths, section.name().text());
      } else if (line instanceof Statement.FabricStretch stretch) {
        OptionalDouble least =
            OptionalDouble.of(stretch.least().value() * stretch.least().unit().factor());
        if (stretch.across()) {
          across = least;
        } else {
          along = least;
        }
      } else if (line instanceof Statement.FabricNap said) {
        nap = said.nap();
      } else if (line instanceof Statement.FabricRepeat said) {
        OptionalDouble length = repeat(said, said.along() ? repeatAlong : repeatAcross, section);
        repeatAlong = said.along() ? length : repeatAlong;
        repeatAcross = said.along() ? repeatAcross : length;
      } else if (line instanceof Statement.FabricMatch said) {
        matched.add(said);
      } else if (line instanceof Statement.Unread unread) {
        widthsSaid |= unread.word().equals("widths");
      }
    }
    if (!widthsSaid) {
      problems.add(
          problems
              .at(section.name().span(), "fabric-without-widths", section.name().text())
              .with("fabric", section.name().text()));
    }
    return new Fabric(
        section.name().text(),
        section.title().orElse(section.name().text()),
        section.kind(),
        widths,
        across,
        along,
        nap,
        repeat(repeatAlong, repeatAcross, matched, section),
        problems.origin(section.span()));
  }

  private OptionalDouble repeat(
      Statement.FabricRepeat said, OptionalDouble before, Statement.FabricSection section) {
    double length = said.length().value() * said.length().unit().factor();
    if (before.isPresent() || !(length > 0)) {
      problems.add(
          problems
              .at(
                  said.span(),
                  before.isPresent() ? "repeat-again" : "repeat-none",
                  section.name().text())
              .with("fabric", section.name().text()));
      return before;
    }
    return OptionalDouble.of(length);
  }

  private Optional<Fabric.Repeat> repeat(
      OptionalDouble along,
      OptionalDouble across,
      List<Statement.FabricMatch> matched,
      Statement.FabricSection section) {
    if (along.isEmpty() && across.isEmpty()) {
      for (Statement.FabricMatch line : matched) {
        problems.add(
            problems
                .at(line.span(), "match-without-repeat", section.name().text())
                .with("fabric", section.name().text()));
      }
      return Optional.empty();
    }
    List<String> notches =
        matched.stream().flatMap(line -> line.notches().stream()).map(Name::text).toList();
    return Optional.of(new Fabric.Repeat(along, across, notches));
  }

  private void widths(Statement.Widths said, List<Double> widths, String fabric) {
    double last = 0;
    for (Expression.Literal literal : said.widths()) {
      double width = literal.value() * literal.unit().factor();
      if (width > last) {
        widths.add(width);
        last = width;
      } else {
        problems.add(
            problems
                .at(literal.span(), "widths-fall", fabric)
                .with("text", problems.text(literal.span())));
      }
    }
  }
}
