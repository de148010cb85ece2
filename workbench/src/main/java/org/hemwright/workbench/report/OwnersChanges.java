package org.hemwright.workbench.report;

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
import java.util.stream.IntStream;
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

  /** As many pages are named as those that need not be printed again. */
  private static final int FEW_SPARED = 5;

  /** What begins with an edge that its name alone need not show to be one. */
  private static final Set<Changed> EDGES =
      EnumSet.of(Changed.EDGE_LENGTH, Changed.EDGE_COURSE, Changed.EDGE_HEM, Changed.EDGE_FOLD);

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
    this.words = new ChangeWords(words.wording().showing(LengthFormat.of(edition)), true);
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
    boolean finer = false;
    boolean told = false;
    for (Map.Entry<Optional<String>, List<Change>> own : byPiece.entrySet()) {
      Set<String> sentences = new LinkedHashSet<>();
      for (Change change : own.getValue()) {
        List<String> said = named(change).map(words::of).orElse(List.of());
        finer |= said.isEmpty() && !change.values().isEmpty();
        said.forEach(sentence -> sentences.add(plain(its(change, sentence), own.getKey())));
      }
      if (!sentences.isEmpty()) {
        section(own.getKey(), sentences);
        told = true;
      }
    }
    if (finer) {
      line("");
      line("Differences finer than a printed line are left out.");
    }
    if (!told) {
      line("");
      line("No piece has changed: what you cut and sew is as it was.");
    }
    pages();
    line("");
    line("%s, %s".formatted(is.by(), Speech.of(compared.now()).date()));
    return text.toString();
  }

  /** A dial by what it does; one that says nothing to people is not told. */
  private Optional<Change> named(Change change) {
    if (change.changed() != Changed.DIAL_VALUE) {
      return Optional.of(change);
    }
    return compared.now().pattern().dials().stream()
        .filter(dial -> change.subject().equals("dial " + dial.name()) && !dial.text().isBlank())
        .findFirst()
        .map(
            dial ->
                new Change(
                    change.changed(),
                    dial.text(),
                    change.piece(),
                    change.was(),
                    change.is(),
                    change.sizes(),
                    change.values()));
  }

  private void section(Optional<String> piece, Set<String> sentences) {
    line("");
    line("## " + piece.map(this::heading).orElse("The pattern as a whole"));
    line("");
    sentences.forEach(sentence -> line("- " + sentence));
  }

  private String heading(String piece) {
    PieceCard card = cards.get(piece);
    return card == null ? spaced(piece) : "Piece %d, %s".formatted(card.number(), card.title());
  }

  /** Below its piece's heading an edge, a notch or a mark goes without the piece's name. */
  private static String its(Change change, String sentence) {
    String subject = change.subject();
    if (change.piece().isEmpty() || !sentence.startsWith(subject + " ")) {
      return sentence;
    }
    String piece = change.piece().get();
    String rest = sentence.substring(subject.length());
    if (subject.startsWith(piece + ".")) {
      String own = subject.substring(piece.length() + 1);
      return "The " + own + (EDGES.contains(change.changed()) ? " edge" : "") + rest;
    }
    return subject.startsWith(piece + " ")
        ? "The " + subject.substring(piece.length() + 1) + rest
        : sentence;
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
        "Look for the file that you printed and for the sizes that yours is among. Pages that are"
            + " not named here are as they were. Each number is the page's in the new file.");
    line("");
    for (Reprint file : again) {
      int count = file.pages().size();
      line(
          count == file.of()
              ? "- `%s`: all %d".formatted(file.file(), count)
              : "- `%s`: %d of %d pages%s".formatted(file.file(), count, file.of(), allBut(file)));
      file.bySizes()
          .forEach(
              (group, pages) ->
                  line(
                      "  - %s: %s"
                          .formatted(
                              group.isEmpty() ? "for every size" : sizes.of(group),
                              PatternPages.ranges(
                                  pages.stream().map(Reprint.Page::number).toList()))));
    }
  }

  /** Which pages are spared, where those are few. */
  private static String allBut(Reprint file) {
    Set<Integer> again =
        file.pages().stream().map(Reprint.Page::number).collect(Collectors.toSet());
    List<Integer> spared =
        IntStream.rangeClosed(1, file.of()).boxed().filter(page -> !again.contains(page)).toList();
    return spared.size() > FEW_SPARED
        ? ""
        : (spared.size() == 1 ? ", all but page " : ", all but pages ")
            + PatternPages.ranges(spared);
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
