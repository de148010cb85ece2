package org.hemwright.workroom.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A thing's other name in the texts beside the document: the headings and places of the booklet,
 * the tables of samples, layings and rules. Running words are never changed; where they say the old
 * name, they may mean it.
 *
 * @param owner the piece that the thing belongs to; empty where it is a piece or a number of all
 * @param name its name so far
 * @param to its name from now on
 * @param kind what it is
 * @param steps the steps that have other names by it: the new by the old
 */
record NameBeside(String owner, String name, String to, Kind kind, Map<String, String> steps) {
  /** What can have another name, as far as the texts beside the document tell it apart. */
  enum Kind {
    PIECE,
    EDGE,
    NUMBER,
    OTHER
  }

  private static final Pattern HEADING = Pattern.compile("(?m)^##[ \\t]+([^:#\\n]*[^:#\\s])");
  private static final Pattern PLACE = Pattern.compile("\\{(figure|number|table numbers) ([^}]*)}");
  private static final Pattern TOKEN = Pattern.compile("[\\p{L}\\p{N}_]+(?:\\.[\\p{L}\\p{N}_]+)?");
  private static final Pattern QUOTED = Pattern.compile("\"(?:[^\"\\n]|\"\")*\"");
  private static final Pattern CELL = Pattern.compile("(?:\"(?:[^\"]|\"\")*\"|[^,\"])*");

  NameBeside {
    steps = Map.copyOf(steps);
  }

  /**
   * A stretch of a text, and what stands there from now on.
   *
   * @param at where it starts (UTF-16 units)
   * @param length how much of the text it takes
   * @param text what stands there instead
   */
  record Place(int at, int length, String text) {}

  /** Where a text beside the document says the old name for certain. */
  List<Place> said(String file, String text) {
    List<Place> places = new ArrayList<>();
    if (file.endsWith(".md")) {
      headings(text, places);
      places(text, places);
    } else if (file.endsWith(".csv")) {
      cells(text, places);
    }
    return places;
  }

  private void headings(String text, List<Place> places) {
    Matcher heading = HEADING.matcher(text);
    while (heading.find()) {
      String step = steps.get(heading.group(1).replace(' ', '_'));
      if (step != null) {
        places.add(new Place(heading.start(1), heading.group(1).length(), step));
      }
    }
  }

  private void places(String text, List<Place> places) {
    Matcher place = PLACE.matcher(text);
    while (place.find()) {
      boolean figure = place.group(1).equals("figure");
      Matcher token = TOKEN.matcher(text).region(place.start(2), place.end(2));
      while (token.find()) {
        String said = token.group();
        String now = figure ? figure(said) : dotted(said, kind == Kind.NUMBER);
        if (!now.equals(said)) {
          places.add(new Place(token.start(), said.length(), now));
        }
        if (place.group(1).equals("number")) {
          break;
        }
      }
    }
  }

  private String figure(String said) {
    return kind == Kind.PIECE && said.equals(name) ? to : steps.getOrDefault(said, said);
  }

  /** A name with or without its owner. */
  private String dotted(String said, boolean own) {
    int dot = said.indexOf('.');
    String of = dot < 0 ? "" : said.substring(0, dot);
    String rest = said.substring(dot + 1);
    if (kind == Kind.PIECE) {
      return of.equals(name) ? to + "." + rest : said;
    }
    boolean same = own && of.equals(owner) && rest.equals(name);
    return same ? said.substring(0, dot + 1) + to : said;
  }

  private void cells(String text, List<Place> places) {
    List<String> head = List.of();
    int at = 0;
    for (String line : text.split("(?<=\n)", -1)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        if (head.isEmpty()) {
          head = cellTexts(line);
        } else {
          row(line, at, head, places);
        }
      }
      at += line.length();
    }
  }

  private static List<String> cellTexts(String line) {
    List<String> cells = new ArrayList<>();
    Matcher cell = CELL.matcher(line.stripTrailing());
    int from = 0;
    while (cell.find(from)) {
      cells.add(unquoted(cell.group().strip()));
      from = cell.end() + 1;
      if (from > line.stripTrailing().length()) {
        break;
      }
    }
    return cells;
  }

  private static String unquoted(String cell) {
    return cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"")
        ? cell.substring(1, cell.length() - 1)
        : cell;
  }

  private void row(String line, int at, List<String> head, List<Place> places) {
    List<String> row = cellTexts(line);
    int piece = head.indexOf("piece");
    boolean ofOwner = piece >= 0 && piece < row.size() && row.get(piece).equals(owner);
    Matcher cell = CELL.matcher(line);
    int from = 0;
    for (int i = 0; i < Math.min(row.size(), head.size()) && cell.find(from); i++) {
      from = cell.end() + 1;
      String said = row.get(i);
      String now =
          switch (head.get(i)) {
            case "where" -> where(said);
            case "piece" -> kind == Kind.PIECE && said.equals(name) ? to : said;
            case "edge" -> kind == Kind.EDGE && ofOwner && said.equals(name) ? to : said;
            default -> said;
          };
      if (!now.equals(said)) {
        places.add(new Place(at + line.indexOf(said, cell.start()), said.length(), now));
      }
    }
  }

  /** A place of the samples: {@code panel.hem allowance}. */
  private String where(String said) {
    int blank = said.indexOf(' ');
    String place = blank < 0 ? said : said.substring(0, blank);
    boolean own = kind == Kind.EDGE || kind == Kind.NUMBER;
    return dotted(place, own) + said.substring(place.length());
  }

  /** Where running words say the old name: in the document those in quotes. */
  List<Place> perhaps(String file, String text) {
    List<Place> places = new ArrayList<>();
    Pattern word =
        Pattern.compile(
            "(?<![\\p{L}\\p{N}_])"
                + Pattern.quote(name).replace("_", "\\E[_ ]\\Q")
                + "(?![\\p{L}\\p{N}_])");
    if (file.endsWith(".hem")) {
      Matcher quoted = QUOTED.matcher(text);
      while (quoted.find()) {
        words(text, word, quoted.start(), quoted.end(), places);
      }
    } else if (file.endsWith(".md")) {
      List<Place> certain = said(file, text);
      List<Place> all = new ArrayList<>();
      words(text, word, 0, text.length(), all);
      all.stream()
          .filter(each -> certain.stream().noneMatch(sure -> overlap(sure, each)))
          .filter(each -> !inBraces(text, each.at))
          .forEach(places::add);
    }
    return places;
  }

  private static boolean overlap(Place a, Place b) {
    return a.at < b.at + b.length && b.at < a.at + a.length;
  }

  private static boolean inBraces(String text, int at) {
    int open = text.lastIndexOf('{', at);
    return open >= 0 && text.lastIndexOf('}', at) < open && text.indexOf(':', open) > at;
  }

  private void words(String text, Pattern word, int from, int end, List<Place> places) {
    Matcher found = word.matcher(text).region(from, end).useTransparentBounds(true);
    while (found.find()) {
      String now = found.group().contains(" ") ? to.replace('_', ' ') : to;
      places.add(new Place(found.start(), found.group().length(), now));
    }
  }

  /** A text with all of these places changed. */
  static String changed(String text, List<Place> places) {
    StringBuilder all = new StringBuilder(text);
    places.stream()
        .sorted((a, b) -> Integer.compare(b.at, a.at))
        .forEach(each -> all.replace(each.at, each.at + each.length, each.text));
    return all.toString();
  }
}
