package org.hemwright.workroom.making;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.prose.ProseOutline;
import org.hemwright.booklet.prose.ProseProposals;
import org.hemwright.booklet.write.PictureCheck;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.keep.OwnPictures;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Helps to write the booklet's words, and puts her own pictures in. */
public final class ProseView implements View {
  private final MakingView making;

  /** Beside the view that makes the booklet. */
  public ProseView(MakingView making) {
    this.making = making;
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "complete_words", this::complete,
        "words_where", ProseView::where,
        "words_for", this::wordsFor,
        "put_picture", this::put,
        "take_out_picture", this::takeOut);
  }

  /**
   * {@code {"ask": "complete_words", "before"}}: what may be written behind the text up to the
   * caret; nothing before the booklet was made.
   */
  private Frame complete(Room room, Window window, Question question) throws Question.Unclear {
    ObjectNode head = Frame.answer();
    ArrayNode options = head.putArray("options");
    Optional<BookletMaking> made = making.last();
    if (made.isPresent()) {
      ProseProposals proposals = made.get().proposals(question.text("before"));
      head.put("from", proposals.from());
      for (ProseProposals.Proposal each : proposals.all()) {
        options
            .addObject()
            .put("label", each.text())
            .put("kind", each.kind().name().toLowerCase(Locale.ROOT))
            .put("detail", each.detail())
            .put("closes", each.closes());
      }
    }
    return new Frame(head);
  }

  /** {@code {"ask": "words_where", "before"}}: the part and the step that the caret stands in. */
  private static Frame where(Room room, Window window, Question question) throws Question.Unclear {
    String before = question.text("before");
    ProseOutline.Where where = ProseOutline.of(before).at(before.length());
    return new Frame(Frame.answer().put("part", where.part()).put("step", where.step()));
  }

  /**
   * {@code {"ask": "words_for", "part", "step"}}: makes room for words of a part or a step, and
   * answers where the caret goes.
   */
  private Frame wordsFor(Room room, Window window, Question question) throws Question.Unclear {
    BookletMaking made = making.last().orElseThrow(() -> new Question.Unclear("booklet-not-made"));
    String text = room.text(PatternFolder.PROSE);
    ProseOutline.Spot spot =
        made.spot(
            text,
            new ProseOutline.Where(question.text("part"), question.body().path("step").asText("")));
    if (!spot.insert().isEmpty()) {
      room.change(
          List.of(new Splice(PatternFolder.PROSE, spot.at(), "", spot.insert())), false, "");
    }
    return new Frame(Frame.answer().put("caret", spot.caret()).put("revision", room.revision()));
  }

  /**
   * {@code {"ask": "put_picture", "name", "type", "base64"}}: puts a picture of hers in the place
   * of the drawing of that name.
   */
  private Frame put(Room room, Window window, Question question) throws Question.Unclear {
    String name = name(question);
    Picture.Kind kind = null;
    for (Picture.Kind each : Picture.Kind.values()) {
      kind = each.mime().equals(question.text("type")) ? each : kind;
    }
    if (kind == null) {
      throw new Question.Unclear("picture-kind");
    }
    byte[] bytes;
    try {
      bytes = Base64.getDecoder().decode(question.text("base64"));
    } catch (IllegalArgumentException torn) {
      throw new Question.Unclear("picture-pieces");
    }
    String file = PatternFolder.PICTURES + "/" + name + "." + kind.ending();
    Optional<Finding> problem = PictureCheck.problem(new Picture(file, kind, bytes));
    if (problem.isPresent()) {
      throw new Question.Unclear(
          "finding", Workbench.wording(Optional.empty()).message(problem.get()));
    }
    try {
      pictures(room).put(name, kind.ending(), bytes);
    } catch (IOException full) {
      throw new Question.Unclear("picture-unwritten", String.valueOf(full.getMessage()));
    }
    making.picturesChanged();
    return new Frame(Frame.answer());
  }

  /** {@code {"ask": "take_out_picture", "name"}}: lays her picture aside for our drawing. */
  private Frame takeOut(Room room, Window window, Question question) throws Question.Unclear {
    try {
      pictures(room).takeOut(name(question));
    } catch (IOException stuck) {
      throw new Question.Unclear("picture-unmoved", String.valueOf(stuck.getMessage()));
    }
    making.picturesChanged();
    return new Frame(Frame.answer());
  }

  private static String name(Question question) throws Question.Unclear {
    String name = question.text("name");
    if (!name.matches("[\\p{L}\\p{N}_-]+")) {
      throw new Question.Unclear("picture-name");
    }
    return name;
  }

  private static OwnPictures pictures(Room room) throws Question.Unclear {
    return new OwnPictures(room.place().orElseThrow(() -> new Question.Unclear("not-on-disk")));
  }
}
