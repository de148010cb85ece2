package org.hemwright.draft.syntax;

/** Where a form may stand: in a part of the document, or in a slot of another form. */
public enum Where {
  LEFT_EDGE("At the left edge", "at-left-edge"),
  FABRIC("In a fabric", "in-fabric"),
  PART("In a part", "in-part"),
  PIECE("In a piece", "in-piece"),
  SEAM("In a seam", "in-seam"),
  VIEW("In a view", "in-view"),
  MAKE("In make", "in-make"),
  PAPER("In paper", "in-paper"),

  NUMBER("Numbers", "number"),
  NUMBER_RULE("Numbers by size", "number"),
  STEP("Steps by size", "step"),
  CHOICE("Choices", "choice"),
  CONDITION("Conditions", "condition"),
  POINT_RULE("How a point is found", "point-rule"),
  WAY("A way and how far", "way"),
  PICK("Which meeting is meant", "pick"),
  LINE_RULE("How a line is drawn", "line-rule"),
  CURVE_RULE("How a curve is drawn", "curve-rule"),
  STRETCH("The stretches of a curve", "stretch"),
  THROUGH("Points that a curve runs through", "through"),
  ARRIVAL("Where a stretch ends", "arrival"),
  ARC_RULE("How an arc is drawn", "arc-rule"),
  PATH("Paths", "path"),
  PATH_STEP("What is done to a path", "path-step"),
  DIRECTION("Ways to go", "direction"),
  MOVE("Moves", "move"),
  ALONG("Places along an edge or path", "along"),
  OUTLINE_EDGE("Edges of the outline", "outline-edge"),
  OUTLINE_CHANGE("What a copied outline may change", "outline-change"),
  EDGE_ALLOWANCE("Allowances by edge", "edge-allowance"),
  FINISH("Corner finishes", "finish"),
  GRAIN_RULE("How the grain lies", "grain-rule"),
  SEAM_CLAUSE("What a seam may add", "seam-clause"),
  DART_CLAUSE("What a dart may add", "dart-clause"),
  TRACED_EDGE("Edges of a traced outline", "traced-edge"),
  GRADE_PLACE("Where a rule stands", "grade-place"),
  GRADE_WAY("How a point grades", "grade-way"),
  GRADE_STEP("Steps between sizes", "grade-step"),
  CUT_CLAUSE("How a cut opens", "cut-clause"),
  PLEAT_CLAUSE("How a pleat is folded", "pleat-clause"),
  ELASTIC_CLAUSE("What an elastic may add", "elastic-clause"),
  STITCH("Stitches", "stitch"),
  NEEDLE("Needles", "needle"),
  PRESS_WAY("Ways to press", "press-way"),
  STEP_CLAUSE("What a step may add", "step-clause");

  private final String title;
  private final String term;

  Where(String title, String term) {
    this.title = title;
    this.term = term;
  }

  /** Its heading in the language reference. */
  public String title() {
    return title;
  }

  /** The key of the phrase by which messages name it. */
  public String term() {
    return term;
  }

  /** Whether it is a part of the document, where whole lines stand. */
  public boolean holdsLines() {
    return compareTo(PAPER) <= 0;
  }
}
