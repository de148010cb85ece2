package org.hemwright.pattern.finding;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The name that was probably meant where one is written that nothing bears. */
public final class NearName {
  private NearName() {}

  /**
   * The known name with the fewest slips from a written one: letters left out, put in, changed, or
   * two neighbours swapped, capitals aside. At most one slip in three letters, and one in short
   * names; of equals the first.
   */
  public static Optional<String> to(String written, Collection<String> known) {
    int allowed = Math.max(1, written.length() / 3);
    String best = null;
    int fewest = allowed + 1;
    for (String name : known) {
      if (name.equals(written) || Math.abs(name.length() - written.length()) >= fewest) {
        continue;
      }
      int slips = slips(written.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
      if (slips < fewest && slips < name.length()) {
        fewest = slips;
        best = name;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Restricted edit distance with swaps (Damerau 1964), by the rows of its table. */
  private static int slips(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(last[j - 1] + change, 1 + Math.min(last[j], row[j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      int[] spare = beforeLast;
      beforeLast = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }
}
