package org.hemwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.pattern.SizeRun;
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
      description = {
        "Only these papers: either (pages that print on A4 and on Letter), a4, letter, a0, roll",
        "(36 in wide). All of them when it is left out."
      })
  private List<Sheets> papers = new ArrayList<>();

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
        formats, papers.isEmpty(), !sizesChosen, singles, !black, overlap, proof);
  }

  /** What is wrong with the options, if anything is. */
  Optional<String> problem() {
    return overlap >= 0 && overlap <= PaperOptions.MOST_OVERLAP
        ? Optional.empty()
        : Optional.of(
            "--overlap %s: pages overlap by 0 to %.0f mm; leave it out to lay them edge to edge"
                .formatted(overlap, PaperOptions.MOST_OVERLAP));
  }
}
