package org.hemwright.draft.syntax;

import java.util.Optional;

/** What a slot of a form takes. */
public enum Slot {
  NAME("name", "a name"),
  REFERENCE("point", "a point"),
  PLACE("place", "an edge as `piece.edge`"),
  RUN("run", "an edge as `piece.edge`"),
  TEXT("text", "words in quotes"),
  COUNT("count", "a whole number"),
  SIZE("size", "a size"),
  SIZES("sizes", "two sizes"),
  VERSION("version", "a version"),
  DATE("date", "a date"),
  NUMBER("number", "a number"),
  LITERAL("literal", "a number with its unit"),
  EVEN("even", "`halves`, `thirds` or `quarters`"),
  PATH("path", "a line or curve"),
  CHAIN("chain", "a line or curve"),
  AXIS("axis", "a straight line"),

  CONDITION("condition", "a condition"),

  RULE("rule", Where.NUMBER_RULE),
  STEP("step", Where.STEP),
  CHOICE("choice", Where.CHOICE),
  WAY("way", Where.WAY),
  POINT_RULE("point rule", Where.POINT_RULE),
  PICK("pick", Where.PICK),
  LINE_RULE("line rule", Where.LINE_RULE),
  CURVE_RULE("curve rule", Where.CURVE_RULE),
  STRETCH("stretch", Where.STRETCH),
  THROUGH("through", Where.THROUGH),
  ARRIVAL("arrival", Where.ARRIVAL),
  ARC_RULE("arc rule", Where.ARC_RULE),
  DIRECTION("direction", Where.DIRECTION),
  MOVE("move", Where.MOVE),
  ALONG("along", Where.ALONG),
  OUTLINE_EDGE("outline edge", Where.OUTLINE_EDGE),
  EDGE_ALLOWANCE("edge allowance", Where.EDGE_ALLOWANCE),
  FINISH("finish", Where.FINISH),
  GRAIN_RULE("grain rule", Where.GRAIN_RULE),
  SEAM_CLAUSE("seam clause", Where.SEAM_CLAUSE);

  private final String word;
  private final String wanted;
  private final Optional<Where> forms;

  Slot(String word, String wanted) {
    this.word = word;
    this.wanted = wanted;
    this.forms = Optional.empty();
  }

  Slot(String word, Where forms) {
    this.word = word;
    this.wanted = forms.wanted();
    this.forms = Optional.of(forms);
  }

  /** The slot of a notation's word; anything else is a name. */
  static Slot of(String word) {
    for (Slot slot : values()) {
      if (slot.word.equals(word)) {
        return slot;
      }
    }
    throw new IllegalArgumentException("no such slot: " + word);
  }

  /** How a message names what it takes. */
  public String wanted() {
    return wanted;
  }

  /** The forms that may fill it, where it is filled by forms of the table. */
  public Optional<Where> forms() {
    return forms;
  }
}
