package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;

/**
 * Sets a document neatly: lines of a section indented by two blanks, lines that go on by two more,
 * neighbouring dials, lets, points, paths and seams in columns.
 *
 * <p>Words, numbers, units, comments and blank lines stay as she wrote them, and so does her choice
 * of where a line goes on. A line that could not be read is left as it is. Formatting what is
 * formatted changes nothing, and what a document says is the same before and after.
 */
public final class DocumentFormatter {
  private static final String INDENT = "  ";
  private static final Set<String> NUMBERS = Set.of("dial", "let");
  private static final Set<String> DRAWN = Set.of("point", "line", "curve", "arc", "path");
  private static final Set<String> AS_GLUED = Set.of("version", "dated", "accept");

  private final Source source;
  private final Spacing spacing;
  private final Set<Integer> unread;
  private final List<Line> lines = new ArrayList<>();
  private final List<String> out = new ArrayList<>();

  /** The lines that wait to be set in columns, by what they have in common. */
  private Columns columns = new Columns();

  private String waitingFor = "";
  private String waitingIndent = "";
  private final List<String> waitingComments = new ArrayList<>();

  private DocumentFormatter(Document document) {
    this.source = Source.of(document);
    this.spacing = new Spacing(source);
    this.unread =
        document.findings().stream()
            .filter(finding -> finding.status() == Status.FAIL)
            .map(Finding::origin)
            .flatMap(Optional::stream)
            .map(origin -> origin.line())
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The document's text, set neatly; its line ends are those of its first line. */
  public static String format(Document document) {
    return new DocumentFormatter(document).text();
  }

  private String text() {
    if (source.text().length() > DocumentReader.LONGEST_TEXT) {
      return source.text();
    }
    for (int number = 1; number <= source.lines(); number++) {
      lines.add(LineLexer.cut(source, number));
    }
    int index = 0;
    while (index < lines.size()) {
      index = lines.get(index).tokens().isEmpty() ? unsaid(index) : statement(index);
    }
    setColumns();
    while (!out.isEmpty() && out.get(out.size() - 1).isEmpty()) {
      out.remove(out.size() - 1);
    }
    String lineEnd = source.text().contains("\r\n") ? "\r\n" : "\n";
    return out.isEmpty() ? "" : String.join(lineEnd, out) + lineEnd;
  }

  /** A blank line, or one with a comment alone. */
  private int unsaid(int index) {
    setColumns();
    Line line = lines.get(index);
    String indent = line.atLeftEdge() || line.isBlank() ? "" : INDENT;
    out.add(line.slips().isEmpty() ? indent + comment(line) : raw(line));
    return index + 1;
  }

  private int statement(int index) {
    Written written = Written.at(lines, index);
    int next = written.last().number();
    List<Line> all = lines.subList(index, next);
    boolean asItIs =
        all.stream().anyMatch(line -> !line.slips().isEmpty() || unread.contains(line.number()));
    if (asItIs) {
      setColumns();
      all.forEach(line -> out.add(raw(line)));
    } else if (all.size() == 1) {
      single(written.first());
    } else {
      setColumns();
      String indent = indent(written.first());
      for (Line line : all) {
        out.add((indent + words(line) + gap(line) + comment(line)).stripTrailing());
        indent = indent(written.first()) + INDENT;
      }
    }
    return next;
  }

  private void single(Line line) {
    String word = line.tokens().get(0).text();
    String kind = NUMBERS.contains(word) ? "numbers" : DRAWN.contains(word) ? "drawn" : word;
    String indent = indent(line);
    if (!kind.equals(waitingFor) || !indent.equals(waitingIndent)) {
      setColumns();
      waitingFor = kind;
      waitingIndent = indent;
    }
    columns.add(cells(line));
    waitingComments.add(gap(line) + comment(line));
  }

  private void setColumns() {
    List<String> set = columns.lines();
    for (int i = 0; i < set.size(); i++) {
      out.add((waitingIndent + set.get(i) + waitingComments.get(i)).stripTrailing());
    }
    columns = new Columns();
    waitingComments.clear();
    waitingFor = "";
  }

  private List<String> cells(Line line) {
    List<Token> tokens = line.tokens();
    String word = tokens.get(0).text();
    List<Integer> cuts = new ArrayList<>();
    if (NUMBERS.contains(word)) {
      cut(tokens, "=", cuts);
      if (word.equals("dial")) {
        cut(tokens, "from", cuts);
        boolean worded = tokens.get(tokens.size() - 1).kind() == Token.Kind.TEXT;
        cuts.add(worded ? tokens.size() - 1 : tokens.size());
      }
    } else if (DRAWN.contains(word) || word.equals("seam")) {
      cuts.add(Math.min(2, tokens.size()));
    } else {
      return List.of(words(line));
    }
    cuts.add(tokens.size());
    List<String> cells = new ArrayList<>();
    int start = 0;
    for (int cut : cuts) {
      if (cut > start) {
        cells.add(spacing.of(tokens.subList(start, cut)));
        start = cut;
      }
    }
    return cells;
  }

  /** Cuts before the first token of a kind that can be the form's own: not its word or name. */
  private static void cut(List<Token> tokens, String fixed, List<Integer> cuts) {
    for (int i = 2; i < tokens.size(); i++) {
      if (tokens.get(i).says(fixed)) {
        cuts.add(i);
        return;
      }
    }
  }

  private String words(Line line) {
    List<Token> tokens = line.tokens();
    boolean glued = !tokens.isEmpty() && AS_GLUED.contains(tokens.get(0).text());
    return glued ? spacing.asGlued(tokens) : spacing.of(tokens);
  }

  private static String indent(Line line) {
    return line.atLeftEdge() ? "" : INDENT;
  }

  private static String gap(Line line) {
    return line.comment().isPresent() && !line.tokens().isEmpty() ? "  " : "";
  }

  private String comment(Line line) {
    return line.comment().map(source::text).map(String::stripTrailing).orElse("");
  }

  private String raw(Line line) {
    return source.text(new Span(line.start(), line.end())).stripTrailing();
  }
}
