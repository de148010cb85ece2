package org.hemwright.draft.syntax;

/** Where a form may stand: in a part of the document, or in a slot of another form. */
public enum Where {
  LEFT_EDGE("At the left edge", "at the left edge"),
  FABRIC("In a fabric", "in a fabric"),
  PART("In a part", "in a part"),
  PIECE("In a piece", "in a piece"),
  SEAM("In a seam", "in a seam"),
  VIEW("In a view", "in a view"),
  PAPER("In paper", "in paper"),

  NUMBER("Numbers", "a number"),
  NUMBER_RULE("Numbers by size", "a number"),
  STEP("Steps by size", "a number and its size"),
  CHOICE("Choices", "a number and its condition"),
  CONDITION("Conditions", "a condition"),
  POINT_RULE("How a point is found", "how the point is found"),
  WAY("A way and how far", "a way to go and how far"),
  PICK("Which meeting is meant", "which meeting is meant"),
  LINE_RULE("How a line is drawn", "how the line is drawn"),
  CURVE_RULE("How a curve is drawn", "how the curve is drawn"),
  STRETCH("The stretches of a curve", "`to` or `through` a point"),
  THROUGH("Points that a curve runs through", "`through` a point"),
  ARRIVAL("Where a stretch ends", "`to` a point"),
  ARC_RULE("How an arc is drawn", "how the arc is drawn"),
  DIRECTION("Ways to go", "a way to go"),
  MOVE("Moves", "a move"),
  ALONG("Places along an edge or path", "a place along it"),
  OUTLINE_EDGE("Edges of the outline", "an edge and its path"),
  EDGE_ALLOWANCE("Allowances by edge", "an edge and its allowance"),
  FINISH("Corner finishes", "the finish of the corner"),
  GRAIN_RULE("How the grain lies", "how the grain lies"),
  SEAM_CLAUSE("What a seam may add", "what the seam adds");

  private final String title;
  private final String wanted;

  Where(String title, String wanted) {
    this.title = title;
    this.wanted = wanted;
  }

  /** Its heading in the language reference. */
  public String title() {
    return title;
  }

  /** How a message names it. */
  public String wanted() {
    return wanted;
  }

  /** Whether it is a part of the document, where whole lines stand. */
  public boolean holdsLines() {
    return compareTo(PAPER) <= 0;
  }
}
