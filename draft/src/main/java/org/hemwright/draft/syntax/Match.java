package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the slots of a form were filled with, for the form's builder. */
public final class Match {
  private record Filling(String label, Object value) {}

  private final List<Filling> fillings = new ArrayList<>();
  private final List<String> said = new ArrayList<>();
  private Span span = new Span(0, 0);

  Match() {}

  void fill(String label, Object value) {
    fillings.add(new Filling(label, value));
  }

  void say(String fixed) {
    said.add(fixed);
  }

  void ends(Span whole) {
    span = whole;
  }

  /** A place to come back to. */
  int[] mark() {
    return new int[] {fillings.size(), said.size()};
  }

  void backTo(int[] mark) {
    fillings.subList(mark[0], fillings.size()).clear();
    said.subList(mark[1], said.size()).clear();
  }

  /** From the first token of the form to its last. */
  public Span span() {
    return span;
  }

  /** Whether a fixed word stands there. */
  public boolean said(String fixed) {
    return said.contains(fixed);
  }

  /** What fills a slot that the form always has. */
  public <T> T one(String label, Class<T> type) {
    return maybe(label, type)
        .orElseThrow(() -> new IllegalStateException("the form has no slot " + label));
  }

  /** What fills a slot that may be missing. */
  public <T> Optional<T> maybe(String label, Class<T> type) {
    return fillings.stream()
        .filter(filling -> filling.label().equals(label))
        .map(filling -> type.cast(filling.value()))
        .findFirst();
  }

  /** All that fill slots of this label, in order. */
  public <T> List<T> all(String label, Class<T> type) {
    return fillings.stream()
        .filter(filling -> filling.label().equals(label))
        .<T>map(filling -> type.cast(filling.value()))
        .toList();
  }

  /** A slot of words in quotes. */
  public String text(String label) {
    return one(label, String.class);
  }

  /** A slot of one number expression. */
  public Expression number(String label) {
    return one(label, Expression.class);
  }

  /** A slot of one literal. */
  public Expression.Literal literal(String label) {
    return one(label, Expression.Literal.class);
  }

  /** A slot of one name. */
  public Name name(String label) {
    return one(label, Name.class);
  }

  /** A slot of a name defined elsewhere. */
  public Reference reference(String label) {
    return one(label, Reference.class);
  }

  /** A slot of one path. */
  public PathTerm path(String label) {
    return one(label, PathTerm.class);
  }

  /** A slot of a whole number. */
  public int count(String label) {
    return one(label, Integer.class);
  }
}
