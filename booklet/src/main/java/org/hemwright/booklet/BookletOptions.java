package org.hemwright.booklet;

import java.util.List;
import org.hemwright.booklet.write.PrintForm;

/**
 * Which files are made.
 *
 * @param language a tag of {@link org.hemwright.booklet.words.Wordbook#LANGUAGES}; blank for the
 *     document's own spelling
 * @param forms the printed forms, at least one
 */
public record BookletOptions(String language, List<PrintForm> forms) {
  /** A4 and Letter, each in large print too, in the document's own spelling. */
  public static final BookletOptions USUAL =
      new BookletOptions(
          "",
          List.of(
              new PrintForm(PrintForm.Paper.A4, false),
              new PrintForm(PrintForm.Paper.LETTER, false),
              new PrintForm(PrintForm.Paper.A4, true)));

  public BookletOptions {
    forms = List.copyOf(forms);
    if (forms.isEmpty()) {
      throw new IllegalArgumentException("a booklet is printed on something");
    }
  }
}
