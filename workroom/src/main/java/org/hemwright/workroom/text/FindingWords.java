package org.hemwright.workroom.text;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import org.hemwright.draft.syntax.Source;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.TextEdit;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.workroom.history.Past;
import org.hemwright.workroom.room.Room;

/** Findings as windows show them: in words, with their place in the text and on the drawing. */
public final class FindingWords {
  private FindingWords() {}

  /**
   * Adds findings about the texts as they stand to a list.
   *
   * @param wording in which edition lengths are said
   */
  public static void write(List<Finding> findings, Room room, Wording wording, ArrayNode list) {
    write(findings, room.texts(), room.revision(), wording, list);
  }

  /**
   * Adds findings about the texts as they stood at an earlier revision to a list.
   *
   * @param wording in which edition lengths are said
   */
  public static void write(
      List<Finding> findings, Room room, int revision, Wording wording, ArrayNode list) {
    write(findings, Past.texts(room.texts(), room.history(), revision), revision, wording, list);
  }

  /**
   * Adds findings to a list.
   *
   * @param texts what they are about, by file; offsets are of these
   * @param revision at which the texts stood so
   * @param wording in which edition lengths are said
   */
  public static void write(
      List<Finding> findings,
      SortedMap<String, String> texts,
      int revision,
      Wording wording,
      ArrayNode list) {
    for (Finding finding : findings) {
      ObjectNode words = list.addObject();
      words.put("code", finding.code());
      words.put("status", finding.status().name().toLowerCase(Locale.ROOT));
      words.put("subject", finding.subject());
      words.put("message", wording.message(finding));
      words.put("mend", wording.mend(finding));
      finding.reason().ifPresent(reason -> words.put("because", reason));
      ArrayNode sizes = words.putArray("sizes");
      finding.sizes().forEach(sizes::add);
      words.put("revision", revision);
      finding
          .origin()
          .ifPresent(origin -> place(words, origin, texts.getOrDefault(origin.file(), "")));
      finding.places().stream()
          .filter(at -> at.point().isPresent())
          .findFirst()
          .ifPresent(at -> pin(words, at));
      finding.edit().ifPresent(edit -> mend(words, edit));
    }
  }

  private static void place(ObjectNode words, Origin origin, String text) {
    Source source = new Source(origin.file(), text);
    if (origin.line() > source.lines()) {
      return;
    }
    int from =
        Math.min(
            source.lineStart(origin.line()) + origin.column() - 1, source.lineEnd(origin.line()));
    int to = from;
    while (to < text.length()
        && (Character.isLetterOrDigit(text.charAt(to)) || text.charAt(to) == '_')) {
      to++;
    }
    words.put("file", origin.file());
    words.put("line", origin.line());
    words.put("from", from);
    words.put("to", Math.max(to, Math.min(from + 1, source.lineEnd(origin.line()))));
  }

  private static void pin(ObjectNode words, Place at) {
    Optional<String> piece = at.piece();
    piece.ifPresent(name -> words.put("piece", name));
    at.point().ifPresent(point -> words.put("x", point.x()).put("y", point.y()));
  }

  private static void mend(ObjectNode words, TextEdit edit) {
    words
        .putObject("edit")
        .put("file", edit.file())
        .put("at", edit.offset())
        .put("length", edit.length())
        .put("text", edit.replacement());
  }
}
