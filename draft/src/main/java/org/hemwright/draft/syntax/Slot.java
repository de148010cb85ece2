package org.hemwright.draft.syntax;

import java.util.Optional;

/** What a slot of a form takes. */
public enum Slot {
  NAME("name", "name"),
  REFERENCE("point", "point"),
  PLACE("place", "edge-place"),
  CASING("piece", "casing"),
  RUN("run", "edge-place"),
  TEXT("text", "words"),
  COUNT("count", "count"),
  SIZE("size", "size"),
  SIZES("sizes", "sizes"),
  VERSION("version", "version"),
  DATE("date", "date"),
  CHECK("check", "check"),
  SUBJECT("subject", "subject"),
  WORK("work", "work"),
  NUMBER("number", "number"),
  LITERAL("literal", "literal"),
  PATH("path", "path"),
  CHAIN("chain", "path"),
  AXIS("axis", "axis"),

  CONDITION("condition", "condition"),

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
  OUTLINE_CHANGE("outline change", Where.OUTLINE_CHANGE),
  EDGE_ALLOWANCE("edge allowance", Where.EDGE_ALLOWANCE),
  FINISH("finish", Where.FINISH),
  GRAIN_RULE("grain rule", Where.GRAIN_RULE),
  SEAM_CLAUSE("seam clause", Where.SEAM_CLAUSE),
  DART_CLAUSE("dart clause", Where.DART_CLAUSE),
  TRACED_EDGE("traced edge", Where.TRACED_EDGE),
  GRADE_PLACE("grade place", Where.GRADE_PLACE),
  GRADE_WAY("grade way", Where.GRADE_WAY),
  GRADE_STEP("grade step", Where.GRADE_STEP),
  CUT_CLAUSE("cut clause", Where.CUT_CLAUSE),
  PLEAT_CLAUSE("pleat clause", Where.PLEAT_CLAUSE),
  ELASTIC_CLAUSE("elastic clause", Where.ELASTIC_CLAUSE),
  STITCH("stitch", Where.STITCH),
  NEEDLE("needle", Where.NEEDLE),
  PRESS_WAY("press way", Where.PRESS_WAY),
  STEP_CLAUSE("step clause", Where.STEP_CLAUSE);

  private final String word;
  private final String term;
  private final Optional<Where> forms;

  Slot(String word, String term) {
    this.word = word;
    this.term = term;
    this.forms = Optional.empty();
  }

  Slot(String word, Where forms) {
    this.word = word;
    this.term = forms.term();
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

  /** The key of the phrase by which messages name what it takes. */
  public String term() {
    return term;
  }

  /** The forms that may fill it, where it is filled by forms of the table. */
  public Optional<Where> forms() {
    return forms;
  }
}
