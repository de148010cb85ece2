package org.hemwright.paper.cutting;

import java.util.Optional;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.pattern.SizeRun;

/** What a cutting layout says, in the language and the units of whoever reads it. */
public interface LayingWords {
  /** Fixed words on a layout and in its key. */
  enum Sign {
    /** The cloth's right side. */
    RIGHT_SIDE,
    /** The cloth's wrong side. */
    WRONG_SIDE,
    /** A piece with its printed side up. */
    PRINTED_UP,
    /** A piece with its printed side down. */
    PRINTED_DOWN,
    /** A fold, in the key. */
    FOLD,
    /** A selvedge, in the key. */
    SELVEDGE,
    /** Grain that may lie either way up. */
    GRAIN,
    /** Grain that lies one way in all pieces. */
    GRAIN_ONE_WAY,
    /** Bars of a patterned cloth. */
    BAR,
    /** Bars of a cloth whose stripes are uneven. */
    BAR_UNEVEN,
    /** Beside a fold of the cloth. */
    FOLD_HERE,
    /** Beside one selvedge. */
    SELVEDGE_HERE,
    /** Beside two selvedges that lie on each other. */
    SELVEDGES_HERE,
    /** Where folded cloth is opened out. */
    OPENED_HERE
  }

  /** A fixed word. */
  String sign(Sign sign);

  /** View, size and width: "Size 14, 150 cm · 59 in wide". */
  String title(YardageRow row);

  /**
   * How the cloth is folded, how long it is and what to buy; all in one paragraph.
   *
   * @param row that fits
   * @param named whether it names the fabric and its nap
   */
  String facts(YardageRow row, boolean named);

  /**
   * Of a cloth with stripes or checks, what repeat it is laid for and how its layers are to lie; a
   * paragraph.
   *
   * @param row that fits
   */
  Optional<String> stripes(YardageRow row);

  /** In English, as the document spells it. */
  static LayingWords english(SizeRun run) {
    return new EnglishLayingWords(run);
  }
}
