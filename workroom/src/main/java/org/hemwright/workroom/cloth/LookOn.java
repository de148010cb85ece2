package org.hemwright.workroom.cloth;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.hemwright.cloth.byhand.OwnLaying;
import org.hemwright.cloth.byhand.OwnLayings;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.yardage.FurtherSearch;
import org.hemwright.cloth.yardage.LayingFollower;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/**
 * Looks longer for a shorter laying of one row while its window looks on. What is shorter when she
 * stops it, or when the search is at its end, is kept as a laying of hers; undoing takes it back.
 */
final class LookOn {
  /** So many places are looked at, forty times as many as for the table: a minute or a few. */
  private static final long WORK = 32_000_000;

  private LookOn() {}

  /** The search that a window looks at, if any. */
  static final class Search {
    private Optional<AtomicBoolean> stop = Optional.empty();

    void end() {
      stop.ifPresent(each -> each.set(true));
      stop = Optional.empty();
    }
  }

  private static Search search(Window window) {
    return window.kept(Search.class, Search::new);
  }

  /**
   * {@code {"ask": "search_on", "row"}}: told by and by are {@code shorter} for each shorter laying
   * and at last {@code searched}.
   */
  static Frame begin(Room room, Window window, Question question) throws Question.Unclear {
    YardageRow row = HandBoard.row(window, question);
    SizeRun run = HandBoard.looked(window).run();
    FurtherSearch further =
        FurtherSearch.of(run, row, ClothSettings.HANDBOOK)
            .orElseThrow(() -> new Question.Unclear("no-laying"));
    int at = question.whole("row");
    Search search = search(window);
    search.end();
    AtomicBoolean stop = new AtomicBoolean();
    search.stop = Optional.of(stop);
    LayingFollower follower =
        new LayingFollower() {
          @Override
          public void shorter(ClothLaying laying) {
            if (!stop.get()) {
              room.later(() -> window.send(told(window, row, laying, at)));
            }
          }

          @Override
          public boolean hasEnough() {
            return stop.get();
          }
        };
    room.whileWaited(
        () -> further.lay(WORK, 1, follower),
        found -> {
          if (search.stop.filter(each -> each == stop).isPresent()) {
            search.stop = Optional.empty();
          }
          ObjectNode head = Frame.tell("searched").put("row", at).put("stopped", stop.get());
          head.put("kept", found.isPresent());
          found.ifPresent(
              laying -> {
                double less = row.need().orElseThrow().laying().length() - laying.length();
                head.put("less", less);
                OwnLaying own = new OwnLaying(OwnLaying.OfCloth.of(row), OwnLaying.places(laying));
                HandBoard.write(room, OwnLayings.read(room.text(OwnLayings.FILE)).with(own));
              });
          window.send(new Frame(head));
        });
    return new Frame(Frame.answer());
  }

  private static Frame told(Window window, YardageRow row, ClothLaying laying, int at) {
    ObjectNode head = Frame.tell("shorter").put("row", at);
    HandBoard.cloth(laying, head);
    HandBoard.write(window, row, laying, head);
    return new Frame(head);
  }

  /** {@code {"ask": "stop_search"}}: she has seen enough; what is best by now is kept. */
  static Frame stop(Room room, Window window, Question question) {
    search(window).end();
    return new Frame(Frame.answer());
  }
}
