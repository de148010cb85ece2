package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;

/**
 * The first word that a line was meant to have.
 *
 * @param finding what is said about it
 * @param forms the forms that start with the word that was meant
 * @param tokens the line as it would be
 */
record FirstWord(Finding finding, List<Form> forms, List<Token> tokens) {
  private static final Set<Where> NUMBERS = EnumSet.of(Where.LEFT_EDGE, Where.PART, Where.PIECE);

  FirstWord {
    forms = List.copyOf(forms);
    tokens = List.copyOf(tokens);
  }

  /** The statement with its first word mended. */
  Written in(Written written) {
    return new Written(written.lines(), tokens, written.unclosed(), written.comma());
  }

  /**
   * What a line that starts with no word of its place was meant to start with.
   *
   * @param unsaid whether a form may still be said
   */
  static Optional<FirstWord> meant(
      Source source, List<Token> tokens, Where where, Predicate<Form> unsaid) {
    Slips slips = new Slips(source);
    Token first = tokens.get(0);
    List<String> words = Forms.firstWords(where);
    Optional<String> near = first.isWord() ? NearName.to(first.text(), words) : Optional.empty();
    Optional<FirstWord> respelled = near.map(word -> respelled(source, slips, tokens, where, word));
    if (respelled.filter(meant -> meant.reads(source)).isPresent()) {
      return respelled;
    }
    if (NUMBERS.contains(where) && tokens.size() > 1 && tokens.get(1).says("=")) {
      FirstWord let = started(source, slips, tokens, where, "let");
      if (let.reads(source)) {
        return Optional.of(let);
      }
    }
    for (Form form : Forms.at(where)) {
      if (unsaid.test(form)) {
        FirstWord started = started(source, slips, tokens, where, form.firstWords().get(0));
        if (started.reads(source)) {
          return Optional.of(started);
        }
      }
    }
    return respelled.or(() -> first.isWord() ? onlyOne(source, tokens, where) : Optional.empty());
  }

  /** The one word that, in place of the first, makes the line whole. */
  private static Optional<FirstWord> onlyOne(Source source, List<Token> tokens, Where where) {
    Slips slips = new Slips(source);
    List<FirstWord> fitting =
        Forms.firstWords(where).stream()
            .map(word -> respelled(source, slips, tokens, where, word))
            .filter(meant -> meant.reads(source))
            .limit(2)
            .toList();
    return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
  }

  private static FirstWord respelled(
      Source source, Slips slips, List<Token> tokens, Where where, String word) {
    Token first = tokens.get(0);
    List<Token> mended = new ArrayList<>(tokens);
    mended.set(0, new Token(Token.Kind.WORD, word, 0, false, first.span()));
    Finding finding =
        slips
            .fail("unknown-word", first.span())
            .with("word", Slips.shown(first.text()))
            .with("here", new Argument.Term(where.term()))
            .with("meant", word)
            .mendedBy(source.replace(first.span(), word))
            .build();
    return new FirstWord(finding, Forms.at(where, word), mended);
  }

  private static FirstWord started(
      Source source, Slips slips, List<Token> tokens, Where where, String word) {
    Token first = tokens.get(0);
    Span span = new Span(first.span().start(), first.span().start());
    List<Token> mended = new ArrayList<>(tokens);
    mended.add(0, new Token(Token.Kind.WORD, word, 0, false, span));
    Finding finding =
        slips
            .fail("first-word-missing", span)
            .with("word", Slips.shown(source.text(first.span())))
            .with("meant", word)
            .mendedBy(source.replace(span, word + " "))
            .build();
    return new FirstWord(finding, Forms.at(where, word), mended);
  }

  private boolean reads(Source source) {
    return new Reading(source, tokens).whole(forms).isPresent();
  }
}
