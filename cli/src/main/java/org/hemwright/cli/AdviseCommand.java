package org.hemwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.pattern.quantity.Reading;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.advise.Advice;
import org.hemwright.workbench.report.AdviceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which size a maker takes. */
@Command(
    name = "advise",
    description = "Say which size a maker takes, how it will fit and what to change, as a reply.",
    footer = {
      "",
      "Any measurement of the chart is an option by its name, with a length:",
      "",
      "Examples:",
      "  hemwright advise my-skirt --hip 102cm --waist 84cm     as a reply that you can send",
      "  hemwright advise my-skirt --hip \"40 1/4in\" --json      the numbers, for a program",
      "  hemwright advise my-skirt --released 1.0 --hip 102cm   of the version that she bought",
      "",
      "The size is chosen by the measurement that the garment leaves least room for."
    })
final class AdviseCommand extends FolderCommand {
  /** The option that the measurements of the chart are turned into. */
  private static final String MEASURED = "--measured";

  private static final Set<String> OWN =
      Set.of("--json", "--size", "--released", "--help", "--version", MEASURED);

  @Option(
      names = MEASURED,
      paramLabel = "NAME=LENGTH",
      description = "A measurement by the chart’s name; --hip 102cm is short for hip=102cm.")
  private List<String> measured = new ArrayList<>();

  /**
   * The arguments with {@code --hip 102cm} as {@code --measured hip=102cm}, so that every name of a
   * chart may be said.
   */
  static String[] plain(String[] args) {
    List<String> plain = new ArrayList<>();
    for (int i = 0; i < args.length; i++) {
      String name = args[i].contains("=") ? args[i].substring(0, args[i].indexOf('=')) : args[i];
      boolean own = !name.startsWith("--") || OWN.contains(name);
      boolean follows = i + 1 < args.length && !args[i + 1].startsWith("--");
      if (own || !(name.length() < args[i].length() || follows)) {
        plain.add(args[i]);
      } else {
        plain.add(MEASURED);
        String value = name.length() < args[i].length() ? args[i].substring(name.length() + 1) : "";
        plain.add(name.substring(2) + "=" + (value.isEmpty() ? args[++i] : value));
      }
    }
    return plain.toArray(String[]::new);
  }

  @Override
  int work(Job job) {
    List<String> problems = new ArrayList<>();
    Map<String, Double> body = body(job.run(), problems);
    if (body.isEmpty() && problems.isEmpty()) {
      problems.add(
          "advise: tell a measurement or more, such as --%s 90cm; the chart has %s"
              .formatted(lengths(job.run()).get(0), String.join(", ", lengths(job.run()))));
    }
    if (!problems.isEmpty()) {
      problems.forEach(messages()::println);
      return ExitCode.INPUT_WRONG;
    }
    Advice advice = Workbench.advise(job.run(), body);
    var details = job.run().pattern().details();
    answer(
        json()
            ? AdviceReport.json(advice, details, job.tell().wording())
            : AdviceReport.reply(advice, details, job.tell().wording()));
    return ExitCode.ALL_WELL;
  }

  private Map<String, Double> body(SizeRun run, List<String> problems) {
    Map<String, Double> body = new LinkedHashMap<>();
    List<String> known = lengths(run);
    for (String each : measured) {
      int mark = each.indexOf('=');
      String said = mark < 0 ? each : each.substring(0, mark);
      String name = said.replace('-', '_');
      if (!known.contains(name)) {
        String meant =
            NearName.to(name, known).map(near -> "did you mean --" + near + "? ").orElse("");
        problems.add(
            "--%s: the chart has no length of that name; %sit has %s"
                .formatted(said, meant, String.join(", ", known)));
        continue;
      }
      Optional<Double> length = length(mark < 0 ? "" : each.substring(mark + 1));
      Optional<String> doubt =
          length.isPresent()
              ? MeasureDoubt.about(run, name, each.substring(mark + 1))
              : Optional.empty();
      if (doubt.isPresent()) {
        problems.add(doubt.get());
      } else if (length.isPresent()) {
        body.put(name, length.get());
      } else {
        problems.add(
            "--%s %s: that is no length of a body; write it as 102cm, 1020mm or \"40 1/4in\""
                .formatted(said, mark < 0 ? "" : each.substring(mark + 1)));
      }
    }
    return body;
  }

  /** A length of a body: more than nothing, and less than four metres (mm). */
  static Optional<Double> length(String text) {
    return Length.read(text.strip()) instanceof Reading.Read<Length> read
            && read.value().mm() > 0
            && read.value().mm() < 4000
        ? Optional.of(read.value().mm())
        : Optional.empty();
  }

  private static List<String> lengths(SizeRun run) {
    return run.pattern().chart().columns().stream()
        .filter(column -> column.kind() == QuantityKind.LENGTH)
        .map(SizeChart.Column::name)
        .toList();
  }
}
