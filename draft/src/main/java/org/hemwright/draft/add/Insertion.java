package org.hemwright.draft.add;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;

/** Puts new lines where she would: with their like, in the columns of the line above. */
final class Insertion {
  private final Document document;
  private final Source source;

  Insertion(Document document) {
    this.document = document;
    this.source = Source.of(document);
  }

  /**
   * The document with new lines.
   *
   * @param section the piece in which points, lines and notches stand; absent where none do
   */
  Optional<String> with(List<NewLine> lines, Optional<Statement.PieceSection> section) {
    String text = document.text();
    List<String> under = new ArrayList<>();
    Span after = new Span(0, 0);
    for (NewLine line : lines) {
      if (line.place() == NewLine.Place.PIECE
          || line.place() == NewLine.Place.SEAM
          || line.place() == NewLine.Place.VIEW
          || line.place() == NewLine.Place.LEFT_NUMBER) {
        after = left(line.place());
        boolean apart = line.place() == NewLine.Place.PIECE || line.place() == NewLine.Place.VIEW;
        under.add((apart ? "\n" : "") + line.text());
      } else if (line.place() == NewLine.Place.UNDER) {
        under.add("  " + line.text());
      }
    }
    if (!under.isEmpty()) {
      int at = lineEnd(after);
      return Optional.of(
          text.substring(0, at) + "\n" + String.join("\n", under) + text.substring(at));
    }
    if (section.isEmpty()) {
      return Optional.empty();
    }
    List<Integer> places = new ArrayList<>();
    List<String> put = new ArrayList<>();
    for (NewLine line : lines) {
      Optional<Statement> like = like(section.get(), line.place());
      places.add(lineEnd(like.map(Statement::span).orElse(fallback(section.get(), line.place()))));
      put.add("\n  " + like.map(each -> aligned(each, line.text())).orElse(line.text()));
    }
    StringBuilder all = new StringBuilder();
    int from = 0;
    for (int at : places.stream().distinct().sorted().toList()) {
      all.append(text, from, at);
      for (int i = 0; i < places.size(); i++) {
        if (places.get(i) == at) {
          all.append(put.get(i));
        }
      }
      from = at;
    }
    return Optional.of(all.append(text, from, text.length()).toString());
  }

  /** The document with a line at the end of a section. */
  String within(Statement.Section section, String line) {
    int at = lineEnd(end(section));
    return document.text().substring(0, at) + "\n  " + line + document.text().substring(at);
  }

  private int lineEnd(Span span) {
    return source.lineEnd(source.line(StrictMath.max(span.start(), span.end() - 1)));
  }

  /** After which section a new one at the left edge stands. */
  private Span left(NewLine.Place place) {
    Span last = new Span(0, 0);
    Span own = new Span(0, 0);
    for (Statement each : document.statements()) {
      boolean piece =
          each instanceof Statement.PieceSection || each instanceof Statement.PartSection;
      boolean number =
          each instanceof Statement.Let
              || each instanceof Statement.Dial
              || each instanceof Statement.Solve;
      boolean like =
          place == NewLine.Place.PIECE
              ? piece
              : place == NewLine.Place.SEAM
                  ? each instanceof Statement.SeamSection
                  : place == NewLine.Place.VIEW ? each instanceof Statement.ViewSection : number;
      boolean before =
          place == NewLine.Place.VIEW
              && (each instanceof Statement.SeamSection || each instanceof Statement.Elastic);
      if (piece || before || each instanceof Statement.Heading) {
        last = end(each);
      }
      if (like) {
        own = end(each);
      }
    }
    return own.end() > 0 ? own : last;
  }

  private static Span end(Statement statement) {
    if (statement instanceof Statement.Section section && !section.body().isEmpty()) {
      return section.body().get(section.body().size() - 1).span();
    }
    return statement.span();
  }

  /** The last of its like: of points and lines, those above the outline, where there are any. */
  private static Optional<Statement> like(Statement.PieceSection section, NewLine.Place place) {
    Optional<Statement> above = Optional.empty();
    Optional<Statement> last = Optional.empty();
    boolean outlined = false;
    for (Statement each : section.body()) {
      boolean like =
          switch (place) {
            case POINT -> each instanceof Statement.Point;
            case PATH -> each instanceof Statement.Path;
            case NUMBER -> each instanceof Statement.Let;
            default -> each instanceof Statement.NotchAt;
          };
      outlined |= each instanceof Statement.Outline;
      if (like) {
        last = Optional.of(each);
        above = outlined ? above : last;
      }
    }
    return place == NewLine.Place.NOTCH || above.isEmpty() ? last : above;
  }

  private static Span fallback(Statement.PieceSection section, NewLine.Place place) {
    Span last = section.span();
    for (Statement each : section.body()) {
      boolean before =
          switch (place) {
            case NUMBER -> each instanceof Statement.Cut;
            case POINT -> each instanceof Statement.Cut || each instanceof Statement.Let;
            case PATH ->
                each instanceof Statement.Cut
                    || each instanceof Statement.Let
                    || each instanceof Statement.Point;
            default -> true;
          };
      if (before) {
        last = each.span();
      }
    }
    return last;
  }

  /** The line with as many blanks after its name as the line above has, where that lines up. */
  private String aligned(Statement above, String text) {
    String[] words = text.split(" ", 3);
    String line = source.text(above.span());
    if (words.length < 3 || !line.startsWith(words[0] + " ")) {
      return text;
    }
    int name = words[0].length();
    while (name < line.length() && line.charAt(name) == ' ') {
      name++;
    }
    int rule = line.indexOf(' ', name);
    if (rule < 0) {
      return text;
    }
    while (rule < line.length() && line.charAt(rule) == ' ') {
      rule++;
    }
    String start = words[0] + " ".repeat(name - words[0].length()) + words[1];
    boolean lined = line.charAt(rule - 2) == ' ' || start.length() + 1 == rule;
    return start + " ".repeat(lined ? StrictMath.max(1, rule - start.length()) : 1) + words[2];
  }
}
