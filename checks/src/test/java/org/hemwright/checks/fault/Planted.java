package org.hemwright.checks.fault;

import java.util.List;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;

/**
 * A garment with one fault in it, and what must be told of it.
 *
 * @param where for people: {@code inlet-tee front.side in 20}
 * @param run with the fault
 * @param sizes in which it must be told; none where it holds whatever the size
 * @param check the check that is meant for it
 * @param subjects what the finding may be about: the piece, the edge, its seams
 */
record Planted(String where, SizeRun run, List<String> sizes, String check, Set<String> subjects) {
  Planted {
    sizes = List.copyOf(sizes);
    subjects = Set.copyOf(subjects);
  }

  /** Whether a finding of the meant check tells of it: the right sizes, the right subject. */
  boolean isToldBy(Finding finding) {
    boolean sized =
        finding.sizes().equals(sizes)
            || (finding.sizes().isEmpty() && sizes.size() == run.sizes().size());
    return finding.status() != Status.OK
        && finding.status() != Status.ACCEPTED
        && sized
        && subjects.contains(finding.subject());
  }
}
