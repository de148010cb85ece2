package org.hemwright.cloth.laying;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.hemwright.pattern.finding.Argument;

/**
 * The first place at which a text breaks the rules of JSON (RFC 8259), looked for once a parser has
 * refused it, so that it can be told in the words of who wrote the text.
 *
 * @param place how many characters stand before it
 * @param code names its sentences in the messages
 * @param words what the sentences name, by their names there
 */
record JsonSlip(int place, String code, Map<String, Argument> words) {
  private static final Pattern NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]*)([.][0-9]+)?([eE][+-]?[0-9]+)?");

  /** So many letters of a word are shown. */
  private static final int SHOWN = 20;

  private static final int PRINTABLE = ' ';

  JsonSlip {
    words = new LinkedHashMap<>(words);
  }

  /** A line of a text and a place in it, each from 1. */
  record At(int line, int column) {
    static At of(String text, int place) {
      int line = 1;
      int start = 0;
      for (int i = 0; i < place; i++) {
        char letter = text.charAt(i);
        boolean pair = letter == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
        if (letter == '\n' || (letter == '\r' && !pair)) {
          line++;
          start = i + 1;
        }
      }
      return new At(line, place - start + 1);
    }
  }

  /**
   * The first slip; empty where the text keeps the rules, which a parser may refuse for its size.
   */
  static Optional<JsonSlip> in(String text) {
    try {
      new Scan(text).run();
      return Optional.empty();
    } catch (Found found) {
      return Optional.of(found.slip);
    }
  }

  private static final class Found extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient JsonSlip slip;

    Found(JsonSlip slip) {
      super(slip.code, null, false, false);
      this.slip = slip;
    }
  }

  /** An object or list that is not yet closed. */
  private record Open(int place, boolean object, Set<String> names) {
    String kind() {
      return object ? "object" : "list";
    }

    String close() {
      return object ? "}" : "]";
    }
  }

  private static final class Scan {
    private final String text;
    private final Deque<Open> open = new ArrayDeque<>();
    private int next;

    Scan(String text) {
      this.text = text;
    }

    void run() throws Found {
      value(false);
      while (!open.isEmpty()) {
        Open inner = open.element();
        char letter = letter();
        if (letter == inner.close().charAt(0)) {
          next++;
          open.remove();
        } else if (letter == ',') {
          int comma = next++;
          if (letter() == '}' || letter() == ']') {
            throw slip(comma, "lay-json-comma-last", Map.of("found", shown()));
          }
          entry(inner);
        } else if (letter == '}' || letter == ']') {
          throw slip(next, "lay-json-close", opened(inner, Map.of("found", shown())));
        } else {
          throw slip(next, "lay-json-comma", opened(inner, Map.of("found", shown())));
        }
      }
      skipBlanks();
      if (next < text.length()) {
        throw slip(next, "lay-more", Map.of());
      }
    }

    /** An entry of an object or list, up to where a comma or its end should be. */
    private void entry(Open inner) throws Found {
      if (inner.object) {
        if (letter() != '"') {
          throw slip(next, "lay-json-name", Map.of("found", shown()));
        }
        int place = next;
        String name = string();
        if (!inner.names.add(name)) {
          throw slip(place, "lay-json-twice", Map.of("field", shortened(name)));
        }
        if (letter() != ':') {
          Map<String, String> words = Map.of("field", shortened(name), "found", shown());
          throw slip(next, "lay-json-colon", words);
        }
        next++;
      }
      value(!inner.object);
    }

    /** A value, or what opens one with all that opens in it. */
    private void value(boolean inList) throws Found {
      boolean list = inList;
      while (true) {
        char letter = letter();
        if (letter == '{' || letter == '[') {
          Open inner = new Open(next, letter == '{', new HashSet<>());
          open.push(inner);
          next++;
          if (letter() == inner.close().charAt(0)) {
            return;
          }
          if (inner.object) {
            entry(inner);
            return;
          }
          list = true;
        } else if (letter == '"') {
          string();
          return;
        } else {
          word(list);
          return;
        }
      }
    }

    /** A number, true, false or null. */
    private void word(boolean inList) throws Found {
      int start = next;
      while (next < text.length()
          && (Character.isLetterOrDigit(text.charAt(next))
              || "+-._".indexOf(text.charAt(next)) >= 0)) {
        next++;
      }
      String word = text.substring(start, next);
      if (Set.of("true", "false", "null").contains(word) || NUMBER.matcher(word).matches()) {
        return;
      }
      next = start;
      if (word.isEmpty() && open.isEmpty()) {
        throw slip(start, "lay-json-value", Map.of("found", shown()));
      }
      if (word.isEmpty()) {
        boolean comma = inList && text.charAt(start) == ',';
        throw slip(
            start, comma ? "lay-json-comma-twice" : "lay-json-value", Map.of("found", shown()));
      }
      boolean figures =
          word.chars().anyMatch(Character::isDigit) && !Character.isLetter(word.charAt(0));
      throw slip(
          start, figures ? "lay-json-number" : "lay-json-value", Map.of("found", shortened(word)));
    }

    /** A text in quotes. */
    private String string() throws Found {
      int start = next++;
      StringBuilder said = new StringBuilder();
      while (next < text.length() && text.charAt(next) != '"') {
        char letter = text.charAt(next);
        if (letter < PRINTABLE) {
          throw slip(next, control(letter), began(start, "text", Map.of("found", shown())));
        }
        if (letter == '\\') {
          said.append(escaped());
        } else {
          said.append(letter);
          next++;
        }
      }
      if (next >= text.length()) {
        throw slip(text.length(), "lay-json-end", began(start, "text", Map.of("close", "\"")));
      }
      next++;
      return said.toString();
    }

    private char escaped() throws Found {
      String after = text.substring(next + 1, Math.min(text.length(), next + 6));
      int plain = after.isEmpty() ? -1 : "\"\\/bfnrt".indexOf(after.charAt(0));
      if (plain >= 0) {
        next += 2;
        return "\"\\/\b\f\n\r\t".charAt(plain);
      }
      if (after.matches("u[0-9a-fA-F]{4}")) {
        next += 6;
        return (char) Integer.parseInt(after.substring(1), 16);
      }
      throw slip(next, "lay-json-escape", Map.of());
    }

    /** The letter that comes next, past blanks. */
    private char letter() throws Found {
      skipBlanks();
      if (next < text.length()) {
        return text.charAt(next);
      }
      Open inner = open.peek();
      throw inner == null
          ? slip(next, "lay-json-nothing", Map.of())
          : slip(next, "lay-json-end", opened(inner, Map.of()));
    }

    private void skipBlanks() {
      while (next < text.length() && " \t\r\n".indexOf(text.charAt(next)) >= 0) {
        next++;
      }
    }

    private static String control(char letter) {
      return switch (letter) {
        case '\t' -> "lay-json-tab";
        case '\n', '\r' -> "lay-json-break";
        default -> "lay-json-control";
      };
    }

    private Map<String, Argument> opened(Open inner, Map<String, String> more) {
      Map<String, Argument> words = began(inner.place, inner.kind(), more);
      words.put("close", Argument.of(inner.close()));
      return words;
    }

    /** Of what kind something is that is open, and where it begins. */
    private Map<String, Argument> began(int place, String kind, Map<String, String> more) {
      At at = At.of(text, place);
      Map<String, Argument> words = words(more);
      words.put("kind", new Argument.Term("lay-json-" + kind));
      words.put("line", Argument.of(at.line));
      words.put("column", Argument.of(at.column));
      return words;
    }

    private static Map<String, Argument> words(Map<String, String> texts) {
      Map<String, Argument> words = new LinkedHashMap<>();
      texts.forEach((name, said) -> words.put(name, Argument.of(said)));
      return words;
    }

    /** What stands here, as it can be shown. */
    private String shown() {
      int end = next;
      while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
        end++;
      }
      return end > next
          ? shortened(text.substring(next, end))
          : printed(new String(Character.toChars(text.codePointAt(next))));
    }

    private static String shortened(String word) {
      return printed(word.length() > SHOWN ? word.substring(0, SHOWN) + "…" : word);
    }

    /** What no page shows is named by its number. */
    private static String printed(String word) {
      StringBuilder shown = new StringBuilder();
      word.codePoints()
          .forEach(
              letter -> {
                int type = Character.getType(letter);
                if (type == Character.CONTROL
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.UNASSIGNED) {
                  shown.append(String.format("U+%04X", letter));
                } else {
                  shown.appendCodePoint(letter);
                }
              });
      return shown.toString();
    }

    private static Found slip(int place, String code, Map<String, ?> named) {
      Map<String, Argument> words = new LinkedHashMap<>();
      named.forEach(
          (name, word) ->
              words.put(name, word instanceof Argument a ? a : Argument.of(word.toString())));
      return new Found(new JsonSlip(place, code, words));
    }
  }
}
