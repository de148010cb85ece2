package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The one table of statement forms: all that a document can say.
 *
 * <p>The parser, the messages, completion, the editor's colours and the language reference read it;
 * a new statement is one new row.
 */
public final class Forms {
  private static final List<Form> ALL = all();
  private static final Map<Where, List<Form>> BY_PLACE = byPlace();
  private static final Map<Where, Map<String, List<Form>>> BY_FIRST_WORD = byFirstWord();

  private static final Set<String> FIXED = new TreeSet<>();

  static {
    ALL.forEach(form -> collectFixed(form.shape(), FIXED));
  }

  private Forms() {}

  private static List<Form> all() {
    List<Form> rows = new ArrayList<>(HeadingForms.ROWS);
    rows.addAll(NumberForms.ROWS);
    rows.addAll(DrawingForms.ROWS);
    rows.addAll(PathForms.ROWS);
    rows.addAll(PieceForms.ROWS);
    rows.addAll(ShapeForms.ROWS);
    rows.addAll(MakeForms.ROWS);
    rows.addAll(StepForms.ROWS);
    rows.addAll(StepClauseForms.ROWS);
    rows.addAll(TracedForms.ROWS);
    return List.copyOf(rows);
  }

  private static Map<Where, List<Form>> byPlace() {
    Map<Where, List<Form>> forms = new EnumMap<>(Where.class);
    for (Where where : Where.values()) {
      forms.put(where, ALL.stream().filter(form -> form.where().contains(where)).toList());
    }
    return forms;
  }

  private static Map<Where, Map<String, List<Form>>> byFirstWord() {
    Map<Where, Map<String, List<Form>>> words = new EnumMap<>(Where.class);
    BY_PLACE.forEach(
        (where, forms) -> {
          Map<String, List<Form>> byWord = new LinkedHashMap<>();
          for (Form form : forms) {
            for (String word : form.firstWords()) {
              byWord.computeIfAbsent(word, first -> new ArrayList<>()).add(form);
            }
          }
          words.put(where, byWord);
        });
    return words;
  }

  private static void collectFixed(Shape shape, Set<String> words) {
    if (shape instanceof Shape.Fixed fixed) {
      words.add(fixed.text());
    } else if (shape instanceof Shape.Sequence sequence) {
      sequence.parts().forEach(part -> collectFixed(part, words));
    } else if (shape instanceof Shape.Choice choice) {
      choice.options().forEach(option -> collectFixed(option, words));
    } else if (shape instanceof Shape.Maybe maybe) {
      collectFixed(maybe.shape(), words);
    } else if (shape instanceof Shape.Many many) {
      collectFixed(many.shape(), words);
    }
  }

  /** Whether some form has this fixed word or symbol. */
  public static boolean isFixed(String word) {
    return FIXED.contains(word);
  }

  /** Every fixed word of the forms, in alphabetical order; symbols left out. */
  public static List<String> fixedWords() {
    return FIXED.stream().filter(word -> Character.isLetter(word.charAt(0))).toList();
  }

  /** Every row, in the order of the language reference. */
  public static List<Form> rows() {
    return ALL;
  }

  /** The rows that may stand at a place or fill a slot, in the order in which they are tried. */
  public static List<Form> at(Where where) {
    return BY_PLACE.getOrDefault(where, List.of());
  }

  /** The rows that may stand at a place and start with a word. */
  public static List<Form> at(Where where, String firstWord) {
    return Collections.unmodifiableList(
        BY_FIRST_WORD.getOrDefault(where, Map.of()).getOrDefault(firstWord, List.of()));
  }

  /**
   * Whether a form of a place may start with a word, itself or in the forms that it starts with.
   */
  static boolean mayStart(Where where, String word) {
    return at(where).stream().anyMatch(form -> mayStart(form, word));
  }

  private static boolean mayStart(Form form, String word) {
    Shape first = form.shape().parts().get(0);
    return first instanceof Shape.Gap gap
        ? gap.slot().forms().filter(forms -> mayStart(forms, word)).isPresent()
        : form.firstWords().contains(word);
  }

  /** The words with which a line may start at a place. */
  public static List<String> firstWords(Where where) {
    return List.copyOf(BY_FIRST_WORD.getOrDefault(where, Map.of()).keySet());
  }
}
