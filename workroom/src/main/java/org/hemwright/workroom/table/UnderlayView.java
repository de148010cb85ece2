package org.hemwright.workroom.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workbench.release.Release;
import org.hemwright.workbench.release.ReleaseShelf;
import org.hemwright.workroom.history.Past;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Draws an earlier version, to be laid on the table with what is now. */
public final class UnderlayView implements View {
  @Override
  public Map<String, Answering> answers() {
    return Map.of("versions", UnderlayView::versions, "version", UnderlayView::version);
  }

  /** {@code {"ask": "versions"}}: {@code {"moments": [{"number", "name"}], "releases": [text]}}. */
  private static Frame versions(Room room, Window window, Question question) {
    ObjectNode head = Frame.answer();
    ArrayNode moments = head.putArray("moments");
    moments.addObject().put("number", 0).put("name", "");
    for (Revision revision : room.history()) {
      if (revision.cause() == Revision.Cause.MOMENT) {
        moments.addObject().put("number", revision.number()).put("name", revision.name());
      }
    }
    ArrayNode releases = head.putArray("releases");
    room.place().ifPresent(place -> ReleaseShelf.of(place).versions().forEach(releases::add));
    return new Frame(head);
  }

  /**
   * {@code {"ask": "version", "moment" or "release", "size"}} (the size by its name): the outlines
   * of that version's pieces as {@code pieces} tells drawings; none where that size was not in it.
   */
  private static Frame version(Room room, Window window, Question question)
      throws Question.Unclear {
    String size = question.text("size");
    Optional<SizedPattern> then =
        run(room, question)
            .flatMap(
                run ->
                    run.sizes().stream()
                        .filter(sized -> sized.size().name().equals(size))
                        .findFirst());
    ObjectNode head = Frame.answer();
    ArrayNode structures = head.putArray("structures");
    ArrayNode drawings = head.putArray("drawings");
    List<Ink> inks = new ArrayList<>();
    int count = 0;
    for (Piece piece : then.map(SizedPattern::pieces).orElse(List.of())) {
      Ink ink = Ink.outlineOf(piece);
      structures.addRawValue(new RawValue(ink.structure()));
      drawings.addArray().add(inks.size()).add(0).add(ink.numbers().length);
      inks.add(ink);
      count += ink.numbers().length;
    }
    float[] numbers = new float[count];
    int at = 0;
    for (Ink ink : inks) {
      System.arraycopy(ink.numbers(), 0, numbers, at, ink.numbers().length);
      at += ink.numbers().length;
    }
    return new Frame(head, numbers);
  }

  private static Optional<SizeRun> run(Room room, Question question) throws Question.Unclear {
    if (question.body().has("moment")) {
      int number = question.whole("moment");
      if (number < 0 || number > room.revision()) {
        throw new Question.Unclear("no-moment");
      }
      return Workbench.draft(
              new EditedFolder(
                  room.edited().under(), Past.texts(room.texts(), room.history(), number)))
          .evaluated()
          .run();
    }
    String version = question.text("release");
    Optional<ReleaseShelf> shelf = room.place().map(ReleaseShelf::of);
    if (shelf.isEmpty() || !shelf.get().versions().contains(version)) {
      throw new Question.Unclear("no-release");
    }
    return shelf.get().version(version, new ArrayList<>()).map(Release::run);
  }
}
