package org.hemwright.workbench.release;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Versions as people count them: 1.9 comes before 1.10, and 1.0 before 1.0a. */
final class VersionOrder implements Comparator<String> {
  static final VersionOrder INSTANCE = new VersionOrder();

  private static final Pattern PART = Pattern.compile("\\d+|\\D+");

  private VersionOrder() {}

  @Override
  public int compare(String one, String other) {
    List<String> left = parts(one);
    List<String> right = parts(other);
    for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
      int order = part(left.get(i), right.get(i));
      if (order != 0) {
        return order;
      }
    }
    int order = Integer.compare(left.size(), right.size());
    return order == 0 ? one.compareTo(other) : order;
  }

  private static int part(String one, String other) {
    boolean numbers = Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0));
    return numbers ? new BigInteger(one).compareTo(new BigInteger(other)) : one.compareTo(other);
  }

  private static List<String> parts(String version) {
    return PART.matcher(version).results().map(MatchResult::group).toList();
  }
}
