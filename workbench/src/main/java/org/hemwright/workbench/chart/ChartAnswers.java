package org.hemwright.workbench.chart;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.workbench.starter.ChartRun;

/**
 * What she says of her chart.
 *
 * @param matches by heading, the name that a column is to get; an empty name leaves it out
 * @param unit the unit of columns that do not say theirs
 * @param needed the measurements that are wanted, as a document names them
 * @param survey whose bodies missing ones may be estimated from; nothing for no estimates
 * @param chest whether the girth round the chest is called so, as for men and children, and not a
 *     bust
 * @param children whether it is for children, of whom no survey is at hand
 */
public record ChartAnswers(
    Map<String, String> matches,
    Optional<String> unit,
    List<String> needed,
    Optional<BodySurvey.Sex> survey,
    boolean chest,
    boolean children) {
  /** What she says of a chart for grown people. */
  public ChartAnswers(
      Map<String, String> matches,
      Optional<String> unit,
      List<String> needed,
      Optional<BodySurvey.Sex> survey) {
    this(matches, unit, needed, survey, survey.equals(Optional.of(BodySurvey.Sex.MEN)), false);
  }

  public ChartAnswers {
    matches = Collections.unmodifiableMap(new LinkedHashMap<>(matches));
    needed = List.copyOf(needed);
  }

  /** Our own size runs of these people, by which what the survey lacks may be estimated. */
  List<ChartRun> runs() {
    List<String> names =
        children
            ? List.of("children")
            : survey
                .map(sex -> sex == BodySurvey.Sex.WOMEN ? List.of("women", "plus") : List.of("men"))
                .orElse(List.of());
    return names.stream().flatMap(name -> ChartRun.named(name).stream()).toList();
  }

  /** A measurement's name in a document for these people. */
  String called(String name) {
    return chest && name.equals("bust") ? "chest" : name;
  }
}
