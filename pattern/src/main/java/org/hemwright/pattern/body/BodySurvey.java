package org.hemwright.pattern.body;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is carried of a survey of bodies, of one sex: means, deviations and correlations, no person.
 *
 * <p>The source is the 2012 US Army Anthropometric Survey (ANSUR II, public release of 2017);
 * {@code docs/survey/figures.py} makes the figures. It holds serving adults from 17 to 58 years:
 * fitter than the public, few very large or small, no children. The two sexes are never merged. So
 * what it does not hold is "no data", never a fault of a chart.
 *
 * @param sex whose bodies
 * @param people how many were measured
 * @param measures in the order of the file, names all different
 * @param correlations of the logarithms, by both names, each in the order of the measures
 */
public record BodySurvey(
    Sex sex,
    int people,
    List<SurveyedMeasure> measures,
    Map<String, Map<String, Double>> correlations) {
  /**
   * Fewer than one body in a hundred lies farther from the middle on either side, too few to say
   * much of them (the normal distribution's 99 in 100).
   */
  public static final double HELD = 2.5758;

  /** What people call the survey. */
  public static final String NAME = "2012 US Army Anthropometric Survey (ANSUR II)";

  private static final String FILE = "survey.csv";
  private static final int BEFORE_CORRELATIONS = 9;

  /** Other words that charts have for the same measurement. */
  private static final Map<String, String> ALSO =
      Map.ofEntries(
          Map.entry("chest", "bust"),
          Map.entry("full_bust", "bust"),
          Map.entry("hips", "hip"),
          Map.entry("full_hip", "hip"),
          Map.entry("seat", "hip"),
          Map.entry("stature", "height"),
          Map.entry("inseam", "inside_leg"),
          Map.entry("inside_leg_length", "inside_leg"),
          Map.entry("neck_girth", "neck"),
          Map.entry("bicep", "upper_arm"),
          Map.entry("biceps", "upper_arm"),
          Map.entry("shoulder_length", "shoulder"));

  /** Whose bodies. */
  public enum Sex {
    WOMEN,
    MEN
  }

  public BodySurvey {
    measures = List.copyOf(measures);
    Map<String, Map<String, Double>> copy = new LinkedHashMap<>();
    correlations.forEach((name, row) -> copy.put(name, Map.copyOf(row)));
    correlations = Map.copyOf(copy);
  }

  /** The figures of one sex. */
  public static BodySurvey of(Sex sex) {
    List<String> rows = rows();
    List<String> names = new ArrayList<>();
    String[] heading = rows.get(0).split(",", -1);
    for (int i = BEFORE_CORRELATIONS; i < heading.length; i++) {
      names.add(heading[i].substring("r_".length()));
    }
    int people = 0;
    List<SurveyedMeasure> measures = new ArrayList<>();
    Map<String, Map<String, Double>> correlations = new LinkedHashMap<>();
    for (String row : rows.subList(1, rows.size())) {
      String[] cells = row.split(",", -1);
      if (cells[0].equals(sex == Sex.WOMEN ? "women" : "men")) {
        people = Integer.parseInt(cells[4]);
        measures.add(
            new SurveyedMeasure(
                cells[1],
                cells[2],
                cells[3].equals("alike")
                    ? SurveyedMeasure.Likeness.ALIKE
                    : SurveyedMeasure.Likeness.LARGER,
                Double.parseDouble(cells[5]),
                Double.parseDouble(cells[6]),
                Double.parseDouble(cells[7]),
                Double.parseDouble(cells[8])));
        Map<String, Double> own = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
          own.put(names.get(i), Double.parseDouble(cells[BEFORE_CORRELATIONS + i]));
        }
        correlations.put(cells[1], own);
      }
    }
    return new BodySurvey(sex, people, measures, correlations);
  }

  /**
   * The measurement that a chart's column is.
   *
   * @param column as the document writes it: {@code hip}, {@code chest}
   */
  public Optional<SurveyedMeasure> measure(String column) {
    String name = ALSO.getOrDefault(column, column);
    return measures.stream().filter(measure -> measure.name().equals(name)).findFirst();
  }

  /**
   * The correlation of the logarithms of two measurements of the survey, from -1 to 1.
   *
   * @throws IllegalArgumentException where the survey does not have both
   */
  public double correlation(SurveyedMeasure one, SurveyedMeasure other) {
    Double found = correlations.getOrDefault(one.name(), Map.of()).get(other.name());
    if (found == null) {
      throw new IllegalArgumentException(
          "the survey has not both " + one.name() + " and " + other.name());
    }
    return found;
  }

  /**
   * How many times as large as {@code below} the measurement {@code above} is from body to body;
   * nothing where the survey lacks one of them or both are the same.
   */
  public Optional<Proportion> proportion(String above, String below) {
    Optional<SurveyedMeasure> one = measure(above);
    Optional<SurveyedMeasure> other = measure(below);
    if (one.isEmpty() || other.isEmpty() || one.equals(other)) {
      return Optional.empty();
    }
    double a = one.get().logDeviation();
    double b = other.get().logDeviation();
    double square = a * a + b * b - 2 * correlation(one.get(), other.get()) * a * b;
    return Optional.of(
        new Proportion(one.get().logMean() - other.get().logMean(), Math.sqrt(square)));
  }

  private static List<String> rows() {
    try (InputStream stream = BodySurvey.class.getResourceAsStream(FILE)) {
      if (stream == null) {
        throw new IllegalStateException(FILE + " does not lie beside " + BodySurvey.class);
      }
      return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.startsWith("#"))
          .toList();
    } catch (IOException trouble) {
      throw new UncheckedIOException(FILE + " could not be read", trouble);
    }
  }
}
