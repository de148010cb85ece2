package org.hemwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.piece.PieceCard;

/**
 * A run drawn in groups of sizes, all its pieces or those of one view.
 *
 * @param run the pattern
 * @param view the view that alone is drawn, if only one is
 * @param groups with all their pieces
 * @param withoutRectangles the same without the pieces that are cut by measure
 * @param rectangles those pieces, in all sizes
 * @param stitchLines whether stitch lines are drawn
 */
record Edition(
    SizeRun run,
    Optional<View> view,
    List<GroupDrawing> groups,
    List<GroupDrawing> withoutRectangles,
    List<Nest> rectangles,
    boolean stitchLines) {

  static Edition of(
      SizeRun run, Optional<View> view, List<List<Size>> sizes, PaperOptions options) {
    boolean choice = view.isEmpty() && run.pattern().views().size() > 1;
    List<View> views = choice ? run.pattern().views() : List.of();
    PaperChoices choices = run.pattern().paper();
    boolean stitchLines = options.stitchLines().orElse(choices.stitchLines());
    List<GroupDrawing> groups = new ArrayList<>();
    List<GroupDrawing> others = new ArrayList<>();
    List<Nest> rectangles = new ArrayList<>();
    List<Size> all = sizes.stream().flatMap(List::stream).distinct().sorted().toList();
    if (choices.rectangleTable()) {
      List<Nest> whole = nests(run, view, all, options);
      rectangles.addAll(PatternPages.rectangles(whole));
    }
    List<PieceCard> measured = rectangles.stream().map(Nest::card).toList();
    for (List<Size> group : sizes) {
      List<Nest> nests = nests(run, view, group, options);
      GroupDrawing drawing = new GroupDrawing(run, group, nests, stitchLines, views);
      List<Nest> drawn = nests.stream().filter(nest -> !measured.contains(nest.card())).toList();
      if (!nests.isEmpty()) {
        groups.add(drawing);
      }
      if (drawn.size() == nests.size()) {
        others.add(drawing);
      } else if (!drawn.isEmpty()) {
        others.add(new GroupDrawing(run, group, drawn, stitchLines, views));
      }
    }
    return new Edition(run, view, groups, others, rectangles, stitchLines);
  }

  private static List<Nest> nests(
      SizeRun run, Optional<View> view, List<Size> sizes, PaperOptions options) {
    return Nest.of(run, sizes, run.pattern().paper().wholePieces(), options.inColour()).stream()
        .filter(nest -> view.map(v -> v.pieces().contains(nest.card().name())).orElse(true))
        .toList();
  }

  DocumentFacts facts(String title, String paper) {
    Speech speech = Speech.of(run);
    Details details = run.pattern().details();
    List<String> sizes =
        run.pattern().chart().sizes().stream()
            .filter(size -> groups.stream().anyMatch(group -> group.sizes().contains(size)))
            .map(Size::name)
            .toList();
    String own = view.map(each -> lower(Speech.view(each)) + ", ").orElse("");
    return new DocumentFacts(
        details.title() + ", version " + details.version() + ", " + own + title,
        details.by(),
        "A sewing pattern by " + details.by() + paper + ".",
        speech.language(),
        details.dated(),
        sizes);
  }

  /** Its sizes in words: "sizes 8 to 24". */
  String sizesInWords() {
    Speech speech = Speech.of(run);
    List<String> names =
        speech.chart().stream()
            .filter(name -> groups.stream().anyMatch(group -> group.sizeNames().contains(name)))
            .toList();
    return lower(speech.sizes(names));
  }

  static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  /** The sizes of each group that the run has, in the chart's order; all in one where none is. */
  static List<List<Size>> groups(SizeRun run) {
    List<Size> present = run.sizes().stream().map(SizedPattern::size).toList();
    List<List<Size>> groups = new ArrayList<>();
    for (SizeRange range : run.pattern().paper().groups()) {
      List<Size> sizes = present.stream().filter(range::contains).sorted().toList();
      if (!sizes.isEmpty()) {
        groups.add(sizes);
      }
    }
    if (groups.isEmpty()) {
      List<Size> sorted = present.stream().sorted().toList();
      int most = PaperChoices.MOST_SIZES_IN_A_GROUP;
      for (int first = 0; first < sorted.size(); first += most) {
        groups.add(sorted.subList(first, Math.min(sorted.size(), first + most)));
      }
    }
    return groups;
  }
}
