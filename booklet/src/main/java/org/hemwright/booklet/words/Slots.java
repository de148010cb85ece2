package org.hemwright.booklet.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.leaf.Inline;

/** What is put into the places of a template, by name. */
public final class Slots {
  private final Map<String, List<Inline>> filled = new LinkedHashMap<>();

  private Slots() {}

  /** None. */
  public static Slots none() {
    return new Slots();
  }

  /** One. */
  public static Slots of(String name, List<? extends Inline> what) {
    return new Slots().and(name, what);
  }

  /** One. */
  public static Slots of(String name, Inline what) {
    return of(name, List.of(what));
  }

  /** One more. */
  public Slots and(String name, List<? extends Inline> what) {
    filled.put(name, List.copyOf(what));
    return this;
  }

  /** One more. */
  public Slots and(String name, Inline what) {
    return and(name, List.of(what));
  }

  Optional<List<Inline>> get(String name) {
    return Optional.ofNullable(filled.get(name));
  }
}
