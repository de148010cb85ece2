package org.hemwright.paper;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;

/**
 * A run as the maker gets it.
 *
 * @param files in the order in which they were asked for
 * @param findings words that found no room, pieces too wide for a paper; their wording lies in
 *     {@link Paper#messages()}
 */
public record PrintedPattern(List<PrintedFile> files, List<Finding> findings) {
  public PrintedPattern {
    files = List.copyOf(files);
    findings = List.copyOf(findings);
  }

  /** The file of that name. */
  public Optional<PrintedFile> file(String name) {
    return files.stream().filter(file -> file.name().equals(name)).findFirst();
  }
}
