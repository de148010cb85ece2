package org.hemwright.draft.plan.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
    return findings.stream()
        .sorted(
            Comparator.comparing(
                (Finding finding) -> finding.origin().orElse(new Origin(source.file(), 1, 1))))
        .toList();
  }
}
