package org.hemwright.workbench.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.exchange.chart.ChartProposal;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.exchange.chart.StandardMeasurement;
import org.hemwright.pattern.body.BodyEstimate;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.finding.Finding;

/**
 * Her chart with her answers: the columns under their names, and estimates of what is missing.
 *
 * @param file its name
 * @param sizes the sizes' names
 * @param columns in order
 * @param estimates what is missing and could be estimated, in the order asked for
 * @param missing what is missing and could not
 * @param leftOut what else stands in the file
 * @param unread cells that are no number
 * @param ranges cells that say from where to where, of which the middle is taken
 * @param findings why nothing could be read
 */
public record BroughtChart(
    String file,
    List<String> sizes,
    List<Column> columns,
    List<Estimate> estimates,
    List<String> missing,
    List<String> leftOut,
    List<String> unread,
    List<String> ranges,
    List<Finding> findings) {
  private static final double MM_PER_INCH = 25.4;

  /** No person's chart gives more (mm); more is a unit taken for another. */
  private static final double MOST = 4000;

  public BroughtChart {
    sizes = List.copyOf(sizes);
    columns = List.copyOf(columns);
    estimates = List.copyOf(estimates);
    missing = List.copyOf(missing);
    leftOut = List.copyOf(leftOut);
    unread = List.copyOf(unread);
    ranges = List.copyOf(ranges);
    findings = List.copyOf(findings);
  }

  /**
   * One of her columns.
   *
   * @param heading as she writes it
   * @param name what it is to be called; empty where it is left out
   * @param standard what ISO 8559 calls it, where that is known
   * @param proposed whether the name is a match that she has not said herself
   * @param unit its unit, if it is known
   * @param values for each size, in that unit
   */
  public record Column(
      String heading,
      String name,
      Optional<String> standard,
      boolean proposed,
      Optional<String> unit,
      List<OptionalDouble> values) {
    public Column {
      values = List.copyOf(values);
    }

    /** Whether it is taken into the chart. */
    public boolean isKept() {
      return !name.isEmpty();
    }

    OptionalDouble mm(int size) {
      OptionalDouble value = values.get(size);
      if (value.isEmpty() || unit.isEmpty()) {
        return OptionalDouble.empty();
      }
      return OptionalDouble.of(value.getAsDouble() * factor(unit.get()));
    }
  }

  /**
   * A measurement that is missing, as the survey lets one expect it, or one of our own size runs
   * where the survey lacks it.
   *
   * @param name what it is called
   * @param from what it was worked out from
   * @param mm for each size
   * @param spread one standard deviation in the middle size (mm); unknown for one by a size run
   * @param run the name of the size run; empty for one by the survey
   */
  public record Estimate(
      String name, List<String> from, List<OptionalDouble> mm, OptionalDouble spread, String run) {
    public Estimate {
      from = List.copyOf(from);
      mm = List.copyOf(mm);
    }
  }

  private static double factor(String unit) {
    return unit.equals("in") ? MM_PER_INCH : unit.equals("cm") ? 10 : 1;
  }

  /** Reads a chart and puts her answers to it. */
  public static BroughtChart of(String file, byte[] content, ChartAnswers answers) {
    ChartProposal proposal = ChartProposal.of(file, content);
    List<Column> columns = new ArrayList<>();
    for (ChartProposal.Column column : proposal.columns()) {
      String said = answers.matches().get(column.heading());
      String name = said == null ? answers.called(column.name()) : said;
      columns.add(
          new Column(
              column.heading(),
              name,
              StandardMeasurement.named(name.equals("chest") ? "bust" : name)
                  .map(StandardMeasurement::standard)
                  .map(words -> name.equals("chest") ? "chest girth" : words),
              said == null,
              column.unit().or(answers::unit),
              column.values()));
    }
    List<String> have = columns.stream().filter(Column::isKept).map(Column::name).toList();
    List<Estimate> estimates = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (String each : answers.needed()) {
      String wanted = answers.called(each);
      if (!have.contains(wanted)) {
        Optional<Estimate> estimate =
            answers
                .survey()
                .flatMap(
                    sex -> estimate(BodySurvey.of(sex), wanted, columns, proposal.sizes().size()))
                .or(() -> byRun(answers, wanted, columns, proposal.sizes().size()));
        estimate.ifPresentOrElse(estimates::add, () -> missing.add(wanted));
      }
    }
    return new BroughtChart(
        file,
        proposal.sizes(),
        columns,
        estimates,
        missing,
        proposal.leftOut(),
        proposal.unread(),
        proposal.ranges(),
        proposal.findings());
  }

  private static Optional<Estimate> estimate(
      BodySurvey survey, String wanted, List<Column> columns, int sizes) {
    List<OptionalDouble> values = new ArrayList<>();
    List<String> from = List.of();
    double spread = 0;
    for (int i = 0; i < sizes; i++) {
      Map<String, Double> known = new LinkedHashMap<>();
      for (Column column : columns) {
        OptionalDouble mm = column.isKept() ? column.mm(i) : OptionalDouble.empty();
        if (mm.isPresent() && mm.getAsDouble() > 0 && mm.getAsDouble() < MOST) {
          known.put(column.name(), mm.getAsDouble());
        }
      }
      Optional<BodyEstimate> estimate = BodyEstimate.of(survey, wanted, known);
      values.add(estimate.map(each -> OptionalDouble.of(each.mm())).orElse(OptionalDouble.empty()));
      if (estimate.isPresent() && i <= sizes / 2) {
        from = estimate.get().from();
        spread = estimate.get().spread();
      }
    }
    return from.isEmpty()
        ? Optional.empty()
        : Optional.of(new Estimate(wanted, from, values, OptionalDouble.of(spread), ""));
  }

  private static Optional<Estimate> byRun(
      ChartAnswers answers, String wanted, List<Column> columns, int sizes) {
    List<RunEstimate.Known> known = new ArrayList<>();
    for (Column column : columns) {
      if (column.isKept() && column.unit().isPresent()) {
        List<OptionalDouble> mm = new ArrayList<>();
        for (int i = 0; i < sizes; i++) {
          mm.add(column.mm(i));
        }
        known.add(new RunEstimate.Known(column.name(), mm));
      }
    }
    return RunEstimate.of(answers.runs(), wanted, known)
        .map(
            each ->
                new Estimate(
                    wanted, List.of(each.from()), each.mm(), OptionalDouble.empty(), each.run()));
  }

  /** The columns that are to stay and do not say their unit. */
  public List<String> withoutUnit() {
    return columns.stream()
        .filter(column -> column.isKept() && column.unit().isEmpty())
        .map(Column::heading)
        .toList();
  }

  /** Names that two columns would share. */
  public List<String> twice() {
    List<String> names = columns.stream().filter(Column::isKept).map(Column::name).toList();
    return names.stream()
        .filter(name -> names.indexOf(name) != names.lastIndexOf(name))
        .distinct()
        .toList();
  }

  /** Whether nothing stands in the way of a size chart. */
  public boolean isWhole() {
    return findings.isEmpty() && withoutUnit().isEmpty() && twice().isEmpty();
  }

  /**
   * The size chart as a pattern folder holds it, in her units; estimates in the one that all of it
   * has, else in centimetres, with a note that they are.
   */
  public String csv() {
    StringBuilder text = new StringBuilder();
    text.append("# Brought in from ").append(file.replaceAll("[\\r\\n]", " ")).append(".\n");
    if (!ranges.isEmpty()) {
      text.append("# Of ranges the middle is taken: ")
          .append(String.join("; ", ranges).replaceAll("[\\r\\n]", " "))
          .append(".\n");
    }
    for (Estimate estimate : estimates) {
      text.append("# ")
          .append(estimate.name())
          .append(" is an estimate from ")
          .append(String.join(", ", estimate.from()));
      if (estimate.spread().isPresent()) {
        text.append(" (")
            .append(BodySurvey.NAME)
            .append("); one body in three lies more than ")
            .append(rounded(estimate.spread().getAsDouble() / 10, 1))
            .append(" cm from it.");
      } else {
        text.append(" by our own size run for ")
            .append(estimate.run())
            .append("; no survey says how far bodies lie from it.");
      }
      text.append(" Measure before you rely on it.\n");
    }
    String own = unitOfEstimates();
    text.append("size");
    List<Column> kept = columns.stream().filter(Column::isKept).toList();
    for (Column column : kept) {
      String unit = column.unit().orElseThrow();
      text.append(',')
          .append(column.name().replace('_', ' '))
          .append(" (")
          .append(unit)
          .append(')');
    }
    for (Estimate estimate : estimates) {
      text.append(',')
          .append(estimate.name().replace('_', ' '))
          .append(" (")
          .append(own)
          .append(')');
    }
    text.append('\n');
    for (int i = 0; i < sizes.size(); i++) {
      text.append(quoted(sizes.get(i)));
      for (Column column : kept) {
        OptionalDouble value = column.values().get(i);
        text.append(',');
        text.append(value.isPresent() ? rounded(value.getAsDouble(), 4) : "");
      }
      for (Estimate estimate : estimates) {
        OptionalDouble value = estimate.mm().get(i);
        text.append(',');
        text.append(
            value.isPresent()
                ? rounded(value.getAsDouble() / factor(own), own.equals("in") ? 2 : 1)
                : "");
      }
      text.append('\n');
    }
    return text.toString();
  }

  private String unitOfEstimates() {
    List<String> units =
        columns.stream()
            .filter(Column::isKept)
            .flatMap(column -> column.unit().stream())
            .distinct()
            .toList();
    return units.equals(List.of("in")) ? "in" : "cm";
  }

  /** The chart reads back as it is meant to; what it says otherwise. */
  public List<Finding> readBack() {
    return ChartReader.read("sizes.csv", csv().getBytes(java.nio.charset.StandardCharsets.UTF_8))
        .findings();
  }

  private static String rounded(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String quoted(String text) {
    return text.matches("[^,;\t\"]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
  }
}
