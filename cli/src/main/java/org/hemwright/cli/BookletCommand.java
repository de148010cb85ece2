package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.post.Feedback;
import org.hemwright.booklet.post.Posts;
import org.hemwright.booklet.words.Wordbook;
import org.hemwright.booklet.write.PrintForm;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.PrintedFile;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.GivenFile;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.FeedbackReport;
import org.hemwright.workbench.report.PrintReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The booklet alone, without the checks. */
@Command(
    name = "booklet",
    description = "Make the instruction booklet, to print and to read on a screen.",
    footer = {
      "",
      "Examples:",
      "  hemwright booklet my-skirt                  A4, Letter, large print and a page to read",
      "  hemwright booklet my-skirt --paper a4       for A4 alone",
      "  hemwright booklet my-skirt --size 14        for one size",
      "  hemwright booklet my-skirt --language de    in another language",
      "  hemwright booklet my-skirt --feedback a.csv,b.csv   what testers wrote in their forms",
      "",
      "Your own words stand in booklet.md, your drawings in pictures; written to out/booklet, with",
      "posts for each stage, a shot list, the listing, the tester call and the testers' form."
    })
final class BookletCommand extends FolderCommand {
  @Option(
      names = "--paper",
      split = ",",
      paramLabel = "PAPER",
      description = "Only these papers: a4, letter. Both when it is left out.")
  private List<PrintForm.Paper> papers = new ArrayList<>();

  @Option(names = "--large", description = "In large print alone.")
  private boolean large;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "en-US, en-GB or de; as the document is spelled when it is left out.")
  private String language = "";

  @Option(names = "--out", paramLabel = "DIR", description = "Where to put the files.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--feedback",
      split = ",",
      paramLabel = "FILE",
      description = "Read testers' forms instead, and tell them beside what the pattern says.")
  private List<Path> feedback = new ArrayList<>();

  @Override
  int work(Job job) throws IOException {
    if (!language.isBlank() && !Wordbook.LANGUAGES.contains(language)) {
      messages()
          .printf(
              "--language %s: there is wording in %s%n",
              language, String.join(", ", Wordbook.LANGUAGES));
      return ExitCode.INPUT_WRONG;
    }
    SizeRun whole = job.evaluated().run().orElseThrow();
    List<String> sizes =
        sizesChosen()
            ? job.run().sizes().stream().map(sized -> sized.size().name()).toList()
            : List.of();
    YardageRequest request = YardageRequest.everything().inSizes(sizes);
    Optional<YardageTable> table;
    try (LayingKeeper kept = new LayingKeeper(keptFolder())) {
      table =
          Optional.of(
              ProgressLine.during(
                  "Laying",
                  json(),
                  progress ->
                      Workbench.yardage(
                          job.evaluated(), whole, request, kept.layings(), progress)));
    }
    BookletMaking making =
        Workbench.booklet(job.evaluated(), job.run(), table, List.of(), language);
    if (!feedback.isEmpty()) {
      return tell(making, job);
    }
    List<PrintedFile> files = new ArrayList<>(making.files(forms(), Optional.empty()));
    files.addAll(making.posts(Optional.empty()));
    Path folder = out.orElseGet(() -> defaultOut().resolve("booklet"));
    StringBuilder list = new StringBuilder();
    for (PrintedFile file : files) {
      new OutFolder(folder).replace(file.name(), file.bytes());
      if (!Posts.isHers(file.name())) {
        list.append(PrintedLine.of(file)).append("\n");
      }
    }
    list.append("  posts, listing and testers   to put on the web and send out\n");
    if (json()) {
      answer(
          PrintReport.json(
              Optional.of(folder.toString()), files, making.findings(), job.tell().wording()));
    } else {
      job.tell().all(making.findings());
      answer("Written to " + folder + "\n" + list);
    }
    return making.findings().stream().anyMatch(finding -> finding.status() == Status.FAIL)
        ? ExitCode.INPUT_WRONG
        : ExitCode.ALL_WELL;
  }

  private int tell(BookletMaking making, Job job) {
    List<Finding> problems = new ArrayList<>();
    SortedMap<String, String> forms = new TreeMap<>();
    for (Path form : feedback) {
      new GivenFile(form).form(problems).ifPresent(text -> forms.put(form.toString(), text));
    }
    Feedback read = making.feedback(forms).after(problems);
    problems = read.findings();
    if (json()) {
      answer(FeedbackReport.json(read, job.tell().wording()));
    } else {
      job.tell().all(problems);
      answer(FeedbackReport.text(read));
    }
    return problems.stream().anyMatch(finding -> finding.status() == Status.FAIL)
        ? ExitCode.INPUT_WRONG
        : ExitCode.ALL_WELL;
  }

  private List<PrintForm> forms() {
    List<PrintForm.Paper> on =
        papers.isEmpty() ? List.of(PrintForm.Paper.values()) : List.copyOf(papers);
    List<PrintForm> forms = new ArrayList<>();
    for (PrintForm.Paper paper : on) {
      if (!large) {
        forms.add(new PrintForm(paper, false));
      }
      if (large || (papers.isEmpty() && paper == PrintForm.Paper.A4)) {
        forms.add(new PrintForm(paper, true));
      }
    }
    return forms;
  }
}
