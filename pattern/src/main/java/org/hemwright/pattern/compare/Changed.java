package org.hemwright.pattern.compare;

import java.util.Locale;

/** What of a pattern changed; the key of its wording. */
public enum Changed {
  TITLE,
  VERSION,
  DATED,
  HOUSE,
  UNITS,
  SPELLING,
  WEARERS,
  BASE_SIZE,
  SIZE_ADDED,
  SIZE_REMOVED,
  MEASUREMENT_ADDED,
  MEASUREMENT_REMOVED,
  /** A cell of the chart; values by size. */
  MEASUREMENT,
  FABRIC_ADDED,
  FABRIC_REMOVED,
  FABRIC_TITLE,
  FABRIC_KIND,
  FABRIC_WIDTHS,
  FABRIC_STRETCH_ACROSS,
  FABRIC_STRETCH_ALONG,
  FABRIC_NAP,
  FABRIC_SIDES,
  FABRIC_REPEAT_ALONG,
  FABRIC_REPEAT_ACROSS,
  FABRIC_UNEVEN,
  FABRIC_MATCHED,
  DIAL_ADDED,
  DIAL_REMOVED,
  DIAL_VALUE,
  DIAL_RANGE,
  VIEW_ADDED,
  VIEW_REMOVED,
  VIEW_TITLE,
  VIEW_PIECES,
  PAPER_GROUPS,
  PAPER_STITCH_LINES,
  PAPER_WHOLE_PIECES,
  PAPER_RECTANGLES,
  PIECE_ADDED,
  PIECE_REMOVED,
  PIECE_RENAMED,
  PIECE_TITLE,
  PIECE_NUMBER,
  PIECE_CUTS,
  PIECE_COPIES,
  PIECE_RIGHT_SIDE,
  /** Drawn in sizes in which it was not, both versions having them. */
  PIECE_SIZES_ADDED,
  /** No longer drawn in sizes in which it was. */
  PIECE_SIZES_REMOVED,
  PIECE_OPENINGS,
  /** What an opening of a piece passes. */
  OPENING_OVER,
  /** What closes it. */
  OPENING_CLOSURE,
  /** Its slit; values by size. */
  OPENING_SLIT,
  INTAKE_ADDED,
  INTAKE_REMOVED,
  /** Which way a dart or pleat is pressed. */
  INTAKE_PRESSED,
  /** How much of its edge it takes in; values by size. */
  INTAKE_TAKES,
  /** The same shape, drawn elsewhere in its own plane: told, and no change. */
  PIECE_MOVED(true),
  /** The same shape, stacked at another point: told, and no change of the piece. */
  PIECE_STACKED(true),
  PIECE_MIRRORED,
  /** The cut line; values by size, apart is the largest distance between old and new. */
  CUT_LINE,
  EDGE_ADDED,
  EDGE_REMOVED,
  EDGE_RENAMED,
  /** Its length; values by size. */
  EDGE_LENGTH,
  /** Its course, though it is as long as it was; values by size. */
  EDGE_COURSE,
  /** The width of its allowance; values by size. */
  EDGE_ALLOWANCE,
  EDGE_HEM,
  EDGE_FOLD,
  CORNER,
  NOTCH_ADDED,
  NOTCH_REMOVED,
  NOTCH_RENAMED,
  NOTCH_KIND,
  /** Its place along its edge; values by size, apart is how far it moved on the piece. */
  NOTCH_MOVED,
  MARK_ADDED,
  MARK_REMOVED,
  MARK_WORDS,
  /** Where it stands on the piece; values by size. */
  MARK_MOVED,
  GRAIN_ADDED,
  GRAIN_REMOVED,
  /** Its direction on the piece. */
  GRAIN_TURNED,
  SEAM_ADDED,
  SEAM_REMOVED,
  SEAM_LAYERS,
  SEAM_EASE,
  SEAM_MARKS,
  ELASTIC_ADDED,
  ELASTIC_REMOVED,
  ELASTIC_PIECE,
  /** Values by size. */
  ELASTIC_WIDTH,
  /** The finished loop; values by size. */
  ELASTIC_LENGTH,
  /** Values by size. */
  ELASTIC_OVERLAP,
  /** The measurement that it holds. */
  ELASTIC_HOLDS,
  /** The measurement that it passes. */
  ELASTIC_PASSES,
  /** How far it stretches. */
  ELASTIC_STRETCH,
  /** The usual needle. */
  NEEDLE,
  SLEEPWEAR,
  CORD_ADDED,
  CORD_REMOVED,
  CORD_PIECE,
  CORD_PLACE,
  /** Values by size. */
  CORD_LENGTH,
  /** Whether the document says how far its ends hang out. */
  CORD_ENDS_SAID,
  /** Values by size. */
  CORD_ENDS,
  CORD_TOGGLES,
  CORD_TACKED,
  STAGE_ADDED,
  STAGE_REMOVED,
  STAGE_TITLE,
  STEP_ADDED,
  STEP_REMOVED,
  STEP_RENAMED,
  /** It comes earlier or later among the others. */
  STEP_MOVED,
  /** What is done. */
  STEP_ACT,
  /** What it is done to. */
  STEP_WORK,
  STEP_STITCHING,
  STEP_PRESS,
  STEP_WORDS,
  /** Which lengths it speaks of. */
  STEP_LENGTHS,
  /** One of them; values by size. */
  STEP_LENGTH,
  STEP_VIEWS,
  STEP_SIZES,
  STEP_STAGE,
  /** Spools or cones to buy. */
  NOTION_THREAD,
  /** The shortest zip that reaches. */
  NOTION_ZIP,
  /** How many buttons and their like. */
  NOTION_FASTENING,
  NOTION_INTERFACING,
  /** Values by size. */
  NOTION_TAPE;

  private final boolean note;

  Changed() {
    this(false);
  }

  Changed(boolean note) {
    this.note = note;
  }

  /** Whether it is only told, since a maker would cut and sew the same. */
  public boolean isNote() {
    return note;
  }

  /** Its name in answers and message files: {@code edge-length}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
