package org.hemwright.checks.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.make.Step;
import org.junit.jupiter.api.Test;

/** The steps in the examples of the language guide make their garments, and every act is shown. */
class GuideStepsTest {
  @Test
  void theStepsOfEveryExampleMakeIt() {
    for (SizeRun run : GuideGarments.runs()) {
      for (var check : StandardChecks.with(CheckSettings.HANDBOOK)) {
        if (check.id().startsWith("making-")) {
          assertThat(check.check(run)).as(check.id()).isEmpty();
        }
      }
    }
  }

  /** What a making section must be able to say (common practice, no source). */
  @Test
  void everyActIsShown() {
    Set<String> shown = new TreeSet<>();
    for (SizeRun run : GuideGarments.runs()) {
      for (Step step : run.pattern().making().steps()) {
        shown.add(step.act().word());
      }
    }
    assertThat(shown)
        .contains(
            "sew",
            "finish",
            "press",
            "fold",
            "hem",
            "gather",
            "ease",
            "topstitch",
            "attach",
            "form casing",
            "thread",
            "lay in",
            "apply",
            "join",
            "baste",
            "staystitch",
            "understitch",
            "clip",
            "notch",
            "trim",
            "grade",
            "turn out",
            "try on",
            "mark",
            "fuse",
            "close",
            "insert zip",
            "set in",
            "bind",
            "buttonhole",
            "button",
            "eyelet",
            "bar tack",
            "hand sew",
            "leave raw",
            "pin",
            "test",
            "do");
  }
}
