package org.hemwright.pattern.sample;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;

/**
 * What has come of each note of the sample log.
 *
 * @param answers in the order of the log; none for a note whose size or place is not there, and
 *     none in sizes that the run leaves out
 * @param findings the notes that name a size or a place that is not there
 */
public record SampleAnswers(List<SampleAnswer> answers, List<Finding> findings) {
  public SampleAnswers {
    answers = List.copyOf(answers);
    findings = List.copyOf(findings);
  }

  /** Answers every note of a log. */
  public static SampleAnswers of(SampleLog log, SizeRun run) {
    List<SampleAnswer> answers = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Map<String, MeasuredPlaces> measured = new TreeMap<>();
    List<String> sizes = run.pattern().chart().sizes().stream().map(Size::name).toList();
    for (SampleEntry entry : log.entries()) {
      Optional<SizedPattern> sized =
          run.sizes().stream().filter(s -> s.size().name().equals(entry.size())).findFirst();
      if (!sizes.contains(entry.size())) {
        findings.add(noSize(entry, sizes));
      } else if (sized.isPresent()) {
        MeasuredPlaces places =
            measured.computeIfAbsent(
                entry.size(), size -> MeasuredPlaces.of(sized.get(), run.pattern()));
        String where = MeasuredPlaces.held(entry.where());
        Double now = places.lengths().get(where);
        if (now == null) {
          findings.add(noPlace(entry, where, places, run));
        } else {
          answers.add(SampleAnswer.of(entry, now));
        }
      }
    }
    return new SampleAnswers(answers, findings);
  }

  private static Finding noSize(SampleEntry entry, List<String> sizes) {
    return Finding.warn("sample-size-unknown", SampleLog.FILE)
        .with("size", entry.size())
        .with("first", sizes.get(0))
        .with("last", sizes.get(sizes.size() - 1))
        .at(entry.sizeAt())
        .build();
  }

  private static Finding noPlace(
      SampleEntry entry, String where, MeasuredPlaces places, SizeRun run) {
    Pattern pattern = run.pattern();
    if (places.byView().contains(where)) {
      return Finding.warn("sample-place-views", SampleLog.FILE)
          .with("place", where)
          .with("view", pattern.views().get(0).name())
          .at(entry.whereAt())
          .build();
    }
    Set<String> elsewhere = new LinkedHashSet<>();
    run.sizes().forEach(s -> elsewhere.addAll(MeasuredPlaces.of(s, pattern).lengths().keySet()));
    Finding.Builder finding =
        Finding.warn(
                elsewhere.contains(where) ? "sample-place-absent" : "sample-place-unknown",
                SampleLog.FILE)
            .with("place", entry.where())
            .with("size", entry.size());
    if (!elsewhere.contains(where)) {
      NearName.to(where, elsewhere).ifPresent(near -> finding.with("near", near));
    }
    return finding.at(entry.whereAt()).build();
  }
}
