package org.hemwright.pattern;

import java.util.List;
import org.hemwright.pattern.body.SizeRange;

/**
 * What the designer decides about the printed pattern.
 *
 * @param groups the sizes drawn in one nest, nine at most in each; neighbours may share sizes
 * @param stitchLines whether the stitch line is drawn inside the cut line
 * @param wholePieces whether fold pieces are opened and drawn whole
 * @param rectangleTable whether plain rectangles are given as a cutting table and not drawn
 * @param viewsApart whether each of several views has files of its own too
 */
public record PaperChoices(
    List<SizeRange> groups,
    boolean stitchLines,
    boolean wholePieces,
    boolean rectangleTable,
    boolean viewsApart) {
  /** The most sizes that one nest can show legibly (handbook section 6). */
  public static final int MOST_SIZES_IN_A_GROUP = 9;

  public PaperChoices {
    groups = List.copyOf(groups);
  }

  /** The choices where all views share their files. */
  public PaperChoices(
      List<SizeRange> groups, boolean stitchLines, boolean wholePieces, boolean rectangleTable) {
    this(groups, stitchLines, wholePieces, rectangleTable, false);
  }
}
