package org.hemwright.pattern.quantity;

/** What a length is of, which decides how finely it is shown. */
public enum LengthKind {
  /** A body measurement. */
  BODY,
  /** A size of the finished garment, or of something the maker measures out. */
  FINISHED,
  /** A seam or hem allowance, printed by its nominal partner in the other unit. */
  ALLOWANCE,
  /** Something bought by its nominal size: elastic, tape, buttons. */
  NOTION,
  /** By how much two lengths differ, or a place to be found with a ruler. */
  DIFFERENCE
}
