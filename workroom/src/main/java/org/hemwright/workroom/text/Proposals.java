package org.hemwright.workroom.text;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.draft.syntax.Completion;
import org.hemwright.draft.syntax.Quoted;
import org.hemwright.draft.syntax.Source;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Answers what may be written next: words by the table of forms, names by the plan. */
public final class Proposals implements View {
  private static final Set<String> POINTS = Set.of("point", "axis", "point-rule");
  private static final Set<String> PATHS = Set.of("path", "edge-place", "axis");
  private static final Set<String> NUMBERS = Set.of("number", "number-rule");

  @Override
  public Map<String, Answering> answers() {
    return Map.of("complete", Proposals::complete);
  }

  /**
   * {@code {"ask": "complete", "at", "before"}}: {@code before} is the document as it stands in the
   * window, up to the caret.
   */
  private static Frame complete(Room room, Window window, Question question)
      throws Question.Unclear {
    String before = question.text("before");
    Completion completion = Completion.at(before, before.length());
    ObjectNode head = Frame.answer().put("from", completion.from());
    ArrayNode options = head.putArray("options");
    for (int i = 0; i < completion.words().size(); i++) {
      ObjectNode option = options.addObject();
      option.put("label", completion.words().get(i)).put("kind", "word");
      if (i < completion.examples().size()) {
        option.put("detail", completion.examples().get(i));
      }
    }
    new Names(room, before, completion).write(options);
    return new Frame(head);
  }

  /** The names that fit. */
  private record Names(Room room, String before, Completion completion) {
    void write(ArrayNode options) {
      Set<String> told = new LinkedHashSet<>();
      List<String> terms = completion.terms();
      if (terms.contains("member")) {
        members(options, told);
        return;
      }
      String owner = owner();
      boolean points = terms.stream().anyMatch(POINTS::contains);
      boolean paths = terms.stream().anyMatch(PATHS::contains);
      for (PlannedThing thing : things()) {
        if (thing.owner().equals(owner) && (thing.what().isPoint() ? points : paths)) {
          add(options, told, thing.name(), thing.what().isPoint() ? "point" : "line");
        }
      }
      if (points || paths || terms.contains("piece") || terms.contains("casing")) {
        pieces().forEach(name -> add(options, told, name, "piece"));
      }
      if (terms.stream().anyMatch(NUMBERS::contains)) {
        numbers(options, told, owner);
      }
      if (terms.contains("size") || terms.contains("sizes")) {
        room.draft().sizes().forEach(name -> add(options, told, Quoted.size(name), "size"));
      }
    }

    private void members(ArrayNode options, Set<String> told) {
      int end = completion.from() - 1;
      int start = end;
      while (start > 0
          && (Character.isLetterOrDigit(before.charAt(start - 1))
              || before.charAt(start - 1) == '_')) {
        start--;
      }
      String owner = before.substring(start, end);
      for (PlannedThing thing : things()) {
        if (thing.owner().equals(owner)) {
          add(options, told, thing.name(), thing.what().isPoint() ? "point" : "line");
        }
      }
    }

    private void numbers(ArrayNode options, Set<String> told, String owner) {
      Optional<SizeRun> run = room.draft().evaluated().run();
      if (run.isPresent() && !run.get().sizes().isEmpty()) {
        for (String name : run.get().sizes().get(0).numbers().keySet()) {
          if (name.indexOf('.') < 0) {
            add(options, told, name, "number");
          } else if (name.startsWith(owner + ".")) {
            add(options, told, name.substring(owner.length() + 1), "number");
          }
        }
      }
    }

    private List<PlannedThing> things() {
      return room.draft().evaluation().map(values -> values.plan().things()).orElse(List.of());
    }

    private Set<String> pieces() {
      Set<String> names = new LinkedHashSet<>();
      things().forEach(thing -> names.add(thing.owner()));
      return names;
    }

    /** The piece or part in which the caret stands. */
    private String owner() {
      Source source = new Source(PatternFolder.DOCUMENT, before);
      for (int line = source.lines(); line >= 1; line--) {
        String text = before.substring(source.lineStart(line), source.lineEnd(line));
        if (!text.isBlank() && !text.startsWith(" ") && !text.startsWith("#")) {
          String[] words = text.split(" +", 3);
          boolean owns = words[0].equals("piece") || words[0].equals("part");
          return owns && words.length > 1 ? words[1] : "";
        }
      }
      return "";
    }

    private static void add(ArrayNode options, Set<String> told, String name, String kind) {
      if (told.add(name)) {
        options.addObject().put("label", name).put("kind", kind);
      }
    }
  }
}
