package org.hemwright.paper.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.PieceCard;

/**
 * What a printed piece says of itself (handbook section 6).
 *
 * @param number its number, large
 * @param title "Skirt front and back"
 * @param design "Sandling skirt, version 1.0"
 * @param facts one sentence or part of one a line: count, cut, sizes, allowances
 * @param foot the house and the version's date
 */
public record PieceWords(
    String number, String title, String design, List<String> facts, String foot) {
  public PieceWords {
    facts = List.copyOf(facts);
  }

  /**
   * The words of a piece.
   *
   * @param sizes the names of the sizes drawn
   * @param allowances a text for each run of edges, from {@link AllowanceWords}
   * @param whole whether a fold piece is drawn opened
   */
  public static PieceWords of(
      SizeRun run, PieceCard card, List<String> sizes, List<String> allowances, boolean whole) {
    Speech speech = Speech.of(run);
    List<String> facts = new ArrayList<>();
    facts.add("Piece " + card.mark() + " of " + count(run) + views(run, card));
    for (Cut cut : card.cuts()) {
      facts.add(cut(run, cut, whole));
    }
    facts.add(speech.sizes(sizes));
    facts.addAll(allowances);
    if (card.rightSideUp()) {
      facts.add("Printed side up on the right side of the " + speech.cloth());
    }
    facts.addAll(SplitWords.of(run, card, sizes, speech));
    return new PieceWords(
        card.mark(),
        card.title(),
        run.pattern().details().title() + ", version\u00a0" + run.pattern().details().version(),
        facts,
        run.pattern().details().by() + ", " + speech.date().replace(' ', '\u00a0'));
  }

  /** Which of several views take a piece: ", views A and B". */
  private static String views(SizeRun run, PieceCard card) {
    List<View> views = run.pattern().views();
    List<String> names =
        views.stream()
            .filter(view -> view.pieces().contains(card.name()))
            .map(view -> Speech.spoken(view.name()))
            .toList();
    return views.size() < 2 || names.isEmpty()
        ? ""
        : (names.size() == 1 ? ", view\u00a0" : ", views\u00a0") + Speech.listed(names);
  }

  /** How many pieces the pattern has; two drafts for two ranges are one piece. */
  public static int count(SizeRun run) {
    return (int) run.pattern().pieces().stream().map(PieceCard::name).distinct().count();
  }

  /** "Cut 2 on the fold: Cotton jersey". */
  public static String cut(SizeRun run, Cut cut, boolean whole) {
    StringBuilder text = new StringBuilder("Cut\u00a0").append(cut.count());
    if (cut.onFold() && !whole) {
      text.append(" on the fold");
    }
    if (cut.mirrored()) {
      int half = cut.count() / 2;
      text.append(
          cut.count() == 2
              ? ", one mirrored"
              : cut.count() == 1 ? ", mirrored" : ", " + half + " of them mirrored");
    }
    return text.append(": ").append(Speech.fabric(run, cut.fabric())).toString();
  }

  /** Sizes that say the same, together: for each text the names of its sizes, in order. */
  static Map<String, List<String>> alike(Map<String, String> textBySize) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    textBySize.forEach(
        (size, text) -> alike.computeIfAbsent(text, key -> new ArrayList<>()).add(size));
    return alike;
  }
}
