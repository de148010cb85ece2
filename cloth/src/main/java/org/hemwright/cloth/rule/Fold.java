package org.hemwright.cloth.rule;

/** How the cloth lies on the table (handbook section 5, Folds). The easiest to cut comes first. */
public enum Fold {
  /** Folded along its length, selvedge on selvedge, right sides together. */
  LENGTHWISE("lengthwise", 2),
  /** Folded along its length as deep as the pieces need, the rest single. */
  PARTIAL("partial", 2),
  /** Both selvedges folded to the middle: two folds. */
  DOUBLE("double", 2),
  /** Folded across its length; its layers run opposite ways, so never with nap. */
  CROSSWISE("crosswise", 2),
  /** Not folded, right side up. */
  SINGLE("single", 1);

  private final String word;
  private final int layers;

  Fold(String word, int layers) {
    this.word = word;
    this.layers = layers;
  }

  /** Its name in tables and files. */
  public String word() {
    return word;
  }

  /** How many layers are cut at once where it is folded: 1 or 2. */
  public int layers() {
    return layers;
  }
}
