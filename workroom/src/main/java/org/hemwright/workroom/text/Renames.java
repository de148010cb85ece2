package org.hemwright.workroom.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.edit.Renaming;
import org.hemwright.draft.syntax.Document;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Gives things other names wherever the document says them. */
public final class Renames implements View {
  private static final Set<String> NUMBERS = Set.of("number", "dial", "let");

  @Override
  public Map<String, Answering> answers() {
    return Map.of("rename", Renames::rename);
  }

  /** {@code {"ask": "rename", "kind", "piece", "name", "to"}}: {@code {"changed", "name"}}. */
  private static Frame rename(Room room, Window window, Question question) throws Question.Unclear {
    Document document =
        room.draft()
            .document()
            .orElseThrow(() -> new Question.Unclear("there is no document as yet"));
    String kind = question.text("kind");
    boolean piece = kind.equals("piece");
    Renaming renaming =
        new Renaming(
            piece ? "" : question.text("piece"),
            piece ? question.text("piece") : question.text("name"),
            NUMBERS.contains(kind));
    Optional<String> after =
        renaming.to(
            document,
            question.text("to"),
            text -> room.tried(PatternFolder.DOCUMENT, text).evaluated().problems());
    boolean changed =
        after.isPresent()
            && room.change(
                    List.of(
                        Splice.between(
                            PatternFolder.DOCUMENT,
                            room.text(PatternFolder.DOCUMENT),
                            after.get())),
                    false,
                    "rename")
                .isPresent();
    return new Frame(
        Frame.answer()
            .put("changed", changed)
            .put("name", question.text("to").strip().replaceAll("[ -]+", "_")));
  }
}
