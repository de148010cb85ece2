package org.hemwright.workroom.room;

import java.util.Map;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** One part of what windows show. Everything here happens on the room's thread. */
public interface View {
  /** What windows may ask of it, by the word they ask with. */
  Map<String, Answering> answers();

  /** Hears that a window has opened; it tells it all that it should show at once. */
  default void opened(Room room, Window window) {}

  /** Hears that the texts, and so the draft, have changed. */
  default void revised(Room room, Revision revision) {}

  /** Hears that a window has gone. */
  default void closed(Room room, Window window) {}

  /** Answers one kind of question. */
  @FunctionalInterface
  interface Answering {
    /**
     * The answer; its head gets the question's number.
     *
     * @throws Question.Unclear where the question cannot be understood; nothing was changed then
     */
    Frame answer(Room room, Window window, Question question) throws Question.Unclear;
  }
}
