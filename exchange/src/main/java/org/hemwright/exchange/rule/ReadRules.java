package org.hemwright.exchange.rule;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.RuleTable;

/**
 * What came of reading a rule table.
 *
 * @param table absent where anything in it is amiss
 * @param findings what
 */
public record ReadRules(Optional<RuleTable> table, List<Finding> findings) {
  public ReadRules {
    findings = List.copyOf(findings);
  }
}
