package org.hemwright.cloth.laying;

/**
 * A reason to refuse a layout.
 *
 * @param kind what sort of fault it is
 * @param message what is wrong, with the values and the place
 */
public record Objection(Kind kind, String message) {

  /** The sorts of fault that a layout can have. */
  public enum Kind {
    /** A shape is laid more or fewer times than demanded, or is not in the problem. */
    COUNT,
    /** A shape lies in a turn that it is not allowed. */
    TURN,
    /** A shape stands over the edge of the strip, its lane or the stated length. */
    OUTSIDE,
    /** Two shapes overlap. */
    OVERLAP
  }
}
