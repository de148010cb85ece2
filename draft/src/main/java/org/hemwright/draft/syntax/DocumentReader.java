package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Statement.Unread;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Reads a document: text in, tree and findings out, whatever the text.
 *
 * <p>One statement a line. A word at the left edge always starts anew, so that one slip never
 * swallows the next section; indented lines belong to the section above. Every problem is told,
 * each once, up to {@link #MOST_FINDINGS}.
 */
public final class DocumentReader {
  /** After so many problems the rest is left for the next reading. */
  public static final int MOST_FINDINGS = 200;

  /** Longer texts are refused (UTF-16 units). */
  public static final int LONGEST_TEXT = 8_000_000;

  private static final String INDENT = "  ";

  private final Source source;
  private final Slips slips;
  private final List<Line> lines = new ArrayList<>();
  private final FoundSoFar found = new FoundSoFar();
  private final StatementReader statements;
  private final List<OpenSection> sections = new ArrayList<>();
  private final OpenSection document;
  private Optional<OpenSection> open = Optional.empty();

  /** A section that a line at the left edge closed, though that line may have belonged to it. */
  private Optional<OpenSection> interrupted = Optional.empty();

  private Optional<Written> interrupter = Optional.empty();

  /** Whether the lines that follow belong to a section that could not be told. */
  private boolean inUnknown;

  private DocumentReader(String file, String text) {
    this.source = new Source(file, text);
    this.slips = new Slips(source);
    this.statements = new StatementReader(source, lines, found);
    Unread whole = new Unread("", Optional.empty(), List.of(), new Span(0, text.length()));
    this.document = new OpenSection(whole, Optional.of(Where.LEFT_EDGE));
  }

  /**
   * Reads a document.
   *
   * @param file its name, for findings
   * @param text all of it
   */
  public static Document read(String file, String text) {
    return new DocumentReader(file, text).document();
  }

  private Document document() {
    if (source.text().length() > LONGEST_TEXT) {
      found.add(
          slips
              .fail("text-too-long", new Span(0, 0))
              .with("most", Argument.of(LONGEST_TEXT))
              .build());
    } else {
      readLines();
    }
    List<Statement> read = sections.stream().map(OpenSection::close).toList();
    return new Document(source.file(), source.text(), read, found.told());
  }

  private void readLines() {
    for (int number = 1; number <= source.lines(); number++) {
      lines.add(LineLexer.cut(source, number));
    }
    int index = 0;
    while (index < lines.size()) {
      if (lines.get(index).tokens().isEmpty()) {
        if (!inUnknown) {
          found.addAll(lines.get(index).slips());
        }
        index++;
      } else {
        index = statement(index);
      }
    }
    languageFirst();
  }

  private void languageFirst() {
    if (!sections.isEmpty() && isLanguage(sections.get(0).head())) {
      return;
    }
    Optional<Statement> later =
        sections.stream().map(OpenSection::head).filter(DocumentReader::isLanguage).findFirst();
    found.add(
        later
            .map(language -> slips.fail("language-later", language.span()).build())
            .orElseGet(
                () ->
                    slips
                        .fail("language-first", new Span(0, 0))
                        .mendedBy(source.replace(new Span(0, 0), "language 1\n"))
                        .build()));
  }

  private static boolean isLanguage(Statement statement) {
    return statement instanceof Statement.Language
        || (statement instanceof Unread unread && unread.word().equals("language"));
  }

  /** Reads the statement that starts at a line; returns the index of the line after it. */
  private int statement(int index) {
    Written written = Written.at(lines, index);
    if (written.first().startsAnew()) {
      inUnknown = false;
    } else if (inUnknown) {
      return index + 1;
    }
    Written read = place(written);
    indentation(written.first());
    read.lines().forEach(line -> found.addAll(line.slips()));
    return read.last().number();
  }

  /** Tells tabs, and a line that stands further in or out than the first of its section. */
  private void indentation(Line line) {
    Span blank = new Span(line.start(), line.indent());
    if (line.atLeftEdge() || open.isEmpty()) {
      return;
    }
    String written = source.text(blank);
    if (written.indexOf('\t') >= 0) {
      found.add(
          slips
              .warn("tab", blank)
              .mendedBy(source.replace(blank, written.replace("\t", INDENT)))
              .build());
      return;
    }
    int usual = open.get().indent(written.length());
    if (usual != written.length()) {
      found.add(
          slips
              .warn("uneven-indent", blank)
              .with("blanks", Argument.of(written.length()))
              .with("usual", Argument.of(usual))
              .mendedBy(source.replace(blank, " ".repeat(usual)))
              .build());
    }
  }

  /** Finds out where a statement belongs and reads it there. */
  private Written place(Written written) {
    boolean edge = written.first().atLeftEdge();
    Optional<Where> here = open.flatMap(OpenSection::inside);
    if (written.tokens().isEmpty() || !written.tokens().get(0).isWord()) {
      return unknown(written, edge ? Where.LEFT_EDGE : here.orElse(Where.LEFT_EDGE));
    }
    String word = written.tokens().get(0).text();
    if (edge) {
      return placeAtLeftEdge(written, word);
    }
    if (open.isEmpty() && interrupted.isPresent() && fits(interrupted, word)) {
      found.add(notIndented(interrupter.orElseThrow()));
      open = interrupted;
      here = open.flatMap(OpenSection::inside);
    }
    if (here.isPresent() && !Forms.at(here.get(), word).isEmpty()) {
      return line(written, Forms.at(here.get(), word));
    }
    List<Form> headings = Forms.at(Where.LEFT_EDGE, word);
    if (!headings.isEmpty()) {
      Line first = written.first();
      found.add(
          slips
              .fail("indented-heading", written.tokens().get(0).span())
              .with("word", word)
              .mendedBy(source.replace(new Span(first.start(), first.indent()), ""))
              .build());
      return heading(written, headings);
    }
    if (!Places.of(word).isEmpty()) {
      return misplaced(
          written, here.isPresent() ? "wrong-section" : "no-section", here.orElse(Where.LEFT_EDGE));
    }
    return unknown(written, here.orElse(Where.LEFT_EDGE));
  }

  private Written placeAtLeftEdge(Written written, String word) {
    List<Form> headings = Forms.at(Where.LEFT_EDGE, word);
    if (!headings.isEmpty()) {
      return heading(written, headings);
    }
    if (open.isPresent() && fits(open, word)) {
      found.add(notIndented(written));
      return line(written, Forms.at(open.get().inside().orElseThrow(), word));
    }
    return Places.of(word).isEmpty()
        ? unknown(written, Where.LEFT_EDGE)
        : misplaced(written, "wrong-section", Where.LEFT_EDGE);
  }

  /** Where an indented line stands. */
  private Where here() {
    return open.flatMap(OpenSection::inside).orElse(Where.LEFT_EDGE);
  }

  private static boolean fits(Optional<OpenSection> section, String word) {
    return section
        .flatMap(OpenSection::inside)
        .filter(where -> !Forms.at(where, word).isEmpty())
        .isPresent();
  }

  private Finding notIndented(Written written) {
    Token first = written.tokens().get(0);
    return slips
        .fail("not-indented", first.span())
        .with("word", first.text())
        .mendedBy(source.replace(new Span(first.span().start(), first.span().start()), INDENT))
        .build();
  }

  private Written misplaced(Written written, String code, Where here) {
    Token first = written.tokens().get(0);
    found.add(
        slips
            .fail(code, first.span())
            .with("word", Slips.shown(first.text()))
            .with("here", new Argument.Term(here.term()))
            .with("places", Places.named(Places.of(first.text())))
            .build());
    add(StatementReader.unread(written, List.of()));
    return written;
  }

  // --- statements -------------------------------------------------------------------------------

  private Written heading(Written written, List<Form> forms) {
    StatementReader.Result result = statements.read(written, forms, here());
    Form form = forms.get(0);
    Statement statement = result.statement();
    if (form.once() && saidTwice(document, form, statement)) {
      statement = StatementReader.unread(written, forms);
    }
    OpenSection section = new OpenSection(statement, form.opens());
    sections.add(section);
    if (form.opens().isPresent()) {
      open = Optional.of(section);
      interrupted = Optional.empty();
    } else {
      boolean couldBeInside = form.where().size() > 1;
      interrupted = couldBeInside ? open.or(() -> interrupted) : Optional.empty();
      interrupter = interrupter.filter(before -> open.isEmpty()).or(() -> Optional.of(written));
      open = Optional.empty();
    }
    return result.written();
  }

  private Written line(Written written, List<Form> forms) {
    StatementReader.Result result = statements.read(written, forms, here());
    Form form = forms.get(0);
    OpenSection section = open.orElse(document);
    if (!form.once() || !saidTwice(section, form, result.statement())) {
      add(result.statement());
    }
    return result.written();
  }

  private void add(Statement statement) {
    if (open.isPresent()) {
      open.get().add(statement);
    } else {
      sections.add(new OpenSection(statement, Optional.empty()));
    }
  }

  private boolean saidTwice(OpenSection section, Form form, Statement statement) {
    Optional<Statement> before = section.sayOnce(form.id(), statement);
    before.ifPresent(
        said ->
            found.add(
                slips
                    .fail("said-twice", statement.span())
                    .with("word", form.id())
                    .with("line", Argument.of(source.line(said.span().start())))
                    .build()));
    return before.isPresent();
  }

  // --- lines that start with no known word ------------------------------------------------------

  private Written unknown(Written written, Where where) {
    List<Token> tokens = written.tokens();
    for (Where tried : List.of(where, Where.LEFT_EDGE)) {
      boolean enough = tokens.isEmpty() || found.isEnough();
      Optional<FirstWord> meant =
          enough ? Optional.empty() : FirstWord.meant(source, tokens, tried, form -> !isSaid(form));
      if (meant.isPresent()) {
        found.add(meant.get().finding());
        Written mended = meant.get().in(written);
        return tried == Where.LEFT_EDGE
            ? heading(mended, meant.get().forms())
            : line(mended, meant.get().forms());
      }
    }
    Token first = written.first().tokens().get(0);
    boolean belongsNowhere = open.isEmpty() && !written.first().atLeftEdge();
    String code = first.isWord() ? "unknown-line" : "line-start";
    found.add(
        slips
            .fail(belongsNowhere ? "no-section-above" : code, first.span())
            .with("word", Slips.shown(source.text(first.span())))
            .with("here", new Argument.Term(where.term()))
            .with("words", Places.firstWords(where))
            .build());
    if (first.isWord() && written.first().atLeftEdge()) {
      open = Optional.empty();
      inUnknown = true;
    }
    add(StatementReader.unread(written, List.of()));
    return written;
  }

  private boolean isSaid(Form form) {
    return form.once()
        && (document.hasSaid(form.id()) || open.filter(s -> s.hasSaid(form.id())).isPresent());
  }
}
