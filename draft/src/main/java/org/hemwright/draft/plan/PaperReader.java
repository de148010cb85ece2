package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.name.SizeNames;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Argument;

/** Reads what the designer decides about the printed pattern. */
final class PaperReader {
  private final SizeNames sizes;
  private final Problems problems;

  PaperReader(SizeNames sizes, Problems problems) {
    this.sizes = sizes;
    this.problems = problems;
  }

  /**
   * The choices; by default stitch lines are hidden, fold pieces are halves, rectangles are drawn,
   * and views share their files.
   */
  PaperChoices read(Document document) {
    List<SizeRange> groups = List.of();
    boolean stitchLines = false;
    boolean whole = false;
    boolean table = false;
    boolean apart = false;
    for (Statement section : document.statements()) {
      if (section instanceof Statement.PaperSection paper) {
        for (Statement line : paper.body()) {
          if (line instanceof Statement.Groups said) {
            groups = groups(said);
          } else if (line instanceof Statement.StitchLines said) {
            stitchLines = said.shown();
          } else if (line instanceof Statement.FoldPieces said) {
            whole = said.whole();
          } else if (line instanceof Statement.Rectangles said) {
            table = said.asTable();
          } else if (line instanceof Statement.Views said) {
            apart = said.apart();
          }
        }
      }
    }
    List<SizeRange> drawn = groups.isEmpty() ? usual(sizes.chart().sizes()) : groups;
    return new PaperChoices(drawn, stitchLines, whole, table, apart);
  }

  /** As few groups as hold nine sizes at most and share one with their neighbours, evenly. */
  static List<SizeRange> usual(List<Size> all) {
    int steps = all.size() - 1;
    int most = PaperChoices.MOST_SIZES_IN_A_GROUP - 1;
    int count = Math.max(1, (steps + most - 1) / most);
    List<SizeRange> groups = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      groups.add(new SizeRange(all.get(steps * i / count), all.get(steps * (i + 1) / count)));
    }
    return groups;
  }

  private List<SizeRange> groups(Statement.Groups said) {
    List<SizeRange> groups = new ArrayList<>();
    boolean all = true;
    for (Statement.Sizes each : said.groups()) {
      Optional<SizeRange> found = sizes.find(each);
      all &= found.isPresent();
      if (found.isPresent()) {
        SizeRange range = found.get();
        int count = range.last().position() - range.first().position() + 1;
        if (count > PaperChoices.MOST_SIZES_IN_A_GROUP) {
          problems.add(
              problems
                  .at(each.span(), "group-too-large", "paper")
                  .with("from", range.first().name())
                  .with("to", range.last().name())
                  .with("count", Argument.of(count))
                  .with("most", Argument.of(PaperChoices.MOST_SIZES_IN_A_GROUP)));
        }
        groups.add(range);
      }
    }
    List<String> left =
        sizes.chart().sizes().stream()
            .filter(size -> groups.stream().noneMatch(group -> group.contains(size)))
            .map(Size::name)
            .toList();
    if (all && !left.isEmpty()) {
      problems.add(
          problems
              .at(said.span(), "sizes-in-no-group", "paper")
              .with("left", Argument.of(left))
              .with("count", Argument.of(left.size())));
    }
    return groups;
  }
}
