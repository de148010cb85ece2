package org.hemwright.workbench.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.pattern.finding.Origin;

/** The lines of the text files that a pattern was read from. */
final class SourceLines {
  private static final int LONGEST = 160;
  private final Map<String, List<String>> files = new TreeMap<>();

  SourceLines(Map<String, byte[]> sources) {
    sources.forEach(
        (name, bytes) -> {
          if (!name.endsWith(".xlsx")) {
            files.put(name, new String(bytes, StandardCharsets.UTF_8).lines().toList());
          }
        });
  }

  /** The line at a place, cut short where it is very long. */
  Optional<String> at(Origin origin) {
    List<String> lines = files.getOrDefault(origin.file(), List.of());
    if (origin.line() > lines.size()) {
      return Optional.empty();
    }
    String line = lines.get(origin.line() - 1).strip();
    if (line.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1) + "…");
  }
}
