package org.hemwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.sample.SampleAnswer;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.page.ReportPage;
import org.hemwright.workbench.report.CheckAnswer;
import org.hemwright.workbench.report.CheckReport;
import org.hemwright.workbench.report.CoverageWords;
import org.hemwright.workbench.report.SampleWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Every check in every size. */
@Command(
    name = "check",
    description = "Ask every question of the pattern in every size: does it sew together?",
    footer = {
      "",
      "Examples:",
      "  hemwright check                            the demo",
      "  hemwright check my-skirt                   every check in every size",
      "  hemwright check my-skirt --size 14         in one size",
      "  hemwright check my-skirt --out seen        and a page to read, seen/report.html",
      "  hemwright check my-skirt --json            for a program",
      "",
      "Exit code 0: no check fails (what is only worth a look is listed); 1: a check fails."
    })
final class CheckCommand extends FolderCommand {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to put report.html, a page with the pieces drawn and findings pinned.")
  private Optional<Path> out = Optional.empty();

  @Override
  int work(Job job) throws IOException {
    List<CheckAnswer> answers = Workbench.check(job.evaluated(), job.run());
    if (out.isPresent()) {
      String page = Workbench.page(job.run(), answers, job.evaluated(), Optional.empty());
      new OutFolder(out.get()).replace(ReportPage.FILE, page.getBytes(StandardCharsets.UTF_8));
    }
    List<SampleAnswer> samples = Workbench.samples(job.evaluated(), job.run());
    if (json()) {
      answer(
          CheckReport.json(
              job.run(), answers, job.evaluated().problems(), samples, job.tell().wording()));
    } else {
      answers.forEach(answer -> job.tell().all(answer.findings()));
      answer(summary(answers, job.run().sizes().size()));
      answers.stream()
          .flatMap(answer -> answer.findings().stream())
          .filter(finding -> finding.status() == Status.OK)
          .forEach(finding -> answer(job.tell().wording().message(finding) + "\n"));
      Pattern pattern = job.run().pattern();
      for (Coverage.Answer each : Coverage.of(pattern.chart(), pattern.details().wearers())) {
        answer(CoverageWords.of(each, job.tell().wording().sizes()) + "\n");
      }
      samples.forEach(each -> answer(sampled(each, job.tell().wording().lengths())));
      out.ifPresent(folder -> answer("Written to " + folder.resolve(ReportPage.FILE) + "\n"));
    }
    return exitCode(answers);
  }

  private static String sampled(SampleAnswer answer, LengthFormat lengths) {
    return "Sample of %s. %s\n"
        .formatted(SampleWords.noted(answer.entry(), lengths), SampleWords.since(answer, lengths));
  }

  private static String summary(List<CheckAnswer> answers, int sizes) {
    long failing = count(answers, Status.FAIL);
    long look = count(answers, Status.WARN);
    long accepted = count(answers, Status.ACCEPTED);
    return "%d checks in %d %s: %s%s%s\n"
        .formatted(
            answers.size(),
            sizes,
            sizes == 1 ? "size" : "sizes",
            failing == 0 ? "nothing to mend" : failing + " to mend",
            look == 0 ? "" : ", " + look + " worth a look",
            accepted == 0 ? "." : ", " + accepted + " accepted.");
  }

  private static long count(List<CheckAnswer> answers, Status status) {
    return answers.stream()
        .flatMap(answer -> answer.findings().stream())
        .filter(finding -> finding.status() == status)
        .count();
  }
}
