package org.hemwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.style.House;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.finding.NearName;
import picocli.CommandLine.Option;

/** The options that say which printable files are made. */
final class PaperSettings {
  /** The papers by the names that a person types. */
  enum Sheets {
    EITHER,
    A4,
    LETTER,
    A0,
    ROLL
  }

  @Option(
      names = "--on",
      split = ",",
      paramLabel = "PAPER",
      description =
          "Only these papers: either (pages that print on A4 and on Letter), a4, letter, a0, roll"
              + " (36 in wide). All of them when it is left out.")
  private List<Sheets> papers = new ArrayList<>();

  @Option(
      names = "--view",
      split = ",",
      paramLabel = "VIEW",
      description =
          "Only the pieces of these views, as the document names them, each in files of its own:"
              + " --view A or --view A,B.")
  private List<String> views = new ArrayList<>();

  @Option(
      names = "--stitch-lines",
      negatable = true,
      description =
          "Draw the stitch lines, or leave them out, whatever the document says under “paper”.")
  private Optional<Boolean> stitchLines = Optional.empty();

  @Option(names = "--black", description = "Draw every size in black, told apart by its dashes.")
  private boolean black;

  @Option(
      names = "--overlap",
      paramLabel = "MM",
      description = "Let neighbouring pages overlap by so many millimetres, 0 to 50.")
  private double overlap;

  /**
   * The options for a run.
   *
   * @param sizesChosen whether some sizes were asked for: each gets files of its own
   * @param proof the word that marks every page, if anything does
   */
  PaperOptions options(SizeRun run, boolean sizesChosen, Optional<String> proof) {
    List<PageFormat> formats =
        papers.isEmpty()
            ? List.of(PageFormat.values())
            : papers.stream().map(paper -> PageFormat.valueOf(paper.name())).distinct().toList();
    List<String> singles =
        sizesChosen ? run.sizes().stream().map(sized -> sized.size().name()).toList() : List.of();
    return new PaperOptions(
        formats,
        papers.isEmpty(),
        false,
        !sizesChosen,
        singles,
        views.stream().map(String::strip).distinct().toList(),
        stitchLines,
        !black,
        overlap,
        proof,
        House.PLAIN);
  }

  /** Whether every paper and every view is made. */
  boolean isWhole() {
    return papers.isEmpty() && views.isEmpty();
  }

  /** What is wrong with the options for a run, a sentence each. */
  List<String> problems(SizeRun run) {
    List<String> problems = new ArrayList<>();
    if (!(overlap >= 0 && overlap <= PaperOptions.MOST_OVERLAP)) {
      problems.add(
          "--overlap %s: pages overlap by 0 to %.0f mm; leave it out to lay them edge to edge"
              .formatted(overlap, PaperOptions.MOST_OVERLAP));
    }
    List<String> known = run.pattern().views().stream().map(View::name).toList();
    for (String view : views) {
      if (!known.contains(view.strip())) {
        String meant =
            NearName.to(view.strip(), known).map(name -> "did you mean " + name + "? ").orElse("");
        problems.add(
            "--view %s: the pattern has no view “%s”; %sIt has %s."
                .formatted(view, view.strip(), meant, String.join(", ", known))
                .replace("; It", "; it"));
      }
    }
    return problems;
  }
}
