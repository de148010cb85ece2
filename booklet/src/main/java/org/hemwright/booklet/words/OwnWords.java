package org.hemwright.booklet.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The designer's words of a document in another language: what the document says, and how she says
 * it there. A full stop at the end makes no difference.
 */
public record OwnWords(Map<String, String> said) {
  /** She has given none. */
  public static final OwnWords NONE = new OwnWords(Map.of());

  public OwnWords {
    Map<String, String> plain = new LinkedHashMap<>();
    said.forEach((here, there) -> plain.putIfAbsent(plain(here), there.strip()));
    said = Collections.unmodifiableMap(plain);
  }

  private static String plain(String text) {
    String stripped = text.strip();
    return stripped.endsWith(".") ? stripped.substring(0, stripped.length() - 1) : stripped;
  }

  /** How she says it; absent where she has not said. */
  public Optional<String> of(String text) {
    return Optional.ofNullable(said.get(plain(text)));
  }
}
