package org.hemwright.workbench.report;

import java.util.List;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.sample.SampleAnswer;

/**
 * What the checks found, as {@code check --json} gives it: {@code {"checks": [...], "coverage":
 * [...]}}; with {@code "samples"} what has come of each note of the sample log, and with {@code
 * "problems"}, in the same shape as checks, what of the input could not be read.
 */
public final class CheckReport {
  private CheckReport() {}

  /** The report of checks that ran, the problems of the input beside it. */
  public static String json(
      SizeRun run,
      List<CheckAnswer> answers,
      List<Finding> problems,
      List<SampleAnswer> samples,
      Wording wording) {
    FindingJson findings = new FindingJson(wording);
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeArrayFieldStart("checks");
          for (CheckAnswer answer : answers) {
            for (Finding finding : answer.findings()) {
              findings.write(json, answer.id(), finding);
            }
            if (answer.findings().isEmpty()) {
              findings.write(json, answer.id(), allIsWell(run));
            }
          }
          json.writeEndArray();
          CoverageJson.write(json, run, wording.sizes());
          if (!samples.isEmpty()) {
            SampleJson.write(json, samples, wording.lengths());
          }
          if (!problems.isEmpty()) {
            findings.write(json, "problems", problems);
          }
          json.writeEndObject();
        });
  }

  private static Finding allIsWell(SizeRun run) {
    return Finding.ok("check-ok", run.pattern().details().title())
        .sizes(run.sizes().stream().map(sized -> sized.size().name()).toList())
        .build();
  }

  /** What was found of one layout, as {@code lay --check --json} gives it. */
  public static String layout(List<Finding> found, Wording wording) {
    FindingJson findings = new FindingJson(wording);
    return JsonText.of(
        json -> {
          json.writeStartObject();
          findings.write(json, "checks", found);
          json.writeEndObject();
        });
  }

  /** Input that cannot be worked with, as every command gives it: {@code {"problems": [...]}}. */
  public static String problems(List<Finding> problems, Wording wording) {
    FindingJson findings = new FindingJson(wording);
    return JsonText.of(
        json -> {
          json.writeStartObject();
          findings.write(json, "problems", problems);
          json.writeEndObject();
        });
  }
}
