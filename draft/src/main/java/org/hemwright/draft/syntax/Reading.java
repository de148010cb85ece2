package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Reads one statement's tokens by the table of forms.
 *
 * <p>Where a form offers a choice the first that fits is taken; the furthest place that was
 * reached, and what was wanted there, is remembered for the message. Depth and length are capped by
 * count.
 */
final class Reading {
  /** How deep brackets, turns and moves may stand in each other. */
  static final int DEEPEST = 60;

  private static final int MOST_COUNTED = 10_000;

  /** What is wanted where the line could end. */
  static final String END = "end-of-line";

  private final Source source;
  private final Slips slips;
  private final List<Token> tokens;
  private final NumberReading numbers = new NumberReading(this);
  private final PathReading paths = new PathReading(this);
  private final List<Finding> soft = new ArrayList<>();
  private int at;
  private int depth;
  private boolean barePaths;
  private int furthest = -1;
  private Optional<Form> current = Optional.empty();
  private Optional<Form> furthestForm = Optional.empty();
  private final Set<String> wantedWords = new LinkedHashSet<>();
  private final Set<String> wantedKinds = new LinkedHashSet<>();
  private final Set<String> covered = new LinkedHashSet<>();
  private Optional<Finding> refusal = Optional.empty();

  Reading(Source source, List<Token> tokens) {
    this.source = source;
    this.slips = new Slips(source);
    this.tokens = tokens;
  }

  NumberReading numbers() {
    return numbers;
  }

  PathReading paths() {
    return paths;
  }

  Slips slips() {
    return slips;
  }

  Source source() {
    return source;
  }

  // --- what was found ---------------------------------------------------------------------------

  /** Reads the whole statement as one of these forms, if it is one. */
  Optional<Object> whole(List<Form> forms) {
    for (boolean bare : new boolean[] {false, true}) {
      barePaths = bare;
      Optional<Object> node = wholeOnce(forms);
      if (node.isPresent()) {
        return node;
      }
    }
    return Optional.empty();
  }

  /**
   * Whether {@code to b} after a path belongs to what follows. It belongs to the path, as the line
   * to b or the stretch up to b, unless the statement cannot be read so: {@code leaving along l to
   * b}, {@code at length of l from start}.
   */
  boolean barePaths() {
    return barePaths;
  }

  private Optional<Object> wholeOnce(List<Form> forms) {
    for (Form form : forms) {
      backTo(new Mark(0, 0, 0));
      try {
        Object node = form(form);
        if (at == tokens.size()) {
          return Optional.of(node);
        }
        wantKind(END);
      } catch (Mismatch mismatch) {
        // The next form may fit.
      }
    }
    return Optional.empty();
  }

  /** What was wrong in what was read all the same. */
  List<Finding> soft() {
    return List.copyOf(soft);
  }

  /** The index of the first token that no form could take; the count of tokens at the end. */
  int furthest() {
    return Math.max(0, furthest);
  }

  /** The fixed words that would have let a form go on there. */
  List<String> wantedWords() {
    return List.copyOf(wantedWords);
  }

  /** Those of them that no phrase of a slot stands for. */
  List<String> plainWords() {
    return wantedWords.stream().filter(word -> !covered.contains(word)).toList();
  }

  /** The phrases of the slots that would have let a form go on there. */
  List<String> wantedKinds() {
    return List.copyOf(wantedKinds);
  }

  /** The form that was being read at the furthest place, the innermost. */
  Optional<Form> furthestForm() {
    return furthestForm;
  }

  /** A finding of its own for the furthest place, where a slot knew better what is wrong. */
  Optional<Finding> refusal() {
    return refusal;
  }

  // --- the engine -------------------------------------------------------------------------------

  /** Reads one of the forms that may fill a slot. */
  Object oneOf(Where where) {
    Mark start = mark();
    boolean first = furthest != at;
    Set<String> wordsBefore = first ? Set.of() : new LinkedHashSet<>(wantedWords);
    Set<String> kindsBefore = first ? Set.of() : new LinkedHashSet<>(wantedKinds);
    for (Form form : Forms.at(where)) {
      deeper();
      try {
        Object node = form(form);
        shallower();
        return node;
      } catch (Mismatch mismatch) {
        backTo(start);
      }
    }
    if (furthest == start.at()) {
      wantedWords.stream().filter(word -> !wordsBefore.contains(word)).forEach(covered::add);
      wantedKinds.retainAll(kindsBefore);
      wantedKinds.add(where.term());
    }
    throw new Mismatch();
  }

  /** Reads one form here. */
  Object form(Form form) {
    int start = at;
    Match match = new Match();
    Optional<Form> outer = current;
    if (!form.where().contains(Where.NUMBER_RULE)) {
      current = Optional.of(form);
    }
    try {
      step(form.shape(), match);
    } finally {
      current = outer;
    }
    match.ends(spanFrom(start));
    try {
      return form.builder().apply(match);
    } catch (Refusal refused) {
      throw refuse(refused.finding(source));
    }
  }

  private void step(Shape shape, Match match) {
    if (shape instanceof Shape.Fixed fixed) {
      take(fixed.text());
      match.say(fixed.text());
    } else if (shape instanceof Shape.Gap gap) {
      match.fill(gap.label(), fill(gap.slot()));
    } else if (shape instanceof Shape.Sequence sequence) {
      for (Shape part : sequence.parts()) {
        step(part, match);
      }
    } else if (shape instanceof Shape.Choice choice) {
      choose(choice, match);
    } else if (shape instanceof Shape.Maybe maybe) {
      attempt(maybe.shape(), match);
    } else if (shape instanceof Shape.Many many) {
      int before = at;
      while (attempt(many.shape(), match) && at > before) {
        before = at;
      }
    }
  }

  private Object fill(Slot slot) {
    if (slot.forms().isPresent()) {
      return oneOf(slot.forms().get());
    }
    return switch (slot) {
      case NAME -> name();
      case REFERENCE -> reference();
      case PLACE -> place();
      case RUN -> run();
      case TEXT -> text();
      case COUNT -> count();
      case SIZE -> size();
      case SIZES -> sizes();
      case VERSION -> version();
      case DATE -> date();
      case NUMBER -> numbers().sum();
      case LITERAL -> literal();
      case PATH -> paths().term();
      case CHAIN -> paths().chain();
      case AXIS -> paths().primary();
      case CONDITION -> condition();
      default -> throw new IllegalStateException("no way to read " + slot);
    };
  }

  private void choose(Shape.Choice choice, Match match) {
    for (Shape option : choice.options()) {
      if (attempt(option, match)) {
        return;
      }
    }
    throw new Mismatch();
  }

  private boolean attempt(Shape shape, Match match) {
    Mark start = mark();
    int[] filled = match.mark();
    try {
      step(shape, match);
      return true;
    } catch (Mismatch mismatch) {
      backTo(start);
      match.backTo(filled);
      return false;
    }
  }

  /** A place to come back to. */
  record Mark(int at, int soft, int depth) {}

  Mark mark() {
    return new Mark(at, soft.size(), depth);
  }

  void backTo(Mark mark) {
    at = mark.at();
    depth = mark.depth();
    soft.subList(mark.soft(), soft.size()).clear();
  }

  /** The index of the token that stands here. */
  int index() {
    return at;
  }

  Span spanFrom(int start) {
    if (at == start) {
      int offset = here();
      return new Span(offset, offset);
    }
    return tokens.get(start).span().to(tokens.get(at - 1).span());
  }

  private int here() {
    if (at < tokens.size()) {
      return tokens.get(at).span().start();
    }
    return tokens.isEmpty() ? 0 : tokens.get(tokens.size() - 1).span().end();
  }

  void deeper() {
    if (++depth > DEEPEST) {
      throw refuseMore("too-deep", DEEPEST);
    }
  }

  void shallower() {
    depth--;
  }

  // --- tokens -----------------------------------------------------------------------------------

  Optional<Token> peek() {
    return peek(0);
  }

  Optional<Token> peek(int ahead) {
    return at + ahead < tokens.size() ? Optional.of(tokens.get(at + ahead)) : Optional.empty();
  }

  boolean says(String fixed) {
    return says(0, fixed);
  }

  boolean says(int ahead, String fixed) {
    return at + ahead < tokens.size() && tokens.get(at + ahead).says(fixed);
  }

  /** Takes a fixed word or symbol. */
  Token take(String fixed) {
    if (!says(fixed)) {
      wantWord(fixed);
      throw new Mismatch();
    }
    return tokens.get(at++);
  }

  /** Takes the token that stands here. */
  Token next() {
    return tokens.get(at++);
  }

  /** Takes a fixed word or symbol if it stands here; it is not wanted where it does not. */
  boolean takeIf(String fixed) {
    if (says(fixed)) {
      at++;
      return true;
    }
    return false;
  }

  /** Takes {@code then}, or a comma and {@code then}. */
  boolean takeThen() {
    if (says(",") && says(1, "then")) {
      at++;
    }
    return takeIf("then");
  }

  private boolean reached() {
    if (at > furthest) {
      furthest = at;
      wantedWords.clear();
      wantedKinds.clear();
      covered.clear();
      furthestForm = current;
      refusal = Optional.empty();
    }
    return at == furthest;
  }

  void wantWord(String word) {
    if (reached()) {
      wantedWords.add(word);
    }
  }

  void wantKind(String kind) {
    if (reached()) {
      wantedKinds.add(kind);
    }
  }

  /** What stands here is not what is wanted. */
  Mismatch want(String kind) {
    wantKind(kind);
    return new Mismatch();
  }

  /** What stands here has a message of its own. */
  Mismatch refuse(Finding finding) {
    if (reached() && refusal.isEmpty()) {
      refusal = Optional.of(finding);
    }
    return new Mismatch();
  }

  /** More than may stand here. */
  Mismatch refuseMore(String code, int most) {
    return refuse(slips.fail(code, spanHere()).with("most", Argument.of(most)).build());
  }

  /** Something is wrong, yet what is meant is plain and read so. */
  void note(Finding finding) {
    soft.add(finding);
  }

  Span spanHere() {
    return at < tokens.size() ? tokens.get(at).span() : new Span(here(), here());
  }

  // --- plain slots ------------------------------------------------------------------------------

  Name name() {
    return name("name");
  }

  private Name name(String term) {
    if (at >= tokens.size() || !tokens.get(at).isWord()) {
      throw want(term);
    }
    Token word = next();
    return new Name(word.text(), word.span());
  }

  Reference reference() {
    int start = at;
    Name first = name("point");
    if (!dotFollows()) {
      return new Reference(Optional.empty(), first, first.span());
    }
    at++;
    Name second = name("point");
    return new Reference(Optional.of(first), second, spanFrom(start));
  }

  private boolean dotFollows() {
    return says(".") && tokens.get(at).glued();
  }

  Statement.PlaceTerm place() {
    int start = at;
    boolean every = says("every") && !says(1, ".") && takeIf("every");
    Name piece = name("edge-place");
    if (!dotFollows()) {
      throw want("edge-place");
    }
    at++;
    Name second = name("edge-place");
    Optional<Name> third = Optional.empty();
    if (dotFollows()) {
      at++;
      third = Optional.of(name());
    }
    Optional<Name> from = takeIf("from") ? Optional.of(name()) : Optional.empty();
    Optional<Name> to = takeIf("to") ? Optional.of(name()) : Optional.empty();
    boolean reversed = takeIf("reversed");
    return new Statement.PlaceTerm(
        every,
        piece,
        third.isPresent() ? Optional.of(second) : Optional.empty(),
        third.orElse(second),
        from,
        to,
        reversed,
        spanFrom(start));
  }

  Statement.Run run() {
    int start = at;
    List<Statement.PlaceTerm> places = new ArrayList<>();
    do {
      places.add(place());
    } while (takeThen());
    return new Statement.Run(places, spanFrom(start));
  }

  String text() {
    if (at >= tokens.size() || tokens.get(at).kind() != Token.Kind.TEXT) {
      throw want("words");
    }
    return next().text();
  }

  Integer count() {
    if (at >= tokens.size() || !tokens.get(at).isWhole()) {
      throw want("count");
    }
    Token token = tokens.get(at);
    if (token.value() > MOST_COUNTED) {
      throw refuse(
          slips
              .fail("count-too-large", token.span())
              .with("number", Slips.shown(token.text()))
              .with("most", Argument.of(MOST_COUNTED))
              .build());
    }
    at++;
    return (int) token.value();
  }

  /** Takes all tokens up to the next blank or comma. */
  private Span raw(String kind) {
    if (at >= tokens.size() || says(",")) {
      throw want(kind);
    }
    int start = at++;
    while (at < tokens.size() && tokens.get(at).glued() && !says(",")) {
      at++;
    }
    return spanFrom(start);
  }

  NumberRule.SizeWord size() {
    int start = at;
    Optional<Token> first = peek();
    Span span = raw("size");
    String written = source.text(span);
    Token token = first.orElseThrow();
    if (at == start + 1 && (token.isWhole() || token.isWord())) {
      return new NumberRule.SizeWord(token.text(), span);
    } else if (at == start + 1 && token.kind() == Token.Kind.TEXT) {
      return new NumberRule.SizeWord(token.text(), span);
    } else if (!token.isWord() && !token.isNumber()) {
      at = start;
      throw want("size");
    }
    note(
        slips
            .fail("size-quotes", span)
            .with("size", Slips.shown(written))
            .mendedBy(source.replace(span, '"' + written + '"'))
            .build());
    return new NumberRule.SizeWord(written, span);
  }

  Statement.Sizes sizes() {
    int start = at;
    NumberRule.SizeWord from = size();
    take("to");
    NumberRule.SizeWord to = size();
    return new Statement.Sizes(from, to, spanFrom(start));
  }

  String version() {
    if (at >= tokens.size() || (!tokens.get(at).isNumber() && !tokens.get(at).isWord())) {
      throw want("version");
    }
    return source.text(raw("version"));
  }

  java.time.LocalDate date() {
    int start = at;
    Span span = raw("date");
    String written = source.text(span);
    try {
      return java.time.LocalDate.parse(written);
    } catch (java.time.format.DateTimeParseException notADate) {
      at = start;
      throw refuse(slips.fail("date", span).with("date", Slips.shown(written)).build());
    }
  }

  Condition condition() {
    int start = at;
    List<Condition> parts = new ArrayList<>();
    do {
      parts.add((Condition) oneOf(Where.CONDITION));
    } while (takeIf("and"));
    return parts.size() == 1 ? parts.get(0) : new Condition.All(parts, spanFrom(start));
  }

  Expression.Literal literal() {
    return numbers.literal();
  }
}
