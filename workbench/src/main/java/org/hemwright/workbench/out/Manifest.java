package org.hemwright.workbench.out;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What a publication consists of, by hash.
 *
 * @param title the pattern's
 * @param version the pattern's, as the designer writes it
 * @param dated the version's date, as in the document
 * @param program the version of the program that made it
 * @param counts how many sizes, pieces and views it has, by those words
 * @param made the files that were made, no two of one name; kept in the order of their names
 * @param from the files that they were made from, by name
 */
public record Manifest(
    String title,
    String version,
    String dated,
    String program,
    Map<String, Integer> counts,
    List<MadeFile> made,
    SortedMap<String, byte[]> from) {
  /** The manifest's own name. */
  public static final String FILE = "manifest.json";

  private static final JsonFactory JSON = new JsonFactory();
  private static final Pattern PLAIN_NAME = Pattern.compile("[^A-Za-z0-9._-]");

  public Manifest {
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    made = made.stream().sorted(Comparator.comparing(MadeFile::name)).toList();
    from = Collections.unmodifiableSortedMap(new TreeMap<>(from));
    if (made.stream().map(MadeFile::name).distinct().count() < made.size()) {
      throw new IllegalArgumentException("two files of a publication have one name");
    }
    if (made.stream().anyMatch(file -> file.name().equals(FILE))) {
      throw new IllegalArgumentException(FILE + " lists the files and is none of them");
    }
  }

  /** The publication's files by name, the manifest among them. */
  SortedMap<String, byte[]> files() {
    SortedMap<String, byte[]> files = new TreeMap<>();
    made.forEach(file -> files.put(file.name(), file.bytes()));
    files.put(FILE, json());
    return files;
  }

  /** The folder's name: the version in letters that every disk bears, and the manifest's hash. */
  public String folderName() {
    return plain(version) + "-" + hash(json());
  }

  /** What of a manifest's hash stands in the folder's name. */
  static String hash(byte[] json) {
    return Sha256.of(json).substring(0, 12);
  }

  /** A version in letters that every disk bears, never empty and never leading elsewhere. */
  public static String plain(String version) {
    String plain = PLAIN_NAME.matcher(version).replaceAll("_").replaceAll("^[.-]+", "");
    return plain.isEmpty() ? "version" : plain.substring(0, Math.min(40, plain.length()));
  }

  /** The manifest as it is written. */
  public byte[] json() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = JSON.createGenerator(out).useDefaultPrettyPrinter()) {
      json.writeStartObject();
      json.writeStringField("pattern", title);
      json.writeStringField("version", version);
      json.writeStringField("dated", dated);
      json.writeStringField("program", program);
      json.writeObjectFieldStart("counts");
      for (Map.Entry<String, Integer> count : counts.entrySet()) {
        json.writeNumberField(count.getKey(), count.getValue());
      }
      json.writeNumberField("files", made.size());
      json.writeNumberField("pages", made.stream().mapToInt(MadeFile::pages).sum());
      json.writeEndObject();
      json.writeArrayFieldStart("files");
      for (MadeFile file : made) {
        json.writeStartObject();
        describe(json, file.name(), file.bytes());
        json.writeStringField("for", file.reader().name().toLowerCase(Locale.ROOT));
        json.writeNumberField("pages", file.pages());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeArrayFieldStart("made_from");
      for (Map.Entry<String, byte[]> file : from.entrySet()) {
        json.writeStartObject();
        describe(json, file.getKey(), file.getValue());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toByteArray();
  }

  /** A file's name, length and hash, as members of an object that was begun. */
  static void describe(JsonGenerator json, String name, byte[] bytes) throws IOException {
    json.writeStringField("name", name);
    json.writeNumberField("bytes", bytes.length);
    json.writeStringField("sha256", Sha256.of(bytes));
  }
}
