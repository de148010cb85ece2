package org.hemwright.draft.syntax;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hemwright.pattern.finding.Argument;

/** Reads the slots that take a word or a few: names, edges, words in quotes, sizes, dates. */
final class WordReading {
  private static final int MOST_COUNTED = 10_000;

  private final Reading reading;

  WordReading(Reading reading) {
    this.reading = reading;
  }

  Name name() {
    return name("name");
  }

  private Name name(String term) {
    Token word = take(Token::isWord, term);
    return new Name(word.text(), word.span());
  }

  Reference reference() {
    int start = reading.index();
    Name first = name("point");
    if (!dotFollows()) {
      return new Reference(Optional.empty(), first, first.span());
    }
    reading.next();
    Name second = name("point");
    return new Reference(Optional.of(first), second, reading.spanFrom(start));
  }

  private boolean dotFollows() {
    return reading.says(".") && reading.peek().filter(Token::glued).isPresent();
  }

  Statement.PlaceTerm place() {
    int start = reading.index();
    boolean every = reading.says("every") && !reading.says(1, ".") && reading.takeIf("every");
    Name piece = name("edge-place");
    if (!dotFollows()) {
      throw reading.want("edge-place");
    }
    reading.next();
    Name second = name("edge-place");
    Optional<Name> third = Optional.empty();
    if (dotFollows()) {
      reading.next();
      third = Optional.of(name());
    }
    Optional<Name> from = reading.takeIf("from") ? Optional.of(name()) : Optional.empty();
    Optional<Name> to = reading.takeIf("to") ? Optional.of(name()) : Optional.empty();
    boolean reversed = reading.takeIf("reversed");
    return new Statement.PlaceTerm(
        every,
        piece,
        third.isPresent() ? Optional.of(second) : Optional.empty(),
        third.orElse(second),
        from,
        to,
        reversed,
        reading.spanFrom(start));
  }

  /** What a step is done to: one to three names. */
  WorkName work() {
    int start = reading.index();
    List<Name> parts = new ArrayList<>(List.of(name("work")));
    while (parts.size() < 3 && dotFollows()) {
      reading.next();
      parts.add(name("work"));
    }
    return new WorkName(parts, reading.spanFrom(start));
  }

  Statement.Run run() {
    int start = reading.index();
    List<Statement.PlaceTerm> places = new ArrayList<>();
    do {
      places.add(place());
    } while (reading.takeThen());
    return new Statement.Run(places, reading.spanFrom(start));
  }

  String text() {
    return take(token -> token.kind() == Token.Kind.TEXT, "words").text();
  }

  Integer count() {
    Optional<Token> token = reading.peek().filter(Token::isWhole);
    if (token.filter(number -> number.value() > MOST_COUNTED).isPresent()) {
      throw reading.refuse(
          reading
              .slips()
              .fail("count-too-large", token.get().span())
              .with("number", Slips.shown(token.get().text()))
              .with("most", Argument.of(MOST_COUNTED))
              .build());
    }
    return (int) take(Token::isWhole, "count").value();
  }

  private Token take(Predicate<Token> kind, String term) {
    if (reading.peek().filter(kind).isEmpty()) {
      throw reading.want(term);
    }
    return reading.next();
  }

  /** Takes all tokens up to the next blank or comma. */
  private Span glued(Predicate<Token> first, String term) {
    int start = reading.index();
    take(first, term);
    while (reading.peek().filter(token -> token.glued() && !token.says(",")).isPresent()) {
      reading.next();
    }
    return reading.spanFrom(start);
  }

  NumberRule.SizeWord size() {
    int start = reading.index();
    Optional<Token> first = reading.peek();
    Span span = glued(token -> token.kind() != Token.Kind.SYMBOL, "size");
    Token token = first.orElseThrow();
    boolean alone = reading.index() == start + 1;
    if (alone && (!token.isNumber() || token.isWhole())) {
      return new NumberRule.SizeWord(token.text(), span);
    }
    String written = reading.source().text(span);
    reading.note(
        reading
            .slips()
            .fail("size-quotes", span)
            .with("size", Slips.shown(written))
            .mendedBy(reading.source().replace(span, '"' + written + '"'))
            .build());
    return new NumberRule.SizeWord(written, span);
  }

  Statement.Sizes sizes() {
    int start = reading.index();
    NumberRule.SizeWord from = size();
    reading.take("to");
    NumberRule.SizeWord to = size();
    return new Statement.Sizes(from, to, reading.spanFrom(start));
  }

  String version() {
    return reading.source().text(glued(token -> token.isNumber() || token.isWord(), "version"));
  }

  /** The name of a check: {@code seam-length}. */
  String check() {
    return reading.source().text(glued(Token::isWord, "check"));
  }

  /** What a finding is about, as a report names it, or the same in quotes. */
  String subject() {
    if (reading.peek().filter(token -> token.kind() == Token.Kind.TEXT).isPresent()) {
      return reading.next().text();
    }
    int start = reading.index();
    take(Token::isWord, "subject");
    while (reading.peek().isPresent()
        && !reading.says("because")
        && !(reading.says("in") && reading.says(1, "sizes"))) {
      reading.next();
    }
    return reading.source().text(reading.spanFrom(start)).replaceAll("\\s+", " ");
  }

  LocalDate date() {
    Reading.Mark start = reading.mark();
    Span span = glued(token -> !token.says(","), "date");
    String written = reading.source().text(span);
    try {
      return LocalDate.parse(written);
    } catch (DateTimeParseException notADay) {
      reading.backTo(start);
      throw reading.refuse(
          reading.slips().fail("date", span).with("date", Slips.shown(written)).build());
    }
  }

  Condition condition() {
    int start = reading.index();
    List<Condition> parts = new ArrayList<>();
    do {
      parts.add((Condition) reading.oneOf(Where.CONDITION));
    } while (reading.takeIf("and"));
    return parts.size() == 1 ? parts.get(0) : new Condition.All(parts, reading.spanFrom(start));
  }
}
