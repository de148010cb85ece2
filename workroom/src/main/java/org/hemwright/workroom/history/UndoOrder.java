package org.hemwright.workroom.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands to be undone or redone, worked out from all that happened, so that it is the same
 * after a restart.
 *
 * <p>Changes from outside can be undone like her own. Joined edits go together.
 */
public final class UndoOrder {
  private final List<List<Splice>> done = new ArrayList<>();
  private final List<List<Splice>> undone = new ArrayList<>();
  private boolean open;

  /** Takes note of the next revision. */
  public void add(Revision revision) {
    switch (revision.cause()) {
      case EDIT, OUTSIDE -> {
        if (revision.joined() && open && !done.isEmpty()) {
          List<Splice> last = new ArrayList<>(done.remove(done.size() - 1));
          last.addAll(revision.splices());
          done.add(last);
        } else {
          done.add(revision.splices());
        }
        undone.clear();
        open = true;
      }
      case UNDO -> {
        removeLast(done);
        undone.add(revision.splices());
        open = false;
      }
      case REDO -> {
        removeLast(undone);
        done.add(revision.splices());
        open = false;
      }
      case MOMENT -> open = false;
    }
  }

  private static void removeLast(List<List<Splice>> steps) {
    if (!steps.isEmpty()) {
      steps.remove(steps.size() - 1);
    }
  }

  /** The splices that undo the last edit. */
  public Optional<List<Splice>> toUndo() {
    return last(done);
  }

  /** The splices that redo what was undone last. */
  public Optional<List<Splice>> toRedo() {
    return last(undone);
  }

  private static Optional<List<Splice>> last(List<List<Splice>> steps) {
    return steps.isEmpty()
        ? Optional.empty()
        : Optional.of(Revision.inverse(steps.get(steps.size() - 1)));
  }
}
