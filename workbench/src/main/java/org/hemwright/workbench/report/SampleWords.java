package org.hemwright.workbench.report;

import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.sample.SampleAnswer;
import org.hemwright.pattern.sample.SampleEntry;

/** What has come of a note of the sample log, in words. */
public final class SampleWords {
  private SampleWords() {}

  /** What was noted: {@code 2026-11-25, size 14, ponte: panel.side pinned out by 1 cm}. */
  public static String noted(SampleEntry entry, LengthFormat lengths) {
    String fabric = entry.fabric().isBlank() ? "" : ", " + entry.fabric();
    return "%s, size %s%s: %s %s"
        .formatted(entry.date(), entry.size(), fabric, entry.where(), asked(entry, lengths));
  }

  /** What was done there: {@code pinned out by 1 cm}. */
  public static String asked(SampleEntry entry, LengthFormat lengths) {
    if (entry.asked() == 0) {
      return "sat well";
    }
    String by = lengths.text(Math.abs(entry.asked()), LengthKind.DIFFERENCE);
    return (entry.asked() < 0 ? "pinned out by " : "let out by ") + by;
  }

  /** What the document has made of it since, in a sentence or two. */
  public static String since(SampleAnswer answer, LengthFormat lengths) {
    String now = lengths.text(answer.now(), LengthKind.DIFFERENCE);
    String drafted =
        answer.entry().drafted().stream()
            .mapToObj(mm -> lengths.text(mm, LengthKind.DIFFERENCE))
            .findFirst()
            .orElse("");
    double by = answer.changed().orElse(0);
    String change =
        lengths.text(Math.abs(by), LengthKind.DIFFERENCE) + (by < 0 ? " less" : " more");
    return switch (answer.standing()) {
      case NOT_KNOWN ->
          "Whether it has changed since is not known: the line does not say how long it was drafted"
              + " then. It is %s now.".formatted(now);
      case AS_IT_WAS -> "Not changed since: it is %s, as it was.".formatted(now);
      case AS_ASKED ->
          "Changed since, as asked: it was %s and is %s, %s.".formatted(drafted, now, change);
      case LESS ->
          "Changed since, by less than asked: it was %s and is %s, %s."
              .formatted(drafted, now, change);
      case MORE ->
          "Changed since, by more than asked: it was %s and is %s, %s."
              .formatted(drafted, now, change);
      case OTHER_WAY ->
          "Changed since, the other way than asked: it was %s and is %s, %s."
              .formatted(drafted, now, change);
      case CHANGED -> "Changed since: it was %s and is %s, %s.".formatted(drafted, now, change);
    };
  }
}
