package org.hemwright.checks.steps;

import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * An example with one mistake in its steps.
 *
 * @param where the example, and what was done
 * @param run with the mistake
 * @param check that must tell it
 * @param names of the steps at which it may show, and the subjects that it may be about
 */
record SpoiltSteps(String where, SizeRun run, String check, Set<String> names) {
  boolean isToldBy(Finding finding) {
    boolean atStep =
        finding.arguments().get("step") instanceof Argument.Text step
            && names.contains(step.text());
    return atStep || names.contains(finding.subject());
  }
}
