package org.hemwright.draft.plan.problem;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of which a document's names are made, and how often each occurs.
 *
 * @param counts by word, the parts of a name between its {@code _}
 */
record WordCount(Map<String, Integer> counts) {
  private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{N}]*");

  static WordCount of(String text) {
    Map<String, Integer> counts = new TreeMap<>();
    Matcher word = WORD.matcher(text.replace('_', ' '));
    while (word.find()) {
      counts.merge(word.group(), 1, Integer::sum);
    }
    return new WordCount(counts);
  }

  /** Whether every word of a name occurs elsewhere too. */
  boolean isAtHome(String name) {
    Matcher word = WORD.matcher(name.replace('_', ' '));
    boolean all = true;
    while (word.find()) {
      all &= counts.getOrDefault(word.group(), 0) > 1;
    }
    return all;
  }
}
