package org.hemwright.pattern.piece;

/** How the cut line turns from one edge's allowance to the next (handbook section 3). */
public sealed interface CornerFinish {
  /** What a corner gets that no hem is turned back over, when the designer says nothing. */
  CornerFinish USUAL = new Mitred(2.5);

  /**
   * What the corner between two edges gets when the designer says nothing: turned back beside a hem
   * that is turned back, else mitred. Where two such hems meet neither can be mirrored over the
   * other first, and the corner is mitred.
   */
  static CornerFinish between(Edge before, Edge after) {
    boolean first = before.allowance() instanceof Allowance.TurnedBack;
    boolean second = after.allowance() instanceof Allowance.TurnedBack;
    if (first == second) {
      return USUAL;
    }
    return new TurnedBack(first ? before.name() : after.name());
  }

  /**
   * Both cut lines run on to their meeting; cut short square to the way there when that lies
   * further from the corner than {@code limit} times the wider allowance.
   */
  record Mitred(double limit) implements CornerFinish {
    public Mitred {
      if (!(limit >= 1)) {
        throw new IllegalArgumentException("a mitre's limit is 1 or more, not " + limit);
      }
    }
  }

  /**
   * The stitch line of {@code edge}, which is sewn first, is run on to the neighbour's cut line;
   * there its allowance ends square to it, so that both partners' ends line up.
   */
  record Square(String edge) implements CornerFinish {}

  /**
   * The neighbouring cut line is mirrored over {@code edge}, which is turned back, so that the
   * folded allowance lies exactly on the garment.
   */
  record TurnedBack(String edge) implements CornerFinish {}

  /**
   * Each allowance ends square to its own stitch line at the corner, with a straight step between
   * the two, as at a vent or placket.
   */
  record Stepped() implements CornerFinish {}
}
