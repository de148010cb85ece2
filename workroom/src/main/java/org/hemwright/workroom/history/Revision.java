package org.hemwright.workroom.history;

import java.util.ArrayList;
import java.util.List;

/**
 * One step in the life of the texts.
 *
 * @param number counted from 1; the texts as they were first opened are revision 0
 * @param cause what brought it about
 * @param joined whether it goes on with the edit before, so that both are undone at once
 * @param name what the designer calls this moment, or what an edit does; may be empty
 * @param splices one after another: each expects the text that the one before it left
 */
public record Revision(int number, Cause cause, boolean joined, String name, List<Splice> splices) {
  public Revision {
    splices = List.copyOf(splices);
  }

  /** What brings a revision about. */
  public enum Cause {
    /** She wrote it, by hand or by dragging. */
    EDIT,
    /** She took the last edit back. */
    UNDO,
    /** She took the last undoing back. */
    REDO,
    /** Another program changed the file. */
    OUTSIDE,
    /** Nothing changed: she gave this moment a name. */
    MOMENT
  }

  /** Whether the pattern is to be drafted anew: the booklet's words leave it as it is. */
  public boolean drafts() {
    return splices.stream().anyMatch(splice -> !splice.file().endsWith(".md"));
  }

  /** The splices that take some splices back, last first. */
  public static List<Splice> inverse(List<Splice> splices) {
    List<Splice> back = new ArrayList<>();
    for (int i = splices.size() - 1; i >= 0; i--) {
      back.add(splices.get(i).inverse());
    }
    return back;
  }
}
