package org.hemwright.pattern.traced;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The drawings and rule tables that a document names, by the names it gives them. One that could
 * not be read is there and empty; why has been told.
 */
public record TracedInputs(
    SortedMap<String, Optional<TracedDrawing>> drawings,
    SortedMap<String, Optional<RuleTable>> tables) {
  /** For a document that names none. */
  public static final TracedInputs NONE = new TracedInputs(new TreeMap<>(), new TreeMap<>());

  public TracedInputs {
    drawings = Collections.unmodifiableSortedMap(new TreeMap<>(drawings));
    tables = Collections.unmodifiableSortedMap(new TreeMap<>(tables));
  }

  /** Whether a drawing was asked for and told about, read or not. */
  public boolean hasDrawing(String file) {
    return drawings.containsKey(file);
  }

  /** A drawing that was read. */
  public Optional<TracedDrawing> drawing(String file) {
    return drawings.getOrDefault(file, Optional.empty());
  }

  /** Whether a table was asked for and told about, read or not. */
  public boolean hasTable(String file) {
    return tables.containsKey(file);
  }

  /** A rule table that was read. */
  public Optional<RuleTable> table(String file) {
    return tables.getOrDefault(file, Optional.empty());
  }
}
