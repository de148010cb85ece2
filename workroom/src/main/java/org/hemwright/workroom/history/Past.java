package org.hemwright.workroom.history;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** How texts stood at an earlier revision. */
public final class Past {
  private Past() {}

  /**
   * The texts after a revision.
   *
   * @param now the texts after the last of all revisions
   * @param history all revisions, oldest first
   * @param number of the revision; 0 for the texts as they were first opened
   * @return by file; a file that was not there then is empty
   */
  public static SortedMap<String, String> texts(
      SortedMap<String, String> now, List<Revision> history, int number) {
    SortedMap<String, String> texts = new TreeMap<>(now);
    for (int i = history.size() - 1; i >= 0 && history.get(i).number() > number; i--) {
      for (Splice back : Revision.inverse(history.get(i).splices())) {
        texts.put(back.file(), back.applyTo(texts.getOrDefault(back.file(), "")));
      }
    }
    return texts;
  }

  /** The splices that make some texts of others, one for each file that differs. */
  public static List<Splice> between(SortedMap<String, String> from, SortedMap<String, String> to) {
    List<Splice> splices = new ArrayList<>();
    to.forEach(
        (file, text) -> {
          String before = from.getOrDefault(file, "");
          if (!before.equals(text)) {
            splices.add(Splice.between(file, before, text));
          }
        });
    return splices;
  }
}
