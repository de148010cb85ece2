package org.hemwright.draft;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;

/**
 * What a document and a chart came to.
 *
 * @param run every piece that could be drawn, in every size; absent when nothing could be
 * @param findings every problem found on the way, in the order of the text
 */
public record Drafted(Optional<SizeRun> run, List<Finding> findings) {
  public Drafted {
    findings = List.copyOf(findings);
  }
}
