package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;

/**
 * The statements in which something is wrong that was told when the text was read. They are read as
 * if mended; what they come to is a guess, and what fails because of them follows from that.
 */
final class Doubt {
  private final List<Span> spans = new ArrayList<>();

  private Doubt() {}

  /** The doubtful statements of a document. */
  static Doubt of(Document document) {
    Doubt doubt = new Doubt();
    Set<Integer> lines = new TreeSet<>();
    for (Finding finding : document.findings()) {
      if (finding.status() == Status.FAIL) {
        finding.origin().ifPresent(origin -> lines.add(origin.line()));
      }
    }
    if (!lines.isEmpty()) {
      doubt.add(document.statements(), Source.of(document), lines);
    }
    return doubt;
  }

  private void add(List<Statement> statements, Source source, Set<Integer> lines) {
    for (Statement statement : statements) {
      Span span = statement.span();
      int first = source.line(span.start());
      int last = source.line(Math.max(span.start(), span.end() - 1));
      if (lines.stream().anyMatch(line -> line >= first && line <= last)) {
        spans.add(span);
      }
      if (statement instanceof Statement.Section section) {
        add(section.body(), source, lines);
      }
    }
  }

  /** Whether there is none. */
  boolean isNone() {
    return spans.isEmpty();
  }

  /** Whether something stands in a doubtful statement. */
  boolean holds(Span span) {
    return spans.stream()
        .anyMatch(each -> each.start() <= span.start() && span.end() <= each.end());
  }
}
