package org.hemwright.booklet.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;

/**
 * The wording of one language.
 *
 * <p>In a template {@code {name}} is a slot; where no slot of that name is filled it is a word of
 * the language, {@code word.name}. {@code [key|text]} is a word that the glossary explains.
 */
public final class Wordbook {
  /** The languages that there are, by tag; each has a message file. */
  public static final List<String> LANGUAGES = List.of("en-US", "en-GB", "de");

  private static final char NO_BREAK = '\u00a0';
  private static final Map<String, String> FRACTIONS =
      Map.of(
          "1\u20442",
          "\u00bd",
          "1\u20444",
          "\u00bc",
          "3\u20444",
          "\u00be",
          "1\u20448",
          "\u215b",
          "3\u20448",
          "\u215c",
          "5\u20448",
          "\u215d",
          "7\u20448",
          "\u215e");

  private final String tag;
  private final Map<String, String> sentences;
  private final LengthFormat lengths;

  private Wordbook(String tag, Map<String, String> sentences, LengthFormat lengths) {
    this.tag = tag;
    this.sentences = sentences;
    this.lengths = lengths;
  }

  /**
   * The wordbook of a language.
   *
   * @param tag one of {@link #LANGUAGES}
   * @param units which unit stands first
   */
  public static Wordbook of(String tag, Details.Units units) {
    Map<String, String> sentences = new TreeMap<>();
    switch (tag) {
      case "en-US" -> {
        sentences.putAll(read("en"));
        sentences.putAll(read("names-en"));
        sentences.putAll(read("names-en-US"));
      }
      case "en-GB" -> {
        sentences.putAll(read("en"));
        sentences.putAll(read("en-GB"));
        sentences.putAll(read("names-en"));
      }
      default -> {
        if (!LANGUAGES.contains(tag)) {
          throw new IllegalArgumentException("there is no wording in " + tag);
        }
        sentences.putAll(read(tag));
        sentences.putAll(read("names-" + tag));
      }
    }
    LengthFormat.Edition edition =
        units == Details.Units.INCHES
            ? LengthFormat.Edition.INCHES_FIRST
            : LengthFormat.Edition.METRIC_FIRST;
    return new Wordbook(tag, sentences, LengthFormat.of(edition).withTypographicFractions());
  }

  /** The language that a document asks for by its spelling. */
  public static String language(Details details) {
    return details.spelling() == Details.Spelling.BRITISH ? "en-GB" : "en-US";
  }

  /** The sentences of a message file as they stand, by key. */
  static Map<String, String> read(String name) {
    return Messages.beside(Wordbook.class, name + ".properties").sentences();
  }

  /** The language's tag (BCP 47). */
  public String tag() {
    return tag;
  }

  /** Whether there is a template of that key. */
  public boolean has(String key) {
    return sentences.containsKey(key);
  }

  /** The keys that begin so, in alphabetical order. */
  public List<String> keys(String beginning) {
    return sentences.keySet().stream().filter(key -> key.startsWith(beginning)).toList();
  }

  /** A template with its slots filled. */
  public List<Inline> say(String key, Slots slots) {
    String template = sentences.get(key);
    if (template == null) {
      throw new IllegalStateException("the wording in " + tag + " lacks " + key);
    }
    return filled(key, template, slots);
  }

  /** A template without slots. */
  public List<Inline> say(String key) {
    return say(key, Slots.none());
  }

  /** The same as plain text. */
  public String plain(String key, Slots slots) {
    return Inline.plain(say(key, slots));
  }

  /** A template without slots as plain text. */
  public String plain(String key) {
    return plain(key, Slots.none());
  }

  private List<Inline> filled(String key, String template, Slots slots) {
    List<Inline> all = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    int i = 0;
    while (i < template.length()) {
      char c = template.charAt(i);
      if (c == '{') {
        int end = template.indexOf('}', i);
        flush(text, all);
        all.addAll(slot(key, template.substring(i + 1, end), slots));
        i = end + 1;
      } else if (c == '[') {
        int bar = template.indexOf('|', i);
        int end = template.indexOf(']', i);
        flush(text, all);
        all.add(
            new Inline.Term(
                template.substring(i + 1, bar),
                filled(key, template.substring(bar + 1, end), slots)));
        i = end + 1;
      } else {
        text.append(c);
        i++;
      }
    }
    flush(text, all);
    return List.copyOf(all);
  }

  private static void flush(StringBuilder text, List<Inline> into) {
    if (!text.isEmpty()) {
      if (text.charAt(0) == '.') {
        withoutComma(into);
      }
      into.add(new Inline.Text(text.toString()));
      text.setLength(0);
    }
  }

  /** A part of a sentence that ends in a comma does without it before the full stop. */
  private static void withoutComma(List<Inline> said) {
    int last = said.size() - 1;
    if (last >= 0 && said.get(last) instanceof Inline.Text text && text.text().endsWith(",")) {
      String rest = text.text().substring(0, text.text().length() - 1);
      said.remove(last);
      if (!rest.isEmpty()) {
        said.add(new Inline.Text(rest));
      }
    }
  }

  private List<Inline> slot(String key, String name, Slots slots) {
    Optional<List<Inline>> given = slots.get(name);
    if (given.isPresent()) {
      return given.get();
    }
    String word = sentences.get("word." + name);
    if (word == null) {
      throw new IllegalStateException(key + " in " + tag + " names {" + name + "}");
    }
    return filled("word." + name, word, slots);
  }

  /** "a", "a and b", "a, b and c". */
  public List<Inline> listed(List<List<Inline>> items) {
    return joined(items, "list.and");
  }

  /** "a", "a or b", "a, b or c". */
  public List<Inline> either(List<List<Inline>> items) {
    return joined(items, "list.or");
  }

  private List<Inline> joined(List<List<Inline>> items, String last) {
    List<Inline> all = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      if (i > 0) {
        all.addAll(say(i == items.size() - 1 ? last : "list.comma"));
      }
      all.addAll(items.get(i));
    }
    return List.copyOf(all);
  }

  /** The text with a capital letter first. */
  public List<Inline> capital(List<Inline> text) {
    if (text.isEmpty()) {
      return text;
    }
    List<Inline> all = new ArrayList<>(text);
    Inline first = all.get(0);
    if (first instanceof Inline.Text words) {
      all.set(0, new Inline.Text(capital(words.text())));
    } else if (first instanceof Inline.Value value) {
      all.set(0, new Inline.Value(capital(value.text()), value.from()));
    } else if (first instanceof Inline.Term term) {
      all.set(0, new Inline.Term(term.key(), capital(term.parts())));
    }
    return List.copyOf(all);
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** A length in both units (mm). */
  public Inline.Value length(double mm, LengthKind kind, Provenance from) {
    return new Inline.Value(lengthText(mm, kind), from);
  }

  /** The text of a length in both units (mm), its blanks unbreakable. */
  public String lengthText(double mm, LengthKind kind) {
    return local(fractions(lengths.text(mm, kind)).replace(' ', NO_BREAK));
  }

  /** The setting of a stitch: millimetres alone, as machines are marked (mm). */
  public Inline.Value setting(double mm, Provenance from) {
    return new Inline.Value(local(DecimalText.of(mm, 2)) + NO_BREAK + "mm", from);
  }

  /** A length to buy: tenths of a metre and eighths of a yard. */
  public String buyText(int tenths, int eighths) {
    String metres = local(DecimalText.of(tenths / 10.0, 1)) + NO_BREAK + "m";
    int rest = eighths % 8;
    int common = rest == 0 ? 1 : Integer.lowestOneBit(rest);
    String part = rest == 0 ? "" : fractions(rest / common + "\u2044" + 8 / common);
    String whole = eighths / 8 == 0 && rest != 0 ? "" : Integer.toString(eighths / 8);
    String yards = whole + part + NO_BREAK + "yd";
    boolean inchesFirst = lengths.edition() == LengthFormat.Edition.INCHES_FIRST;
    return inchesFirst ? yards + " \u00b7 " + metres : metres + " \u00b7 " + yards;
  }

  /** A length of thread (mm): whole metres and yards, up. */
  public String threadText(double mm) {
    String metres = (long) Math.ceil(mm / 1000) + "" + NO_BREAK + "m";
    String yards = (long) Math.ceil(mm / 914.4) + "" + NO_BREAK + "yd";
    boolean inchesFirst = lengths.edition() == LengthFormat.Edition.INCHES_FIRST;
    return inchesFirst ? yards + " \u00b7 " + metres : metres + " \u00b7 " + yards;
  }

  /** A share as a percentage, to whole ones. */
  public String percentText(double share) {
    return DecimalText.of(share * 100, 0) + sentences.getOrDefault("percent", "%");
  }

  /** A date. */
  public String dateText(LocalDate date) {
    return DateTimeFormatter.ofPattern(plain("date.pattern"), Locale.forLanguageTag(tag))
        .format(date)
        .replace(' ', NO_BREAK);
  }

  /** Common fractions as single characters, which every reader speaks rightly. */
  private static String fractions(String text) {
    String set = text;
    for (Map.Entry<String, String> fraction : new TreeMap<>(FRACTIONS).entrySet()) {
      set = set.replaceAll("(?<!\\d)" + fraction.getKey() + "(?!\\d)", fraction.getValue());
    }
    return set.replaceAll("(\\d) (?=[\u00bc-\u00be\u215b-\u215e])", "$1");
  }

  private String local(String number) {
    String point = sentences.getOrDefault("decimal", ".");
    return point.equals(".") ? number : number.replaceAll("(?<=\\d)\\.(?=\\d)", point);
  }
}
