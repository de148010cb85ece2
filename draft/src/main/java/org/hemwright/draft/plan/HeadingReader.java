package org.hemwright.draft.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.Brand;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.Wearers;

/** Reads the lines that say who made the pattern and how its papers speak. */
final class HeadingReader {
  private final Document document;
  private final Problems problems;

  HeadingReader(Document document, Problems problems) {
    this.document = document;
    this.problems = problems;
  }

  /** The details; what is missing is told, and a stand-in takes its place. */
  Details details() {
    Optional<Statement.Title> title =
        one(Statement.Title.class, "pattern", "pattern \"Sandling skirt\"");
    Optional<Statement.Version> version = one(Statement.Version.class, "version", "version 1.0");
    Optional<Statement.Dated> dated = one(Statement.Dated.class, "dated", "dated 2026-11-25");
    Optional<Statement.By> by = one(Statement.By.class, "by", "by \"Tern Cove Patterns\"");
    Optional<Statement.Units> units = optional(Statement.Units.class);
    Optional<Statement.Spelling> spelling = optional(Statement.Spelling.class);
    boolean inches = units.map(Statement.Units::inches).orElse(false);
    boolean british = spelling.map(Statement.Spelling::british).orElse(!inches);
    return new Details(
        title.map(Statement.Title::text).orElse("Untitled"),
        version.map(Statement.Version::text).orElse("0"),
        dated.map(Statement.Dated::date).orElse(LocalDate.EPOCH),
        by.map(Statement.By::house).orElse("Unknown"),
        inches ? Details.Units.INCHES : Details.Units.CENTIMETRES,
        british ? Details.Spelling.BRITISH : Details.Spelling.AMERICAN,
        optional(Statement.For.class).map(said -> new Wearers(said.people(), said.builds())),
        new Brand(
            optional(Statement.Logo.class).map(Statement.Logo::file),
            optional(Statement.Footer.class).map(Statement.Footer::text)));
  }

  /** The base size; the first of the chart where none is named. */
  Size base(Compilation shared) {
    return one(Statement.SizesFrom.class, "sizes", "sizes from \"sizes.csv\" base 14")
        .flatMap(said -> shared.sizes().find(said.base()))
        .orElse(shared.sizes().all().first());
  }

  private <S extends Statement> Optional<S> one(Class<S> kind, String word, String example) {
    Optional<S> said = optional(kind);
    boolean unread =
        document.statements().stream()
            .anyMatch(
                line -> line instanceof Statement.Unread missed && missed.word().equals(word));
    if (said.isEmpty() && !unread) {
      problems.add(
          problems
              .at(new Span(0, 0), "heading-missing", word)
              .with("word", word)
              .with("example", example));
    }
    return said;
  }

  private <S extends Statement> Optional<S> optional(Class<S> kind) {
    return document.statements().stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }
}
