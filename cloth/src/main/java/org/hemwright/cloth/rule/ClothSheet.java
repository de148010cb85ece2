package org.hemwright.cloth.rule;

import java.util.List;
import org.hemwright.cloth.laying.Lane;

/**
 * A cloth on the table.
 *
 * @param fold how it lies
 * @param width as sold (mm)
 * @param depth how deep it is folded (mm): half its width for a lengthwise fold, a quarter on
 *     either side for a double one, 0 where no fold runs along it
 * @param settings what it loses at the selvedges and between pieces
 */
public record ClothSheet(Fold fold, double width, double depth, ClothSettings settings) {
  private static final double STEPS_PER_MM = 1000;

  public ClothSheet {
    if (!(width > 0) || !(depth >= 0) || depth > width / 2) {
      throw new IllegalArgumentException(
          "cloth " + width + " mm wide cannot be folded " + depth + " mm deep");
    }
  }

  ClothSheet foldedAt(double newDepth) {
    return new ClothSheet(fold, width, newDepth, settings);
  }

  /** Whether a fold runs along it. */
  public boolean foldsAlong() {
    return fold == Fold.LENGTHWISE || fold == Fold.PARTIAL || fold == Fold.DOUBLE;
  }

  /** How wide it is on the table while it is folded (mm). */
  public double tableWidth() {
    return fold == Fold.DOUBLE ? width - 2 * depth : width - depth;
  }

  /** Across the table: where pieces may lie, from the near side to the far side (mm). */
  record Reach(double low, double high) {
    double width() {
      return high - low;
    }
  }

  /** Where pieces may lie on the folded cloth. */
  Reach folded() {
    return switch (fold) {
      case LENGTHWISE, PARTIAL -> new Reach(0, tableWidth() - settings.selvedge());
      case DOUBLE -> new Reach(0, tableWidth());
      case CROSSWISE, SINGLE -> open();
    };
  }

  /** Where pieces may lie on the cloth opened out. */
  Reach open() {
    return new Reach(settings.selvedge(), width - settings.selvedge());
  }

  /** Whether a whole piece finds room between the selvedge margins of the cloth opened out. */
  public boolean takes(ClothPiece piece) {
    return rounded(open().width()) >= rounded(piece.shape().height());
  }

  /** A cloth laid flat, in one layer. */
  public static ClothSheet flat(double width, ClothSettings settings) {
    return new ClothSheet(Fold.SINGLE, width, 0, settings);
  }

  /** The parts of the folded cloth that have two layers. */
  List<Reach> doubled() {
    double margin = settings.selvedge();
    return switch (fold) {
      case LENGTHWISE, PARTIAL -> List.of(new Reach(0, depth - margin));
      case DOUBLE -> List.of(new Reach(0, depth - margin), new Reach(depth + margin, 2 * depth));
      case CROSSWISE -> List.of(open());
      case SINGLE -> List.of();
    };
  }

  /** The part of a partly folded cloth that has one layer. */
  Reach beside() {
    return new Reach(depth, tableWidth() - settings.selvedge());
  }

  /** Where on the table the folds run. */
  List<Double> folds() {
    return switch (fold) {
      case LENGTHWISE, PARTIAL -> List.of(0.0);
      case DOUBLE -> List.of(0.0, tableWidth());
      case CROSSWISE, SINGLE -> List.of();
    };
  }

  /** A lane of a strip that begins at a place across the table, in thousandths. */
  static Lane lane(Reach reach, double margin, double start, double end) {
    return new Lane.Between(
        Math.max(0, rounded(reach.low() - margin - start)),
        Math.min(rounded(end - start), rounded(reach.high() + margin - start)));
  }

  static double rounded(double mm) {
    return Math.rint(mm * STEPS_PER_MM) / STEPS_PER_MM + 0.0;
  }
}
