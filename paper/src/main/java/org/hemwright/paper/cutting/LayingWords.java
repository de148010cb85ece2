package org.hemwright.paper.cutting;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.PieceCard;

/** What a cutting layout says, in the language and the units of whoever reads it. */
public interface LayingWords {
  /** Fixed words on a layout and in its key. */
  enum Sign {
    /** The cloth's right side. */
    RIGHT_SIDE,
    /** The cloth's wrong side. */
    WRONG_SIDE,
    /** Either side of cloth that is alike on both. */
    SIDES_ALIKE,
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
    /** Where a piece lies on a fold, and is not cut. */
    ON_FOLD,
    /** Where a half is turned over to be cut as a whole. */
    TURNED_OVER,
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

  /** What a piece is called. */
  String piece(PieceCard card);

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

  /**
   * How deep the cloth is folded (mm), where the width does not say it: partly, or across when some
   * of it is left single.
   */
  static OptionalDouble foldedDeep(ClothLaying laying) {
    return switch (laying.sheet().fold()) {
      case PARTIAL -> OptionalDouble.of(laying.sheet().depth());
      case CROSSWISE ->
          laying.pieces().stream().anyMatch(LaidPiece::open)
              ? OptionalDouble.of(laying.openFrom())
              : OptionalDouble.empty();
      case LENGTHWISE, DOUBLE, SINGLE -> OptionalDouble.empty();
    };
  }

  /**
   * Whether folded cloth is drawn right side out: stripes must be seen (handbook section 5, Folds),
   * and cloth that is alike on both sides has no other.
   */
  static boolean isRightShown(Fabric fabric) {
    return fabric.sidesAlike() || isRightOut(fabric);
  }

  /** Whether folded cloth lies right side out: stripes must be seen (handbook section 5, Folds). */
  static boolean isRightOut(Fabric fabric) {
    return fabric.repeat().isPresent();
  }

  /** In English, as the document spells it. */
  static LayingWords english(SizeRun run) {
    return new EnglishLayingWords(run);
  }
}
