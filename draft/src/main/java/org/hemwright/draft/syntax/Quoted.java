package org.hemwright.draft.syntax;

import java.util.regex.Pattern;

/** Words and names that come from elsewhere, as a document writes them. */
public final class Quoted {
  private static final Pattern BARE = Pattern.compile("[0-9]+|\\p{L}[\\p{L}\\p{N}_]*");

  private Quoted() {}

  /** Words in quotes; quotes within them are doubled. They hold no line break. */
  public static String words(String words) {
    return '"' + words.replace("\"", "\"\"") + '"';
  }

  /** A size as the chart names it: bare where it is a whole number or a name, else in quotes. */
  public static String size(String name) {
    return BARE.matcher(name).matches() ? name : words(name);
  }
}
