package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Reads one statement's tokens by the table of forms.
 *
 * <p>Where a form offers a choice the first that fits is taken; {@link Furthest} remembers where
 * none did. Depth and length are capped by count. What was taken, what was noted and how deep it
 * stands go back together when a form does not fit, so all that moves them is here.
 */
final class Reading {
  /** How deep brackets, turns and moves may stand in each other. */
  static final int DEEPEST = 60;

  /** What is wanted where the line could end. */
  static final String END = "end-of-line";

  private final Source source;
  private final Slips slips;
  private final List<Token> tokens;
  private final WordReading words = new WordReading(this);
  private final NumberReading numbers = new NumberReading(this);
  private final PathReading paths = new PathReading(this);
  private final List<Finding> soft = new ArrayList<>();
  private int at;
  private int depth;
  private boolean barePaths;
  private final Furthest furthest = new Furthest();
  private Optional<Form> current = Optional.empty();

  Reading(Source source, List<Token> tokens) {
    this.source = source;
    this.slips = new Slips(source);
    this.tokens = tokens;
  }

  WordReading words() {
    return words;
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
        wantTerm(END);
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

  /** Where it is wrong, when it is none of the forms. */
  Furthest furthest() {
    return furthest;
  }

  // --- the engine -------------------------------------------------------------------------------

  /** Reads one of the forms that may fill a slot. */
  Object oneOf(Where where) {
    return oneOf(where, form -> true);
  }

  /** Reads one of those that are allowed here. */
  Object oneOf(Where where, Predicate<Form> allowed) {
    Mark start = mark();
    Furthest.Before before = furthest.before(at);
    for (Form form : Forms.at(where)) {
      if (!allowed.test(form)) {
        continue;
      }
      deeper();
      try {
        Object node = form(form);
        shallower();
        return node;
      } catch (Mismatch mismatch) {
        backTo(start);
      }
    }
    furthest.cover(before, where.term());
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
      case NAME -> words.name();
      case REFERENCE -> words.reference();
      case PLACE -> words.place();
      case CASING -> words.reference();
      case RUN -> words.run();
      case TEXT -> words.text();
      case COUNT -> words.count();
      case SIZE -> words.size();
      case SIZES -> words.sizes();
      case VERSION -> words.version();
      case DATE -> words.date();
      case CHECK -> words.check();
      case SUBJECT -> words.subject();
      case WORK -> words.work();
      case NUMBER -> numbers.sum();
      case LITERAL -> numbers.literal();
      case PATH -> paths.term();
      case CHAIN -> paths.chain();
      case AXIS -> paths.primary();
      case CONDITION -> words.condition();
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

  /** A fixed word would have stood well here. */
  void wantWord(String word) {
    furthest.wantWord(at, word, current);
  }

  /** Something that a phrase names would have stood well here. */
  void wantTerm(String term) {
    furthest.wantTerm(at, term, current);
  }

  /** What stands here is not what is wanted. */
  Mismatch want(String term) {
    wantTerm(term);
    return new Mismatch();
  }

  /** What stands here has a message of its own. */
  Mismatch refuse(Finding finding) {
    furthest.refuse(at, finding, current);
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
}
