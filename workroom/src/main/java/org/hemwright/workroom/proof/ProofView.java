package org.hemwright.workroom.proof;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Quoted;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.report.CheckAnswer;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Asks the checks and tells every window what they found. */
public final class ProofView implements View {
  private Optional<Frame> last = Optional.empty();
  private boolean asking;
  private boolean again;

  /** What one check found. */
  private record Found(String check, Finding finding) {}

  @Override
  public Map<String, Answering> answers() {
    return Map.of("accept", ProofView::accept);
  }

  @Override
  public void opened(Room room, Window window) {
    if (last.isPresent()) {
      window.send(last.get());
    } else {
      ask(room);
    }
  }

  @Override
  public void revised(Room room, Revision revision) {
    if (revision.drafts()) {
      ask(room);
    } else if (asking) {
      again = true;
    } else {
      last.ifPresent(
          frame -> {
            frame.head().put("revision", revision.number());
            room.tell(frame);
          });
    }
  }

  private void ask(Room room) {
    if (asking) {
      again = true;
      return;
    }
    Optional<SizeRun> run = room.draft().evaluated().run();
    int revision = room.revision();
    if (run.isEmpty()) {
      told(room, new Frame(head(revision)));
      return;
    }
    asking = true;
    Evaluated evaluated = room.draft().evaluated();
    room.beside(
        () -> Workbench.check(evaluated, run.get()),
        answers -> {
          asking = false;
          told(room, frame(room, run.get(), revision, answers));
          if (again) {
            again = false;
            ask(room);
          }
        });
  }

  private void told(Room room, Frame frame) {
    last = Optional.of(frame);
    room.tell(frame);
  }

  private static ObjectNode head(int revision) {
    ObjectNode head = Frame.tell("checks").put("revision", revision);
    head.putArray("findings");
    return head;
  }

  private static Frame frame(Room room, SizeRun run, int revision, List<CheckAnswer> answers) {
    ObjectNode head = head(revision);
    List<Found> found = new ArrayList<>();
    int well = 0;
    for (CheckAnswer answer : answers) {
      boolean clear = true;
      for (Finding finding : answer.findings()) {
        if (finding.status() != Status.OK) {
          found.add(new Found(answer.id(), finding));
          clear = false;
        }
      }
      well += clear ? 1 : 0;
    }
    found.sort(Comparator.comparingInt(each -> rank(each.finding().status())));
    Wording wording = Workbench.wording(Optional.of(run)).showing(LedgerView.format(run));
    ArrayNode list = (ArrayNode) head.get("findings");
    FindingWords.write(found.stream().map(Found::finding).toList(), room, revision, wording, list);
    for (int i = 0; i < found.size(); i++) {
      ((ObjectNode) list.get(i)).put("check", found.get(i).check()).put("number", i + 1);
    }
    head.put("well", well).put("asked", answers.size());
    return new Frame(head);
  }

  private static int rank(Status status) {
    return switch (status) {
      case FAIL -> 0;
      case WARN -> 1;
      case ACCEPTED -> 2;
      case OK -> 3;
    };
  }

  /**
   * {@code {"ask": "accept", "check", "subject", "because"}}: writes the line that accepts a
   * finding, after the others that do or at the end of the document.
   */
  private static Frame accept(Room room, Window window, Question question) throws Question.Unclear {
    String because = question.text("because").strip().replace('\n', ' ');
    if (because.isEmpty()) {
      throw new Question.Unclear("reason-first");
    }
    String line =
        "accept "
            + question.text("check").strip()
            + " on "
            + question.text("subject").strip()
            + " because "
            + Quoted.words(because);
    if (line.indexOf('\n') >= 0) {
      throw new Question.Unclear("acceptance-line");
    }
    String text = room.text(PatternFolder.DOCUMENT);
    int at = text.length();
    Optional<Document> document = room.draft().document();
    if (document.isPresent()) {
      Source source = Source.of(document.get());
      for (Statement statement : document.get().statements()) {
        if (statement instanceof Statement.Accept accept) {
          at = source.lineEnd(source.line(accept.span().end()));
        }
      }
    }
    boolean after = at < text.length();
    String inserted =
        after ? "\n" + line : (text.isEmpty() || text.endsWith("\n") ? "\n" : "\n\n") + line + "\n";
    boolean done =
        room.change(List.of(new Splice(PatternFolder.DOCUMENT, at, "", inserted)), false, "accept")
            .isPresent();
    return new Frame(Frame.answer().put("changed", done));
  }
}
