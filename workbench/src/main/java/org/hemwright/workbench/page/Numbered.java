package org.hemwright.workbench.page;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.report.CheckAnswer;

/**
 * A finding with its number on the page: what must be mended first, then what is worth a look, then
 * what is accepted; within each in the order of the checks.
 *
 * @param number from 1
 * @param check the check that found it
 */
record Numbered(int number, String check, Finding finding) {
  private static final List<Status> ORDER = List.of(Status.FAIL, Status.WARN, Status.ACCEPTED);

  static List<Numbered> of(List<CheckAnswer> answers) {
    List<Numbered> numbered = new ArrayList<>();
    for (Status status : ORDER) {
      for (CheckAnswer answer : answers) {
        for (Finding finding : answer.findings()) {
          if (finding.status() == status) {
            numbered.add(new Numbered(numbered.size() + 1, answer.id(), finding));
          }
        }
      }
    }
    return List.copyOf(numbered);
  }

  /** Its place in the list, to link to. */
  String id() {
    return "finding-" + number;
  }

  /** Its first pin, to link to. */
  String pin() {
    return "pin-" + number;
  }

  /** Whether it is pinned to a piece. */
  boolean isPinned() {
    return finding.places().stream()
        .anyMatch(place -> place.piece().isPresent() && place.point().isPresent());
  }

  /** How it ended, as a class of the page's style. */
  String kind() {
    return switch (finding.status()) {
      case FAIL -> "fail";
      case WARN -> "look";
      case ACCEPTED -> "accepted";
      case OK -> "ok";
    };
  }

  /** The same in words. */
  String kindInWords() {
    return switch (finding.status()) {
      case FAIL -> "To mend";
      case WARN -> "Worth a look";
      case ACCEPTED -> "Accepted";
      case OK -> "Well";
    };
  }
}
