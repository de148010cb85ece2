package org.hemwright.exchange.run;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;

/**
 * What a kept run came to.
 *
 * @param run absent where the file could not be read
 * @param findings why, then
 */
public record ReadRun(Optional<SizeRun> run, List<Finding> findings) {
  public ReadRun {
    findings = List.copyOf(findings);
  }
}
