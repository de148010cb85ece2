package org.hemwright.exchange.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.finding.Origin;

/**
 * An element of the file, its attributes by name: {@code href} whatever its namespace, a label of a
 * layer as {@code label}.
 */
final class SvgElement {
  private final String kind;
  private final Map<String, String> attributes;
  private final Origin origin;
  private final List<String> classes;
  private final List<SvgElement> children = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();

  SvgElement(String kind, Map<String, String> attributes, Origin origin) {
    this.kind = kind;
    this.attributes = new LinkedHashMap<>(attributes);
    this.origin = origin;
    this.classes = attribute("class").map(all -> List.of(all.split("\\s+"))).orElse(List.of());
  }

  /** Its name without a prefix; empty for an element of another vocabulary. */
  String kind() {
    return kind;
  }

  Origin origin() {
    return origin;
  }

  List<SvgElement> children() {
    return children;
  }

  void add(SvgElement child) {
    children.add(child);
  }

  void addText(String more) {
    text.append(more);
  }

  /** The words in it, blanks made single. */
  String text() {
    StringBuilder all = new StringBuilder(text);
    children.forEach(child -> all.append(' ').append(child.text()));
    return all.toString().replaceAll("\\s+", " ").strip();
  }

  /** The words in it as they stand. */
  String rawText() {
    return text.toString();
  }

  Optional<String> attribute(String name) {
    return Optional.ofNullable(attributes.get(name)).map(String::strip).filter(s -> !s.isEmpty());
  }

  String attribute(String name, String otherwise) {
    return attribute(name).orElse(otherwise);
  }

  /** The classes it belongs to. */
  List<String> classes() {
    return classes;
  }
}
