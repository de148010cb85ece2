package org.hemwright.booklet.write;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.booklet.leaf.Booklet;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.paper.type.HouseFont;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/** What a house's own fonts leave to ours in a booklet. */
public final class FontCheck {
  private static final String LETTERS = "font-letters";
  private static final String SCREEN = "font-screen";

  /** What it may find. */
  public static final Set<String> CODES = Set.of(LETTERS, SCREEN);

  private FontCheck() {}

  /** A finding for each font that lacks letters of the booklet, or may not go on a web page. */
  public static List<Finding> of(Booklet booklet) {
    List<Finding> findings = new ArrayList<>();
    for (HouseFont font : booklet.type().all()) {
      boolean titles =
          booklet.type().titles().filter(font::equals).isPresent()
              && booklet.type().words().filter(font::equals).isEmpty();
      Set<String> lacking = new LinkedHashSet<>();
      (titles ? titles(booklet) : booklet.texts())
          .forEach(text -> lacking.addAll(font.face().missing(Inline.plain(text))));
      if (!lacking.isEmpty()) {
        findings.add(
            Finding.warn(LETTERS, font.face().toString())
                .with("letters", Argument.of(List.copyOf(lacking)))
                .build());
      }
      if (!font.onScreens()) {
        findings.add(Finding.warn(SCREEN, font.face().toString()).build());
      }
    }
    return findings;
  }

  private static List<List<Inline>> titles(Booklet booklet) {
    List<List<Inline>> titles = new ArrayList<>();
    titles.add(booklet.title());
    booklet.sections().forEach(section -> titles.add(section.title()));
    return titles;
  }
}
