package org.hemwright.workroom.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hemwright.draft.syntax.DocumentFormatter;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Sets the document neatly when she asks for it, in one revision that one undo takes back. */
public final class Neatness implements View {
  @Override
  public Map<String, Answering> answers() {
    return Map.of("set_neatly", Neatness::setNeatly);
  }

  /** {@code {"ask": "set_neatly"}}; the answer says in {@code lines} how many changed. */
  private static Frame setNeatly(Room room, Window window, Question question) {
    String file = PatternFolder.DOCUMENT;
    String text = room.text(file);
    String neat = DocumentFormatter.format(DocumentReader.read(file, text));
    List<Splice> splices = splices(file, text, neat);
    if (!splices.isEmpty()) {
      room.change(splices, false, "neat");
    }
    return new Frame(Frame.answer().put("lines", splices.size()));
  }

  /**
   * A change for each line that is not as it will be, so that a caret in any other line stays. The
   * formatter leaves where lines end to her.
   */
  static List<Splice> splices(String file, String text, String neat) {
    String[] before = text.split("\n", -1);
    String[] after = neat.split("\n", -1);
    if (text.equals(neat)) {
      return List.of();
    }
    if (before.length != after.length) {
      return List.of(Splice.between(file, text, neat));
    }
    List<Splice> splices = new ArrayList<>();
    int at = 0;
    for (int line = 0; line < before.length; line++) {
      if (!before[line].equals(after[line])) {
        Splice within = Splice.between(file, before[line], after[line]);
        splices.add(new Splice(file, at + within.at(), within.removed(), within.inserted()));
      }
      at += after[line].length() + 1;
    }
    return splices;
  }
}
