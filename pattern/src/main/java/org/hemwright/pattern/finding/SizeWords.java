package org.hemwright.pattern.finding;

import java.util.ArrayList;
import java.util.List;

/**
 * Sizes as one says them: "every size", "size 14", "sizes 8, 10 and 22 to 26".
 *
 * @param chart the names of all sizes that were looked at, in the chart's order
 */
public record SizeWords(List<String> chart) {
  /** Fewer neighbours than this are listed one by one. */
  private static final int RUN = 3;

  public SizeWords {
    chart = List.copyOf(chart);
  }

  /** The words for some of the sizes; none at all means that size does not matter. */
  public String of(List<String> sizes) {
    if (sizes.isEmpty() || (!chart.isEmpty() && sizes.containsAll(chart))) {
      return "every size";
    }
    if (sizes.size() == 1) {
      return "size " + sizes.get(0);
    }
    List<String> words = new ArrayList<>();
    for (int first = 0; first < sizes.size(); ) {
      int last = first;
      while (last + 1 < sizes.size() && neighbours(sizes.get(last), sizes.get(last + 1))) {
        last++;
      }
      if (last - first + 1 >= RUN) {
        words.add(sizes.get(first) + " to " + sizes.get(last));
      } else {
        words.addAll(sizes.subList(first, last + 1));
      }
      first = last + 1;
    }
    return "sizes " + listed(words, "and");
  }

  private boolean neighbours(String size, String next) {
    int place = chart.indexOf(size);
    return place >= 0 && place + 1 < chart.size() && chart.get(place + 1).equals(next);
  }

  /** Words as a list: "a", "a and b", "a, b and c", with the joining word given. */
  static String listed(List<String> words, String join) {
    int count = words.size();
    if (count < 2) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, count - 1)) + " " + join + " " + words.get(count - 1);
  }
}
