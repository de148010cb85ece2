package org.hemwright.workroom.paper;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.Printing;
import org.hemwright.paper.style.House;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workroom.talk.Question;

/**
 * What she wants printed.
 *
 * @param paper which paper
 * @param size the one size to be printed; absent: all groups
 * @param view the one view to be printed; absent: all pieces
 * @param stitchLines whether stitch lines are drawn
 * @param black whether every size is black
 * @param overlap of neighbouring pages (mm)
 */
record PaperChoice(
    PageFormat paper,
    Optional<Size> size,
    Optional<String> view,
    boolean stitchLines,
    boolean black,
    double overlap) {

  /**
   * The choice that a question brings: paper, size (or −1), view (or ""), stitch, black, overlap.
   */
  static PaperChoice of(SizeRun run, Question question) throws Question.Unclear {
    String name = question.text("paper").toUpperCase(Locale.ROOT);
    PageFormat paper =
        List.of(PageFormat.values()).stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new Question.Unclear("no-paper"));
    int size = question.whole("size");
    if (size >= run.sizes().size()) {
      throw new Question.Unclear("no-size");
    }
    String view = question.text("view");
    if (!view.isEmpty() && run.pattern().views().stream().map(View::name).noneMatch(view::equals)) {
      throw new Question.Unclear("no-view");
    }
    double overlap = question.number("overlap");
    if (overlap < 0 || overlap > PaperOptions.MOST_OVERLAP) {
      throw new Question.Unclear("overlap");
    }
    return new PaperChoice(
        paper,
        size < 0 ? Optional.empty() : Optional.of(run.sizes().get(size)).map(SizedPattern::size),
        view.isEmpty() ? Optional.empty() : Optional.of(view),
        question.body().path("stitch").asBoolean(),
        question.body().path("black").asBoolean(),
        overlap);
  }

  /**
   * The files to make.
   *
   * @param every whether on every paper, with the drawings beside
   */
  PaperOptions options(boolean every) {
    return new PaperOptions(
        every ? List.of(PageFormat.values()) : List.of(paper),
        every,
        false,
        size.isEmpty(),
        size.map(Size::name).stream().toList(),
        view.stream().toList(),
        Optional.of(stitchLines),
        !black,
        overlap,
        Optional.empty(),
        House.PLAIN);
  }

  /** The printing of this paper, not made yet. */
  Printing printing(Evaluated evaluated, SizeRun run) {
    return Workbench.printing(evaluated, run, options(false));
  }

  /** Its pages, drawn now. */
  PatternPages pages(Printing printing) {
    return size.map(one -> printing.pages(paper, one)).orElseGet(() -> printing.pages(paper));
  }
}
