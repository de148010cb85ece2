package org.hemwright.draft.plan.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.TextEdit;

/** Collects what is wrong with a document while it is planned; a place tells one thing once. */
public final class Problems {
  private final Source source;
  private final List<Finding> findings = new ArrayList<>();
  private final Set<String> told = new HashSet<>();
  private final NameSlips slips = new NameSlips();

  /** Problems of one text. */
  public Problems(Source source) {
    this.source = source;
  }

  /** Adds a finding, unless the same was told at the same place. */
  public void add(Finding.Builder builder) {
    Finding finding = builder.build();
    if (told.add(finding.code() + " " + finding.subject() + " " + finding.origin())) {
      findings.add(finding);
    }
  }

  /** Notes that something uses what is named at a span. */
  public void used(Span definition) {
    slips.used(definition);
  }

  /** Notes a line of a section that gives a name, and whose name is missing. */
  public void nameless(String section) {
    slips.nameless(section);
  }

  /**
   * Adds a finding about a name that nothing has. Where another name that is near to it is used by
   * nothing, the slip is there and is told there; where a line lacks the name it should give, that
   * has been told.
   *
   * @param name the name as it is used
   * @param section the part or piece in which it was looked for, or empty
   * @param near the near name where it is given, if there is one
   */
  public void addUnknown(Finding.Builder finding, Name name, String section, Optional<Name> near) {
    Finding built = finding.build();
    if (told.add(built.code() + " " + built.subject() + " " + built.origin())) {
      slips.add(new NameSlips.Use(built, name, section, near));
    }
  }

  /** Starts a finding about what stands at a span; its subject is that text. */
  public Finding.Builder at(Span span, String code) {
    return at(span, code, text(span));
  }

  /** Starts a finding about what stands at a span. */
  public Finding.Builder at(Span span, String code, String subject) {
    return Finding.fail(code, subject).at(origin(span));
  }

  /** Line and column of a span. */
  public Origin origin(Span span) {
    return source.origin(span);
  }

  /** The line of a span, for people. */
  public Argument line(Span span) {
    return Argument.of(source.line(span.start()));
  }

  long lineOf(Span span) {
    return source.line(span.start());
  }

  String text() {
    return source.text();
  }

  /** The text of a span. */
  public String text(Span span) {
    return source.text(span);
  }

  /** A change of what stands at a span. */
  public TextEdit replace(Span span, String replacement) {
    return source.replace(span, replacement);
  }

  /** Everything added, in the order of the text. */
  public List<Finding> findings() {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(slips.findings(this));
    return all.stream()
        .sorted(
            Comparator.comparing(
                (Finding finding) -> finding.origin().orElse(new Origin(source.file(), 1, 1))))
        .toList();
  }
}
