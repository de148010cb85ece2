package org.hemwright.booklet.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheets of this package. */
final class Styles {
  private Styles() {}

  static String file(String name) {
    try (InputStream stream = Styles.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalArgumentException(name + " does not lie beside the writers");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
