package org.hemwright.workbench;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.syntax.Document;

/**
 * A drafted folder together with what it was drafted from, for a door at which the document is
 * changed while one looks on.
 *
 * @param document as read; absent when there is none
 * @param evaluation the values of every size; absent when there is no chart to draw from
 * @param evaluated what the folder came to
 */
public record LiveDraft(
    Optional<Document> document, Optional<Evaluation> evaluation, Evaluated evaluated) {
  /** The names of the sizes, in the chart's order. */
  public List<String> sizes() {
    return evaluation.stream()
        .flatMap(values -> values.sizes().stream())
        .map(size -> size.name())
        .toList();
  }
}
