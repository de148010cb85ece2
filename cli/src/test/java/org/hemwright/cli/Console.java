package org.hemwright.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** A command line to call the program from, and what it wrote there in all its runs. */
final class Console {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  /** Runs a command; its exit code. */
  int run(String... arguments) {
    return Main.run(out, err, arguments);
  }

  /** What stands on standard output so far. */
  String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  /** What stands on standard error so far. */
  String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  /** Forgets what was written. */
  void clear() {
    out.reset();
    err.reset();
  }
}
