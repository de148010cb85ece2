package org.hemwright.booklet;

import java.util.List;
import org.hemwright.booklet.write.PrintForm;

/** The printed forms that a booklet has. */
public final class BookletOptions {
  /** A4 and Letter, and large print on A4. */
  public static final List<PrintForm> USUAL =
      List.of(
          new PrintForm(PrintForm.Paper.A4, false),
          new PrintForm(PrintForm.Paper.LETTER, false),
          new PrintForm(PrintForm.Paper.A4, true));

  private BookletOptions() {}
}
