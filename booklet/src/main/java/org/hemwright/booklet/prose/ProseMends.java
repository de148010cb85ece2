package org.hemwright.booklet.prose;

import java.util.Optional;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.TextEdit;

/**
 * Changes of a text that would mend what was found in it.
 *
 * @param file its name
 */
record ProseMends(String file, String text) {
  /** The finding with the change that mends it, where one is known. */
  Finding with(Finding finding) {
    Optional<Integer> at = finding.origin().map(this::offset);
    if (at.isEmpty()) {
      return finding;
    }
    Optional<TextEdit> edit =
        finding.code().equals("prose-open")
            ? Optional.of(new TextEdit(file, endOfParagraph(at.get()), 0, "}"))
            : near(finding, at.get());
    return edit.map(finding::mendedBy).orElse(finding);
  }

  /** The name that was probably meant, in the place of the one that is written. */
  private Optional<TextEdit> near(Finding finding, int at) {
    if (!(finding.arguments().get("near") instanceof Argument.Text near)) {
      return Optional.empty();
    }
    String written = finding.subject();
    int found = text.indexOf(written, at);
    if (found < 0 || found > endOfParagraph(at)) {
      written = written.replace('_', ' ');
      found = text.indexOf(written, at);
    }
    return found < 0 || found > endOfParagraph(at)
        ? Optional.empty()
        : Optional.of(new TextEdit(file, found, written.length(), near.text()));
  }

  private int offset(Origin origin) {
    int at = 0;
    for (int line = 1; line < origin.line(); line++) {
      int end = text.indexOf('\n', at);
      if (end < 0) {
        return at;
      }
      at = end + 1;
    }
    return Math.min(text.length(), at + origin.column() - 1);
  }

  private int endOfParagraph(int at) {
    int end = text.indexOf("\n\n", at);
    int last = end < 0 ? text.length() : end;
    while (last > at && Character.isWhitespace(text.charAt(last - 1))) {
      last--;
    }
    return last;
  }
}
