package org.hemwright.draft.edit;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;

/** The dials and {@code let}s that a statement names. */
final class NamedNumbers {
  private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{N}_]*");

  private NamedNumbers() {}

  /** In the order in which the statement names them. */
  static List<Statement> in(Document document, Statement statement) {
    Set<String> words = new LinkedHashSet<>();
    Matcher matcher = WORD.matcher(Source.of(document).text(statement.span()));
    while (matcher.find()) {
      words.add(matcher.group());
    }
    Map<String, Statement> numbers = new LinkedHashMap<>();
    for (Statement each : document.statements()) {
      collect(each, numbers);
      if (each instanceof Statement.Section section
          && section.span().start() <= statement.span().start()) {
        boolean around =
            section.body().stream().anyMatch(line -> line.span().equals(statement.span()));
        if (around) {
          section.body().forEach(line -> collect(line, numbers));
        }
      }
    }
    return words.stream()
        .filter(numbers::containsKey)
        .map(numbers::get)
        .filter(number -> !number.span().equals(statement.span()))
        .toList();
  }

  private static void collect(Statement statement, Map<String, Statement> numbers) {
    if (statement instanceof Statement.Dial dial) {
      numbers.put(dial.name().text(), dial);
    } else if (statement instanceof Statement.Let let) {
      numbers.put(let.name().text(), let);
    }
  }
}
