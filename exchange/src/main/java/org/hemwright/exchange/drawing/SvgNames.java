package org.hemwright.exchange.drawing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What an element of a drawing is called. */
final class SvgNames {
  private static final int LONGEST_WORDS = 40;
  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{2,4})_");

  private SvgNames() {}

  /** What an element can be called by. */
  static List<String> of(SvgElement element) {
    Set<String> names = new LinkedHashSet<>();
    element.attribute("label").ifPresent(names::add);
    element.attribute("data-name").ifPresent(names::add);
    element.attribute("id").ifPresent(id -> names.add(unescaped(id)));
    element.children().stream()
        .filter(child -> child.kind().equals("title"))
        .map(SvgElement::text)
        .filter(words -> !words.isEmpty())
        .forEach(names::add);
    names.addAll(element.classes());
    return List.copyOf(names);
  }

  /** Drawing programs write a blank of a layer's name as {@code _x20_}. */
  private static String unescaped(String id) {
    Matcher escaped = ESCAPED.matcher(id);
    StringBuilder plain = new StringBuilder();
    while (escaped.find()) {
      String letter = Character.toString((char) Integer.parseInt(escaped.group(1), 16));
      escaped.appendReplacement(plain, Matcher.quoteReplacement(letter));
    }
    return escaped.appendTail(plain).toString();
  }

  /** What it is told as: its kind and its first name. */
  static String told(SvgElement element) {
    List<String> names = of(element);
    return names.isEmpty() ? element.kind() : element.kind() + " " + shortened(names.get(0));
  }

  /** Words of a file on one line, cut short where they are long. */
  static String shortened(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return line.length() <= LONGEST_WORDS ? line : line.substring(0, LONGEST_WORDS - 1) + "…";
  }
}
