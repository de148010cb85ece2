package org.hemwright.checks;

import java.util.List;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Wording;

/** What a check tells of a run, in words: {@code WARN: what is so / what would mend it}. */
final class Told {
  private Told() {}

  static List<String> by(Check check, SizeRun run) {
    Wording wording =
        Wording.of(StandardChecks.messages())
            .overSizes(run.pattern().chart().sizes().stream().map(Size::name).toList());
    return check.check(run).stream()
        .map(
            finding ->
                finding.status() + ": " + wording.message(finding) + " / " + wording.mend(finding))
        .toList();
  }

  static List<String> by(String id, SizeRun run) {
    return StandardChecks.with(CheckSettings.HANDBOOK).stream()
        .filter(check -> check.id().equals(id))
        .flatMap(check -> by(check, run).stream())
        .toList();
  }
}
