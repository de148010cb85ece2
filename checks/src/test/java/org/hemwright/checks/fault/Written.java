package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.Seam;

/** A document as lines, each with the section that it stands in. */
record Written(Garment garment, List<Line> lines) {
  private static final Pattern SECTION =
      Pattern.compile("(piece|seam|elastic|view|fabric) (\\w+)\\b.*");

  /**
   * One line.
   *
   * @param number from 1
   * @param kind of its section: {@code piece}; blank outside
   * @param name of its section
   */
  record Line(int number, String text, String kind, String name) {}

  static Written of(Garment garment) {
    List<Line> lines = new ArrayList<>();
    String kind = "";
    String name = "";
    int number = 0;
    for (String text : garment.text().lines().toList()) {
      if (!text.isBlank() && !text.startsWith(" ") && !text.startsWith("#")) {
        Matcher section = SECTION.matcher(text);
        kind = section.matches() ? section.group(1) : "";
        name = section.matches() ? section.group(2) : "";
      }
      lines.add(new Line(++number, text, kind, name));
    }
    return new Written(garment, lines);
  }

  /** The document with one line exchanged; a line of nothing is left out. */
  private String with(int number, String text) {
    StringBuilder whole = new StringBuilder();
    for (Line line : lines) {
      String own = line.number() == number ? text : line.text();
      whole.append(own).append('\n');
    }
    return whole.toString();
  }

  WrittenFault fault(Line line, String text, Set<String> checks, Set<String> about) {
    return new WrittenFault(
        garment.name()
            + " line "
            + line.number()
            + (text.isBlank() ? " left out: " + line.text().strip() : ": " + text.strip()),
        with(line.number(), text),
        line.number(),
        checks,
        about,
        List.of());
  }

  /** Every line that a pattern matches, changed in every way that is given. */
  Stream<WrittenFault> each(
      String kind,
      String regex,
      BiFunction<Line, Matcher, List<String>> changed,
      Set<String> checks) {
    Pattern pattern = Pattern.compile(regex);
    return lines.stream()
        .filter(line -> line.kind().equals(kind))
        .flatMap(
            line -> {
              Matcher matcher = pattern.matcher(line.text());
              if (!matcher.find()) {
                return Stream.empty();
              }
              return changed.apply(line, matcher).stream()
                  .filter(text -> !text.equals(line.text()))
                  .map(text -> fault(line, text, checks, around(line)));
            });
  }

  /** What a finding about a line's section may be about: itself, and what is sewn to it. */
  Set<String> around(Line line) {
    Set<String> about = new LinkedHashSet<>();
    about.add(line.name());
    if (line.kind().isEmpty()) {
      for (PieceCard card : garment.run().pattern().pieces()) {
        if (line.text().contains(card.name() + ".")) {
          about.addAll(around(new Line(line.number(), "", "piece", card.name())));
        }
      }
    }
    for (SizedPattern sized : garment.run().sizes()) {
      for (Seam seam : sized.seams()) {
        List<String> pieces = Garment.places(seam).map(place -> place.piece()).toList();
        if (seam.name().equals(line.name())) {
          about.addAll(pieces);
        } else if (pieces.contains(line.name())) {
          about.add(seam.name());
          about.addAll(pieces);
        }
      }
    }
    return about;
  }

  /** The same fault, told of whatever piece. */
  WrittenFault ofAnyPiece(WrittenFault fault) {
    Set<String> about = new LinkedHashSet<>(fault.about());
    garment.run().pattern().pieces().forEach(card -> about.add(card.name()));
    return new WrittenFault(
        fault.where(), fault.text(), fault.line(), fault.checks(), about, fault.sizes());
  }

  /** The same fault, told in the middle size alone. */
  WrittenFault inMiddleSize(WrittenFault fault) {
    return new WrittenFault(
        fault.where(),
        fault.text(),
        fault.line(),
        fault.checks(),
        fault.about(),
        List.of(garment.middleSize()));
  }

  /** One replacement of the matched stretch. */
  static List<String> put(Line line, Matcher matcher, int group, String text) {
    return List.of(
        line.text().substring(0, matcher.start(group))
            + text
            + line.text().substring(matcher.end(group)));
  }

  /**
   * Whether an edge of a piece is sewn to an edge of another by some seam in the smallest size that
   * has it.
   */
  boolean isSewnToAnother(String piece) {
    return garment.run().sizes().stream()
        .filter(sized -> sized.piece(piece).isPresent())
        .limit(1)
        .flatMap(sized -> sized.seams().stream())
        .anyMatch(
            seam -> {
              Set<String> pieces = new LinkedHashSet<>();
              Garment.places(seam)
                  .filter(place -> hasEdge(place.piece(), place.edge()))
                  .forEach(place -> pieces.add(place.piece()));
              return pieces.contains(piece) && pieces.size() > 1;
            });
  }

  private boolean hasEdge(String piece, String edge) {
    return garment.run().sizes().stream()
        .flatMap(sized -> sized.piece(piece).stream())
        .anyMatch(own -> own.edge(edge).isPresent());
  }

  Optional<Line> find(String kind, String name, String start) {
    return lines.stream()
        .filter(line -> line.kind().equals(kind) && line.name().equals(name))
        .filter(line -> line.text().strip().startsWith(start))
        .findFirst();
  }
}
