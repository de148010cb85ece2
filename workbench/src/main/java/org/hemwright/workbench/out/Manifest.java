package org.hemwright.workbench.out;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a publication consists of, by hash.
 *
 * @param title the pattern's
 * @param version the pattern's, as the designer writes it
 * @param dated the version's date, as in the document
 * @param made the files that were made, by name
 * @param from the files that they were made from, by name
 */
public record Manifest(
    String title,
    String version,
    String dated,
    SortedMap<String, byte[]> made,
    SortedMap<String, byte[]> from) {
  /** The manifest's own name. */
  public static final String FILE = "manifest.json";

  private static final JsonFactory JSON = new JsonFactory();

  public Manifest {
    made = Collections.unmodifiableSortedMap(new TreeMap<>(made));
    from = Collections.unmodifiableSortedMap(new TreeMap<>(from));
    if (made.containsKey(FILE)) {
      throw new IllegalArgumentException(FILE + " lists the files and is none of them");
    }
  }

  /** The folder's name: the version in letters that every disk bears, and the manifest's hash. */
  String folderName() {
    String plain = version.replaceAll("[^A-Za-z0-9._-]", "_").replaceAll("^[.-]+", "");
    String readable =
        plain.isEmpty() ? "version" : plain.substring(0, Math.min(40, plain.length()));
    return readable + "-" + Sha256.of(json()).substring(0, 12);
  }

  /** The manifest as it is written. */
  byte[] json() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = JSON.createGenerator(out).useDefaultPrettyPrinter()) {
      json.writeStartObject();
      json.writeStringField("pattern", title);
      json.writeStringField("version", version);
      json.writeStringField("dated", dated);
      writeFiles(json, "files", made);
      writeFiles(json, "made_from", from);
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toByteArray();
  }

  private static void writeFiles(JsonGenerator json, String field, Map<String, byte[]> files)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      json.writeStartObject();
      json.writeStringField("name", file.getKey());
      json.writeNumberField("bytes", file.getValue().length);
      json.writeStringField("sha256", Sha256.of(file.getValue()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
