package org.hemwright.exchange.drawing;

import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/** A drawing, or a thing in it, that cannot be read; caught in this package. */
final class DrawingRefused extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Finding.Builder finding;

  DrawingRefused(String code, String subject, Origin at) {
    super(code, null, false, false);
    this.finding = Finding.fail(code, subject).at(at);
  }

  DrawingRefused with(String name, String text) {
    finding.with(name, text);
    return this;
  }

  Finding finding() {
    return finding.build();
  }
}
