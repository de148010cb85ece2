package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The list of every line that a document may hold, in Markdown, made from the table of forms.
 *
 * <p>It stands in {@code docs/language.md} between two marks; a test holds the page against it.
 */
public final class LanguageReference {
  /** The line after which the list stands. */
  public static final String BEGIN = "<!-- forms: begin -->";

  /** The line before which it ends. */
  public static final String END = "<!-- forms: end -->";

  private static final String HOW_TO_READ =
      """
      Plain words stand as they are; `<name>` is for you to fill. `[ ]` may be left out, `{ }` may be
      left out or said again and again, `( | )` is a choice of one.
      """;

  private LanguageReference() {}

  /** The whole list. */
  public static String markdown() {
    StringBuilder page = new StringBuilder(HOW_TO_READ);
    Arrays.stream(Where.values()).filter(Where::holdsLines).forEach(where -> section(where, page));
    page.append("\n### What stands in the places to fill\n");
    Arrays.stream(Where.values())
        .filter(where -> !where.holdsLines())
        .forEach(where -> section(where, page));
    return page.toString();
  }

  /**
   * A page with the list between its marks.
   *
   * @throws IllegalArgumentException where the page does not hold both marks in order
   */
  public static String within(String page) {
    int begin = page.indexOf(BEGIN);
    int end = page.indexOf(END);
    if (begin < 0 || end < begin) {
      throw new IllegalArgumentException("the page holds no " + BEGIN + " before " + END);
    }
    return page.substring(0, begin + BEGIN.length())
        + "\n\n"
        + markdown()
        + "\n"
        + page.substring(end);
  }

  private static void section(Where where, StringBuilder page) {
    List<Form> listed = new ArrayList<>();
    List<String> before = new ArrayList<>();
    for (Form form : Forms.at(where)) {
      if (where == form.where().iterator().next()) {
        listed.add(form);
      } else {
        before.add("`" + form.firstWords().get(0) + "`");
      }
    }
    page.append("\n").append(where.holdsLines() ? "### " : "#### ").append(where.title());
    page.append("\n");
    for (Form form : listed) {
      page.append("\n- `").append(notation(form.shape())).append("`\\\n  ");
      page.append(form.sentence());
      List<String> others = others(form.shape());
      if (!others.isEmpty()) {
        page.append(" See ").append(String.join(", ", others)).append('.');
      }
      page.append("\\\n  `").append(form.example()).append("`\n");
    }
    if (!before.isEmpty()) {
      page.append("\nHere too, as above: ").append(String.join(", ", before)).append(".\n");
    }
  }

  /** A form as a reader sees it: without the types of its slots. */
  static String notation(Shape shape) {
    if (shape instanceof Shape.Fixed fixed) {
      return fixed.text();
    } else if (shape instanceof Shape.Gap gap) {
      return gap.slot() == Slot.TEXT ? "\"" + gap.label() + "\"" : "<" + gap.label() + ">";
    } else if (shape instanceof Shape.Maybe maybe) {
      return "[" + notation(maybe.shape()) + "]";
    } else if (shape instanceof Shape.Many many) {
      return "{" + notation(many.shape()) + "}";
    } else if (shape instanceof Shape.Choice choice) {
      List<String> options = choice.options().stream().map(LanguageReference::notation).toList();
      return "(" + String.join(" | ", options) + ")";
    }
    StringBuilder text = new StringBuilder();
    for (Shape part : ((Shape.Sequence) shape).parts()) {
      String next = notation(part);
      boolean close = text.isEmpty() || next.startsWith(",") || next.equals("[,]");
      text.append(close ? "" : " ").append(next);
    }
    return text.toString().replace(" {,", "{,").replace(" [[,]", "[[,]");
  }

  /** The headings under which the forms of a form's slots are listed. */
  private static List<String> others(Shape shape) {
    List<String> titles = new ArrayList<>();
    collect(shape, titles);
    return titles.stream().distinct().map(title -> "*" + title + "*").toList();
  }

  private static void collect(Shape shape, List<String> titles) {
    if (shape instanceof Shape.Gap gap) {
      Optional<Where> forms =
          switch (gap.slot()) {
            case PATH, CHAIN, AXIS -> Optional.of(Where.PATH);
            case CONDITION -> Optional.of(Where.CONDITION);
            default -> gap.slot().forms();
          };
      forms.map(Where::title).ifPresent(titles::add);
    } else if (shape instanceof Shape.Maybe maybe) {
      collect(maybe.shape(), titles);
    } else if (shape instanceof Shape.Many many) {
      collect(many.shape(), titles);
    } else if (shape instanceof Shape.Choice choice) {
      choice.options().forEach(option -> collect(option, titles));
    } else if (shape instanceof Shape.Sequence sequence) {
      sequence.parts().forEach(part -> collect(part, titles));
    }
  }
}
