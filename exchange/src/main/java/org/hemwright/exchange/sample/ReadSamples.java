package org.hemwright.exchange.sample;

import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.sample.SampleLog;

/**
 * What a sample log came to.
 *
 * @param log the lines that could be read
 * @param findings those that could not, in the order of the file
 */
public record ReadSamples(SampleLog log, List<Finding> findings) {
  public ReadSamples {
    findings = List.copyOf(findings);
  }
}
