package org.hemwright.workroom.keep;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;

/**
 * A line of the journal: a revision, and the hashes of texts before and after it. Of revisions that
 * were kept together the first says what was before, and the last what is after.
 *
 * @param revision what happened
 * @param before by file
 * @param hashes by file, after it
 */
record Entry(Revision revision, Map<String, String> before, Map<String, String> hashes) {
  private static final ObjectMapper JSON = new ObjectMapper();

  Entry {
    before = Map.copyOf(before);
    hashes = Map.copyOf(hashes);
  }

  /** As a line, with its line end. */
  String line() {
    ObjectNode line = JSON.createObjectNode();
    line.put("revision", revision.number());
    line.put("cause", revision.cause().name().toLowerCase(Locale.ROOT));
    if (revision.joined()) {
      line.put("joined", true);
    }
    if (!revision.name().isEmpty()) {
      line.put("name", revision.name());
    }
    ArrayNode splices = line.putArray("splices");
    for (Splice splice : revision.splices()) {
      splices
          .addObject()
          .put("file", splice.file())
          .put("at", splice.at())
          .put("removed", splice.removed())
          .put("inserted", splice.inserted());
    }
    ObjectNode earlier = line.putObject("before");
    new TreeMap<>(before).forEach(earlier::put);
    ObjectNode after = line.putObject("after");
    new TreeMap<>(hashes).forEach(after::put);
    return line + "\n";
  }

  /** Reads a line; absent where it is torn or no entry. */
  static Optional<Entry> read(String line) {
    try {
      JsonNode node = JSON.readTree(line);
      if (node == null || !node.path("splices").isArray() || !node.path("after").isObject()) {
        return Optional.empty();
      }
      List<Splice> splices = new ArrayList<>();
      for (JsonNode each : node.path("splices")) {
        splices.add(
            new Splice(
                each.path("file").asText(),
                each.path("at").asInt(),
                each.path("removed").asText(),
                each.path("inserted").asText()));
      }
      return Optional.of(
          new Entry(
              new Revision(
                  node.path("revision").asInt(),
                  Revision.Cause.valueOf(node.path("cause").asText().toUpperCase(Locale.ROOT)),
                  node.path("joined").asBoolean(),
                  node.path("name").asText(),
                  splices),
              hashes(node.path("before")),
              hashes(node.path("after"))));
    } catch (JsonProcessingException | IllegalArgumentException torn) {
      return Optional.empty();
    }
  }

  private static Map<String, String> hashes(JsonNode node) {
    Map<String, String> hashes = new TreeMap<>();
    node.properties().forEach(each -> hashes.put(each.getKey(), each.getValue().asText()));
    return hashes;
  }
}
