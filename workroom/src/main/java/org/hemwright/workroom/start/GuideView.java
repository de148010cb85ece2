package org.hemwright.workroom.start;

import java.util.Map;
import org.hemwright.workroom.keep.Remembered;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Window;

/**
 * Whether the designer was shown round, and the way back to the start page.
 *
 * <p>{@code {"ask": "shown_round"}} remembers that she was; {@code {"ask": "away"}} closes the
 * folder. Told to a window that opens: {@code guide} with {@code shown}.
 */
public final class GuideView implements View {
  private final Remembered remembered;
  private final Opener opener;

  /** A guide that remembers, and knows the way back. */
  public GuideView(Remembered remembered, Opener opener) {
    this.remembered = remembered;
    this.opener = opener;
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "shown_round",
        (room, window, question) -> {
          remembered.showRound();
          return new Frame(Frame.answer());
        },
        "away",
        (room, window, question) -> {
          opener.away();
          return new Frame(Frame.answer());
        });
  }

  @Override
  public void opened(Room room, Window window) {
    window.send(new Frame(Frame.tell("guide").put("shown", remembered.shownRound())));
  }
}
