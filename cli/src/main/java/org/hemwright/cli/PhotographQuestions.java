package org.hemwright.cli;

import java.util.Optional;
import org.hemwright.workbench.report.PhotographWords;
import picocli.CommandLine.Option;

/** What a photograph's owner says of it: where its card or its ruler is. */
final class PhotographQuestions {
  @Option(
      names = "--card",
      paramLabel = "CORNERS",
      description =
          "A photograph whose card is not found: its four outer corners, lower left, lower right, "
              + "upper right, upper left, in pixels: \"410,1630 980,1655 965,910 402,905\".")
  private Optional<String> card = Optional.empty();

  @Option(
      names = "--ruler",
      paramLabel = "LENGTH",
      description = "A scan without a card: the length between two marks of a ruler in it.")
  private Optional<String> ruler = Optional.empty();

  @Option(
      names = "--marks",
      paramLabel = "MARKS",
      description = "Where those two marks are, in pixels: \"120,2210 3890,2204\".")
  private Optional<String> marks = Optional.empty();

  /** What they come to. */
  PhotographWords words() {
    return PhotographWords.of(card, ruler, marks);
  }

  /** Whether anything was said of a photograph. */
  boolean isAsked() {
    return card.isPresent() || ruler.isPresent() || marks.isPresent();
  }
}
