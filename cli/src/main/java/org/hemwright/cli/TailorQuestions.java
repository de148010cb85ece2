package org.hemwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.GivenFile;
import org.hemwright.workbench.tailor.Tailored;
import picocli.CommandLine.Option;

/** The options that say for which body. */
final class TailorQuestions {
  @Option(
      names = "--body",
      paramLabel = "FILE",
      description =
          "A chart of one row: the body’s name and measurements, headed as the sizes are.")
  private Optional<Path> body = Optional.empty();

  @Option(
      names = "--blend",
      split = ",",
      paramLabel = "SIZE",
      description = "A body between two sizes: --blend 14,18.")
  private List<String> blend = new ArrayList<>();

  @Option(
      names = "--share",
      paramLabel = "SHARE",
      description = "How far from the first size to the second, 50%% when it is left out.")
  private String share = "50%";

  @Option(
      names = "--take",
      split = ",",
      paramLabel = "NAME=SIZE",
      description = "Measurements of different sizes: --take waist=14,hip=18.")
  private List<String> take = new ArrayList<>();

  @Option(
      names = "--rest",
      paramLabel = "SIZE",
      description = "The size from which measurements are taken that are not said.")
  private Optional<String> rest = Optional.empty();

  @Option(
      names = "--called",
      paramLabel = "NAME",
      description = "What is printed in place of a size.")
  private Optional<String> called = Optional.empty();

  /** A body without a place yet. */
  private record Found(String name, Map<String, Double> measures) {}

  /**
   * The body; absent where something is wrong, which is then told.
   *
   * @param place the size whose place it takes, if one was asked for
   */
  Optional<Tailored> tailored(SizeChart chart, Optional<String> place, List<String> problems) {
    int ways = (body.isPresent() ? 1 : 0) + (blend.isEmpty() ? 0 : 1) + (take.isEmpty() ? 0 : 1);
    if (ways != 1) {
      problems.add("tailor: say for whom, by one of --body FILE, --blend 14,18 or --take hip=18");
      return Optional.empty();
    }
    Optional<Found> found = Optional.empty();
    if (body.isPresent()) {
      found = read(body.get(), chart, problems);
    } else if (!blend.isEmpty()) {
      found = blended(chart, problems);
    } else {
      found = taken(chart, problems);
    }
    rest.ifPresent(size -> size(chart, "--rest", size, problems));
    if (found.isEmpty() || !problems.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Double> measures = new LinkedHashMap<>(found.get().measures());
    String at = place.orElseGet(() -> Tailored.nearest(chart, measures));
    rest.flatMap(chart::size)
        .ifPresent(
            size ->
                chart
                    .columns()
                    .forEach(
                        column ->
                            Tailored.value(chart, column.name(), size)
                                .ifPresent(mm -> measures.putIfAbsent(column.name(), mm))));
    String name = called.orElse(found.get().name()).strip();
    if (name.isEmpty() || chart.size(name).isPresent()) {
      problems.add(
          "--called %s: that is the name of a size; give the body a name of its own"
              .formatted(name));
      return Optional.empty();
    }
    return Optional.of(new Tailored(name, at, measures));
  }

  private static Optional<Found> read(Path file, SizeChart chart, List<String> problems) {
    List<Finding> findings = new ArrayList<>();
    Optional<SizeChart> read =
        new GivenFile(file)
            .bytes(findings)
            .flatMap(bytes -> Workbench.readChart(file.toString(), bytes, findings));
    findings.forEach(each -> problems.add(Workbench.wording(Optional.empty()).line(each)));
    if (read.isEmpty() || !findings.isEmpty()) {
      return Optional.empty();
    }
    List<Size> rows = read.get().sizes();
    if (rows.size() != 1) {
      problems.add(
          "--body %s: it has %d rows; give a body a file of its own".formatted(file, rows.size()));
      return Optional.empty();
    }
    Map<String, Double> measures = new LinkedHashMap<>();
    for (SizeChart.Column column : read.get().columns()) {
      Optional<SizeChart.Column> known = chart.column(column.name());
      if (known.isEmpty() || known.get().kind() != column.kind()) {
        problems.add(
            "--body %s: the pattern’s chart has no “%s”; it has %s"
                .formatted(
                    file,
                    column.heading(),
                    String.join(
                        ", ", chart.columns().stream().map(SizeChart.Column::heading).toList())));
      }
      column.cells().get(0).value().ifPresent(mm -> measures.put(column.name(), mm));
    }
    return Optional.of(new Found(rows.get(0).name(), measures));
  }

  private Optional<Found> blended(SizeChart chart, List<String> problems) {
    if (blend.size() != 2) {
      problems.add("--blend " + String.join(",", blend) + ": a blend is of two sizes, as 14,18");
      return Optional.empty();
    }
    Optional<Size> from = size(chart, "--blend", blend.get(0), problems);
    Optional<Size> to = size(chart, "--blend", blend.get(1), problems);
    OptionalDouble part = share(problems);
    if (from.isEmpty() || to.isEmpty() || part.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Double> measures = new LinkedHashMap<>();
    for (SizeChart.Column column : chart.columns()) {
      OptionalDouble one = Tailored.value(chart, column.name(), from.get());
      OptionalDouble other = Tailored.value(chart, column.name(), to.get());
      if (one.isPresent() && other.isPresent()) {
        double step = other.getAsDouble() - one.getAsDouble();
        measures.put(column.name(), one.getAsDouble() + part.getAsDouble() * step);
      }
    }
    return Optional.of(
        new Found("between %s and %s".formatted(from.get().name(), to.get().name()), measures));
  }

  private OptionalDouble share(List<String> problems) {
    if (share.strip().matches("[0-9]{1,3}([.][0-9]+)? ?%")) {
      double part = Double.parseDouble(share.strip().replaceAll(" ?%$", "")) / 100;
      if (part <= 1) {
        return OptionalDouble.of(part);
      }
    }
    problems.add("--share " + share + ": it lies from 0% to 100%; write it as 40%");
    return OptionalDouble.empty();
  }

  private Optional<Found> taken(SizeChart chart, List<String> problems) {
    Map<String, Double> measures = new LinkedHashMap<>();
    List<String> named = new ArrayList<>();
    for (String each : take) {
      int mark = each.indexOf('=');
      String name = (mark < 0 ? each : each.substring(0, mark)).strip().replace('-', '_');
      if (mark < 0 || chart.column(name).isEmpty()) {
        problems.add(
            "--take %s: write it as NAME=SIZE; the chart has %s"
                .formatted(
                    each,
                    String.join(
                        ", ", chart.columns().stream().map(SizeChart.Column::name).toList())));
        continue;
      }
      String wanted = each.substring(mark + 1).strip();
      size(chart, "--take", wanted, problems)
          .flatMap(
              size -> {
                named.add(name.replace('_', ' ') + " " + size.name());
                OptionalDouble value = Tailored.value(chart, name, size);
                return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
              })
          .ifPresent(mm -> measures.put(name, mm));
    }
    return Optional.of(new Found(String.join(", ", named), measures));
  }

  private static Optional<Size> size(
      SizeChart chart, String option, String name, List<String> problems) {
    Optional<Size> size = chart.size(name.strip());
    if (size.isEmpty()) {
      List<String> known = chart.sizes().stream().map(Size::name).toList();
      problems.add(option + " " + name + ": " + SizeMend.of(name.strip(), known));
    }
    return size;
  }
}
