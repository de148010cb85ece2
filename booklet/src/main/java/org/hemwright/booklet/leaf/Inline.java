package org.hemwright.booklet.leaf;

import java.util.ArrayList;
import java.util.List;

/** A stretch of running text. */
public sealed interface Inline {
  /** Fixed wording, without digits. */
  record Text(String text) implements Inline {}

  /**
   * A value of the pattern, worded.
   *
   * @param text as the maker reads it
   * @param from where it comes from
   */
  record Value(String text, Provenance from) implements Inline {}

  /** The designer's own words, which may hold anything. */
  record Own(String text) implements Inline {}

  /** Something that carries weight. */
  record Strong(List<Inline> parts) implements Inline {
    public Strong {
      parts = List.copyOf(parts);
    }
  }

  /** Something said in another tone. */
  record Emphasis(List<Inline> parts) implements Inline {
    public Emphasis {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A word that the glossary explains.
   *
   * @param key of its entry
   */
  record Term(String key, List<Inline> parts) implements Inline {
    public Term {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A link.
   *
   * @param address {@code https://…}, {@code mailto:…}, or {@code #id} within the booklet
   */
  record Link(List<Inline> parts, String address) implements Inline {
    public Link {
      parts = List.copyOf(parts);
    }
  }

  /** A new line. */
  record Break() implements Inline {}

  /** The text of some inlines, without their dress. */
  static String plain(List<? extends Inline> inlines) {
    StringBuilder text = new StringBuilder();
    for (Inline inline : inlines) {
      if (inline instanceof Text words) {
        text.append(words.text());
      } else if (inline instanceof Value value) {
        text.append(value.text());
      } else if (inline instanceof Own own) {
        text.append(own.text());
      } else if (inline instanceof Break) {
        text.append(' ');
      } else {
        text.append(plain(parts(inline)));
      }
    }
    return text.toString();
  }

  /** What an inline holds, if it holds inlines. */
  static List<Inline> parts(Inline inline) {
    if (inline instanceof Strong strong) {
      return strong.parts();
    } else if (inline instanceof Emphasis emphasis) {
      return emphasis.parts();
    } else if (inline instanceof Term term) {
      return term.parts();
    } else if (inline instanceof Link link) {
      return link.parts();
    }
    return List.of();
  }

  /** Inlines and all that they hold, in order. */
  static List<Inline> all(List<? extends Inline> inlines) {
    List<Inline> all = new ArrayList<>();
    for (Inline inline : inlines) {
      all.add(inline);
      all.addAll(all(parts(inline)));
    }
    return all;
  }
}
