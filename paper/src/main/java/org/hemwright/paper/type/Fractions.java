package org.hemwright.paper.type;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sets what is written with the fraction slash (U+2044) as fractions. */
final class Fractions {
  private static final Pattern FORM = Pattern.compile("(\\d+)\u2044(\\d+)");
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";
  private static final Map<String, String> WHOLE =
      Map.of(
          "1\u20442", "½",
          "1\u20443", "⅓",
          "2\u20443", "⅔",
          "1\u20444", "¼",
          "3\u20444", "¾",
          "1\u20448", "⅛",
          "3\u20448", "⅜",
          "5\u20448", "⅝",
          "7\u20448", "⅞");

  private Fractions() {}

  static String set(String text) {
    if (text.indexOf('\u2044') < 0) {
      return text;
    }
    Matcher fraction = FORM.matcher(text);
    StringBuilder set = new StringBuilder();
    while (fraction.find()) {
      String whole = WHOLE.get(fraction.group());
      fraction.appendReplacement(
          set,
          whole != null
              ? whole
              : moved(fraction.group(1), RAISED) + "\u2044" + moved(fraction.group(2), LOWERED));
    }
    return fraction.appendTail(set).toString();
  }

  private static String moved(String figures, String to) {
    StringBuilder moved = new StringBuilder();
    figures.chars().forEach(figure -> moved.append(to.charAt(figure - '0')));
    return moved.toString();
  }
}
