package org.hemwright.workbench.chart;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.body.BodySurvey;

/**
 * What she says of her chart.
 *
 * @param matches by heading, the name that a column is to get; an empty name leaves it out
 * @param unit the unit of columns that do not say theirs
 * @param needed the measurements that are wanted, as a document names them
 * @param survey whose bodies missing ones may be estimated from; nothing for no estimates
 */
public record ChartAnswers(
    Map<String, String> matches,
    Optional<String> unit,
    List<String> needed,
    Optional<BodySurvey.Sex> survey) {
  public ChartAnswers {
    matches = Collections.unmodifiableMap(new LinkedHashMap<>(matches));
    needed = List.copyOf(needed);
  }
}
