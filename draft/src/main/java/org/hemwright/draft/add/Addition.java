package org.hemwright.draft.add;

import java.util.List;

/**
 * One way to say what was pointed at.
 *
 * @param way which of the language's ways
 * @param lines the lines that are new, without their indent, in the order of the text
 * @param text the whole document with them
 */
public record Addition(Way way, List<String> lines, String text) {
  public Addition {
    lines = List.copyOf(lines);
  }

  /** The ways of the language. */
  public enum Way {
    /** One way after another from a point. */
    LEGS,
    /** One way along the table from a point. */
    SQUARE_WAY,
    /** At an angle and a distance from a point. */
    ANGLE,
    /** From the piece's origin. */
    ORIGIN,
    /** Toward another point. */
    TOWARD,
    /** Halfway between two points. */
    MIDWAY,
    /** A share of the way between two points. */
    SHARE_BETWEEN,
    /** A length along a line. */
    ALONG,
    /** A share of a line. */
    SHARE_ALONG,
    /** At even parts of a line. */
    EVEN,
    /** At a point that lies on a line. */
    AT_POINT,
    /** Straight across from a point to a line. */
    FOOT,
    /** At a distance from a point, on a line. */
    COMPASS,
    /** Where two lines meet. */
    MEETING,
    /** Straight from point to point. */
    STRAIGHT,
    /** A smooth curve through points. */
    SMOOTH,
    /** A smooth curve that leaves and arrives along the table's ways. */
    SMOOTH_SQUARE,
    /** Part of a circle through three points. */
    ARC,
    /** A double notch. */
    DOUBLE,
    /** A notch of the seam, on every edge that is sewn in it. */
    SEAM_NOTCH,
    /** One garment of the pattern. */
    VIEW,
    /** Mirrored across the line through two points. */
    MIRRORED,
    /** Where two pairs of compasses meet. */
    COMPASSES,
    /** Layers of a seam, edge by edge. */
    LAYERS,
    /** The second layer run the other way. */
    LAYERS_REVERSED,
    /** All copies of the second edge in a round. */
    EVERY,
    /** The second layer made of several edges. */
    END_TO_END,
    /** The first layer eased onto the second. */
    EASED,
    /** A plain rectangle. */
    RECTANGLE,
    /** A piece with straight edges. */
    CORNERS,
    /** The outline of another piece. */
    OUTLINE_AS,
    /** A strip inside another piece. */
    FACING,
    /** The length of a line. */
    LENGTH,
    /** The lengths of two lines together. */
    SUM,
    /** By how much one line is longer than another. */
    DIFFERENCE,
    /** Straight from point to point, or from a point to a line. */
    DISTANCE,
    /** How far across. */
    ACROSS,
    /** How far up. */
    RISE,
    /** An angle from the right, or between two ways. */
    TURN,
    /** Round the piece at a height, over all its copies. */
    GIRTH
  }
}
