package org.hemwright.draft.syntax;

import java.util.List;
import org.hemwright.pattern.finding.Finding;

/**
 * A document as read: its statements in order, and what could not be read.
 *
 * @param file its name, for findings
 * @param text whole and unchanged
 * @param statements headings, definitions and sections at the left edge, in order
 * @param findings a finding for each line that could not be read
 */
public record Document(
    String file, String text, List<Statement> statements, List<Finding> findings) {
  public Document {
    statements = List.copyOf(statements);
    findings = List.copyOf(findings);
  }
}
