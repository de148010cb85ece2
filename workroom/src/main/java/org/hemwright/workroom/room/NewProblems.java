package org.hemwright.workroom.room;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.LiveDraft;

/** What stands in the way of a text that is tried and did not before. */
public final class NewProblems {
  private NewProblems() {}

  /**
   * The problems of a draft that the room's own does not have.
   *
   * @param draft of another text of the room's document
   */
  public static List<Finding> of(Room room, LiveDraft draft) {
    List<String> before = new ArrayList<>();
    room.draft().evaluated().problems().forEach(each -> before.add(key(each)));
    return draft.evaluated().problems().stream().filter(each -> !before.remove(key(each))).toList();
  }

  /** A problem without its place, which moves when lines are added. */
  private static String key(Finding finding) {
    return finding.code() + " " + finding.subject() + " " + finding.sizes();
  }
}
