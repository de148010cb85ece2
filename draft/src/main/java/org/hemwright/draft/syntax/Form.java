package org.hemwright.draft.syntax;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * One row of the table of forms: what a line, or a part of one, may say.
 *
 * @param id its own name
 * @param where the places at which it may stand
 * @param notation fixed words and typed slots, as in {@link Shape}
 * @param shape the notation compiled
 * @param example a whole line that says it
 * @param sentence what it does, to the designer
 * @param once whether it may be said only once where it stands
 * @param opens the place that the indented lines below it stand in, where it owns them
 * @param builder from the filled slots to the record of the tree
 */
public record Form(
    String id,
    Set<Where> where,
    String notation,
    Shape.Sequence shape,
    String example,
    String sentence,
    boolean once,
    Optional<Where> opens,
    Function<Match, Object> builder) {
  public Form {
    where = Collections.unmodifiableSet(EnumSet.copyOf(where));
  }

  static Form row(
      String id,
      Set<Where> where,
      String notation,
      String example,
      String sentence,
      Function<Match, Object> builder) {
    return new Form(
        id,
        where,
        notation,
        Shape.of(notation),
        example,
        sentence,
        false,
        Optional.empty(),
        builder);
  }

  static Form row(
      String id,
      Where where,
      String notation,
      String example,
      String sentence,
      Function<Match, Object> builder) {
    return row(id, EnumSet.of(where), notation, example, sentence, builder);
  }

  /** The same form, which may be said only once where it stands. */
  Form onlyOnce() {
    return new Form(id, where, notation, shape, example, sentence, true, opens, builder);
  }

  /** The same form, which owns the indented lines below it. */
  Form opens(Where place) {
    return new Form(
        id, where, notation, shape, example, sentence, once, Optional.of(place), builder);
  }

  /** The fixed words with which it may start. */
  public List<String> firstWords() {
    LinkedHashSet<String> words = new LinkedHashSet<>();
    collectFirst(shape, words);
    return List.copyOf(words);
  }

  /** Adds the first fixed words of a shape; returns whether the shape may be empty. */
  private static boolean collectFirst(Shape shape, Set<String> words) {
    if (shape instanceof Shape.Fixed fixed) {
      words.add(fixed.text());
      return false;
    } else if (shape instanceof Shape.Sequence sequence) {
      for (Shape part : sequence.parts()) {
        if (!collectFirst(part, words)) {
          return false;
        }
      }
      return true;
    } else if (shape instanceof Shape.Choice choice) {
      boolean empty = false;
      for (Shape option : choice.options()) {
        empty |= collectFirst(option, words);
      }
      return empty;
    } else if (shape instanceof Shape.Maybe maybe) {
      collectFirst(maybe.shape(), words);
      return true;
    } else if (shape instanceof Shape.Many many) {
      collectFirst(many.shape(), words);
      return true;
    }
    return false;
  }
}
