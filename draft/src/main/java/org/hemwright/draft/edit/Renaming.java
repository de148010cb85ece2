package org.hemwright.draft.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.finding.Finding;

/**
 * Gives a thing another name wherever the document says it, and leaves all else as it is.
 *
 * <p>What says it is found by the document's own resolving: the thing is renamed where it is
 * defined, and every place that is then told to name nothing said it. Only a name that stands
 * nowhere in the document is taken, so that no place can come to mean another thing.
 *
 * @param owner the piece or part that the thing belongs to; empty at the left edge
 * @param name its name
 * @param number whether it is a number rather than drawn; both families may have one name
 */
public record Renaming(String owner, String name, boolean number) {
  private static final int MOST_ROUNDS = 60;
  private static final Pattern PROPER = Pattern.compile("\\p{L}[\\p{L}\\p{N}_]*");

  /** What stands against a name. */
  public enum Against {
    /** It is no name: a letter, then letters, digits and {@code _}. */
    NO_NAME,
    /** It is the name that the thing has. */
    SAME,
    /** Something in the document is called so. */
    TAKEN,
    /** The thing's own line is not in the document. */
    UNKNOWN
  }

  /** A name as the document spells it: blanks become {@code _}. */
  public static String spelled(String name) {
    return name.strip().replaceAll("[ -]+", "_");
  }

  /** What stands against a name at first sight. */
  public Optional<Against> against(Document document, String to) {
    String wanted = spelled(to);
    if (!PROPER.matcher(wanted).matches()) {
      return Optional.of(Against.NO_NAME);
    } else if (wanted.equals(name)) {
      return Optional.of(Against.SAME);
    } else if (says(document.text(), wanted)) {
      return Optional.of(Against.TAKEN);
    }
    return definitions(document).isEmpty() ? Optional.of(Against.UNKNOWN) : Optional.empty();
  }

  /**
   * The document with another name.
   *
   * @param document as it stands
   * @param to the new name; blanks become {@code _}
   * @param problems what is wrong with a text, with all of its places
   * @return absent where something is against it, or not every place could be followed
   */
  public Optional<String> to(
      Document document, String to, Function<String, List<Finding>> problems) {
    String wanted = spelled(to);
    if (against(document, wanted).isPresent()) {
      return Optional.empty();
    }
    List<Span> definitions = definitions(document);
    int known = problems.apply(document.text()).size();
    String text = replaced(document.text(), definitions, wanted);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      List<Finding> found = problems.apply(text);
      List<Span> places = places(new Source(document.file(), text), found);
      if (places.isEmpty()) {
        return found.size() <= known ? Optional.of(acceptances(text, wanted)) : Optional.empty();
      }
      text = replaced(text, places, wanted);
    }
    return Optional.empty();
  }

  private static boolean says(String text, String word) {
    return Pattern.compile("(?<![\\p{L}\\p{N}_])" + word + "(?![\\p{L}\\p{N}_])")
        .matcher(text)
        .find();
  }

  private static String replaced(String text, List<Span> spans, String wanted) {
    TreeMap<Integer, Span> ordered = new TreeMap<>();
    spans.forEach(span -> ordered.put(span.start(), span));
    StringBuilder all = new StringBuilder(text);
    ordered.descendingMap().values().forEach(span -> all.replace(span.start(), span.end(), wanted));
    return all.toString();
  }

  /** The places of findings that say the old name. */
  private List<Span> places(Source source, List<Finding> found) {
    Pattern said =
        Pattern.compile(
            "("
                + (owner.isEmpty() ? "" : "(?:" + owner + "\\.)?")
                + ")("
                + name
                + ")(?![\\p{L}\\p{N}_])");
    List<Span> places = new ArrayList<>();
    for (Finding finding : found) {
      finding
          .origin()
          .filter(origin -> origin.file().equals(source.file()) && origin.line() <= source.lines())
          .ifPresent(
              origin -> {
                int at = source.lineStart(origin.line()) + origin.column() - 1;
                Matcher matcher = said.matcher(source.text());
                if (at <= source.text().length()) {
                  matcher.region(at, source.text().length());
                  if (matcher.lookingAt()) {
                    places.add(new Span(matcher.start(2), matcher.end(2)));
                  } else if (at > 0 && matcher.find(at) && matcher.start(2) == at) {
                    places.add(new Span(matcher.start(2), matcher.end(2)));
                  }
                }
              });
    }
    return places;
  }

  /** An accepted finding names its subject in words; it follows. */
  private String acceptances(String text, String wanted) {
    String subject = owner.isEmpty() ? name : owner + "." + name;
    String renamed = owner.isEmpty() ? wanted : owner + "." + wanted;
    StringBuilder all = new StringBuilder();
    for (String line : text.split("(?<=\n)", -1)) {
      all.append(
          line.startsWith("accept ")
              ? line.replaceAll(
                  "(?<![\\p{L}\\p{N}_.])" + Pattern.quote(subject) + "(?![\\p{L}\\p{N}_.])",
                  renamed)
              : line);
    }
    return all.toString();
  }

  private List<Span> definitions(Document document) {
    List<Span> spans = new ArrayList<>();
    for (Statement each : document.statements()) {
      if (owner.isEmpty()) {
        leftEdge(each)
            .filter(found -> found.text().equals(name))
            .ifPresent(n -> spans.add(n.span()));
      } else if (each instanceof Statement.PieceSection piece
          && piece.name().text().equals(owner)) {
        piece.body().forEach(line -> inside(line, spans));
      } else if (each instanceof Statement.PartSection part && part.name().text().equals(owner)) {
        part.body().forEach(line -> inside(line, spans));
      }
    }
    return spans;
  }

  private Optional<Name> leftEdge(Statement statement) {
    if (isNumber(statement)) {
      return number ? Optional.of(((Statement.Definition) statement).name()) : Optional.empty();
    }
    if (number) {
      return Optional.empty();
    }
    if (statement instanceof Statement.PieceSection piece) {
      return Optional.of(piece.name());
    } else if (statement instanceof Statement.PartSection part) {
      return Optional.of(part.name());
    } else if (statement instanceof Statement.SeamSection seam) {
      return Optional.of(seam.name());
    }
    return Optional.empty();
  }

  private void inside(Statement line, List<Span> spans) {
    List<Name> names = new ArrayList<>();
    if (line instanceof Statement.Definition definition) {
      if (isNumber(line) == number) {
        names.add(definition.name());
      }
    } else if (!number && line instanceof Statement.Outline outline) {
      outline.edges().forEach(edge -> names.add(edge.name()));
    } else if (!number && line instanceof Statement.Rectangle rectangle) {
      names.addAll(rectangle.edges());
    } else if (!number && line instanceof Statement.Facing facing) {
      names.addAll(facing.edges());
    }
    names.stream().filter(each -> each.text().equals(name)).forEach(each -> spans.add(each.span()));
  }

  private static boolean isNumber(Statement statement) {
    return statement instanceof Statement.Let
        || statement instanceof Statement.Dial
        || statement instanceof Statement.Solve;
  }
}
