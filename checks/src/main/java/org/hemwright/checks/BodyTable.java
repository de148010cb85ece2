package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;

/**
 * How the garment goes round the body: what the checks of girths, openings, elastics and the rise
 * hold against each other, as numbers for every size (handbook sections 1 and 4).
 *
 * <p>Lengths in millimetres, stretch as a share. Every line has sizes for keys, in the chart's
 * order, and only those in which the thing is drawn. What the chart or the document does not say is
 * absent, never guessed.
 *
 * @param sizes of the run
 * @param comfort how much of its cloth's stretch a garment may use up when worn
 * @param girths for each view, each level that one of its pieces names
 * @param openings for each view, each opening of which it is known what it must pass
 * @param elastics in the order of the document
 * @param rises of each piece with a crotch
 */
public record BodyTable(
    List<String> sizes,
    double comfort,
    List<Line<Girth>> girths,
    List<Line<Opening>> openings,
    List<Line<Held>> elastics,
    List<Line<Rise>> rises) {
  public BodyTable {
    sizes = List.copyOf(sizes);
    girths = List.copyOf(girths);
    openings = List.copyOf(openings);
    elastics = List.copyOf(elastics);
    rises = List.copyOf(rises);
  }

  /**
   * One thing in every size.
   *
   * @param view blank where it belongs to no view in particular
   * @param name of the level, opening, elastic or piece
   */
  public record Line<T>(String view, String name, Map<String, T> bySize) {
    public Line {
      bySize = Collections.unmodifiableMap(new LinkedHashMap<>(bySize));
    }
  }

  /** Which way of the cloth goes round, or up. */
  public enum Way {
    ACROSS,
    ALONG
  }

  /**
   * A length of the garment against one of the body.
   *
   * @param body the body's (mm); absent where the chart lacks it
   * @param finished the garment's (mm)
   * @param way which way of the cloth lies along it
   * @param stretch how far the stiffest cloth gives that way, 0.35 for 35 %; 0 for one that does
   *     not stretch
   */
  public record Fit(OptionalDouble body, double finished, Way way, double stretch) {
    /** Finished less body; less than 0 where the cloth must stretch. */
    public OptionalDouble ease() {
      return body.isPresent()
          ? OptionalDouble.of(finished - body.getAsDouble())
          : OptionalDouble.empty();
    }

    /** How far the cloth stretches when it is worn: 0.35 for 35 %; 0 where it need not. */
    public OptionalDouble needed() {
      return body.isPresent()
          ? OptionalDouble.of(Math.max(0, body.getAsDouble() / finished - 1))
          : OptionalDouble.empty();
    }

    /** The share of the cloth's stretch that this uses up; absent where it does not stretch. */
    public OptionalDouble used() {
      return needed().isPresent() && stretch > 0
          ? OptionalDouble.of(needed().getAsDouble() / stretch)
          : OptionalDouble.empty();
    }
  }

  /**
   * A level.
   *
   * @param loops how often the garment goes round there: 2 for sleeves
   */
  public record Girth(int loops, Fit fit) {}

  /**
   * An opening.
   *
   * @param over what it must pass
   * @param body that part (mm); absent where the chart lacks it
   * @param length as it lies (mm)
   * @param slit beside it (mm); 0 without one
   * @param stiffest what reaches least of cloth, band, seam and elastic
   * @param kind {@code cloth}, {@code band}, {@code seam} or {@code elastic}
   * @param stretch how far that gives, 0.35 for 35 %
   * @param reach how far it reaches, stretched, the slit open (mm)
   */
  public record Opening(
      String over,
      OptionalDouble body,
      double length,
      double slit,
      String stiffest,
      String kind,
      double stretch,
      double reach) {
    /** How much farther it reaches than the part that it must pass; less than 0 if it does not. */
    public OptionalDouble spare() {
      return body.isPresent()
          ? OptionalDouble.of(reach - body.getAsDouble())
          : OptionalDouble.empty();
    }
  }

  /**
   * An elastic, its lengths in millimetres.
   *
   * @param casing how deep its casing is; absent where there is none to measure
   * @param stretched how long the loop is when stretched as far as it can be counted on
   * @param round the measurement that it holds; blank where unsaid
   * @param held that measurement; absent where the chart lacks it
   * @param over the measurement that it must pass; blank where unsaid
   * @param passed that measurement; absent where the chart lacks it
   */
  public record Held(
      double width,
      OptionalDouble casing,
      double finished,
      double cut,
      double stretched,
      String round,
      OptionalDouble held,
      String over,
      OptionalDouble passed) {}

  /** A rise with its band. */
  public record Rise(Fit fit) {}

  /** The table of a run, by these settings. */
  public static BodyTable of(SizeRun run, CheckSettings settings) {
    Map<List<String>, Map<String, Girth>> girths = new LinkedHashMap<>();
    Map<List<String>, Map<String, Opening>> openings = new LinkedHashMap<>();
    Map<List<String>, Map<String, Held>> elastics = new LinkedHashMap<>();
    Map<List<String>, Map<String, Rise>> rises = new LinkedHashMap<>();
    for (SizedPattern sized : run.sizes()) {
      String size = sized.size().name();
      for (View view : run.pattern().views()) {
        for (LevelRound level : LevelRound.of(view, sized, run.pattern())) {
          put(girths, view.name(), level.level(), size, girth(level));
        }
        for (LevelRound level : LevelRound.openings(view, sized, run.pattern(), settings)) {
          put(girths, view.name(), level.level(), size, girth(level));
        }
        for (OpeningRound opening : OpeningRound.of(view, sized, run.pattern(), settings)) {
          put(openings, view.name(), opening.edge(), size, opening(opening));
        }
      }
      for (HeldElastic elastic : HeldElastic.of(sized, run.pattern(), settings)) {
        put(elastics, "", elastic.elastic().name(), size, held(elastic));
      }
      for (GarmentRise rise : GarmentRise.of(sized)) {
        put(rises, "", rise.piece().name(), size, rise(rise, sized, run.pattern()));
      }
    }
    return new BodyTable(
        run.sizes().stream().map(sized -> sized.size().name()).toList(),
        settings.wear().comfort(),
        lines(girths),
        lines(openings),
        lines(elastics),
        lines(rises));
  }

  private static Girth girth(LevelRound level) {
    return new Girth(
        level.girth().loops(),
        new Fit(level.body(), level.girth().girth(), level.way(), level.stretch()));
  }

  private static Opening opening(OpeningRound round) {
    OpeningRound.Holding stiffest = round.stiffest(Set.of(OpeningRound.Kind.values()));
    return new Opening(
        round.over(),
        round.body(),
        round.length(),
        round.slit(),
        stiffest.name(),
        stiffest.kind().name().toLowerCase(Locale.ROOT),
        stiffest.stretch(),
        round.reach(stiffest));
  }

  private static Held held(HeldElastic held) {
    return new Held(
        held.elastic().width(),
        held.casing().map(Casing::depth).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        held.elastic().finished(),
        held.elastic().cut(),
        held.elastic().finished() * (1 + held.stretch()),
        held.round(),
        held.held(),
        held.over(),
        held.passed());
  }

  private static Rise rise(GarmentRise rise, SizedPattern sized, Pattern pattern) {
    Vector up = rise.piece().grain().orElseThrow().direction();
    return new Rise(
        new Fit(
            BodyMeasurement.of("body_rise", sized, pattern),
            rise.length(),
            Cloth.way(rise.piece(), up),
            Cloth.stretch(rise.piece(), up, pattern)));
  }

  private static <T> void put(
      Map<List<String>, Map<String, T>> lines, String view, String name, String size, T value) {
    lines.computeIfAbsent(List.of(view, name), key -> new LinkedHashMap<>()).put(size, value);
  }

  private static <T> List<Line<T>> lines(Map<List<String>, Map<String, T>> found) {
    List<Line<T>> lines = new ArrayList<>();
    found.forEach((key, bySize) -> lines.add(new Line<>(key.get(0), key.get(1), bySize)));
    return lines;
  }
}
