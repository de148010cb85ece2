package org.hemwright.workbench.report;

import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;

/**
 * What one check said of a size run.
 *
 * @param id the check's name
 * @param findings what it found, one for one cause; none where all is well
 */
public record CheckAnswer(String id, List<Finding> findings) {
  public CheckAnswer {
    findings = List.copyOf(findings);
  }

  /** Whether something must be mended. */
  public boolean fails() {
    return findings.stream().anyMatch(finding -> finding.status() == Status.FAIL);
  }
}
