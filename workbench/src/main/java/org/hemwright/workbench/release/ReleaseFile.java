package org.hemwright.workbench.release;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.workbench.out.Sha256;

/**
 * What {@code release.json} says.
 *
 * @param version the pattern's
 * @param publication the folder in {@code out} that it was published in
 * @param hashes of the other files of the release, by name
 */
record ReleaseFile(String version, String publication, SortedMap<String, String> hashes) {
  private static final int FORM = 1;
  private static final ObjectMapper READER = new ObjectMapper();
  private static final JsonFactory WRITER = new JsonFactory();

  ReleaseFile {
    hashes = Collections.unmodifiableSortedMap(new TreeMap<>(hashes));
  }

  static ReleaseFile of(String version, String publication, Map<String, byte[]> files) {
    SortedMap<String, String> hashes = new TreeMap<>();
    files.forEach((name, bytes) -> hashes.put(name, Sha256.of(bytes)));
    return new ReleaseFile(version, publication, hashes);
  }

  byte[] json() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = WRITER.createGenerator(out).useDefaultPrettyPrinter()) {
      json.writeStartObject();
      json.writeNumberField("release", FORM);
      json.writeStringField("version", version);
      json.writeStringField("published_in", publication);
      json.writeObjectFieldStart("sha256");
      for (Map.Entry<String, String> hash : hashes.entrySet()) {
        json.writeStringField(hash.getKey(), hash.getValue());
      }
      json.writeEndObject();
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toByteArray();
  }

  /** Absent where it does not say all of that. */
  static Optional<ReleaseFile> read(byte[] bytes) {
    try {
      JsonNode whole = READER.readTree(bytes);
      JsonNode version = whole.path("version");
      JsonNode publication = whole.path("published_in");
      if (whole.path("release").asInt() != FORM || !version.isTextual()) {
        return Optional.empty();
      }
      SortedMap<String, String> hashes = new TreeMap<>();
      for (Map.Entry<String, JsonNode> hash : whole.path("sha256").properties()) {
        hashes.put(hash.getKey(), hash.getValue().asText());
      }
      return Optional.of(new ReleaseFile(version.asText(), publication.asText(), hashes));
    } catch (IOException broken) {
      return Optional.empty();
    }
  }
}
