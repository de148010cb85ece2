package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.pattern.finding.Finding;

/**
 * A plan, and what is wrong with the document whatever the size.
 *
 * @param plan of all that could be planned
 * @param findings in the order of the text
 */
public record Planned(Plan plan, List<Finding> findings) {
  public Planned {
    findings = List.copyOf(findings);
  }
}
