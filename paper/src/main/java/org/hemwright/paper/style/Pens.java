package org.hemwright.paper.style;

import java.util.List;
import org.hemwright.paper.sheet.Pen;

/** The pens of the printed pattern; the widths are those of the house style. */
public final class Pens {
  /** Where to cut, for every size that shares the line. */
  public static final Pen CUT = Pen.solid(0.6, Inks.BLACK);

  /** Where to sew. */
  public static final Pen STITCH = new Pen(0.3, List.of(2.2, 1.2), Inks.BLACK);

  /** Something drawn on the piece. */
  public static final Pen INNER = Pen.solid(0.25, Inks.BLACK);

  /** Where another piece is laid on. */
  public static final Pen PLACEMENT = new Pen(0.25, List.of(1.2, 0.9), Inks.BLACK);

  /** Where an allowance folds back. */
  public static final Pen HEM_FOLD = new Pen(0.25, List.of(7.0, 1.2, 1.2, 1.2), Inks.BLACK);

  /** The edge that lies on the fold of the cloth. */
  public static final Pen FOLD = new Pen(0.35, List.of(11.0, 1.6, 1.6, 1.6), Inks.BLACK);

  /** Where the piece is made longer or shorter. */
  public static final Pen LENGTHEN = new Pen(0.25, List.of(5.0, 1.6), Inks.BLACK);

  /** Where the piece is cut apart for narrow cloth. */
  public static final Pen SPLIT = new Pen(0.35, List.of(0.5, 1.5), Inks.BLACK);

  /** Arrows, brackets. */
  public static final Pen SIGN = Pen.solid(0.35, Inks.BLACK);

  /** One stroke of a notch. */
  public static final Pen NOTCH = Pen.solid(0.5, Inks.BLACK);

  /** Rules and frames. */
  public static final Pen RULE = Pen.solid(0.2, Inks.QUIET);

  private Pens() {}
}
