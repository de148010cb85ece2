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
import org.hemwright.pattern.finding.Finding;
import picocli.CommandLine.Option;

/** What is asked about the cloth. */
final class ClothQuestions {
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
      names = "--both-sides-alike",
      description =
          "The cloth has no right side and no wrong one, so that pieces may be laid face down.")
  private boolean sidesAlike;

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
    OptionReading reading = OptionReading.again();
    return new OwnCloth(
        reading.length("--fit-in", fitIn),
        reading.stretch("--stretch", stretch),
        reading.stretch("--stretch-along", stretchAlong),
        reading.length("--repeat", repeat),
        prices(run, reading));
  }

  /**
   * A run of the cloth that is asked about: its stripes, where it has them, as far apart as said,
   * and alike on both sides where that is said.
   */
  SizeRun onClothAsked(SizeRun run) {
    OptionReading reading = OptionReading.again();
    OptionalDouble along = reading.length("--repeat", repeat);
    OptionalDouble across = reading.length("--repeat-across", repeatAcross);
    List<Fabric> asked = new ArrayList<>();
    for (Fabric fabric : run.pattern().fabrics()) {
      boolean meant = fabrics.isEmpty() || fabrics.contains(fabric.name());
      Optional<Fabric.Repeat> own = meant ? fabric.repeat() : Optional.empty();
      Fabric repeated = own.isEmpty() ? fabric : fabric.with(own.get().every(along, across));
      asked.add(meant && sidesAlike ? repeated.with(Fabric.Trait.SIDES_ALIKE) : repeated);
    }
    return new SizeRun(run.pattern().ofCloth(asked), run.sizes());
  }

  /** Whether it stretches enough, where that is asked. */
  List<Finding> judged(SizeRun run) {
    return own(run).judged(run.pattern(), fabrics);
  }

  /** {@code 12.50/m} for every fabric that is asked about, {@code lining=6/yd} for one. */
  private Map<String, Price> prices(SizeRun run, OptionReading reading) {
    List<String> known = run.pattern().fabrics().stream().map(Fabric::name).toList();
    Map<String, Price> all = new LinkedHashMap<>();
    for (String text : prices) {
      Matcher said = PRICE.matcher(text.strip());
      if (!said.matches()) {
        reading.tell("--price", text, "write it as 12.50/m or 11/yd, or for one fabric lining=6/m");
        continue;
      }
      Optional<String> fabric = Optional.ofNullable(said.group("fabric"));
      if (fabric.isPresent() && !known.contains(fabric.get())) {
        reading.tell("--price", text, "the pattern has no such fabric; it has " + listed(known));
        continue;
      }
      Price.Unit unit = said.group("unit").equals("m") ? Price.Unit.METRE : Price.Unit.YARD;
      Price price = new Price(reading.number("--price", said.group("amount")), unit);
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
    OptionReading reading = new OptionReading(problems);
    List<Double> asked = widths.stream().map(reading::width).toList();
    fitIn.ifPresent(text -> reading.some("--fit-in", text));
    repeat.ifPresent(text -> reading.some("--repeat", text));
    repeatAcross.ifPresent(text -> across(run, text, reading));
    double apart = reading.length("--gap", gap);
    double along = reading.shrinkage("--shrink", shrink);
    double across = reading.shrinkage("--shrink-across", shrinkAcross);
    reading.stretch("--stretch", stretch);
    reading.stretch("--stretch-along", stretchAlong);
    prices(run, reading);
    Set<Fold> chosen = folds(reading);
    List<String> known = run.pattern().fabrics().stream().map(Fabric::name).toList();
    for (String fabric : fabrics) {
      if (!known.contains(fabric)) {
        reading.tell("--fabric", fabric, "the pattern has no such fabric; it has " + listed(known));
      }
    }
    List<String> garments = run.pattern().views().stream().map(View::name).toList();
    for (String view : views) {
      if (!garments.contains(view)) {
        reading.tell("--view", view, "the pattern has no such view; it has " + listed(garments));
      }
    }
    if (work.isPresent() && work.get() < 1) {
      reading.tell("--work", work.get().toString(), "at least 1 place has to be looked at");
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

  private void across(SizeRun run, String text, OptionReading reading) {
    reading.some("--repeat-across", text);
    boolean known =
        run.pattern().fabrics().stream()
            .filter(fabric -> fabrics.isEmpty() || fabrics.contains(fabric.name()))
            .flatMap(fabric -> fabric.repeat().stream())
            .anyMatch(own -> own.across().isPresent());
    if (!known) {
      reading.tell(
          "--repeat-across",
          text,
          "no fabric that is asked about has bars along it; the document says so with a line such"
              + " as: repeat across 8 cm");
    }
  }

  private Set<Fold> folds(OptionReading reading) {
    Set<Fold> chosen = EnumSet.noneOf(Fold.class);
    for (String word : folds) {
      Optional<Fold> found =
          List.of(Fold.values()).stream()
              .filter(fold -> fold.word().equals(word.toLowerCase(Locale.ROOT)))
              .findFirst();
      found.ifPresentOrElse(
          chosen::add,
          () ->
              reading.tell(
                  "--fold",
                  word,
                  "there are " + listed(List.of(Fold.values()).stream().map(Fold::word).toList())));
    }
    return chosen.isEmpty() ? EnumSet.allOf(Fold.class) : chosen;
  }

  private static String listed(List<String> words) {
    return String.join(", ", words);
  }
}
