package org.hemwright.cli;

import java.io.IOException;
import java.io.Writer;

/** Passes on what is written, and has a copy of it. */
final class CopiedText extends Writer {
  private final Writer to;
  private final StringBuilder copy = new StringBuilder();

  CopiedText(Writer to) {
    this.to = to;
  }

  /** All that was written so far. */
  String copy() {
    return copy.toString();
  }

  @Override
  public void write(char[] text, int from, int count) throws IOException {
    copy.append(text, from, count);
    to.write(text, from, count);
  }

  @Override
  public void flush() throws IOException {
    to.flush();
  }

  /** What it is passed on to belongs to someone else and stays open. */
  @Override
  public void close() throws IOException {
    flush();
  }
}
