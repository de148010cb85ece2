package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;

/**
 * What an evaluation came to.
 *
 * @param run every piece that could be drawn, in every size
 * @param findings why the rest could not, one for one cause
 */
public record Drawn(SizeRun run, List<Finding> findings) {
  public Drawn {
    findings = List.copyOf(findings);
  }
}
