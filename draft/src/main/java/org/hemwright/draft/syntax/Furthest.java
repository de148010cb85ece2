package org.hemwright.draft.syntax;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.finding.Finding;

/**
 * The furthest place in a line that any form reached, and what would have let it go on there: that
 * is where the line is wrong.
 */
final class Furthest {
  private final Set<String> words = new LinkedHashSet<>();
  private final Set<String> covered = new LinkedHashSet<>();
  private final Set<String> terms = new LinkedHashSet<>();
  private int index = -1;
  private Optional<Form> form = Optional.empty();
  private Optional<Finding> refusal = Optional.empty();

  /** What was wanted at a place before a slot was tried there. */
  record Before(int index, Set<String> words, Set<String> terms) {}

  private boolean reaches(int at, Optional<Form> reading) {
    if (at > index) {
      index = at;
      words.clear();
      covered.clear();
      terms.clear();
      form = reading;
      refusal = Optional.empty();
    }
    return at == index;
  }

  /** A form wanted a fixed word at a place. */
  void wantWord(int at, String word, Optional<Form> reading) {
    if (reaches(at, reading)) {
      words.add(word);
    }
  }

  /** A form wanted something at a place that a phrase names. */
  void wantTerm(int at, String term, Optional<Form> reading) {
    if (reaches(at, reading)) {
      terms.add(term);
    }
  }

  /** A slot knew better what is wrong at a place; the first keeps its word. */
  void refuse(int at, Finding finding, Optional<Form> reading) {
    if (reaches(at, reading) && refusal.isEmpty()) {
      refusal = Optional.of(finding);
    }
  }

  /** What is wanted at a place by now. */
  Before before(int at) {
    return at == index
        ? new Before(at, Set.copyOf(words), Set.copyOf(terms))
        : new Before(at, Set.of(), Set.of());
  }

  /** All that was wanted since, where nothing of it was found, is one thing that a phrase names. */
  void cover(Before before, String term) {
    if (before.index() == index) {
      words.stream().filter(word -> !before.words().contains(word)).forEach(covered::add);
      terms.retainAll(before.terms());
      terms.add(term);
    }
  }

  /** The index of the first token that no form could take; the count of tokens at the end. */
  int index() {
    return Math.max(0, index);
  }

  /** The fixed words that would have let a form go on. */
  List<String> words() {
    return List.copyOf(words);
  }

  /** Those of them that no phrase stands for. */
  List<String> plainWords() {
    return words.stream().filter(word -> !covered.contains(word)).toList();
  }

  /** The phrases of the slots that would have let a form go on. */
  List<String> terms() {
    return List.copyOf(terms);
  }

  /** The form that was being read there, the innermost. */
  Optional<Form> form() {
    return form;
  }

  /** A finding of its own for the place. */
  Optional<Finding> refusal() {
    return refusal;
  }
}
