package org.hemwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageFindings;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.CuttingLayouts;
import org.hemwright.paper.Paper;
import org.hemwright.paper.PrintedFile;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.again.Answer;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.page.YardagePage;
import org.hemwright.workbench.report.YardageCsv;
import org.hemwright.workbench.report.YardageReport;
import org.hemwright.workbench.report.YardageText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How much cloth to buy, and the cutting layouts. */
@Command(
    name = "cloth",
    description = "Lay every size on every cloth, and say how much to buy.",
    footer = {
      "",
      "Examples:",
      "  hemwright cloth my-skirt                       every view, cloth, size and width",
      "  hemwright cloth my-skirt --size 14 --json      one size, each fold, for a program",
      "  hemwright cloth my-skirt --width 135cm         on cloth of a width she found",
      "  hemwright cloth my-skirt --fabric main --shrink 5%%   cloth that shrinks before it is cut",
      "  hemwright cloth my-skirt --stretch 30%%         does her own cloth stretch enough?",
      "  hemwright cloth my-skirt --price 12.50/m       what it costs",
      "  hemwright cloth my-skirt --fit-in 1.4m         which sizes can be cut from 1.4 m?",
      "",
      "A length is rounded up to 0.1 m and to 1/8 yd, each from the exact length. Tables and"
          + " layouts",
      "are written to the folder's out/cloth. Layings are kept, so that the next time is quick."
    })
final class ClothCommand extends FolderCommand {
  private static final String FOLDER = "cloth";

  @Mixin private ClothQuestions questions = new ClothQuestions();

  @Option(names = "--out", paramLabel = "DIR", description = "Where to put the files.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--as",
      paramLabel = "KIND",
      description = "Pictures of the layouts: svg or png; svg when it is left out.")
  private Paper.PictureKind kind = Paper.PictureKind.SVG;

  @Override
  Optional<Makes> makes() {
    return Optional.of(new Makes(out.orElseGet(() -> defaultOut().resolve(FOLDER)), out.isEmpty()));
  }

  @Override
  int work(Job job) throws IOException {
    List<String> problems = new ArrayList<>();
    Optional<YardageRequest> request = questions.request(job.run(), sizesChosen(), problems);
    if (request.isEmpty()) {
      problems.forEach(messages()::println);
      return ExitCode.INPUT_WRONG;
    }
    SizeRun whole = questions.onClothAsked(job.evaluated().run().orElseThrow());
    YardageTable every;
    try (LayingKeeper kept = new LayingKeeper(keptFolder())) {
      every =
          ProgressLine.during(
              "Laying",
              json(),
              progress ->
                  Workbench.yardage(
                      job.evaluated(),
                      whole,
                      request.get().inFoldsThatCount(whole),
                      kept.layings(),
                      progress));
    }
    YardageTable table = every.inFoldsOf(request.get());
    OwnCloth own = questions.own(whole);
    LeftOvers left = LeftOvers.of(whole, table, own.length());
    List<Finding> findings = new ArrayList<>(questions.judged(whole));
    findings.addAll(YardageFindings.of(whole, table, request.get()));
    Map<String, byte[]> files = new TreeMap<>();
    files.put("yardage.csv", utf8(YardageCsv.of(table, own, left, findings, job.tell().wording())));
    files.put(
        "yardage.html",
        utf8(
            YardagePage.html(
                whole, table, own, left, findings, job.tell().wording(), Optional.empty())));
    for (PrintedFile file : CuttingLayouts.pages(whole, table)) {
      files.put(file.name(), file.bytes());
    }
    for (PrintedFile file : CuttingLayouts.pictures(whole, table, kind)) {
      files.put(file.name(), file.bytes());
    }
    Path folder = write(files);
    if (json()) {
      answer(YardageReport.json(table, findings, own, left, job.tell().wording()));
    } else {
      job.tell().all(findings);
      findings.stream()
          .filter(finding -> finding.status() == Status.OK)
          .forEach(finding -> answer(job.tell().wording().message(finding) + "\n"));
      answer(YardageText.of(whole, table, own, left) + "\nWritten to " + folder + "\n");
    }
    return ExitCode.ALL_WELL;
  }

  /**
   * Our own folder holds what was asked last and nothing else; in another only ours is replaced.
   */
  private Path write(Map<String, byte[]> files) throws IOException {
    made(Answer.hashes(files));
    if (out.isEmpty()) {
      return new OutFolder(defaultOut()).whole(FOLDER, files);
    }
    OutFolder folder = new OutFolder(out.get());
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      folder.replace(file.getKey(), file.getValue());
    }
    return out.get();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
