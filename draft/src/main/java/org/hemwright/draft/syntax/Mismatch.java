package org.hemwright.draft.syntax;

/**
 * What stands here is not what the form wants. Thrown and caught inside {@link Reading} alone,
 * which remembers the furthest place that any form reached.
 */
final class Mismatch extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Mismatch() {
    super("not this form", null, false, false);
  }
}
