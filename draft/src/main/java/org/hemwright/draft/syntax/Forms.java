package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

  private Forms() {}

  private static List<Form> all() {
    List<Form> rows = new ArrayList<>(HeadingForms.ROWS);
    rows.addAll(NumberForms.ROWS);
    rows.addAll(DrawingForms.ROWS);
    rows.addAll(PathForms.ROWS);
    rows.addAll(PieceForms.ROWS);
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

  /** The words with which a line may start at a place. */
  public static List<String> firstWords(Where where) {
    return List.copyOf(BY_FIRST_WORD.getOrDefault(where, Map.of()).keySet());
  }
}
