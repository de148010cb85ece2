package org.hemwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people read of how much cloth to buy: by view, cloth, nap, size and width the words in the
 * cell.
 */
final class ToldLengths {
  private static final String SIGNS = "⅛¼⅜½⅝¾⅞";

  private ToldLengths() {}

  /** Every size by itself: "XS to 2T" are three. */
  private static List<String> sizes(String group) {
    String[] ends = group.split(" to ", -1);
    return OddThings.SIZES.subList(
        OddThings.SIZES.indexOf(ends[0]), OddThings.SIZES.indexOf(ends[ends.length - 1]) + 1);
  }

  /** What stands in the text on the terminal. */
  static Map<String, String> inText(String text) {
    Map<String, String> said = new LinkedHashMap<>();
    String heading = "";
    List<String> widths = List.of();
    for (String line : text.lines().toList()) {
      List<String> cells = List.of(line.strip().split(" {2,}"));
      if (line.startsWith("View ")) {
        heading = line.replaceFirst(": [^,]*(, )?", " ").strip();
      } else if (line.startsWith("size ")) {
        widths = cells.subList(1, cells.size());
      } else if (line.startsWith("From a length")) {
        break;
      } else if (!line.startsWith(" ") && cells.size() == widths.size() + 1) {
        for (int i = 0; i < widths.size(); i++) {
          for (String size : sizes(cells.get(0))) {
            said.put(heading + " " + size + " " + widths.get(i), cells.get(i + 1));
          }
        }
      }
    }
    return said;
  }

  /** What stands on the page. */
  static Map<String, String> inPage(String page) {
    Map<String, String> said = new LinkedHashMap<>();
    for (String section : page.split("<section>", -1)) {
      Matcher heading = Pattern.compile("<h2>(View [^<]*)</h2>").matcher(section);
      if (heading.find()) {
        String head = heading.group(1).replaceFirst(": [^,]*(, )?", " ").strip();
        String table = section.substring(section.indexOf("<table"), section.indexOf("</table>"));
        List<String> widths =
            all("<th scope=\"col\">([^<]*) wide</th>", table).stream()
                .map(each -> each.replaceFirst(" · .*", ""))
                .toList();
        for (String line : table.split("<tr>", -1)) {
          List<String> sizes = all("<th scope=\"row\">([^<]*)</th>", line);
          List<String> cells = all("<td>(.*?)</td>", line);
          for (int i = 0; !sizes.isEmpty() && i < widths.size(); i++) {
            for (String size : sizes(sizes.get(0))) {
              said.put(
                  head + " " + size + " " + widths.get(i),
                  plainFractions(cells.get(i).replaceAll("<[^>]*>", "")));
            }
          }
        }
      }
    }
    return said;
  }

  private static String plainFractions(String text) {
    List<String> parts = List.of("1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8");
    String plain = text;
    for (int i = 0; i < parts.size(); i++) {
      String sign = SIGNS.substring(i, i + 1);
      plain = plain.replaceAll("(\\d)" + sign, "$1 " + parts.get(i)).replace(sign, parts.get(i));
    }
    return plain;
  }

  private static List<String> all(String pattern, String text) {
    List<String> all = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      all.add(matcher.group(1));
    }
    return all;
  }
}
