package org.hemwright.workroom.making;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Shows the booklet of the pattern as it stands. */
public final class MakingView implements View {
  @Override
  public Map<String, Answering> answers() {
    return Map.of("booklet", MakingView::booklet);
  }

  /** {@code {"ask": "booklet"}}: told by and by as {@code booklet}. */
  private static Frame booklet(Room room, Window window, Question question)
      throws Question.Unclear {
    SizeRun run =
        room.draft()
            .evaluated()
            .run()
            .orElseThrow(() -> new Question.Unclear("there is nothing to make yet"));
    PatternFolder folder = room.edited();
    int revision = room.revision();
    room.atLength(
        () -> Workbench.booklet(Workbench.evaluate(folder), run, Optional.empty(), List.of(), ""),
        made -> window.send(told(room, run, revision, made)));
    return new Frame(Frame.answer());
  }

  private static Frame told(Room room, SizeRun run, int revision, BookletMaking made) {
    ObjectNode head = Frame.tell("booklet").put("revision", revision);
    ArrayNode sections = head.putArray("sections");
    ArrayNode pictures = head.putArray("pictures");
    BlockJson blocks = new BlockJson(made.booklet().facts(), pictures);
    for (Section section : made.booklet().sections()) {
      ObjectNode one = sections.addObject().put("id", section.id());
      blocks.words(one.putArray("title"), section.title());
      blocks.write(one.putArray("blocks"), section.blocks());
    }
    FindingWords.write(
        made.findings(), room, Workbench.wording(Optional.of(run)), head.putArray("findings"));
    return new Frame(head);
  }
}
