package org.hemwright.pattern.finding;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/**
 * The sentences of one or more message files, by key. A key stands in one file only, once.
 *
 * @param sentences by key, {@code seam-length.message}
 */
public record Messages(Map<String, String> sentences) {
  public Messages {
    sentences = Collections.unmodifiableMap(new TreeMap<>(sentences));
  }

  /** The messages of a file, UTF-8, that lies beside a class. */
  public static Messages beside(Class<?> home, String file) {
    Map<String, String> sentences = new TreeMap<>();
    try (InputStream stream = home.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalArgumentException(file + " does not lie beside " + home.getName());
      }
      new OnceOnly(file, sentences).load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException trouble) {
      throw new UncheckedIOException(file + " could not be read", trouble);
    }
    return new Messages(sentences);
  }

  /** All the messages of several files. */
  public static Messages of(List<Messages> files) {
    Map<String, String> all = new TreeMap<>();
    for (Messages file : files) {
      file.sentences.forEach(
          (key, sentence) -> {
            if (all.put(key, sentence) != null) {
              throw new IllegalArgumentException("two message files have the key " + key);
            }
          });
    }
    return new Messages(all);
  }

  /** Hands each pair on as it is read, and refuses a second of one key. */
  private static final class OnceOnly extends Properties {
    private static final long serialVersionUID = 1L;
    private final String file;
    private final transient Map<String, String> sentences;

    OnceOnly(String file, Map<String, String> sentences) {
      this.file = file;
      this.sentences = sentences;
    }

    @Override
    public synchronized Object put(Object key, Object value) {
      if (sentences.put(key.toString(), value.toString()) != null) {
        throw new IllegalArgumentException(file + " has the key " + key + " twice");
      }
      return value;
    }
  }
}
