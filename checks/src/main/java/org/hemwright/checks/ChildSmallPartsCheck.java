package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Step;

/**
 * Buttons, toggles and eyelets on clothes for the youngest can come off and be swallowed (common
 * practice, no source): a caution that defers to local rules.
 */
record ChildSmallPartsCheck(ChildLimits limits) implements EachSizeCheck {
  @Override
  public String id() {
    return "child-small-parts";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    boolean small =
        Children.of(sized, pattern)
            .filter(child -> child.isUpTo(limits.mouths(), limits.mouthsTall()))
            .isPresent();
    if (!small) {
      return findings;
    }
    for (Step step : pattern.making().steps()) {
      boolean there = step.sizes().stream().allMatch(range -> range.contains(sized.size()));
      if (there && step.act() instanceof Act.Fasten fasten && isPart(fasten.kind())) {
        findings.add(
            Finding.warn("small-parts", "step " + step.id())
                .with("step", step.id())
                .at(step.origin())
                .build());
      }
    }
    for (Cord cord : pattern.making().cords()) {
      if (cord.toggles()) {
        findings.add(
            Finding.warn("small-parts-cord", "cord " + cord.name())
                .with("cord", cord.name())
                .at(cord.origin())
                .build());
      }
    }
    return findings;
  }

  private static boolean isPart(Act.Fastening kind) {
    return switch (kind) {
      case BUTTON, EYELET -> true;
      case BUTTONHOLE, BAR_TACK -> false;
    };
  }
}
