package org.hemwright.workbench.page;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.hemwright.checks.BodyTable;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.sample.SampleAnswer;
import org.hemwright.workbench.report.CheckAnswer;

/**
 * What the page tells of.
 *
 * @param run the pattern in the sizes that were looked at
 * @param answers what each check said
 * @param problems what of the input is worth a look
 * @param coverage whom the size chart serves, an answer for each population
 * @param body how the garment goes round the body
 * @param samples what has come of each note of the sample log
 * @param sources the files that were read, by name, for their lines
 * @param wording makes the sentences
 * @param seamWarn beyond what is meant a seam that differs by so much is worth a look (mm)
 * @param seamFail beyond what is meant a seam that differs by so much fails (mm)
 * @param proof the word that marks the page, if anything does
 */
public record Report(
    SizeRun run,
    List<CheckAnswer> answers,
    List<Finding> problems,
    List<Coverage.Answer> coverage,
    BodyTable body,
    List<SampleAnswer> samples,
    SortedMap<String, byte[]> sources,
    Wording wording,
    double seamWarn,
    double seamFail,
    Optional<String> proof) {
  public Report {
    answers = List.copyOf(answers);
    problems = List.copyOf(problems);
    coverage = List.copyOf(coverage);
    samples = List.copyOf(samples);
  }
}
