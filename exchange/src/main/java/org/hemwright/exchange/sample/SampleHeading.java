package org.hemwright.exchange.sample;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.pattern.quantity.LengthUnit;

/**
 * What a column of the log holds.
 *
 * @param unit of the lengths below; nothing where the column holds words
 */
record SampleHeading(Column column, Optional<LengthUnit> unit) {
  private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\(([^()]*)\\)");

  /** The columns that a log may have. */
  enum Column {
    DATE("date", false),
    SIZE("size", false),
    FABRIC("fabric", false),
    WHERE("where", false),
    PINNED_OUT("pinned out", true),
    LET_OUT("let out", true),
    DRAFTED("drafted", true),
    NOTE("note", false);

    private final String word;
    private final boolean length;

    Column(String word, boolean length) {
      this.word = word;
      this.length = length;
    }

    String word() {
      return word;
    }

    /** Whether it holds lengths, so that its heading says a unit. */
    boolean length() {
      return length;
    }

    static Optional<Column> of(String word) {
      String held = word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
      return Arrays.stream(values()).filter(column -> column.word.equals(held)).findFirst();
    }

    static List<String> words() {
      return Arrays.stream(values()).map(Column::word).toList();
    }
  }

  /** The heading's words without its unit. */
  static String bare(String heading) {
    Matcher parts = WITH_UNIT.matcher(heading.strip());
    return parts.matches() ? parts.group(1) : heading.strip();
  }

  /** The unit in its brackets; nothing where there is none, or one that is not known. */
  static Optional<LengthUnit> unit(String heading) {
    Matcher parts = WITH_UNIT.matcher(heading.strip());
    return parts.matches() ? LengthUnit.of(parts.group(2).strip()) : Optional.empty();
  }
}
