package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.paper.reprint.Reprint;
import org.hemwright.paper.tile.PageName;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.pattern.compare.Change;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.pattern.compare.Laying;
import org.hemwright.pattern.compare.PieceMatch;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.workbench.compare.Compared;

/** What changed between two versions, for a person: the pattern, piece by piece, then the pages. */
public final class CompareText {
  private final Compared compared;
  private final ChangeWords words;
  private final SizeWords sizes;
  private final StringBuilder text = new StringBuilder();

  private CompareText(Compared compared, ChangeWords words) {
    this.compared = compared;
    this.words = words;
    this.sizes = words.wording().sizes();
  }

  /** The whole. */
  public static String of(Compared compared, ChangeWords words) {
    return new CompareText(compared, words).whole();
  }

  private String whole() {
    List<Change> changes = compared.comparison().changes();
    if (changes.isEmpty()) {
      return "Nothing changed.\n";
    }
    if (compared.comparison().nothingChanged()) {
      text.append("Nothing changed for the maker.\n");
    }
    Map<Optional<String>, List<Change>> byPiece = new LinkedHashMap<>();
    changes.forEach(
        change -> byPiece.computeIfAbsent(change.piece(), piece -> new ArrayList<>()).add(change));
    byPiece.forEach(
        (piece, own) -> {
          text.append(
                  piece.map(this::heading).orElse(text.isEmpty() ? "The pattern" : "\nThe pattern"))
              .append('\n');
          own.forEach(
              change ->
                  words.of(change).forEach(line -> text.append("  ").append(line).append('\n')));
        });
    if (!compared.reprints().isEmpty()) {
      text.append("\nPages to print again\n");
      compared.reprints().forEach(this::pages);
    }
    return text.toString();
  }

  private String heading(String piece) {
    String laid =
        compared.comparison().pieces().stream()
            .filter(match -> match.name().equals(piece))
            .map(PieceMatch::laying)
            .map(CompareText::laid)
            .findFirst()
            .orElse("");
    return "\n" + piece + laid;
  }

  private static String laid(Laying laying) {
    return switch (laying.kind()) {
      case AS_DRAWN -> "";
      case EDGE -> ", laid on the old one at " + laying.edge();
      case STACKED -> ", laid on the old one at its stack point";
    };
  }

  private void pages(Reprint file) {
    int again = file.pages().size();
    text.append("  ")
        .append(file.file())
        .append(
            again == 0
                ? ": none"
                : again == file.of() ? ": all " + again : ": %d of %d".formatted(again, file.of()))
        .append('\n');
    file.bySizes()
        .forEach(
            (group, pages) -> {
              text.append("    ").append(sizes.of(group)).append(": ");
              text.append(listed(pages));
              List<String> concerned =
                  group.stream()
                      .filter(size -> pages.stream().anyMatch(page -> page.sizes().contains(size)))
                      .toList();
              if (!concerned.isEmpty() && !concerned.equals(group)) {
                text.append("; only for ").append(sizes.of(concerned));
              }
              text.append('\n');
            });
    if (!file.wordsOnly().isEmpty()) {
      text.append("    only words stand elsewhere, old pages will do: ")
          .append(listed(file.wordsOnly()))
          .append('\n');
    }
    if (!file.gone().isEmpty()) {
      text.append("    no longer needed: ")
          .append(
              file.gone().stream()
                  .map(gone -> name(gone.name()) + " (was page " + gone.number() + ")")
                  .collect(Collectors.joining(", ")))
          .append('\n');
    }
  }

  /** Names as printed, then numbers as a printing dialogue takes them. */
  private static String listed(List<Reprint.Page> pages) {
    String names = pages.stream().map(page -> name(page.name())).collect(Collectors.joining(" "));
    return names
        + (pages.size() == 1 ? " (page " : " (pages ")
        + PatternPages.ranges(pages.stream().map(Reprint.Page::number).toList())
        + ")";
  }

  private static String name(PageName name) {
    return switch (name.kind()) {
      case KEY -> "the key";
      case TABLE -> "the cutting table";
      case MAP -> "the map";
      case PIECES -> name.tile();
    };
  }
}
