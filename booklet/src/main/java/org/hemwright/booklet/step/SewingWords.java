package org.hemwright.booklet.step;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.quantity.LengthKind;

/** How a step is stitched, in words: stitches, distance, rows, needle. */
public final class SewingWords {
  private final Telling telling;
  private final Step step;

  SewingWords(Telling telling, Step step) {
    this.telling = telling;
    this.step = step;
  }

  /** Whether a step sews layers together. */
  static boolean joins(Step step) {
    return step.act() instanceof Act.Sew
        || step.act() instanceof Act.Attach
        || step.act() instanceof Act.SetIn
        || step.act() instanceof Act.HandSew;
  }

  List<Inline> with() {
    List<List<Inline>> choices = new ArrayList<>();
    for (int i = 0; i < step.sewing().choices().size(); i++) {
      choices.add(stitch(telling, step.sewing().choices().get(i), step.id(), i));
    }
    return choices.isEmpty()
        ? List.of()
        : telling.say("with", Slots.of("stitches", telling.words().either(choices)));
  }

  /** That it may be left as it is cut, where that is one of the choices. */
  List<Inline> raw() {
    return step.sewing()
        .raw()
        .map(
            raw ->
                raw.when()
                    .map(
                        when ->
                            telling.say(
                                "stitch.raw.when",
                                Slots.of("when", new Inline.Own(telling.own(when)))))
                    .orElseGet(() -> telling.say("stitch.raw")))
        .orElse(List.of());
  }

  /** A stitch with its settings: "zigzag, 2.5 mm wide and 2.5 mm long". */
  public static List<Inline> stitch(Telling telling, Stitch stitch, String step, int choice) {
    String which = Integer.toString(choice);
    Slots slots = Slots.of("stitch", telling.say("stitch." + stitch.kind().key()));
    stitch
        .length()
        .ifPresent(
            mm ->
                slots.and(
                    "length",
                    telling
                        .words()
                        .setting(mm, Provenance.of(Source.STEP, step, "stitch", which, "length"))));
    stitch
        .width()
        .ifPresent(
            mm ->
                slots.and(
                    "width",
                    telling
                        .words()
                        .setting(mm, Provenance.of(Source.STEP, step, "stitch", which, "width"))));
    if (stitch.length().isPresent() && stitch.width().isPresent()) {
      return telling.say("stitch.wide-long", slots);
    } else if (stitch.length().isPresent()) {
      return telling.say("stitch.long", slots);
    } else if (stitch.width().isPresent()) {
      return telling.say("stitch.wide", slots);
    }
    return telling.say("stitch.plain", slots);
  }

  List<Inline> distance() {
    Optional<Sewing.Distance> said = step.sewing().distance();
    if (said.isPresent()) {
      String from = said.get().from().name().toLowerCase(Locale.ROOT).replace('_', '-');
      return telling.say(
          "distance." + from,
          Slots.of(
              "distance",
              telling.amount(said.get().amount(), LengthKind.ALLOWANCE, step.id(), "distance")));
    }
    if (!joins(step) || step.sewing().choices().isEmpty()) {
      return List.of();
    }
    List<List<Inline>> widths = new ArrayList<>();
    for (Work.OfSeam work : step.work(Work.OfSeam.class)) {
      telling
          .seam(work.seam())
          .ifPresent(
              seam ->
                  seam.joins().get(0).layers().get(0).run().stream()
                      .findFirst()
                      .map(
                          place ->
                              allowance(
                                  place.piece(),
                                  place.edge(),
                                  allowance -> Optional.of(allowance.width()),
                                  "whole"))
                      .filter(width -> !width.isEmpty() && !widths.contains(width))
                      .ifPresent(widths::add));
    }
    boolean same = widths.stream().map(width -> Inline.plain(width)).distinct().count() == 1;
    return same
        ? telling.say("distance.allowance", Slots.of("distance", widths.get(0)))
        : List.of();
  }

  List<Inline> rows() {
    Sewing sewing = step.sewing();
    if (sewing.rows() < 2) {
      return List.of();
    }
    Slots slots = Slots.of("rows", new Inline.Value(Integer.toString(sewing.rows()), from("rows")));
    return sewing
        .apart()
        .map(
            apart ->
                telling.say(
                    "rows.apart",
                    slots.and(
                        "apart", telling.amount(apart, LengthKind.ALLOWANCE, step.id(), "apart"))))
        .orElseGet(() -> telling.say("rows", slots));
  }

  List<Inline> needle() {
    return step.sewing()
        .needle()
        .map(
            needle ->
                telling.say(
                    "step.needle", Slots.of("needle", needle(telling, needle, from("needle")))))
        .orElse(List.of());
  }

  /** A needle as it is sold: "ballpoint twin needle 75/11 to 90/14". */
  public static List<Inline> needle(Telling telling, Needle needle, Provenance from) {
    String from1 = Needle.label(needle.from());
    String to = Needle.label(needle.to());
    Slots slots =
        Slots.of("point", telling.say("needle." + needle.point().word()))
            .and("from", new Inline.Value(from1, from))
            .and("to", new Inline.Value(to, from));
    String key = needle.twin() ? "needle.twin" : "needle.single";
    return telling.say(from1.equals(to) ? key : key + ".range", slots);
  }

  /** What the allowance of an edge says by size, from least to most. */
  List<Inline> allowance(
      String piece, String edge, Function<Allowance, Optional<Double>> width, String which) {
    Map<String, Double> bySize = new LinkedHashMap<>();
    for (SizedPattern sized : telling.run().sizes()) {
      sized
          .piece(piece)
          .flatMap(drawn -> drawn.edge(edge))
          .map(Edge::allowance)
          .flatMap(width)
          .ifPresent(mm -> bySize.put(sized.size().name(), mm));
    }
    return telling.range(
        bySize, LengthKind.ALLOWANCE, Provenance.of(Source.ALLOWANCE, piece, edge, which));
  }

  private Provenance from(String what) {
    return Provenance.of(Source.STEP, step.id(), what);
  }
}
