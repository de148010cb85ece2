package org.hemwright.pattern.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * How many of a surveyed population a size chart serves: the share that lies within half a step of
 * some one size by every measurement that people choose a size by and that chart and survey share.
 *
 * <p>An estimate: the survey is carried as means, deviations and correlations, and girths are taken
 * to spread normally by logarithms, which its people do to a hundredth or two (a test holds that).
 * A measurement that the survey took elsewhere on the body, as its waist round the navel, is left
 * out.
 *
 * @param survey whose bodies
 * @param dimensions by which a size is chosen, one at least
 * @param leftOut columns of the chart that would be among them had the survey measured them alike
 * @param share of the population, 0 to 1
 * @param sizes in the chart's order, those that have a value for every dimension
 */
public record Coverage(
    BodySurvey survey,
    List<Dimension> dimensions,
    List<String> leftOut,
    double share,
    List<OfSize> sizes) {
  /** What people choose a size by, the first that a chart has before the others. */
  private static final List<String> GIRTHS = List.of("bust", "waist", "hip");

  public Coverage {
    dimensions = List.copyOf(dimensions);
    leftOut = List.copyOf(leftOut);
    sizes = List.copyOf(sizes);
  }

  /**
   * One measurement.
   *
   * @param column the chart's name of it
   * @param measure the survey's figures
   * @param share of the population within half a step of some size by this one alone, 0 to 1
   */
  public record Dimension(String column, SurveyedMeasure measure, double share) {}

  /**
   * One size.
   *
   * @param name the size's
   * @param spans for each dimension the bodies it serves
   * @param share of the population that it serves by all dimensions, 0 to 1
   * @param held whether the survey holds enough bodies about this size to speak of it
   */
  public record OfSize(String name, List<SizeSpan> spans, double share, boolean held) {
    public OfSize {
      spans = List.copyOf(spans);
    }
  }

  /** Why nothing can be said. */
  public enum NoData {
    /** The document does not say whom the chart is for. */
    WEARERS_UNSAID,
    /** No survey that is carried measured such people. */
    NOT_SURVEYED,
    /** The chart has no measurement that the survey took alike. */
    NO_MEASUREMENT,
    /** Fewer than two sizes, or none about which the survey holds bodies. */
    NO_SIZES
  }

  /**
   * What is known of one population.
   *
   * @param coverage absent where nothing is known
   * @param because why not; absent where something is
   */
  public record Answer(Optional<Coverage> coverage, Optional<NoData> because) {
    private static Answer none(NoData reason) {
      return new Answer(Optional.empty(), Optional.of(reason));
    }
  }

  /** An answer for each population that the chart is for; one that says why where there is none. */
  public static List<Answer> of(SizeChart chart, Optional<Wearers> wearers) {
    if (wearers.isEmpty()) {
      return List.of(Answer.none(NoData.WEARERS_UNSAID));
    }
    List<BodySurvey.Sex> surveyed = wearers.get().surveyed();
    return surveyed.isEmpty()
        ? List.of(Answer.none(NoData.NOT_SURVEYED))
        : surveyed.stream().map(sex -> of(chart, BodySurvey.of(sex))).toList();
  }

  /** How many of a survey's population a chart serves. */
  public static Answer of(SizeChart chart, BodySurvey survey) {
    Map<SizeChart.Column, SurveyedMeasure> alike = new LinkedHashMap<>();
    List<String> leftOut = new ArrayList<>();
    for (String girth : GIRTHS) {
      Optional<SizeChart.Column> column = column(chart, survey, girth);
      Optional<SurveyedMeasure> measure = survey.measure(girth);
      if (column.isPresent() && measure.isPresent()) {
        if (measure.get().likeness() == SurveyedMeasure.Likeness.ALIKE) {
          alike.put(column.get(), measure.get());
        } else {
          leftOut.add(column.get().name());
        }
      }
    }
    if (alike.isEmpty()) {
      firstOther(chart, survey)
          .ifPresent(c -> alike.put(c, survey.measure(c.name()).orElseThrow()));
    }
    if (alike.isEmpty()) {
      return Answer.none(NoData.NO_MEASUREMENT);
    }
    List<OfSize> sizes = sizes(chart, survey, alike);
    if (sizes.stream().noneMatch(OfSize::held)) {
      return Answer.none(NoData.NO_SIZES);
    }
    List<Dimension> dimensions = new ArrayList<>();
    for (Map.Entry<SizeChart.Column, SurveyedMeasure> each : alike.entrySet()) {
      int at = dimensions.size();
      PopulationShare alone = new PopulationShare(survey, List.of(each.getValue()));
      List<List<SizeSpan>> spans = sizes.stream().map(size -> List.of(size.spans.get(at))).toList();
      dimensions.add(new Dimension(each.getKey().name(), each.getValue(), alone.within(spans)));
    }
    PopulationShare all = new PopulationShare(survey, List.copyOf(alike.values()));
    double share = all.within(sizes.stream().map(OfSize::spans).toList());
    return new Answer(
        Optional.of(new Coverage(survey, dimensions, leftOut, share, sizes)), Optional.empty());
  }

  private static Optional<SizeChart.Column> column(
      SizeChart chart, BodySurvey survey, String girth) {
    return chart.columns().stream()
        .filter(column -> column.kind() == QuantityKind.LENGTH)
        .filter(
            column -> survey.measure(column.name()).filter(m -> m.name().equals(girth)).isPresent())
        .findFirst();
  }

  /** For charts without any of the trunk's girths, such as those of hats and gloves. */
  private static Optional<SizeChart.Column> firstOther(SizeChart chart, BodySurvey survey) {
    return chart.columns().stream()
        .filter(column -> column.kind() == QuantityKind.LENGTH)
        .filter(
            column ->
                survey
                    .measure(column.name())
                    .filter(m -> m.likeness() == SurveyedMeasure.Likeness.ALIKE)
                    .isPresent())
        .findFirst();
  }

  private static List<OfSize> sizes(
      SizeChart chart, BodySurvey survey, Map<SizeChart.Column, SurveyedMeasure> alike) {
    PopulationShare population = new PopulationShare(survey, List.copyOf(alike.values()));
    List<OfSize> sizes = new ArrayList<>();
    for (Size size : chart.sizes()) {
      List<SizeSpan> spans = new ArrayList<>();
      boolean held = true;
      for (Map.Entry<SizeChart.Column, SurveyedMeasure> each : alike.entrySet()) {
        OptionalDouble value = each.getKey().cells().get(size.position()).value();
        SizeSpan.of(each.getKey()).get(size.position()).ifPresent(spans::add);
        held &=
            value.isPresent()
                && value.getAsDouble() > 0
                && Math.abs(each.getValue().deviations(value.getAsDouble())) <= BodySurvey.HELD;
      }
      if (spans.size() == alike.size() && spans.stream().allMatch(span -> span.from() > 0)) {
        sizes.add(new OfSize(size.name(), spans, population.within(List.of(spans)), held));
      }
    }
    return sizes;
  }
}
