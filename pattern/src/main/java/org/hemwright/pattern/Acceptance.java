package org.hemwright.pattern;

import java.util.Optional;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/**
 * A finding that the designer has judged and means to keep, with her reason. It stays in every
 * report.
 *
 * @param check the check's name, or the code of one of its findings: {@code seam-length}
 * @param subject what the finding is about, as it names it: {@code seam waist_seam}
 * @param sizes the sizes in which it is accepted; every size when absent
 * @param reason her words
 * @param origin where the document says so
 */
public record Acceptance(
    String check, String subject, Optional<SizeRange> sizes, String reason, Origin origin) {
  public Acceptance {
    if (check.isBlank() || subject.isBlank() || reason.isBlank()) {
      throw new IllegalArgumentException("an acceptance has a check, a subject and a reason");
    }
  }

  /** Whether it is about a finding, whatever the size. */
  public boolean isAbout(String checkId, Finding finding) {
    return (check.equals(checkId) || check.equals(finding.code()))
        && subject.equals(finding.subject());
  }
}
