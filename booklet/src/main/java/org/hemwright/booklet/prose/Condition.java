package org.hemwright.booklet.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/**
 * For what a sentence holds. Where one edition serves sizes, views or cloths for which it does not
 * hold, the sentence names those for which it does.
 *
 * @param holds whether it holds for anything that the booklet is for
 * @param named what it holds for, where that must be said; empty where it holds throughout
 */
record Condition(boolean holds, List<Inline> named) {
  static final Condition ALWAYS = new Condition(true, List.of());
  private static final Condition NEVER = new Condition(false, List.of());
  private static final Pattern SIZES = Pattern.compile("sizes? (\\S+)(?: to (\\S+))?");

  Condition {
    named = List.copyOf(named);
  }

  /** Reads what stands between {@code for} and the colon. */
  static Condition read(String text, Telling telling, List<Finding> findings, Origin origin) {
    Matcher sizes = SIZES.matcher(text);
    if (sizes.matches()) {
      return sizes(sizes, telling, findings, origin);
    }
    if (text.startsWith("view ")) {
      return view(text.substring(5).strip(), telling, findings, origin);
    }
    if (text.startsWith("cloth ") || text.startsWith("fabric ")) {
      return cloth(text.substring(text.indexOf(' ')).strip(), telling, findings, origin);
    }
    findings.add(
        ProseReader.unknown(
            "prose-condition", text, List.of("sizes 8 to 14", "view A", "cloth main"), origin));
    return NEVER;
  }

  private static Condition sizes(
      Matcher said, Telling telling, List<Finding> findings, Origin origin) {
    List<String> chart =
        telling.run().pattern().chart().sizes().stream().map(size -> size.name()).toList();
    String first = said.group(1);
    String last = said.group(2) == null ? first : said.group(2);
    for (String size : List.of(first, last)) {
      if (!chart.contains(size)) {
        findings.add(ProseReader.unknown("prose-size", size, chart, origin));
        return NEVER;
      }
    }
    List<String> meant =
        telling.sizeNames().stream()
            .filter(
                size ->
                    chart.indexOf(size) >= chart.indexOf(first)
                        && chart.indexOf(size) <= chart.indexOf(last))
            .toList();
    if (meant.isEmpty()) {
      return NEVER;
    }
    return meant.size() == telling.sizeNames().size()
        ? ALWAYS
        : new Condition(true, telling.say("for.sizes", Slots.of("sizes", telling.sizes(meant))));
  }

  private static Condition view(
      String name, Telling telling, List<Finding> findings, Origin origin) {
    List<String> views = telling.run().pattern().views().stream().map(view -> view.name()).toList();
    if (!views.contains(name)) {
      findings.add(ProseReader.unknown("prose-view", name, views, origin));
      return NEVER;
    }
    return views.size() == 1
        ? ALWAYS
        : new Condition(
            true, telling.say("for.view", Slots.of("view", telling.views(List.of(name)))));
  }

  private static Condition cloth(
      String name, Telling telling, List<Finding> findings, Origin origin) {
    List<String> fabrics =
        telling.run().pattern().fabrics().stream().map(fabric -> fabric.name()).toList();
    if (!fabrics.contains(name)) {
      findings.add(ProseReader.unknown("prose-cloth", name, fabrics, origin));
      return NEVER;
    }
    return fabrics.size() == 1
        ? ALWAYS
        : new Condition(true, telling.say("for.cloth", Slots.of("fabric", telling.fabric(name))));
  }

  /** The sentence as this edition says it. */
  List<Inline> said(Telling telling, List<Inline> words) {
    if (!holds) {
      return List.of();
    }
    if (named.isEmpty()) {
      return words;
    }
    List<Inline> all = new ArrayList<>(telling.words().capital(named));
    all.addAll(words);
    return all;
  }
}
