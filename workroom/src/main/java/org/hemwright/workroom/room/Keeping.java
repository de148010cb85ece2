package org.hemwright.workroom.room;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hemwright.workroom.history.Merge;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.history.Texts;
import org.hemwright.workroom.keep.Keeper;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;

/**
 * A room's dealings with the disk, on the room's thread: its texts are kept there, and what other
 * programs write there is taken in.
 */
final class Keeping {
  private final Room room;
  private final Texts texts;
  private final Keeper keeper;
  private final DiskTrouble trouble;
  private final Consumer<String> log;

  Keeping(Room room, Texts texts, Keeper keeper, String folder, Consumer<String> log) {
    this.room = room;
    this.texts = texts;
    this.keeper = keeper;
    this.trouble = new DiskTrouble(keeper, folder);
    this.log = log;
  }

  /** Puts into a head whether all is kept, and what stands in the way. */
  void tell(ObjectNode head) {
    head.put("kept", texts.unkept().isEmpty());
    trouble.tell(head);
  }

  /** Keeps what is not kept yet. */
  void keep() {
    List<Revision> now = texts.unkept();
    if (now.isEmpty() && !trouble.isFault() && !keeper.isBehind(texts.all())) {
      return;
    }
    boolean toTell = !now.isEmpty() || trouble.isAny();
    try {
      Keeper.Kept done = keeper.keep(now, texts.all());
      texts.kept();
      trouble.kept(done.withheld());
      done.outside().forEach(this::merge);
    } catch (IOException full) {
      trouble.met(full);
      log.accept("changes are not on the disk: " + full.getMessage());
    } catch (RuntimeException fault) {
      trouble.met(fault);
      log.accept("changes are not on the disk: " + fault);
    }
    if (toTell || trouble.isAny()) {
      room.tellState();
    }
  }

  /** Looks for what other programs wrote, once all is kept here. */
  void look() {
    try {
      if (texts.unkept().isEmpty()) {
        keeper.outside().forEach(this::merge);
        if (trouble.look()) {
          room.tellState();
        }
      }
    } catch (RuntimeException fault) {
      log.accept("the folder could not be looked at: " + fault);
    }
  }

  private void merge(String file, String theirs) {
    String base = keeper.base(file).orElse("");
    Optional<List<Splice>> merged = Merge.of(file, base, texts.text(file), theirs);
    if (merged.isEmpty()) {
      ObjectNode both = Frame.tell("outside").put("file", file);
      room.tell(new Frame(both.put("here", texts.text(file)).put("there", theirs)));
      return;
    }
    taken(file, theirs, merged.get());
  }

  private void taken(String file, String theirs, List<Splice> splices) {
    try {
      keeper.seen(file, theirs);
      if (!splices.isEmpty()) {
        room.change(Revision.Cause.OUTSIDE, splices, false, "");
      }
    } catch (IOException full) {
      log.accept("a change by another program could not be noted: " + full.getMessage());
    }
  }

  /** She says which of two texts is to be kept; the other can be had back by undoing. */
  Frame decide(Question question) throws Question.Unclear {
    String file = question.text("file");
    String theirs = keeper.outside().get(file);
    if (theirs != null) {
      boolean there = question.text("take").equals("there");
      String here = texts.text(file);
      taken(file, theirs, there ? List.of(Splice.between(file, here, theirs)) : List.of());
      room.tell(new Frame(Frame.tell("settled").put("file", file)));
    }
    return new Frame(Frame.answer().put("done", theirs != null));
  }

  /** {@code {"ask": "put back", "file"}}: puts a file back that is not there any more. */
  Frame putBack(String file) {
    try {
      if (texts.all().containsKey(file)) {
        keeper.putBack(file, texts.text(file));
      }
      look();
    } catch (IOException full) {
      trouble.met(full);
      log.accept("a file could not be put back: " + full.getMessage());
    }
    return new Frame(Frame.answer().put("done", keeper.missing().isEmpty()));
  }
}
