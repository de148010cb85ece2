package org.hemwright.booklet.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.hemwright.booklet.words.Telling;

/**
 * What may be written next in the designer's text: the name of a part or a step behind the signs of
 * a heading, and within braces the places and their names.
 *
 * @param from where in the text what is proposed would stand (UTF-16 units)
 * @param all in the order in which they are to be shown
 */
public record ProseProposals(int from, List<Proposal> all) {
  private static final ProseProposals NONE = new ProseProposals(0, List.of());

  public ProseProposals {
    all = List.copyOf(all);
  }

  /** What a proposal is of. */
  public enum Kind {
    PART,
    STEP,
    PLACE,
    TABLE,
    FIGURE,
    PICTURE,
    NUMBER,
    SIZE,
    VIEW,
    CLOTH
  }

  /**
   * A proposal.
   *
   * @param text what would be written
   * @param detail what it is, in a few words; may be empty
   * @param closes whether its place ends with it, so that the brace may follow
   */
  public record Proposal(String text, Kind kind, String detail, boolean closes) {}

  /**
   * The names that a text may use.
   *
   * @param parts what each part of the booklet is called, by its id, in order
   * @param steps what each step is called, by its id, in order
   */
  public record Names(
      Map<String, String> parts, Map<String, String> steps, Telling telling, Places places) {
    public Names {
      parts = new java.util.LinkedHashMap<>(parts);
      steps = new java.util.LinkedHashMap<>(steps);
    }

    /** By id, in the booklet's order; a copy. */
    @Override
    public Map<String, String> parts() {
      return new java.util.LinkedHashMap<>(parts);
    }

    /** By id, in the order of making; a copy. */
    @Override
    public Map<String, String> steps() {
      return new java.util.LinkedHashMap<>(steps);
    }
  }

  /**
   * What may follow a text.
   *
   * @param before the text up to the caret
   */
  public static ProseProposals at(String before, Names names) {
    int line = before.lastIndexOf('\n') + 1;
    String said = before.substring(line);
    if (said.matches("# .*")) {
      return named(line + 2, names.parts(), Kind.PART);
    }
    if (said.matches("## .*")) {
      boolean inSteps = ProseOutline.of(before).at(before.length()).part().equals("steps");
      return inSteps ? named(line + 3, names.steps(), Kind.STEP) : NONE;
    }
    int brace = before.lastIndexOf('{');
    if (brace < 0 || brace < before.lastIndexOf('}') || before.indexOf("\n\n", brace) >= 0) {
      return NONE;
    }
    return new Brace(names, before, brace + 1).proposals();
  }

  private static ProseProposals named(int from, Map<String, String> known, Kind kind) {
    List<Proposal> all = new ArrayList<>();
    known.forEach((id, title) -> all.add(new Proposal(id, kind, title, false)));
    return new ProseProposals(from, all);
  }

  /** Within braces. */
  private record Brace(Names names, String before, int start) {
    ProseProposals proposals() {
      String inside = before.substring(start);
      int blank = inside.indexOf(' ');
      if (blank < 0) {
        return new ProseProposals(start, kinds());
      }
      String rest = inside.substring(blank + 1);
      int from = start + blank + 1;
      return switch (inside.substring(0, blank)) {
        case "table" -> table(from, rest);
        case "figure" -> of(from, names.places().figures(), Kind.FIGURE, true);
        case "picture" -> of(from, names.places().pictures(), Kind.PICTURE, false);
        case "number" -> number(from, rest);
        case "stretch" -> of(from, fabrics(), Kind.CLOTH, true);
        case "for" -> condition(from, rest);
        default -> NONE;
      };
    }

    private static List<Proposal> kinds() {
      List<Proposal> all = new ArrayList<>();
      all.add(place("number ", "a number of the document", false));
      all.add(place("table ", "a table, in a paragraph of its own", false));
      all.add(place("figure ", "a drawing, in a paragraph of its own", false));
      all.add(place("picture ", "your picture, in a paragraph of its own", false));
      all.add(place("for ", "a sentence for some sizes, a view or a cloth", false));
      all.add(place("stretch ", "the least stretch that a cloth needs", false));
      all.add(place("title", "what the pattern is called", true));
      all.add(place("version", "its version", true));
      all.add(place("dated", "its date", true));
      all.add(place("by", "who made it", true));
      return all;
    }

    private static Proposal place(String text, String detail, boolean closes) {
      return new Proposal(text, Kind.PLACE, detail, closes);
    }

    private ProseProposals of(int from, List<String> known, Kind kind, boolean closes) {
      List<Proposal> all = new ArrayList<>();
      Map<String, String> steps = names.steps();
      for (String name : known) {
        all.add(new Proposal(name, kind, steps.getOrDefault(name, ""), closes));
      }
      return new ProseProposals(from, all);
    }

    private ProseProposals table(int from, String rest) {
      if (rest.startsWith("numbers ")) {
        int last = Math.max(rest.lastIndexOf(',') + 1, "numbers ".length());
        while (last < rest.length() && rest.charAt(last) == ' ') {
          last++;
        }
        return of(from + last, numbers(), Kind.NUMBER, true);
      }
      List<Proposal> all = new ArrayList<>(of(from, names.places().tables(), Kind.TABLE, true).all);
      all.add(
          new Proposal("numbers ", Kind.TABLE, "numbers of the document, a column each", false));
      return new ProseProposals(from, all);
    }

    private ProseProposals number(int from, String rest) {
      int in = rest.indexOf(" in ");
      return in < 0
          ? of(from, numbers(), Kind.NUMBER, true)
          : of(from + in + 4, names.telling().sizeNames(), Kind.SIZE, true);
    }

    private ProseProposals condition(int from, String rest) {
      if (rest.indexOf(':') >= 0) {
        return NONE;
      }
      if (rest.startsWith("sizes ") || rest.startsWith("size ")) {
        int to = rest.indexOf(" to ");
        int on = to < 0 ? rest.indexOf(' ') + 1 : to + 4;
        return of(from + on, names.telling().sizeNames(), Kind.SIZE, false);
      }
      if (rest.startsWith("view ")) {
        return of(from + 5, views(), Kind.VIEW, false);
      }
      if (rest.startsWith("cloth ")) {
        return of(from + 6, fabrics(), Kind.CLOTH, false);
      }
      List<Proposal> all = new ArrayList<>();
      all.add(place("sizes ", "from one size to another", false));
      if (views().size() > 1) {
        all.add(place("view ", "for one view", false));
      }
      if (fabrics().size() > 1) {
        all.add(place("cloth ", "for one cloth", false));
      }
      return new ProseProposals(from, all);
    }

    private List<String> views() {
      return names.telling().run().pattern().views().stream().map(view -> view.name()).toList();
    }

    private List<String> fabrics() {
      return names.telling().run().pattern().fabrics().stream().map(each -> each.name()).toList();
    }

    /** Numbers of the whole pattern first; those of pieces are said with their piece. */
    private List<String> numbers() {
      SortedSet<String> all = new TreeSet<>(names.telling().drawn().numbers().keySet());
      List<String> ordered = new ArrayList<>();
      all.stream().filter(name -> name.indexOf('.') < 0).forEach(ordered::add);
      all.stream().filter(name -> name.indexOf('.') >= 0).forEach(ordered::add);
      return ordered;
    }
  }
}
