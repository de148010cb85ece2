package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;

/**
 * What a form looks like, compiled from its notation.
 *
 * <p>The notation is what the language reference prints: fixed words stand as they are, {@code
 * <label:slot>} is a slot ({@code <name>} where both are alike), {@code [ ]} may be missing, {@code
 * { }} may be repeated or missing, {@code ( | )} is a choice. A symbol in quotes is fixed.
 */
public sealed interface Shape {
  /** A fixed word or symbol. */
  record Fixed(String text) implements Shape {}

  /** A typed slot. */
  record Gap(String label, Slot slot) implements Shape {}

  /** One after another. */
  record Sequence(List<Shape> parts) implements Shape {
    public Sequence {
      parts = List.copyOf(parts);
    }
  }

  /** One of several; the first that fits is taken. */
  record Choice(List<Shape> options) implements Shape {
    public Choice {
      options = List.copyOf(options);
    }
  }

  /** It may be missing. */
  record Maybe(Shape shape) implements Shape {}

  /** It may stand once, often or not at all. */
  record Many(Shape shape) implements Shape {}

  /** Compiles a notation. */
  static Sequence of(String notation) {
    return new Compiler(notation).sequence("");
  }

  /** Reads a notation once, left to right. */
  final class Compiler {
    private final String notation;
    private int at;

    private Compiler(String notation) {
      this.notation = notation;
    }

    private Sequence sequence(String closers) {
      List<Shape> parts = new ArrayList<>();
      while (true) {
        while (at < notation.length() && notation.charAt(at) == ' ') {
          at++;
        }
        if (at >= notation.length() || closers.indexOf(notation.charAt(at)) >= 0) {
          return new Sequence(parts);
        }
        parts.add(one());
      }
    }

    private Shape one() {
      char c = notation.charAt(at++);
      return switch (c) {
        case '<' -> gap();
        case '[' -> new Maybe(closed(']'));
        case '{' -> new Many(closed('}'));
        case '(' -> choice();
        case '\'' -> new Fixed(until('\''));
        default -> fixed(c);
      };
    }

    private Shape choice() {
      List<Shape> options = new ArrayList<>();
      do {
        options.add(sequence("|)"));
      } while (notation.charAt(at++) == '|');
      return new Choice(options);
    }

    private Sequence closed(char closer) {
      Sequence inside = sequence(Character.toString(closer));
      at++;
      return inside;
    }

    private Gap gap() {
      String inside = until('>');
      int colon = inside.indexOf(':');
      String label = colon < 0 ? inside : inside.substring(0, colon);
      return new Gap(label, Slot.of(colon < 0 ? inside : inside.substring(colon + 1)));
    }

    private Fixed fixed(char first) {
      int start = at - 1;
      if (Character.isLetter(first)) {
        while (at < notation.length() && Character.isLetter(notation.charAt(at))) {
          at++;
        }
      }
      return new Fixed(notation.substring(start, at));
    }

    private String until(char closer) {
      int start = at;
      at = notation.indexOf(closer, start) + 1;
      if (at == 0) {
        throw new IllegalArgumentException("unclosed in the notation: " + notation);
      }
      return notation.substring(start, at - 1);
    }
  }
}
