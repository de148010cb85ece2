package org.hemwright.workroom.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.draft.edit.Renaming;
import org.hemwright.draft.syntax.Document;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/**
 * Gives things other names wherever the document says them, and the booklet and the tables beside
 * it; in one revision, after what will change was shown.
 */
public final class Renames implements View {
  private static final Set<String> NUMBERS = Set.of("number", "dial", "let");
  private static final int MOST_PERHAPS = 60;

  @Override
  public Map<String, Answering> answers() {
    return Map.of("rename", Renames::rename);
  }

  /** What a renaming comes to: each text as it would be, and what may be meant as well. */
  private record Renamed(
      SortedMap<String, String> texts,
      NameBeside beside,
      SortedMap<String, List<NameBeside.Place>> perhaps) {}

  /**
   * {@code {"ask": "rename", "kind", "piece", "name", "to", "also": [id], "write"}}. The answer:
   * {@code {"name", "changed", "why", "lines": [{"file", "line", "before", "after"}], "perhaps":
   * [{"id", "file", "line", "before", "after"}], "pictures": [[file, name]]}}: the lines that
   * change, and those in running words that she may want changed too, by their {@code id} in {@code
   * also}. Nothing is changed unless she says to write; {@code why} tells what stands against it.
   */
  private static Frame rename(Room room, Window window, Question question) throws Question.Unclear {
    Document document =
        room.draft().document().orElseThrow(() -> new Question.Unclear("no-document"));
    String kind = question.text("kind");
    boolean piece = kind.equals("piece");
    Renaming renaming =
        new Renaming(
            piece ? "" : question.text("piece"),
            piece ? question.text("piece") : question.text("name"),
            NUMBERS.contains(kind));
    String to = Renaming.spelled(question.text("to"));
    ObjectNode head = Frame.answer().put("name", to).put("changed", false);
    Optional<Renaming.Against> against = renaming.against(document, to);
    Optional<String> after =
        against.isPresent()
            ? Optional.empty()
            : renaming.to(
                document,
                to,
                text -> room.tried(PatternFolder.DOCUMENT, text).evaluated().problems());
    if (after.isEmpty()) {
      String why = against.map(each -> each.name().toLowerCase(Locale.ROOT)).orElse("unfollowed");
      return new Frame(head.put("why", why));
    }
    Renamed renamed = renamed(room, renaming, kind, to, after.get());
    Set<String> also = new HashSet<>();
    for (JsonNode each : question.body().path("also")) {
      also.add(each.asText());
    }
    tell(room, renamed, head);
    if (question.body().path("write").asBoolean()) {
      head.put("changed", write(room, renamed, also));
    }
    return new Frame(head);
  }

  private static Renamed renamed(
      Room room, Renaming renaming, String kind, String to, String document) {
    NameBeside.Kind of =
        kind.equals("piece")
            ? NameBeside.Kind.PIECE
            : kind.equals("edge")
                ? NameBeside.Kind.EDGE
                : renaming.number() ? NameBeside.Kind.NUMBER : NameBeside.Kind.OTHER;
    Map<String, String> steps = steps(room.draft(), room.tried(PatternFolder.DOCUMENT, document));
    NameBeside beside = new NameBeside(renaming.owner(), renaming.name(), to, of, steps);
    SortedMap<String, String> texts = new TreeMap<>();
    SortedMap<String, List<NameBeside.Place>> perhaps = new TreeMap<>();
    room.texts()
        .forEach(
            (file, text) -> {
              String now =
                  file.equals(PatternFolder.DOCUMENT)
                      ? document
                      : NameBeside.changed(text, beside.said(file, text));
              texts.put(file, now);
              perhaps.put(file, beside.perhaps(file, now));
            });
    return new Renamed(texts, beside, perhaps);
  }

  /** The steps that take their names from what is renamed. */
  private static Map<String, String> steps(LiveDraft before, LiveDraft after) {
    List<String> old = stepNames(before);
    List<String> now = stepNames(after);
    Map<String, String> steps = new HashMap<>();
    for (int i = 0; i < old.size() && old.size() == now.size(); i++) {
      if (!old.get(i).equals(now.get(i))) {
        steps.put(old.get(i), now.get(i));
      }
    }
    return steps;
  }

  private static List<String> stepNames(LiveDraft draft) {
    return draft.evaluated().run().stream()
        .flatMap(run -> run.pattern().making().steps().stream())
        .map(step -> step.id())
        .toList();
  }

  private static void tell(Room room, Renamed renamed, ObjectNode head) {
    ArrayNode lines = head.putArray("lines");
    ArrayNode perhaps = head.putArray("perhaps");
    renamed.texts.forEach(
        (file, now) -> {
          List<String> before = List.of(room.text(file).split("\n", -1));
          List<String> after = List.of(now.split("\n", -1));
          for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
            if (!before.get(i).equals(after.get(i))) {
              line(lines, file, i + 1, before.get(i), after.get(i));
            }
          }
        });
    renamed.perhaps.forEach(
        (file, places) -> {
          for (NameBeside.Place place : places) {
            String text = renamed.texts.getOrDefault(file, "");
            int start = text.lastIndexOf('\n', place.at() - 1) + 1;
            int end = text.indexOf('\n', place.at());
            String line = text.substring(start, end < 0 ? text.length() : end);
            NameBeside.Place here =
                new NameBeside.Place(place.at() - start, place.length(), place.text());
            int number = (int) text.substring(0, start).chars().filter(c -> c == '\n').count() + 1;
            if (perhaps.size() < MOST_PERHAPS) {
              line(perhaps, file, number, line, NameBeside.changed(line, List.of(here)))
                  .put("id", id(file, place));
            }
          }
        });
    ArrayNode pictures = head.putArray("pictures");
    for (String picture : room.edited().pictures()) {
      int dot = picture.lastIndexOf('.');
      String step = dot < 0 ? null : renamed.beside.steps().get(picture.substring(0, dot));
      if (step != null) {
        pictures.addArray().add(picture).add(step + picture.substring(dot));
      }
    }
  }

  private static ObjectNode line(
      ArrayNode to, String file, int number, String before, String after) {
    return to.addObject()
        .put("file", file)
        .put("line", number)
        .put("before", before.strip())
        .put("after", after.strip());
  }

  private static String id(String file, NameBeside.Place place) {
    return file + ":" + place.at();
  }

  private static boolean write(Room room, Renamed renamed, Set<String> also) {
    List<Splice> splices = new ArrayList<>();
    renamed.texts.forEach(
        (file, now) -> {
          List<NameBeside.Place> chosen =
              renamed.perhaps.getOrDefault(file, List.of()).stream()
                  .filter(place -> also.contains(id(file, place)))
                  .toList();
          String after = NameBeside.changed(now, chosen);
          if (!after.equals(room.text(file))) {
            splices.add(Splice.between(file, room.text(file), after));
          }
        });
    return !splices.isEmpty() && room.change(splices, false, "rename").isPresent();
  }
}
