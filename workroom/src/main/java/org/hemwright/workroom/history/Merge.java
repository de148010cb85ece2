package org.hemwright.workroom.history;

import java.util.List;
import java.util.Optional;

/** Brings two changes of one text together where they touch different places. */
public final class Merge {
  private Merge() {}

  /**
   * What makes of our text one that has their change too; empty where both changed the same place.
   *
   * @param file which text
   * @param base what both started from
   * @param ours as it stands here
   * @param theirs as it stands there
   */
  public static Optional<List<Splice>> of(String file, String base, String ours, String theirs) {
    if (ours.equals(theirs) || base.equals(theirs)) {
      return Optional.of(List.of());
    }
    Splice there = Splice.between(file, base, theirs);
    if (base.equals(ours)) {
      return Optional.of(List.of(there));
    }
    Splice here = Splice.between(file, base, ours);
    int hereEnd = here.at() + here.removed().length();
    int thereEnd = there.at() + there.removed().length();
    if (there.at() > hereEnd) {
      return Optional.of(
          List.of(new Splice(file, here.carried(there.at()), there.removed(), there.inserted())));
    }
    return thereEnd < here.at() ? Optional.of(List.of(there)) : Optional.empty();
  }
}
