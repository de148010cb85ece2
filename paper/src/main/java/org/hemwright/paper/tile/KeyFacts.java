package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.nest.PieceShape;
import org.hemwright.paper.style.SizeStyles;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Mark;

/**
 * What the key has to tell.
 *
 * @param sizes "Sizes 8 to 24"
 * @param view the view that alone is printed, in words, if only one is
 * @param views for each view that a maker may choose, in words, the pieces that it takes
 * @param advice paragraphs on printing
 * @param contents a line for each group: its sizes and pages
 * @param styles of the sizes, where the key tells them too
 * @param nested whether several sizes lie on one another
 * @param oneWay whether the pieces must all point one way
 * @param diamonds whether pages have match marks
 * @param signs those that the pieces carry
 */
record KeyFacts(
    String sizes,
    Optional<String> view,
    List<String> views,
    List<String> advice,
    List<String> contents,
    Optional<SizeStyles> styles,
    boolean nested,
    boolean oneWay,
    boolean diamonds,
    Set<Sign> signs) {
  /** What may stand on a piece. */
  enum Sign {
    STITCH,
    HEM,
    FOLD,
    STRETCH,
    NOTCH,
    LENGTHEN,
    /** Where a piece is cut apart for narrow cloth. */
    SPLIT,
    PLACEMENT,
    INNER,
    LEVEL,
    DRILL
  }

  KeyFacts {
    views = List.copyOf(views);
    advice = List.copyOf(advice);
    contents = List.copyOf(contents);
    signs = Set.copyOf(signs);
  }

  boolean has(Sign sign) {
    return signs.contains(sign);
  }

  /** The key to pages of home printers. */
  static KeyFacts ofPages(
      Speech speech,
      Optional<View> view,
      List<GroupDrawing> groups,
      boolean stitchLines,
      PageFormat format,
      List<String> contents) {
    List<String> advice = new ArrayList<>();
    advice.add(
        "Print this page first, on %s, at actual size or 100\u00a0%%. Switch off all that fits, "
                .formatted(format.title())
            + "shrinks or enlarges pages.");
    advice.add("Measure both squares, across and down. When they are right, print on.");
    advice.add(
        "Trim or fold back one margin where two pages meet, and lay frame to frame so that the"
            + " numbered diamonds close. The map shows the way.");
    return of(speech, view, groups, stitchLines, advice, contents, Optional.empty(), true);
  }

  /** The key to one large sheet. */
  static KeyFacts ofSheet(
      Speech speech, Optional<View> view, GroupDrawing group, boolean stitchLines) {
    List<String> advice = new ArrayList<>();
    advice.add("Have it printed at actual size or 100\u00a0%, nothing fitted to the paper.");
    advice.add("Measure both squares, across and down, before you cut.");
    advice.add("In a reader that shows layers you may hide the sizes that you do not need.");
    Optional<SizeStyles> styles = group.nests().stream().findFirst().map(Nest::styles);
    return of(speech, view, List.of(group), stitchLines, advice, List.of(), styles, false);
  }

  private static KeyFacts of(
      Speech speech,
      Optional<View> view,
      List<GroupDrawing> groups,
      boolean stitchLines,
      List<String> advice,
      List<String> contents,
      Optional<SizeStyles> styles,
      boolean diamonds) {
    List<String> drawn =
        speech.chart().stream()
            .filter(name -> groups.stream().anyMatch(group -> group.sizeNames().contains(name)))
            .toList();
    Set<Sign> signs = EnumSet.noneOf(Sign.class);
    boolean nested = false;
    boolean oneWay = false;
    for (GroupDrawing group : groups) {
      nested |= group.sizes().size() > 1;
      for (Nest nest : group.nests()) {
        oneWay |= fabrics(group, nest).stream().anyMatch(f -> f.laidWith() == Fabric.Nap.ONE_WAY);
        if (fabrics(group, nest).stream().anyMatch(f -> f.kind() == Fabric.Kind.KNIT)) {
          signs.add(Sign.STRETCH);
        }
        nest.shapes().forEach(shape -> collect(shape, signs));
      }
    }
    if (stitchLines) {
      signs.add(Sign.STITCH);
      signs.remove(Sign.HEM);
    }
    return new KeyFacts(
        speech.sizes(drawn),
        view.map(Speech::view),
        views(groups),
        advice,
        contents,
        styles,
        nested,
        oneWay,
        diamonds,
        signs);
  }

  /** "View A, Above the knee: pieces 1 and 4". */
  private static List<String> views(List<GroupDrawing> groups) {
    Map<String, Set<Integer>> numbers = new LinkedHashMap<>();
    for (GroupDrawing group : groups) {
      for (View view : group.views()) {
        Set<Integer> own = numbers.computeIfAbsent(Speech.view(view), key -> new TreeSet<>());
        group.run().pattern().pieces().stream()
            .filter(card -> view.pieces().contains(card.name()))
            .forEach(card -> own.add(card.number()));
      }
    }
    List<String> words = new ArrayList<>();
    numbers.forEach(
        (view, own) -> {
          List<String> pieces = own.stream().map(String::valueOf).toList();
          String some = pieces.size() == 1 ? "piece" : "pieces";
          words.add(view + ": " + some + "\u00a0" + Speech.listed(pieces));
        });
    return words;
  }

  private static List<Fabric> fabrics(GroupDrawing group, Nest nest) {
    List<Fabric> fabrics = new ArrayList<>();
    for (Cut cut : nest.card().cuts()) {
      group.run().pattern().fabric(cut.fabric()).ifPresent(fabrics::add);
    }
    return fabrics;
  }

  private static void collect(PieceShape shape, Set<Sign> signs) {
    if (shape.fold().isPresent()) {
      signs.add(Sign.FOLD);
    }
    if (!shape.notches().isEmpty()) {
      signs.add(Sign.NOTCH);
    }
    if (shape.edges().stream().anyMatch(edge -> edge.allowance() instanceof Allowance.TurnedBack)) {
      signs.add(Sign.HEM);
    }
    for (Mark mark : shape.marks()) {
      sign(mark).ifPresent(signs::add);
    }
  }

  private static Optional<Sign> sign(Mark mark) {
    if (mark instanceof Mark.Drill) {
      return Optional.of(Sign.DRILL);
    } else if (mark instanceof Mark.Inner) {
      return Optional.of(Sign.INNER);
    } else if (mark instanceof Mark.Placement) {
      return Optional.of(Sign.PLACEMENT);
    } else if (mark instanceof Mark.Lengthen) {
      return Optional.of(Sign.LENGTHEN);
    } else if (mark instanceof Mark.Split split && !split.onFold()) {
      return Optional.of(Sign.SPLIT);
    } else if (mark instanceof Mark.Level) {
      return Optional.of(Sign.LEVEL);
    } else if (mark instanceof Mark.Stretch) {
      return Optional.of(Sign.STRETCH);
    }
    return Optional.empty();
  }
}
