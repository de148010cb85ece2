package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Expression;
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
        problems.origin(section.span()));
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
