package org.hemwright.workroom.making;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Shows the booklet of the pattern as it stands, and makes it again while she writes. */
public final class MakingView implements View {
  /**
   * A booklet that was made.
   *
   * @param drafts how often the pattern had been drafted anew by then
   * @param pictures how often her pictures had been changed by then
   */
  private record Made(int drafts, int pictures, BookletMaking making) {}

  private final Set<Window> waiting = new LinkedHashSet<>();
  private Optional<Made> last = Optional.empty();
  private boolean making;
  private int drafts;
  private int pictures;

  @Override
  public Map<String, Answering> answers() {
    return Map.of("booklet", this::booklet);
  }

  @Override
  public void revised(Room room, Revision revision) {
    drafts += revision.drafts() ? 1 : 0;
  }

  @Override
  public void closed(Room room, Window window) {
    waiting.remove(window);
  }

  /** The booklet as it was made last, of whatever the document was then. */
  Optional<BookletMaking> last() {
    return last.map(Made::making);
  }

  /** Her pictures are others than when the booklet was made. */
  void picturesChanged() {
    pictures++;
  }

  /**
   * {@code {"ask": "booklet"}}: told by and by as {@code booklet}; figures that this window has not
   * as yet come with it.
   */
  private Frame booklet(Room room, Window window, Question question) throws Question.Unclear {
    if (room.draft().evaluated().run().isEmpty()) {
      throw new Question.Unclear("nothing-to-make");
    }
    waiting.add(window);
    if (!making) {
      make(room);
    }
    return new Frame(Frame.answer());
  }

  private void make(Room room) {
    Optional<SizeRun> run = room.draft().evaluated().run();
    if (run.isEmpty()) {
      waiting.clear();
      return;
    }
    making = true;
    PatternFolder folder = room.edited();
    Evaluated pattern = room.draft().evaluated();
    int revision = room.revision();
    int drafted = drafts;
    int pictured = pictures;
    Optional<String> prose =
        Optional.of(room.text(PatternFolder.PROSE)).filter(text -> !text.isEmpty());
    Optional<BookletMaking> known =
        last.filter(each -> each.drafts() == drafted && each.pictures() == pictured)
            .map(Made::making);
    Set<Window> asked = Set.copyOf(waiting);
    room.atLength(
        () -> known.map(each -> each.with(prose)).orElseGet(() -> anew(pattern, folder)),
        made -> {
          making = false;
          last = Optional.of(new Made(drafted, pictured, made));
          asked.forEach(window -> window.send(told(room, window, run.get(), revision, made)));
          if (revision == room.revision() && pictured == pictures) {
            waiting.removeAll(asked);
          }
          if (!waiting.isEmpty()) {
            make(room);
          }
        });
  }

  private static BookletMaking anew(Evaluated drafted, PatternFolder folder) {
    Evaluated whole = Workbench.withBooklet(drafted, folder);
    return Workbench.booklet(whole, whole.run().orElseThrow(), Optional.empty(), List.of(), "");
  }

  /** The figures that a window has. */
  private static final class Shown {
    private Set<String> keys = Set.of();
  }

  private static Frame told(
      Room room, Window window, SizeRun run, int revision, BookletMaking made) {
    ObjectNode head = Frame.tell("booklet").put("revision", revision);
    ArrayNode sections = head.putArray("sections");
    ArrayNode figures = head.putArray("pictures");
    Shown shown = window.kept(Shown.class, Shown::new);
    BlockJson blocks = new BlockJson(made.booklet().facts(), figures, shown.keys);
    ObjectNode cover = sections.addObject().put("id", "cover");
    blocks.words(cover.putArray("title"), made.booklet().title());
    blocks.write(cover.putArray("blocks"), made.booklet().cover());
    for (Section section : made.booklet().sections()) {
      ObjectNode one = sections.addObject().put("id", section.id());
      blocks.words(one.putArray("title"), section.title());
      blocks.write(one.putArray("blocks"), section.blocks());
    }
    shown.keys = blocks.keys();
    FindingWords.write(
        made.findings(),
        room,
        revision,
        Workbench.wording(Optional.of(run)),
        head.putArray("findings"));
    return new Frame(head);
  }
}
