package org.hemwright.workbench.advise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.checks.BodyTable;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;

/**
 * Says which size a body takes, what ease or stretch that leaves, and what to change (handbook
 * section 8, the commonest questions: by hip or bust; between sizes by ease and stretch; longer or
 * shorter at the line; blends between sizes). What is said first decides what is said after, so
 * that all of it is worked out here, in the order in which a maker reads it.
 */
public final class Advising {
  /** A garment with more room than this round a level is not chosen by that level. */
  private static final double ROOMY = 0.15;

  /** A height that differs by less than this needs no change (mm; common practice, no source). */
  private static final double LEAST_HEIGHT = 6;

  private final SizeRun run;
  private final BodyTable table;
  private final Map<String, Double> body;
  private final Map<String, ChartPlace> places = new LinkedHashMap<>();
  private final LengthFormat lengths;
  private final Set<Finding> said = new LinkedHashSet<>();

  private Advising(SizeRun run, BodyTable table, Map<String, Double> body) {
    this.run = run;
    this.table = table;
    this.body = body;
    boolean inches = run.pattern().details().units() == Details.Units.INCHES;
    lengths =
        LengthFormat.of(
            inches ? LengthFormat.Edition.INCHES_FIRST : LengthFormat.Edition.METRIC_FIRST);
    body.forEach((name, yours) -> place(name, yours).ifPresent(at -> places.put(name, at)));
    if (places.isEmpty()) {
      throw new IllegalArgumentException("a body has a measurement that the chart has");
    }
  }

  /**
   * The answer.
   *
   * @param run all sizes
   * @param table how it goes round the chart's bodies
   * @param body measurements (mm) by the chart's names, at least one
   */
  public static Advice of(SizeRun run, BodyTable table, Map<String, Double> body) {
    return new Advising(run, table, body).advice();
  }

  /** The sentences of an answer. */
  public static Messages messages() {
    return Messages.beside(Advising.class, "advice.properties");
  }

  private Optional<ChartPlace> place(String name, double yours) {
    List<String> known = new ArrayList<>();
    List<Double> drawn = new ArrayList<>();
    SizeChart chart = run.pattern().chart();
    Optional<SizeChart.Column> column = chart.column(name);
    for (SizedPattern sized : run.sizes()) {
      Size size = sized.size();
      OptionalDouble cell =
          column
              .map(own -> own.cells().get(size.position()).value())
              .orElse(OptionalDouble.empty());
      if (cell.isPresent()) {
        known.add(size.name());
        drawn.add(cell.getAsDouble());
      }
    }
    return known.isEmpty()
        ? Optional.empty()
        : Optional.of(new ChartPlace(name, yours, known, drawn));
  }

  private Advice advice() {
    ChartPlace by = primary();
    String size = size(by);
    for (ChartPlace each : places.values()) {
      if (!each.equals(by)) {
        say(
            Finding.ok("advise-measure", each.measure())
                .with("measure", spaced(each.measure()))
                .with("size", size)
                .with("yours", body(each.yours()))
                .with("drawn", body(each.in(size))));
      }
    }
    List<Advice.Fit> fits = fits(size);
    openings(size);
    elastics(size);
    changes(by, size);
    Map<String, Advice.Measured> measures = new LinkedHashMap<>();
    places.forEach(
        (name, place) ->
            measures.put(
                name, new Advice.Measured(place.yours(), place.in(size), place.nearest())));
    return new Advice(
        size,
        by.measure(),
        by.isBetween() ? Optional.of(List.of(by.smaller(), by.larger())) : Optional.empty(),
        by.isAboveAll() || by.isBelowAll(),
        measures,
        fits,
        List.copyOf(said));
  }

  /** The level that leaves least room, if it leaves little; else what an elastic holds. */
  private ChartPlace primary() {
    Optional<ChartPlace> tightest = Optional.empty();
    double least = ROOMY;
    for (BodyTable.Line<BodyTable.Girth> line : table.girths()) {
      ChartPlace place = places.get(line.name());
      if (place != null) {
        double room = room(line, place.nearest());
        if (room < least) {
          least = room;
          tightest = Optional.of(place);
        }
      }
    }
    return tightest
        .or(() -> table.elastics().stream().flatMap(line -> heldBy(line).stream()).findFirst())
        .or(() -> girthNames().stream().map(places::get).filter(p -> p != null).findFirst())
        .orElseGet(() -> places.values().iterator().next());
  }

  private Optional<ChartPlace> heldBy(BodyTable.Line<BodyTable.Held> line) {
    return line.bySize().values().stream()
        .flatMap(held -> Optional.ofNullable(places.get(held.round())).stream())
        .findFirst();
  }

  private double room(BodyTable.Line<BodyTable.Girth> line, String size) {
    BodyTable.Girth girth = line.bySize().get(size);
    if (girth == null || girth.fit().body().isEmpty()) {
      return Double.MAX_VALUE;
    }
    double drawn = girth.fit().body().getAsDouble();
    double reach = girth.fit().finished() * (1 + girth.fit().stretch() * table.comfort());
    return reach / drawn - 1;
  }

  /** What the garment goes round, holds or passes; other measurements are heights. */
  private Set<String> girthNames() {
    Set<String> names = new LinkedHashSet<>();
    table.girths().forEach(line -> names.add(line.name()));
    table.elastics().forEach(line -> line.bySize().values().forEach(e -> names.add(e.round())));
    table.openings().forEach(line -> line.bySize().values().forEach(o -> names.add(o.over())));
    names.addAll(List.of("bust", "chest", "upper_bust", "under_bust", "waist", "hip", "seat"));
    return names;
  }

  private String size(ChartPlace by) {
    boolean stretches =
        run.pattern().fabrics().stream()
            .findFirst()
            .filter(f -> f.stretchAcross().isPresent())
            .isPresent();
    String size = by.isBetween() ? (stretches ? by.smaller() : by.larger()) : by.nearest();
    Details details = run.pattern().details();
    say(
        Finding.ok("advise-size", "size " + size)
            .with("size", size)
            .with("title", details.title())
            .with("version", details.version()));
    String code = "advise-near";
    if (by.isAboveAll()) {
      code = "advise-above";
    } else if (by.isBelowAll()) {
      code = "advise-below";
    } else if (by.isBetween()) {
      code = stretches ? "advise-between-stretch" : "advise-between-firm";
    }
    say(
        Finding.ok(code, by.measure())
            .with("measure", spaced(by.measure()))
            .with("yours", body(by.yours()))
            .with("size", size)
            .with("drawn", body(by.in(size)))
            .with("smaller", by.smaller())
            .with("larger", by.larger())
            .with("smaller_drawn", body(by.in(by.smaller())))
            .with("larger_drawn", body(by.in(by.larger()))));
    return size;
  }

  private List<Advice.Fit> fits(String size) {
    List<Advice.Fit> fits = new ArrayList<>();
    Set<String> told = new LinkedHashSet<>();
    for (BodyTable.Line<BodyTable.Girth> line : table.girths()) {
      BodyTable.Girth girth = line.bySize().get(size);
      Double yours = body.get(line.name());
      if (girth == null || yours == null) {
        continue;
      }
      BodyTable.Fit hers =
          new BodyTable.Fit(
              OptionalDouble.of(yours),
              girth.fit().finished(),
              girth.fit().way(),
              girth.fit().stretch());
      double needed = hers.needed().orElse(0);
      boolean comfortable = needed <= hers.stretch() * table.comfort();
      if (!told.add(line.name() + hers)) {
        continue;
      }
      fits.add(
          new Advice.Fit(line.name(), yours, hers.finished(), needed, hers.stretch(), comfortable));
      String code = needed == 0 ? "advise-ease" : "advise-stretch";
      if (needed > 0 && !comfortable) {
        code = needed > hers.stretch() ? "advise-too-tight" : "advise-tight";
      }
      double ease = hers.ease().orElse(0);
      say(
          Finding.ok(code, line.name())
              .with("level", spaced(line.name()))
              .with("yours", body(yours))
              .with("finished", finished(hers.finished()))
              .with("by", finished(Math.abs(ease)))
              .with("share", percent(Math.abs(ease) / yours))
              .with("needed", percent(needed))
              .with("stretch", percent(hers.stretch())));
    }
    return fits;
  }

  private void openings(String size) {
    for (BodyTable.Line<BodyTable.Opening> line : table.openings()) {
      BodyTable.Opening opening = line.bySize().get(size);
      Double yours = opening == null ? null : body.get(opening.over());
      if (opening != null && yours != null) {
        double spare = opening.reach() - yours;
        say(
            Finding.ok(spare >= 0 ? "advise-goes-on" : "advise-stays-off", line.name())
                .with("edge", spaced(line.name()))
                .with("over", spaced(opening.over()))
                .with("yours", body(yours))
                .with("reach", finished(opening.reach()))
                .with("by", finished(Math.abs(spare))));
      }
    }
  }

  /** The elastic keeps the share of the body that the designer gave it. */
  private void elastics(String size) {
    for (BodyTable.Line<BodyTable.Held> line : table.elastics()) {
      BodyTable.Held held = line.bySize().get(size);
      Double yours = held == null ? null : body.get(held.round());
      if (held == null || yours == null || held.held().isEmpty()) {
        continue;
      }
      double drawn = held.held().getAsDouble();
      double overlap = held.cut() - held.finished();
      double cut = held.finished() * yours / drawn + overlap;
      if (Math.abs(cut - held.cut()) >= LEAST_HEIGHT) {
        say(
            Finding.ok("advise-elastic", line.name())
                .with("measure", spaced(held.round()))
                .with("yours", body(yours))
                .with("drawn", body(drawn))
                .with("cut", finished(cut))
                .with("usual", finished(held.cut())));
      }
    }
  }

  private void changes(ChartPlace by, String size) {
    Set<String> round = girthNames();
    Set<String> held = new LinkedHashSet<>();
    table.elastics().forEach(line -> line.bySize().values().forEach(e -> held.add(e.round())));
    for (ChartPlace each : places.values()) {
      double more = each.yours() - each.in(size);
      if (each.equals(by) || Double.isNaN(more)) {
        continue;
      }
      if (!round.contains(each.measure())) {
        if (Math.abs(more) >= LEAST_HEIGHT) {
          height(each, size, more);
        }
      } else if (!each.nearest().equals(size)
          && !held.contains(each.measure())
          && room(each.measure(), each.yours(), size) < ROOMY) {
        girth(each, by, size);
      }
    }
  }

  /** How much room she has at a level, as a share; none where the pattern names no such level. */
  private double room(String level, double yours, String size) {
    return table.girths().stream()
        .filter(line -> line.name().equals(level))
        .flatMap(line -> Optional.ofNullable(line.bySize().get(size)).stream())
        .mapToDouble(girth -> girth.fit().finished() / yours - 1)
        .min()
        .orElse(0);
  }

  /** A line from size to size within a piece; where the level lies on other pieces, its width. */
  private void girth(ChartPlace each, ChartPlace by, String size) {
    Set<String> pieces = pieces(each.measure(), size);
    Set<String> others = pieces(by.measure(), size);
    boolean apart =
        !pieces.isEmpty() && !others.isEmpty() && pieces.stream().noneMatch(others::contains);
    double more = each.yours() - each.in(size);
    String code = "advise-blend";
    if (apart) {
      code = more > 0 ? "advise-widen" : "advise-narrow";
    }
    say(
        Finding.ok(code, each.measure())
            .with("measure", spaced(each.measure()))
            .with("by", spaced(by.measure()))
            .with("size", size)
            .with("other", each.nearest())
            .with("more", finished(Math.abs(more)))
            .with("pieces", Argument.of(List.copyOf(pieces))));
  }

  /** The titles of the pieces that name a level. */
  private Set<String> pieces(String level, String size) {
    Set<String> titles = new LinkedHashSet<>();
    for (SizedPattern sized : run.size(size).stream().toList()) {
      for (Piece piece : sized.pieces()) {
        if (piece.marks(Mark.Level.class).stream().anyMatch(mark -> mark.name().equals(level))) {
          titles.add(piece.card().title());
        }
      }
    }
    return titles;
  }

  private void height(ChartPlace place, String size, double more) {
    List<String> pieces =
        run.size(size).stream()
            .flatMap(sized -> sized.pieces().stream())
            .filter(piece -> !piece.marks(Mark.Lengthen.class).isEmpty())
            .map(piece -> piece.card().title())
            .distinct()
            .toList();
    String code = more > 0 ? "advise-lengthen" : "advise-shorten";
    say(
        Finding.ok(pieces.isEmpty() ? "advise-redraw" : code, place.measure())
            .with("measure", spaced(place.measure()))
            .with("yours", body(place.yours()))
            .with("drawn", body(place.in(size)))
            .with("size", size)
            .with("by", finished(Math.abs(more)))
            .with("pieces", Argument.of(pieces)));
  }

  private void say(Finding.Builder sentence) {
    said.add(sentence.build());
  }

  private String body(double mm) {
    return lengths.text(mm, LengthKind.BODY);
  }

  private String finished(double mm) {
    return lengths.text(mm, LengthKind.FINISHED);
  }

  private static String percent(double share) {
    return DecimalText.of(share * 100, 0) + "%";
  }

  private static String spaced(String name) {
    return name.replace('_', ' ');
  }
}
