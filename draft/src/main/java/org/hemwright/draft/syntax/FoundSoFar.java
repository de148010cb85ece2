package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/** What was found while a document is read, up to a count. */
final class FoundSoFar {
  private final List<Finding> findings = new ArrayList<>();

  void add(Finding finding) {
    // A few more than are told are kept, since they are not found in the order of the text.
    if (findings.size() <= 2 * DocumentReader.MOST_FINDINGS) {
      findings.add(finding);
    }
  }

  void addAll(List<Finding> more) {
    more.forEach(this::add);
  }

  /** Whether there is no need to look for mends any more. */
  boolean isEnough() {
    return findings.size() > DocumentReader.MOST_FINDINGS;
  }

  /** In the order of the text; a last one says that there are more. */
  List<Finding> told() {
    List<Finding> sorted =
        findings.stream().sorted(Comparator.comparing(f -> f.origin().orElseThrow())).toList();
    if (!isEnough()) {
      return sorted;
    }
    List<Finding> few = new ArrayList<>(sorted.subList(0, DocumentReader.MOST_FINDINGS));
    Finding next = sorted.get(DocumentReader.MOST_FINDINGS);
    few.add(
        Finding.fail("more-findings", next.subject())
            .with("most", Argument.of(DocumentReader.MOST_FINDINGS))
            .at(next.origin().orElseThrow())
            .build());
    return few;
  }
}
