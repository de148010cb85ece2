package org.hemwright.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.Reading;
import picocli.CommandLine.Option;

/** What is asked about the cloth. */
final class ClothQuestions {
  @Option(
      names = "--view",
      split = ",",
      paramLabel = "VIEW",
      description = "Only these views, as the document names them.")
  private List<String> views = new ArrayList<>();

  @Option(
      names = "--fabric",
      split = ",",
      paramLabel = "NAME",
      description = "Only these fabrics, by their names in the document.")
  private List<String> fabrics = new ArrayList<>();

  @Option(
      names = "--width",
      split = ",",
      paramLabel = "WIDTH",
      description = "These widths in place of the pattern's own: --width 135cm.")
  private List<String> widths = new ArrayList<>();

  @Option(
      names = "--fold",
      split = ",",
      paramLabel = "FOLD",
      description = "Only these: lengthwise, partial, double, crosswise, single.")
  private List<String> folds = new ArrayList<>();

  @Option(
      names = "--shrink",
      paramLabel = "SHARE",
      description = "How much the cloth shrinks along before it is cut: --shrink 5%%.")
  private String shrink = "0%";

  @Option(
      names = "--shrink-across",
      paramLabel = "SHARE",
      description = "How much it shrinks across.")
  private String shrinkAcross = "0%";

  @Option(
      names = "--gap",
      paramLabel = "LENGTH",
      description = "The least distance between two pieces; 0 when it is left out.")
  private String gap = "0mm";

  @Option(
      names = "--fit-in",
      paramLabel = "LENGTH",
      description = "Say which sizes can be cut from this length: --fit-in 1.4m.")
  private Optional<String> fitIn = Optional.empty();

  @Option(
      names = "--work",
      paramLabel = "PLACES",
      description = "How many places are looked at for one laying; more is slower and shorter.")
  private Optional<Long> work = Optional.empty();

  /** The length to fit in (mm), once the request was found to be in order. */
  OptionalDouble owned() {
    return fitIn
        .map(text -> OptionalDouble.of(length("--fit-in", text, new ArrayList<>())))
        .orElse(OptionalDouble.empty());
  }

  /** The request; absent where something is wrong, which is then told. */
  Optional<YardageRequest> request(SizeRun run, boolean sizesChosen, List<String> problems) {
    YardageRequest usual = YardageRequest.everything();
    List<Double> asked = new ArrayList<>();
    widths.forEach(text -> asked.add(length("--width", text, problems)));
    fitIn.ifPresent(text -> length("--fit-in", text, problems));
    double apart = length("--gap", gap, problems);
    double along = share("--shrink", shrink, problems);
    double across = share("--shrink-across", shrinkAcross, problems);
    Set<Fold> chosen = folds(problems);
    List<String> known = run.pattern().fabrics().stream().map(Fabric::name).toList();
    for (String fabric : fabrics) {
      if (!known.contains(fabric)) {
        problems.add(
            "--fabric " + fabric + ": the pattern has no such fabric; it has " + listed(known));
      }
    }
    List<String> garments = run.pattern().views().stream().map(View::name).toList();
    for (String view : views) {
      if (!garments.contains(view)) {
        problems.add(
            "--view " + view + ": the pattern has no such view; it has " + listed(garments));
      }
    }
    for (double width : asked) {
      if (width <= 2 * ClothSettings.HANDBOOK.selvedge()) {
        problems.add("--width: nothing is left between the selvedges; give the width as sold");
      }
    }
    if (work.isPresent() && work.get() < 1) {
      problems.add("--work " + work.get() + ": at least 1 place has to be looked at");
    }
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    List<String> sizes =
        sizesChosen ? run.sizes().stream().map(sized -> sized.size().name()).toList() : List.of();
    return Optional.of(
        new YardageRequest(
            ClothSettings.HANDBOOK.withGap(apart),
            chosen,
            views,
            fabrics,
            asked,
            sizes,
            along,
            across,
            work.orElse(usual.work()),
            usual.threads()));
  }

  private Set<Fold> folds(List<String> problems) {
    Set<Fold> chosen = EnumSet.noneOf(Fold.class);
    for (String word : folds) {
      Optional<Fold> found =
          List.of(Fold.values()).stream()
              .filter(fold -> fold.word().equals(word.toLowerCase(Locale.ROOT)))
              .findFirst();
      found.ifPresentOrElse(
          chosen::add,
          () ->
              problems.add(
                  "--fold "
                      + word
                      + ": there are "
                      + listed(List.of(Fold.values()).stream().map(Fold::word).toList())));
    }
    return chosen.isEmpty() ? EnumSet.allOf(Fold.class) : chosen;
  }

  private static double length(String option, String text, List<String> problems) {
    String trimmed = text.strip();
    if (trimmed.matches("[0-9.]+ ?m")) {
      return 1000 * number(option, trimmed.replaceAll(" ?m$", ""), problems);
    }
    if (trimmed.matches("[0-9./ ]+ ?yd")) {
      Reading<Length> inches = Length.read(trimmed.replaceAll(" ?yd$", " in"));
      return 36 * inches(option, text, inches, problems);
    }
    return inches(option, text, Length.read(trimmed), problems);
  }

  private static double inches(
      String option, String text, Reading<Length> reading, List<String> problems) {
    if (reading instanceof Reading.Read<Length> read && read.value().mm() >= 0) {
      return read.value().mm();
    }
    problems.add(
        option + " " + text + ": that is no length; write it as 135cm, 1.4m, 54in or 1 1/2yd");
    return 0;
  }

  private static double number(String option, String text, List<String> problems) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException notANumber) {
      problems.add(option + " " + text + ": that is no number");
      return 0;
    }
  }

  private static double share(String option, String text, List<String> problems) {
    String trimmed = text.strip();
    if (trimmed.matches("[0-9.]+ ?%")) {
      double share = number(option, trimmed.replaceAll(" ?%$", ""), problems) / 100;
      if (share < 0.5) {
        return share;
      }
    }
    problems.add(option + " " + text + ": write a share below half, such as 5%");
    return 0;
  }

  private static String listed(List<String> words) {
    return String.join(", ", words);
  }
}
