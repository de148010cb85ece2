package org.hemwright.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.Price;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.fabric.StretchTest;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.Reading;
import picocli.CommandLine.Option;

/** What is asked about the cloth. */
final class ClothQuestions {
  private static final double MOST_SHRINKAGE = 0.5;
  private static final double MOST_STRETCH = 5;

  /** No loom is wider (mm); common practice, no source. */
  private static final double WIDEST = 5_000;

  /** A bolt is no longer (mm), nor is a gap or a repeat; common practice, no source. */
  private static final double LONGEST = 50_000;

  private static final Pattern PRICE =
      Pattern.compile("((?<fabric>[\\p{L}\\p{N}_]+)=)?(?<amount>[0-9]+([.][0-9]+)?)/(?<unit>m|yd)");

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
      names = "--stretch",
      paramLabel = "SHARE",
      description =
          "How far the cloth stretches across: --stretch 40%%, or as measured: --stretch \"10cm to"
              + " 14cm\". Says whether it is enough.")
  private Optional<String> stretch = Optional.empty();

  @Option(
      names = "--stretch-along",
      paramLabel = "SHARE",
      description = "How far it stretches along.")
  private Optional<String> stretchAlong = Optional.empty();

  @Option(
      names = "--repeat",
      paramLabel = "LENGTH",
      description =
          "Stripes or checks that repeat so far along the cloth: --repeat 10cm. Laid so where the"
              + " document knows of them; else about how much more they take.")
  private Optional<String> repeat = Optional.empty();

  @Option(
      names = "--repeat-across",
      paramLabel = "LENGTH",
      description = "The same across the cloth, where the document knows of them.")
  private Optional<String> repeatAcross = Optional.empty();

  @Option(
      names = "--price",
      split = ",",
      paramLabel = "PRICE",
      description =
          "What the cloth costs: --price 12.50/m, or /yd; of one fabric only: --price"
              + " lining=6/m.")
  private List<String> prices = new ArrayList<>();

  @Option(
      names = "--work",
      paramLabel = "PLACES",
      description = "How many places are looked at for one laying; more is slower and shorter.")
  private Optional<Long> work = Optional.empty();

  /** What is said of her own cloth, once the request was found to be in order. */
  OwnCloth own(SizeRun run) {
    List<String> told = new ArrayList<>();
    return new OwnCloth(
        fitIn
            .map(text -> OptionalDouble.of(length("--fit-in", text, told)))
            .orElse(OptionalDouble.empty()),
        stretched("--stretch", stretch, told),
        stretched("--stretch-along", stretchAlong, told),
        repeat
            .map(text -> OptionalDouble.of(length("--repeat", text, told)))
            .orElse(OptionalDouble.empty()),
        prices(run, told));
  }

  /**
   * A run of the cloth that is asked about: its stripes, where it has them, as far apart as said.
   */
  SizeRun onRepeat(SizeRun run) {
    List<String> told = new ArrayList<>();
    OptionalDouble along = OptionalDouble.empty();
    OptionalDouble across = OptionalDouble.empty();
    if (repeat.isPresent()) {
      along = OptionalDouble.of(length("--repeat", repeat.get(), told));
    }
    if (repeatAcross.isPresent()) {
      across = OptionalDouble.of(length("--repeat-across", repeatAcross.get(), told));
    }
    List<Fabric> asked = new ArrayList<>();
    for (Fabric fabric : run.pattern().fabrics()) {
      boolean meant = fabrics.isEmpty() || fabrics.contains(fabric.name());
      Optional<Fabric.Repeat> own = meant ? fabric.repeat() : Optional.empty();
      asked.add(own.isEmpty() ? fabric : fabric.with(own.get().every(along, across)));
    }
    return new SizeRun(run.pattern().ofCloth(asked), run.sizes());
  }

  /** Whether it stretches enough, where that is asked. */
  List<Finding> judged(SizeRun run) {
    return own(run).judged(run.pattern(), fabrics);
  }

  private static OptionalDouble stretched(
      String option, Optional<String> text, List<String> problems) {
    return text.map(
            said ->
                OptionalDouble.of(
                    said.contains(" to ")
                        ? pulled(option, said, problems)
                        : share(option, said, MOST_STRETCH, problems)))
        .orElse(OptionalDouble.empty());
  }

  /** As she measured it along a ruler: {@code 4in to 5.4in}. */
  private static double pulled(String option, String said, List<String> problems) {
    String[] ends = said.split(" to ", 2);
    double rest = length(option, ends[0], problems);
    double stretched = length(option, ends[1], problems);
    if (!(rest > 0) || !(stretched >= rest)) {
      problems.add(
          option + " " + said + ": write the length at rest first, as in \"10cm to 14cm\"");
      return 0;
    }
    return new StretchTest(rest, stretched, OptionalDouble.empty()).stretch();
  }

  /** {@code 12.50/m} for every fabric that is asked about, {@code lining=6/yd} for one. */
  private Map<String, Price> prices(SizeRun run, List<String> problems) {
    List<String> known = run.pattern().fabrics().stream().map(Fabric::name).toList();
    Map<String, Price> all = new LinkedHashMap<>();
    for (String text : prices) {
      Matcher said = PRICE.matcher(text.strip());
      if (!said.matches()) {
        problems.add(
            "--price " + text + ": write it as 12.50/m or 11/yd, or for one fabric lining=6/m");
        continue;
      }
      Optional<String> fabric = Optional.ofNullable(said.group("fabric"));
      if (fabric.isPresent() && !known.contains(fabric.get())) {
        problems.add(
            "--price " + text + ": the pattern has no such fabric; it has " + listed(known));
        continue;
      }
      Price.Unit unit = said.group("unit").equals("m") ? Price.Unit.METRE : Price.Unit.YARD;
      Price price = new Price(number("--price", said.group("amount"), problems), unit);
      if (fabric.isPresent()) {
        all.put(fabric.get(), price);
      } else {
        known.forEach(name -> all.putIfAbsent(name, price));
      }
    }
    return all;
  }

  /** The request; absent where something is wrong, which is then told. */
  Optional<YardageRequest> request(SizeRun run, boolean sizesChosen, List<String> problems) {
    YardageRequest usual = YardageRequest.everything();
    List<Double> asked = new ArrayList<>();
    widths.forEach(text -> asked.add(width(text, problems)));
    fitIn.ifPresent(text -> some("--fit-in", text, problems));
    repeat.ifPresent(text -> some("--repeat", text, problems));
    repeatAcross.ifPresent(text -> across(run, text, problems));
    double apart = length("--gap", gap, problems);
    double along = share("--shrink", shrink, problems);
    double across = share("--shrink-across", shrinkAcross, problems);
    stretched("--stretch", stretch, problems);
    stretched("--stretch-along", stretchAlong, problems);
    prices(run, problems);
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
            own(run).length(),
            work.orElse(usual.work()),
            usual.threads()));
  }

  private void across(SizeRun run, String text, List<String> problems) {
    some("--repeat-across", text, problems);
    boolean known =
        run.pattern().fabrics().stream()
            .filter(fabric -> fabrics.isEmpty() || fabrics.contains(fabric.name()))
            .flatMap(fabric -> fabric.repeat().stream())
            .anyMatch(own -> own.across().isPresent());
    if (!known) {
      problems.add(
          "--repeat-across "
              + text
              + ": no fabric that is asked about has bars along it; the document says so with a"
              + " line such as: repeat across 8 cm");
    }
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

  /** A width of cloth as sold, of which its selvedges leave something. */
  private static double width(String text, List<String> problems) {
    int known = problems.size();
    double width = length("--width", text, problems);
    if (problems.size() == known && width <= 2 * ClothSettings.HANDBOOK.selvedge()) {
      problems.add(
          "--width " + text + ": nothing is left between the selvedges; give the width as sold");
    }
    if (problems.size() == known && width > WIDEST) {
      problems.add("--width " + text + ": no cloth is wider than 5 m; write it as 135cm or 54in");
    }
    return width;
  }

  /** A length above 0. */
  private static double some(String option, String text, List<String> problems) {
    int known = problems.size();
    double some = length(option, text, problems);
    if (problems.size() == known && !(some > 0)) {
      problems.add(option + " " + text + ": that is nothing; write it as 1.4m, 54in or 1 1/2yd");
    }
    return some;
  }

  private static double length(String option, String text, List<String> problems) {
    double mm = anyLength(option, text, problems);
    if (mm > LONGEST) {
      problems.add(option + " " + text + ": that is more than 50 m; write it as 1.4m or 54in");
    }
    return mm;
  }

  private static double anyLength(String option, String text, List<String> problems) {
    String trimmed = text.strip();
    if (trimmed.matches("[0-9]+([.][0-9]+)? ?m")) {
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
    return share(option, text, MOST_SHRINKAGE, problems);
  }

  private static double share(String option, String text, double below, List<String> problems) {
    String trimmed = text.strip();
    if (trimmed.matches("[0-9]+([.][0-9]+)? ?%")) {
      double share = number(option, trimmed.replaceAll(" ?%$", ""), problems) / 100;
      if (share < below) {
        return share;
      }
    }
    boolean stretch = option.startsWith("--stretch");
    problems.add(
        option
            + " "
            + text
            + ": write a share below "
            + Math.round(100 * below)
            + "%, such as "
            + (stretch ? "40%, or how far it goes, such as \"10cm to 14cm\"" : "5%"));
    return 0;
  }

  private static String listed(List<String> words) {
    return String.join(", ", words);
  }
}
