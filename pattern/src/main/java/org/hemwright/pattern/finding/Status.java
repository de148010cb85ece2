package org.hemwright.pattern.finding;

/** How a check ended. */
public enum Status {
  /** All is as it should be; told only when a report asks for everything. */
  OK,
  /** Worth a look; publishing goes on. */
  WARN,
  /** Must be mended; publishing is refused. */
  FAIL,
  /** A finding that the designer has judged, with her reason in the document. */
  ACCEPTED
}
