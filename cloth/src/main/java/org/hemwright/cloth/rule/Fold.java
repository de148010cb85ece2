package org.hemwright.cloth.rule;

/** How the cloth lies on the table (handbook section 5, Folds). The easiest to cut comes first. */
public enum Fold {
  /** Folded along its length, selvedge on selvedge, right sides together. */
  LENGTHWISE("lengthwise"),
  /** Folded along its length as deep as the pieces need, the rest single. */
  PARTIAL("partial"),
  /** Both selvedges folded to the middle: two folds. */
  DOUBLE("double"),
  /** Folded across its length; its layers run opposite ways, so never with nap. */
  CROSSWISE("crosswise"),
  /** Not folded, right side up. */
  SINGLE("single");

  private final String word;

  Fold(String word) {
    this.word = word;
  }

  /** Its name in tables and files. */
  public String word() {
    return word;
  }
}
