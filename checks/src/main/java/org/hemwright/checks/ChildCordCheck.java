package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.ChildSize;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.make.Cord;

/**
 * Children's clothes have no cord at hood or neck, and short ones at waist and hem, without knots
 * or toggles at their ends (handbook section 7, "Safety texts"): cautions that defer to local
 * rules.
 */
record ChildCordCheck(ChildLimits limits) implements EachSizeCheck {
  @Override
  public String id() {
    return "child-cords";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    Optional<ChildSize> child = Children.of(sized, pattern);
    if (child.isPresent()) {
      for (Cord cord : pattern.making().cords()) {
        switch (cord.place()) {
          case HOOD, NECK -> atNeck(cord, child.get(), findings);
          case WAIST, HEM, CUFF -> atWaist(cord, child.get(), sized, findings);
          case BACK -> atBack(cord, child.get(), findings);
        }
      }
    }
    return findings;
  }

  private void atNeck(Cord cord, ChildSize child, List<Finding> findings) {
    if (child.isUpTo(limits.cordAtNeck(), limits.cordAtNeckTall())
        || child.isUpTo(limits.youngest(), limits.youngestTall())) {
      findings.add(caution("cord-at-neck", cord).build());
    } else if (child.isUpTo(limits.freeAtNeck(), limits.freeAtNeckTall())) {
      findings.add(caution("cord-ends-at-neck", cord).build());
    }
  }

  private void atWaist(Cord cord, ChildSize child, SizedPattern sized, List<Finding> findings) {
    if (!child.isUpTo(limits.cordAtWaist(), limits.cordAtWaistTall())) {
      return;
    }
    OptionalDouble free =
        cord.freeEnds().map(ends -> ends.in(sized.numbers())).orElse(OptionalDouble.empty());
    if (free.isEmpty()) {
      findings.add(
          caution("cord-ends-unsaid", cord).with("short", Argument.mm(limits.shortEnds())).build());
    } else if (free.getAsDouble() > limits.shortEnds()) {
      findings.add(
          caution("cord-ends-long", cord)
              .with("free", Argument.mm(free.getAsDouble()))
              .with("short", Argument.mm(limits.shortEnds()))
              .with("long", Argument.mm(limits.longEnds()))
              .values(free.getAsDouble(), limits.shortEnds(), "mm")
              .build());
    }
    if (cord.toggles()) {
      findings.add(caution("cord-toggles", cord).build());
    }
    if (!cord.tacked()) {
      findings.add(caution("cord-untacked", cord).build());
    }
  }

  private void atBack(Cord cord, ChildSize child, List<Finding> findings) {
    if (child.isUpTo(limits.freeAtNeck(), limits.freeAtNeckTall())) {
      findings.add(caution("cord-at-back", cord).build());
    }
  }

  private static Finding.Builder caution(String code, Cord cord) {
    return Finding.warn(code, "cord " + cord.name())
        .with("cord", cord.name())
        .with("place", new Argument.Term("cord-" + cord.place().word()))
        .at(cord.origin());
  }
}
