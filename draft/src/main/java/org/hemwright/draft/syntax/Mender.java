package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.TextEdit;

/** Tries the mends of a line, the likeliest first, at the furthest place that was understood. */
final class Mender {
  /** How many things that would fit one message names. */
  private static final int MOST_WANTED = 5;

  private final Source source;
  private final Slips slips;
  private final List<Token> tokens;
  private final List<Form> forms;
  private final Reading reading;
  private final int at;

  Mender(Source source, List<Token> tokens, List<Form> forms, Reading reading) {
    this.source = source;
    this.slips = new Slips(source);
    this.tokens = tokens;
    this.forms = forms;
    this.reading = reading;
    this.at = reading.furthest().index();
  }

  Optional<Complaint> mend() {
    List<String> words = reading.furthest().words();
    if (at >= tokens.size()) {
      return with(end(), true);
    }
    Token here = tokens.get(at);
    List<Supplier<Optional<Complaint>>> mends =
        List.of(
            () -> unit(here),
            this::quotes,
            () -> similar(here, words),
            () -> isTwice(at) ? without(at) : Optional.empty(),
            () -> isTwice(at - 1) ? without(at - 1) : Optional.empty(),
            this::nameless,
            () -> with(here.span().start(), false),
            () -> without(at),
            () -> instead(here, words));
    return mends.stream().map(Supplier::get).flatMap(Optional::stream).findFirst();
  }

  private int end() {
    return tokens.get(tokens.size() - 1).span().end();
  }

  /** A word after a number that is like no unit. */
  private Optional<Complaint> unit(Token here) {
    if (at == 0 || !tokens.get(at - 1).isNumber() || !here.isWord()) {
      return Optional.empty();
    }
    List<String> units = List.of("cm", "mm", "in", "deg");
    Optional<String> near = NearName.to(here.text(), units);
    List<String> tried = near.map(List::of).orElse(here.glued() ? units : List.of());
    for (String unit : tried) {
      Optional<Object> node = read(replaced(here, unit));
      if (node.isPresent()) {
        return Optional.of(
            new Complaint(
                slips
                    .fail("unknown-unit", here.span())
                    .with("unit", Slips.shown(here.text()))
                    .with("meant", unit)
                    .mendedBy(source.replace(here.span(), unit))
                    .build(),
                node));
      }
    }
    return Optional.empty();
  }

  private Optional<Complaint> quotes() {
    if (!reading.furthest().terms().contains(Slot.TEXT.term())) {
      return Optional.empty();
    }
    for (int last = at; last < Math.min(tokens.size(), at + 20); last++) {
      Span span = tokens.get(at).span().to(tokens.get(last).span());
      String words = source.text(span);
      if (words.indexOf('"') >= 0 || words.indexOf('\n') >= 0) {
        return Optional.empty();
      }
      List<Token> tried = new ArrayList<>(tokens.subList(0, at));
      tried.add(new Token(Token.Kind.TEXT, words, 0, false, span));
      tried.addAll(tokens.subList(last + 1, tokens.size()));
      Optional<Object> node = read(tried);
      if (node.isPresent()) {
        return Optional.of(
            new Complaint(
                slips
                    .fail("words-unquoted", span)
                    .with("words", Slips.shown(words))
                    .mendedBy(source.replace(span, '"' + words + '"'))
                    .build(),
                node));
      }
    }
    return Optional.empty();
  }

  private Optional<Complaint> similar(Token here, List<String> words) {
    return here.isWord()
        ? NearName.to(here.text(), words).flatMap(word -> instead(here, List.of(word)))
        : Optional.empty();
  }

  private Optional<Complaint> without(int index) {
    Token token = tokens.get(index);
    Optional<Token> next =
        index + 1 < tokens.size() ? Optional.of(tokens.get(index + 1)) : Optional.empty();
    if (token.isNumber() && next.filter(Unit::isUnit).isPresent()) {
      return Optional.empty();
    }
    List<Token> tried = new ArrayList<>(tokens);
    next.ifPresent(after -> tried.set(index + 1, after.afterGap(token.glued())));
    tried.remove(index);
    return read(tried)
        .map(
            node ->
                new Complaint(
                    slips
                        .fail(isTwice(index) ? "word-twice" : "word-extra", token.span())
                        .with("word", written(token))
                        .mendedBy(removal(token))
                        .build(),
                    Optional.of(node)));
  }

  private boolean isTwice(int index) {
    return index > 0 && tokens.get(index - 1).text().equals(tokens.get(index).text());
  }

  /** Takes a token away with the blank before it. */
  private TextEdit removal(Token token) {
    int start = token.span().start();
    while (start > 0 && source.text().charAt(start - 1) == ' ') {
      start--;
    }
    return source.replace(new Span(start, token.span().end()), "");
  }

  /** A name that is missing before a fixed word, which was taken for the name. */
  private Optional<Complaint> nameless() {
    for (int place : new int[] {at - 1, 1}) {
      if (place < 1 || place >= tokens.size()) {
        continue;
      }
      Token next = tokens.get(place);
      boolean fixed = next.kind() == Token.Kind.SYMBOL || Forms.isFixed(next.text());
      Span span = new Span(next.span().start(), next.span().start());
      List<Token> tried = new ArrayList<>(tokens);
      tried.add(place, new Token(Token.Kind.WORD, "name", 0, false, span));
      if (fixed && read(tried).isPresent()) {
        Finding finding =
            slips.fail("name-missing", next.span()).with("next", written(next)).build();
        return Optional.of(new Complaint(finding, Optional.empty()));
      }
    }
    return Optional.empty();
  }

  /** A fixed word that is missing, where only one makes the line whole. */
  private Optional<Complaint> with(int offset, boolean atEnd) {
    if (atEnd && !reading.furthest().terms().isEmpty()) {
      return Optional.empty();
    }
    List<String> plain = fitting(reading.furthest().plainWords(), offset);
    boolean way =
        reading.furthest().terms().contains(Where.DIRECTION.term())
            || reading.furthest().terms().contains(Where.WAY.term());
    List<String> ways = way ? Forms.firstWords(Where.DIRECTION) : List.of();
    List<String> fitting =
        plain.isEmpty()
            ? fitting(
                reading.furthest().words().stream().filter(word -> !ways.contains(word)).toList(),
                offset)
            : plain;
    if (fitting.size() != 1) {
      return Optional.empty();
    }
    String word = fitting.get(0);
    boolean letters = Character.isLetter(word.charAt(0));
    Span span = new Span(offset, offset);
    String inserted = letters ? (atEnd ? " " + word : word + " ") : word;
    Finding.Builder finding =
        slips
            .fail(atEnd ? "word-missing-at-end" : "word-missing", span)
            .with("word", word)
            .mendedBy(source.replace(span, inserted));
    if (!atEnd) {
      finding.with("next", written(tokens.get(at)));
    }
    return Optional.of(new Complaint(finding.build(), read(inserted(word, offset))));
  }

  private List<String> fitting(List<String> words, int offset) {
    return words.stream().filter(word -> read(inserted(word, offset)).isPresent()).toList();
  }

  private List<Token> inserted(String word, int offset) {
    List<Token> tried = new ArrayList<>(tokens);
    tried.add(at, fixed(word, word.equals("."), new Span(offset, offset)));
    return tried;
  }

  private static Token fixed(String word, boolean glued, Span span) {
    boolean letters = Character.isLetter(word.charAt(0));
    return new Token(letters ? Token.Kind.WORD : Token.Kind.SYMBOL, word, 0, glued, span);
  }

  /** Another fixed word, where only one makes the line whole. */
  private Optional<Complaint> instead(Token here, List<String> words) {
    if (here.isNumber()) {
      return Optional.empty();
    }
    List<String> fitting =
        words.stream().filter(word -> read(replaced(here, word)).isPresent()).toList();
    if (fitting.size() != 1) {
      return Optional.empty();
    }
    String word = fitting.get(0);
    Finding finding =
        slips
            .fail("word-wanted", here.span())
            .with("word", written(here))
            .with("meant", word)
            .mendedBy(source.replace(here.span(), word))
            .build();
    return Optional.of(new Complaint(finding, read(replaced(here, word))));
  }

  private List<Token> replaced(Token here, String word) {
    List<Token> tried = new ArrayList<>(tokens);
    tried.set(at, fixed(word, here.glued(), here.span()));
    return tried;
  }

  private Optional<Object> read(List<Token> tried) {
    if (tried.isEmpty()) {
      return Optional.empty();
    }
    Reading again = new Reading(source, tried);
    return again.whole(forms).filter(node -> again.soft().isEmpty());
  }

  /** What is wrong where no single mend helps. */
  Finding unmended() {
    Argument wanted = wanted();
    String example = reading.furthest().form().orElse(forms.get(0)).example();
    if (at >= tokens.size()) {
      return slips
          .fail("line-ends-early", new Span(end(), end()))
          .with("wanted", wanted)
          .with("example", example)
          .build();
    }
    Token here = tokens.get(at);
    boolean numbers =
        here.isWord()
            && (reading.furthest().terms().contains(Slot.LITERAL.term())
                || reading.furthest().terms().contains(Slot.COUNT.term()));
    return slips
        .fail(numbers ? "number-wanted" : "something-else-wanted", here.span())
        .with("found", written(here))
        .with("wanted", wanted)
        .with("example", example)
        .build();
  }

  private Argument wanted() {
    List<Argument> all = new ArrayList<>();
    List<String> kinds = reading.furthest().terms();
    kinds.stream()
        .filter(kind -> !kind.equals(Reading.END))
        .map(Argument.Term::new)
        .forEach(all::add);
    reading.furthest().plainWords().stream().map(Slips::quoted).map(Argument::of).forEach(all::add);
    if (kinds.contains(Reading.END)) {
      all.add(new Argument.Term(Reading.END));
    }
    return new Argument.AnyOf(all.size() > MOST_WANTED ? all.subList(0, MOST_WANTED) : all);
  }

  private String written(Token token) {
    return Slips.shown(
        token.span().start() == token.span().end() ? token.text() : source.text(token.span()));
  }
}
