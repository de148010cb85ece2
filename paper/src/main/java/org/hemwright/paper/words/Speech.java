package org.hemwright.paper.words;

import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;

/**
 * How this pattern's papers speak.
 *
 * @param details whose units and spelling they follow
 * @param lengths how lengths are shown
 * @param chart the names of all sizes, in order
 */
public record Speech(Details details, LengthFormat lengths, List<String> chart) {
  private static final char NO_BREAK = '\u00a0';

  public Speech {
    chart = List.copyOf(chart);
  }

  /** The speech of a run's papers. */
  public static Speech of(SizeRun run) {
    Details details = run.pattern().details();
    LengthFormat.Edition edition =
        details.units() == Details.Units.INCHES
            ? LengthFormat.Edition.INCHES_FIRST
            : LengthFormat.Edition.METRIC_FIRST;
    return new Speech(
        details,
        LengthFormat.of(edition).withTypographicFractions(),
        run.pattern().chart().sizes().stream().map(Size::name).toList());
  }

  /** Whether the maker reads British words. */
  public boolean british() {
    return details.spelling() == Details.Spelling.BRITISH;
  }

  /** What the maker cuts: cloth or fabric. */
  public String cloth() {
    return british() ? "cloth" : "fabric";
  }

  /** The language tag of the papers. */
  public String language() {
    return british() ? "en-GB" : "en-US";
  }

  /** A length (mm), its blanks unbreakable. */
  public String length(double mm, LengthKind kind) {
    return lengths.text(mm, kind).replace(' ', NO_BREAK);
  }

  /** A length (mm) in the unit that stands first alone, its blanks unbreakable. */
  public String firstUnit(double mm) {
    LengthFormat.Edition only =
        details.units() == Details.Units.INCHES
            ? LengthFormat.Edition.INCHES_ONLY
            : LengthFormat.Edition.METRIC_ONLY;
    return LengthFormat.of(only)
        .withTypographicFractions()
        .text(mm, LengthKind.FINISHED)
        .replace(' ', NO_BREAK);
  }

  /** "Size 14", "Sizes 8 to 24", "All sizes" of the whole chart. */
  public String sizes(List<String> names) {
    if (names.size() > 1 && names.size() == chart.size()) {
      return "Sizes " + chart.get(0) + " to " + chart.get(chart.size() - 1);
    }
    return capital(new SizeWords(chart).of(names));
  }

  /** A short label for sizes that share a line: "14", "8–12", "8, 12". */
  public String shortSizes(List<String> names, int inNest) {
    if (names.size() == 1) {
      return names.get(0);
    }
    if (names.size() == inNest) {
      return "all sizes";
    }
    int first = chart.indexOf(names.get(0));
    int last = chart.indexOf(names.get(names.size() - 1));
    if (first >= 0 && last - first == names.size() - 1) {
      return names.get(0) + "–" + names.get(names.size() - 1);
    }
    return String.join(", ", names);
  }

  /** A fabric as the maker knows it. */
  public static String fabric(SizeRun run, String name) {
    return run.pattern().fabric(name).map(Fabric::title).orElse(spoken(name));
  }

  /** A name of the document as it is shown: blanks for low lines. */
  public static String spoken(String name) {
    return name.replace('_', ' ');
  }

  /** "A", "A and B", "A, B and C". */
  public static String listed(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** "View A", and its title where it has one: "View A, Above the knee". */
  public static String view(View view) {
    String name = "View " + spoken(view.name());
    return view.title().isBlank() ? name : name + ", " + view.title();
  }

  /** The text with a capital letter first. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The version's date: "25 November 2026", "November 25, 2026". */
  public String date() {
    String month = details.dated().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    int day = details.dated().getDayOfMonth();
    int year = details.dated().getYear();
    return british() ? day + " " + month + " " + year : month + " " + day + ", " + year;
  }
}
