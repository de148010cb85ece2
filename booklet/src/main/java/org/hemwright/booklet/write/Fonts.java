package org.hemwright.booklet.write;

import java.util.Base64;
import java.util.Optional;
import org.hemwright.paper.type.HouseFont;
import org.hemwright.paper.type.HouseType;

/** The fonts of a house as style sheets name them: hers first, ours where hers lacks a letter. */
final class Fonts {
  /** The family of a house's words. */
  static final String WORDS = "Own";

  /** The family of its titles. */
  static final String TITLES = "OwnTitles";

  private Fonts() {}

  /** Rules that set a printed booklet in them; none where the house brings none. */
  static String printed(HouseType type) {
    return type.isOurs() ? "" : families(type, "House");
  }

  /** Rules for a page for a screen, the fonts within it where their licences let them be. */
  static String shown(HouseType type) {
    StringBuilder rules = new StringBuilder();
    face(rules, WORDS, 400, "normal", type.words());
    face(rules, WORDS, 700, "normal", type.bold());
    face(rules, WORDS, 400, "italic", type.italic());
    face(rules, TITLES, 400, "normal", type.forTitles());
    return rules.isEmpty()
        ? ""
        : rules + families(type, "\"Source Sans Pro\", \"Source Sans 3\", sans-serif");
  }

  private static void face(
      StringBuilder rules, String family, int weight, String style, Optional<HouseFont> font) {
    font.filter(HouseFont::onScreens)
        .ifPresent(
            own ->
                rules
                    .append(
                        "@font-face { font-family: %s; font-weight: %d; ".formatted(family, weight))
                    .append("font-style: %s; src: url(data:font/ttf;base64,".formatted(style))
                    .append(Base64.getEncoder().encodeToString(own.face().bytes()))
                    .append(") format(\"truetype\"); }\n"));
  }

  private static String families(HouseType type, String ours) {
    StringBuilder rules = new StringBuilder();
    if (type.words().isPresent() || type.bold().isPresent() || type.italic().isPresent()) {
      rules.append("html, body { font-family: %s, %s; }\n".formatted(WORDS, ours));
    }
    if (type.forTitles().isPresent()) {
      rules.append("h1, h2 { font-family: %s, %s; font-weight: 400; }\n".formatted(TITLES, ours));
    }
    return rules.toString();
  }
}
