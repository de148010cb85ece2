package org.hemwright.workroom.history;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The texts of a folder as they stand, all that happened to them, and what of it is not kept yet.
 */
public final class Texts {
  private final SortedMap<String, String> texts;
  private final List<Revision> history;
  private final UndoOrder order = new UndoOrder();
  private final List<Revision> unkept = new ArrayList<>();

  /**
   * Texts and what is known of them.
   *
   * @param texts by file name
   * @param history all that happened to them so far, oldest first
   */
  public Texts(Map<String, String> texts, List<Revision> history) {
    this.texts = new TreeMap<>(texts);
    this.history = new ArrayList<>(history);
    history.forEach(order::add);
  }

  /** A text as it stands; empty where there is none. */
  public String text(String file) {
    return texts.getOrDefault(file, "");
  }

  /** All of them as they stand, by file name. */
  public SortedMap<String, String> all() {
    return Collections.unmodifiableSortedMap(texts);
  }

  /** All that happened, oldest first. */
  public List<Revision> history() {
    return Collections.unmodifiableList(history);
  }

  /** The number of the revision that the texts stand at. */
  public int revision() {
    return history.isEmpty() ? 0 : history.get(history.size() - 1).number();
  }

  /**
   * Changes them.
   *
   * @param splices one after another
   * @return absent where the texts are not as the splices expect them; nothing was changed then
   */
  public Optional<Revision> change(
      Revision.Cause cause, List<Splice> splices, boolean joined, String name) {
    Map<String, String> after = new TreeMap<>();
    for (Splice splice : splices) {
      String text = after.getOrDefault(splice.file(), text(splice.file()));
      if (!splice.fits(text)) {
        return Optional.empty();
      }
      after.put(splice.file(), splice.applyTo(text));
    }
    texts.putAll(after);
    Revision revision = new Revision(revision() + 1, cause, joined, name, splices);
    note(revision);
    return Optional.of(revision);
  }

  /** Takes note of what happened to texts that stand here as it left them. */
  public void note(Revision revision) {
    history.add(revision);
    order.add(revision);
    unkept.add(revision);
  }

  /** The splices that undo the last edit. */
  public Optional<List<Splice>> toUndo() {
    return order.toUndo();
  }

  /** The splices that redo what was undone last. */
  public Optional<List<Splice>> toRedo() {
    return order.toRedo();
  }

  /** What happened since the texts were kept, oldest first. */
  public List<Revision> unkept() {
    return List.copyOf(unkept);
  }

  /** Notes that all of it is kept. */
  public void kept() {
    unkept.clear();
  }
}
