package org.hemwright.booklet.write;

/**
 * What a booklet is printed on.
 *
 * @param paper the size of its pages
 * @param large whether it is set in large print
 */
public record PrintForm(Paper paper, boolean large) {
  /** A booklet's paper. */
  public enum Paper {
    A4("A4"),
    LETTER("Letter");

    private final String title;

    Paper(String title) {
      this.title = title;
    }

    /** As people call it. */
    public String title() {
      return title;
    }
  }
}
