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
  /** No loom is wider (mm); common practice, no source. */
  private static final double WIDEST = 5_000;

  private final Problems problems;

  FabricReader(Problems problems) {
    this.problems = problems;
  }

  /**
   * The fabric of a section. Knits point one way unless it says otherwise (handbook section 5). Of
   * woven ones only the first may have a nap where nothing is said of it: what comes beside the
   * cloth that a garment shows, such as a lining, has none (common practice, no source).
   *
   * @param first whether it is the document's first
   */
  Fabric read(Statement.FabricSection section, boolean first) {
    List<Double> widths = new ArrayList<>();
    OptionalDouble across = OptionalDouble.empty();
    OptionalDouble along = OptionalDouble.empty();
    Fabric.Nap nap =
        section.kind() == Fabric.Kind.KNIT ? Fabric.Nap.ONE_WAY : Fabric.Nap.EITHER_WAY;
    List<Fabric.Trait> traits = new ArrayList<>();
    boolean noNap = !first && section.kind() == Fabric.Kind.WOVEN;
    Stripe stripeAlong = Stripe.NONE;
    Stripe stripeAcross = Stripe.NONE;
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
        noNap = said.none();
      } else if (line instanceof Statement.FabricSides) {
        traits.add(Fabric.Trait.SIDES_ALIKE);
      } else if (line instanceof Statement.FabricRepeat said) {
        Stripe stripe = stripe(said, said.along() ? stripeAlong : stripeAcross, section);
        stripeAlong = said.along() ? stripe : stripeAlong;
        stripeAcross = said.along() ? stripeAcross : stripe;
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
    if (noNap) {
      traits.add(Fabric.Trait.NO_NAP);
    }
    return new Fabric(
        section.name().text(),
        section.title().orElse(section.name().text()),
        section.kind(),
        widths,
        across,
        along,
        nap,
        repeat(stripeAlong, stripeAcross, matched, section),
        traits,
        problems.origin(section.span()));
  }

  /** The bars that run one way of the cloth: how far apart (mm), and whether unevenly. */
  private record Stripe(OptionalDouble repeat, boolean uneven) {
    static final Stripe NONE = new Stripe(OptionalDouble.empty(), false);
  }

  private Stripe stripe(
      Statement.FabricRepeat said, Stripe before, Statement.FabricSection section) {
    double length = said.length().value() * said.length().unit().factor();
    if (before.repeat.isPresent() || !(length > 0)) {
      problems.add(
          problems
              .at(
                  said.span(),
                  before.repeat.isPresent() ? "repeat-again" : "repeat-none",
                  section.name().text())
              .with("fabric", section.name().text()));
      return before;
    }
    return new Stripe(OptionalDouble.of(length), said.uneven());
  }

  private Optional<Fabric.Repeat> repeat(
      Stripe along,
      Stripe across,
      List<Statement.FabricMatch> matched,
      Statement.FabricSection section) {
    if (along.repeat.isEmpty() && across.repeat.isEmpty()) {
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
    return Optional.of(
        new Fabric.Repeat(along.repeat, across.repeat, along.uneven, across.uneven, notches));
  }

  private void widths(Statement.Widths said, List<Double> widths, String fabric) {
    double last = 0;
    for (Expression.Literal literal : said.widths()) {
      double width = literal.value() * literal.unit().factor();
      if (!(width > 0)) {
        problems.add(
            problems
                .at(literal.span(), "width-none", fabric)
                .with("text", problems.text(literal.span())));
      } else if (width > WIDEST) {
        problems.add(
            problems
                .at(literal.span(), "width-beyond", fabric)
                .with("text", problems.text(literal.span())));
      } else if (width > last) {
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
