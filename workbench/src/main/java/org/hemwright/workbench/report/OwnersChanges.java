package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hemwright.paper.reprint.Reprint;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.compare.Change;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.pattern.compare.Changed;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.workbench.compare.Compared;

/**
 * What changed since the last release, for those who own it: Markdown that reads well as it stands,
 * with the pieces' printed names, and which pages to print again. What only the designer's document
 * calls otherwise is left out.
 */
public final class OwnersChanges {
  private static final Set<Changed> HERS =
      EnumSet.of(
          Changed.TITLE,
          Changed.VERSION,
          Changed.DATED,
          Changed.DIAL_ADDED,
          Changed.DIAL_REMOVED,
          Changed.DIAL_VALUE,
          Changed.DIAL_RANGE,
          Changed.BASE_SIZE,
          Changed.PIECE_RENAMED,
          Changed.PIECE_COPIES,
          Changed.PIECE_MOVED,
          Changed.PIECE_STACKED,
          Changed.EDGE_ADDED,
          Changed.EDGE_REMOVED,
          Changed.EDGE_RENAMED,
          Changed.NOTCH_RENAMED,
          Changed.SEAM_ADDED,
          Changed.SEAM_REMOVED,
          Changed.SEAM_LAYERS,
          Changed.SEAM_MARKS,
          Changed.OPENING_OVER,
          Changed.ELASTIC_HOLDS,
          Changed.ELASTIC_PASSES,
          Changed.STEP_RENAMED,
          Changed.STEP_LENGTHS);

  private final Compared compared;
  private final ChangeWords words;
  private final SizeWords sizes;
  private final Map<String, PieceCard> cards = new LinkedHashMap<>();
  private final StringBuilder text = new StringBuilder();

  private OwnersChanges(Compared compared, ChangeWords words) {
    this.compared = compared;
    LengthFormat.Edition edition =
        compared.now().pattern().details().units() == Details.Units.INCHES
            ? LengthFormat.Edition.INCHES_FIRST
            : LengthFormat.Edition.METRIC_FIRST;
    this.words = new ChangeWords(words.wording().showing(LengthFormat.of(edition)));
    sizes = words.wording().sizes();
    for (SizeRun run : List.of(compared.old(), compared.now())) {
      run.pattern().pieces().forEach(card -> cards.put(card.name(), card));
    }
  }

  /** The whole text. */
  public static String of(Compared compared, ChangeWords words) {
    return new OwnersChanges(compared, words).whole();
  }

  private String whole() {
    Details was = compared.old().pattern().details();
    Details is = compared.now().pattern().details();
    line("# %s: what changed in version %s".formatted(is.title(), is.version()));
    line("");
    line(
        "This is version %s of %s. It is for you if you have version %s of %s."
            .formatted(
                is.version(),
                Speech.of(compared.now()).date(),
                was.version(),
                Speech.of(compared.old()).date()));
    Map<Optional<String>, List<Change>> byPiece =
        compared.comparison().changes().stream()
            .filter(change -> !HERS.contains(change.changed()))
            .collect(Collectors.groupingBy(Change::piece, LinkedHashMap::new, Collectors.toList()));
    byPiece.forEach(this::section);
    if (byPiece.isEmpty()) {
      line("");
      line("No piece has changed: what you cut and sew is as it was.");
    }
    pages();
    line("");
    line("%s, %s".formatted(is.by(), Speech.of(compared.now()).date()));
    return text.toString();
  }

  private void section(Optional<String> piece, List<Change> changes) {
    line("");
    line("## " + piece.map(this::heading).orElse("The pattern as a whole"));
    line("");
    Set<String> told = new LinkedHashSet<>();
    changes.forEach(change -> told.addAll(words.of(change)));
    told.forEach(sentence -> line("- " + plain(sentence, piece)));
  }

  private String heading(String piece) {
    PieceCard card = cards.get(piece);
    return card == null ? spaced(piece) : "Piece %d, %s".formatted(card.number(), card.title());
  }

  /** A piece by its printed title, its edges by their names with blanks. */
  private String plain(String sentence, Optional<String> piece) {
    String plain = sentence;
    for (PieceCard card : cards.values()) {
      String name = Pattern.quote(card.name());
      String own = piece.filter(card.name()::equals).isPresent() ? "" : card.title() + ", ";
      plain = plain.replaceAll("\\b" + name + "\\.", Matcher.quoteReplacement(own));
      plain = plain.replaceAll("\\b" + name + "\\b", Matcher.quoteReplacement(card.title()));
    }
    String spaced = spaced(plain);
    return spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
  }

  private static String spaced(String name) {
    return name.replace('_', ' ');
  }

  private void pages() {
    line("");
    line("## What to print again");
    line("");
    List<Reprint> again =
        compared.reprints().stream().filter(file -> !file.pages().isEmpty()).toList();
    if (again.isEmpty()) {
      line("Nothing: the pages you printed will do.");
      return;
    }
    line(
        "Pages that are not named here are as they were. Each number is the page's in the new"
            + " file.");
    line("");
    for (Reprint file : again) {
      int count = file.pages().size();
      line(
          count == file.of()
              ? "- `%s`: all %d".formatted(file.file(), count)
              : "- `%s`: %d of %d pages".formatted(file.file(), count, file.of()));
      Map<List<String>, List<Reprint.Page>> groups = new LinkedHashMap<>();
      file.pages()
          .forEach(
              page ->
                  groups.computeIfAbsent(page.name().sizes(), key -> new ArrayList<>()).add(page));
      groups.forEach(
          (group, pages) ->
              line(
                  "  - %s: %s"
                      .formatted(
                          group.isEmpty() ? "for every size" : sizes.of(group),
                          PatternPages.ranges(pages.stream().map(Reprint.Page::number).toList()))));
    }
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
