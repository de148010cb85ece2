package org.hemwright.exchange.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The style rules of a file, as far as they say whether a thing is shown, moved or shaped. Simple
 * selectors are read: an element, a class, an id, or several of them on one element.
 */
final class StyleRules {
  private static final int MOST_RULES = 60;

  /** More classes than a drawing program gives a line. */
  private static final int MOST_CLASSES = 50;

  /** What a rule may say that changes where a line lies, or whether it is there. */
  private static final Set<String> HEEDED = Set.of("display", "visibility", "transform", "d");

  private static final Pattern PART = Pattern.compile("([.#]?)([-_\\p{L}\\p{N}]+)");

  private record Rule(
      Optional<String> element,
      List<String> classes,
      Optional<String> id,
      Map<String, String> says,
      int weight) {
    boolean fits(SvgElement one) {
      return element.map(kind -> kind.equals(one.kind())).orElse(true)
          && one.classes().containsAll(classes)
          && id.map(name -> name.equals(one.attribute("id", ""))).orElse(true);
    }
  }

  private final List<Rule> rules = new ArrayList<>();

  /** Adds a style sheet; whether it names another file. */
  boolean add(String sheet) {
    String text = withoutComments(sheet);
    if (withoutEscapes(text).toLowerCase(Locale.ROOT).contains("@import")) {
      return true;
    }
    int at = 0;
    while (rules.size() < MOST_RULES) {
      int open = text.indexOf('{', at);
      int close = text.indexOf('}', open);
      if (open < 0 || close < 0) {
        break;
      }
      Map<String, String> says = declarations(text.substring(open + 1, close));
      says.keySet().retainAll(HEEDED);
      if (!says.isEmpty()) {
        for (String selector : text.substring(at, open).split(",", -1)) {
          add(selector.strip(), says);
        }
      }
      at = close + 1;
    }
    return false;
  }

  /** Letters written as numbers (CSS Syntax 3, 4.3.7): a word may be spelled so. */
  private static String withoutEscapes(String text) {
    if (text.indexOf('\\') < 0) {
      return text;
    }
    return ESCAPE
        .matcher(text)
        .replaceAll(
            escape ->
                Matcher.quoteReplacement(
                    escape.group(1) == null
                        ? escape.group(2)
                        : letter(Integer.parseInt(escape.group(1), 16))));
  }

  private static final Pattern ESCAPE = Pattern.compile("\\\\(?:([0-9A-Fa-f]{1,6})\\s?|([^\\n]))");

  private static String letter(int code) {
    return Character.isValidCodePoint(code) ? Character.toString(code) : "";
  }

  private static String withoutComments(String sheet) {
    StringBuilder kept = new StringBuilder();
    int at = 0;
    for (int open = sheet.indexOf("/*"); open >= 0; open = sheet.indexOf("/*", at)) {
      kept.append(sheet, at, open).append(' ');
      int close = sheet.indexOf("*/", open + 2);
      if (close < 0) {
        return kept.toString();
      }
      at = close + 2;
    }
    return kept.append(sheet, at, sheet.length()).toString();
  }

  private void add(String selector, Map<String, String> says) {
    if (selector.equals("*")) {
      rules.add(new Rule(Optional.empty(), List.of(), Optional.empty(), says, 0));
      return;
    }
    Optional<String> element = Optional.empty();
    Optional<String> id = Optional.empty();
    List<String> classes = new ArrayList<>();
    Matcher part = PART.matcher(selector);
    int end = 0;
    while (part.find() && part.start() == end) {
      end = part.end();
      switch (part.group(1)) {
        case "." -> classes.add(part.group(2));
        case "#" -> id = Optional.of(part.group(2));
        default -> element = Optional.of(part.group(2));
      }
    }
    if (end == selector.length() && end > 0) {
      int weight = (id.isPresent() ? 100 : 0) + classes.size() * 10 + (element.isPresent() ? 1 : 0);
      rules.add(new Rule(element, List.copyOf(classes), id, says, weight));
    }
  }

  private static Map<String, String> declarations(String text) {
    Map<String, String> says = new LinkedHashMap<>();
    for (String declaration : text.split(";", -1)) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        says.put(
            declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT),
            declaration.substring(colon + 1).replace("!important", "").strip());
      }
    }
    return says;
  }

  /** What an element's own style, the rules or its attribute say of a property, in that order. */
  Optional<String> property(SvgElement element, String name) {
    Optional<String> own = element.attribute("style").map(style -> declarations(style).get(name));
    if (own.isPresent()) {
      return own;
    }
    if (element.classes().size() > MOST_CLASSES) {
      return element.attribute(name);
    }
    String best = null;
    int weight = -1;
    for (Rule rule : rules) {
      if (rule.weight() >= weight && rule.says().containsKey(name) && rule.fits(element)) {
        best = rule.says().get(name);
        weight = rule.weight();
      }
    }
    return best != null ? Optional.of(best) : element.attribute(name);
  }
}
