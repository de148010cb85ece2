package org.hemwright.workroom.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Form;
import org.hemwright.draft.syntax.Forms;
import org.hemwright.draft.syntax.Where;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Keeps the texts of every window in step, and tells where things stand in them. */
public final class TextView implements View {
  /** An edit of more pieces than this is sent as several. */
  private static final int MOST_SPLICES = 10_000;

  /**
   * The window's own number of the edit that is being made; 0 while something else changes texts.
   */
  private int edit;

  @Override
  public Map<String, Answering> answers() {
    return Map.of("edit", this::edit, "text", TextView::whole, "forms", TextView::forms);
  }

  @Override
  public void opened(Room room, Window window) {
    window.send(said(room));
  }

  @Override
  public void revised(Room room, Revision revision) {
    ObjectNode head = Frame.tell("splices");
    head.put("by", room.asking().map(Window::number).orElse(0)).put("edit", edit);
    write(revision, head);
    ObjectNode hashes = head.putObject("after");
    hashes.put(PatternFolder.PROSE, 0);
    room.texts().forEach((file, text) -> hashes.put(file, text.hashCode()));
    room.tell(new Frame(head));
    room.tell(said(room));
  }

  private static void write(Revision revision, ObjectNode head) {
    head.put("revision", revision.number());
    ArrayNode splices = head.putArray("splices");
    for (Splice splice : revision.splices()) {
      splices
          .addObject()
          .put("file", splice.file())
          .put("at", splice.at())
          .put("length", splice.removed().length())
          .put("text", splice.inserted());
    }
  }

  /** Where things stand, and what is wrong with the words. */
  private static Frame said(Room room) {
    ObjectNode head = Frame.tell("said").put("revision", room.revision());
    ArrayNode places = head.putArray("places");
    room.draft().document().ifPresent(document -> Places.write(document, places));
    FindingWords.write(
        room.draft().evaluated().problems(),
        room,
        Workbench.wording(room.draft().evaluated().run()),
        head.putArray("problems"));
    return new Frame(head);
  }

  /**
   * {@code {"ask": "text", "file", "since"}}: the text as it stands; with {@code since}, also what
   * was {@code missed} since that revision, each as {@code splices} tell it.
   */
  private static Frame whole(Room room, Window window, Question question) throws Question.Unclear {
    String file = question.text("file");
    ObjectNode head = Frame.answer().put("file", file).put("text", room.text(file));
    head.put("revision", room.revision());
    ArrayNode missed = head.putArray("missed");
    int since = question.body().path("since").asInt(room.revision());
    for (Revision revision : room.history()) {
      if (revision.number() > since) {
        write(revision, missed.addObject());
      }
    }
    return new Frame(head);
  }

  /** The words of the table of forms: those that start a line, and all that are fixed. */
  private static Frame forms(Room room, Window window, Question question) {
    ObjectNode head = Frame.answer();
    ArrayNode first = head.putArray("first");
    ArrayNode fixed = head.putArray("fixed");
    for (Form form : Forms.rows()) {
      if (form.where().stream().anyMatch(Where::holdsLines)) {
        form.firstWords().forEach(first::add);
      }
    }
    Forms.fixedWords().forEach(fixed::add);
    return new Frame(head);
  }

  /**
   * {@code {"ask": "edit", "file", "base", "exactly", "edit", "joined", "name", "splices": [{"at",
   * "length", "text"}]}}: the splices are those of the text at revision {@code base}, all at once
   * and in order, none over another. What came elsewhere meanwhile is stepped over; where it
   * touches a splice, or, with {@code exactly}, where it is anywhere in this text, nothing is
   * changed and the answer says {@code late}. What is told of the change bears the window's own
   * number of it, {@code edit}.
   */
  private Frame edit(Room room, Window window, Question question) throws Question.Unclear {
    String file = question.text("file");
    int base = question.whole("base");
    boolean exactly = question.body().path("exactly").asBoolean();
    JsonNode asked = question.body().path("splices");
    if (!asked.isArray() || asked.size() > MOST_SPLICES) {
      throw new Question.Unclear("edit-list");
    }
    if (!room.texts().containsKey(file) && !file.equals(PatternFolder.PROSE)) {
      throw new Question.Unclear("no-text");
    }
    List<Range> ranges = new ArrayList<>();
    for (JsonNode each : asked) {
      ranges.add(
          new Range(
              each.path("at").asInt(-1),
              each.path("length").asInt(-1),
              each.path("text").asText()));
    }
    for (Revision revision : room.history()) {
      if (revision.number() > base) {
        for (Splice splice : revision.splices()) {
          if (splice.file().equals(file)) {
            if (exactly || ranges.stream().anyMatch(range -> range.touches(splice))) {
              return new Frame(Frame.answer().put("late", true));
            }
            ranges.replaceAll(range -> range.after(splice));
          }
        }
      }
    }
    List<Splice> splices = new ArrayList<>();
    String text = room.text(file);
    int shift = 0;
    int end = 0;
    for (Range range : ranges) {
      if (range.at() < end || range.length() < 0 || range.length() > text.length() - range.at()) {
        throw new Question.Unclear("edit-outside");
      }
      end = range.at() + range.length();
      splices.add(
          new Splice(file, range.at() + shift, text.substring(range.at(), end), range.text()));
      shift += range.text().length() - range.length();
    }
    edit = question.body().path("edit").asInt();
    try {
      Optional<Revision> made =
          room.change(
              splices,
              question.body().path("joined").asBoolean(),
              question.body().path("name").asText(""));
      return new Frame(
          Frame.answer().put("revision", made.map(Revision::number).orElse(room.revision())));
    } finally {
      edit = 0;
    }
  }

  /** A stretch of the text that gives way to another text. */
  private record Range(int at, int length, String text) {
    /** Whether a change that came first is within it or around it. */
    boolean touches(Splice splice) {
      int end = at + length;
      boolean overlaps = splice.at() < end && at < splice.at() + splice.removed().length();
      boolean within = at < splice.at() && splice.at() < end;
      return overlaps || within;
    }

    /** The same stretch after a change elsewhere. */
    Range after(Splice splice) {
      return new Range(splice.carried(at), length, text);
    }
  }
}
