package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.Dial;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.body.Wearers;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * What is the same in every size: details, chart, fabrics, dials, views, which pieces there are.
 */
record PatternComparing(SizeRun old, SizeRun now, Renaming names, List<Change> changes) {
  void compare() {
    details(old.pattern().details(), now.pattern().details());
    said(Changed.BASE_SIZE, "pattern", run -> Argument.of(run.pattern().base().name()));
    chart(old.pattern().chart(), now.pattern().chart());
    things(
        run -> run.pattern().fabrics(),
        Fabric::name,
        "fabric ",
        Changed.FABRIC_ADDED,
        Changed.FABRIC_REMOVED,
        this::fabric);
    things(
        run -> run.pattern().dials(),
        Dial::name,
        "dial ",
        Changed.DIAL_ADDED,
        Changed.DIAL_REMOVED,
        this::dial);
    things(
        run -> run.pattern().views(),
        View::name,
        "view ",
        Changed.VIEW_ADDED,
        Changed.VIEW_REMOVED,
        this::view);
    paper();
    Set<String> before = new LinkedHashSet<>();
    Renaming.names(old).forEach(name -> before.add(names.piece(name)));
    Set<String> after = Renaming.names(now);
    comings(before, after, "", Changed.PIECE_ADDED, Changed.PIECE_REMOVED);
  }

  private void details(Details was, Details is) {
    said(Changed.TITLE, "pattern", Argument.of(was.title()), Argument.of(is.title()));
    said(Changed.VERSION, "pattern", Argument.of(was.version()), Argument.of(is.version()));
    said(
        Changed.DATED,
        "pattern",
        Argument.of(was.dated().toString()),
        Argument.of(is.dated().toString()));
    said(Changed.HOUSE, "pattern", Argument.of(was.by()), Argument.of(is.by()));
    said(Changed.UNITS, "pattern", term(was.units()), term(is.units()));
    said(Changed.SPELLING, "pattern", term(was.spelling()), term(is.spelling()));
    said(Changed.WEARERS, "pattern", wearers(was.wearers()), wearers(is.wearers()));
  }

  /** As the document says it: {@code women, petite}. */
  private static Argument wearers(Optional<Wearers> wearers) {
    if (wearers.isEmpty()) {
      return new Argument.Term("unsaid");
    }
    List<String> words = new ArrayList<>();
    words.add(lower(wearers.get().people()));
    wearers.get().builds().forEach(build -> words.add(lower(build)));
    return Argument.of(String.join(", ", words));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static Argument term(Enum<?> value) {
    return new Argument.Term(lower(value));
  }

  private void said(Changed changed, String subject, Argument was, Argument is) {
    if (!was.equals(is)) {
      changes.add(Change.of(changed, subject, was, is));
    }
  }

  private void said(Changed changed, String subject, Function<SizeRun, Argument> said) {
    said(changed, subject, said.apply(old), said.apply(now));
  }

  private void comings(
      Set<String> before, Set<String> after, String kind, Changed added, Changed removed) {
    for (String name : after) {
      if (!before.contains(name)) {
        changes.add(Change.of(added, kind + name));
      }
    }
    for (String name : before) {
      if (!after.contains(name)) {
        changes.add(Change.of(removed, kind + name));
      }
    }
  }

  private interface Pair<T> {
    void compare(T was, T is, String subject);
  }

  private <T> void things(
      Function<SizeRun, List<T>> things,
      Function<T, String> name,
      String kind,
      Changed added,
      Changed removed,
      Pair<T> both) {
    Map<String, T> before = new LinkedHashMap<>();
    things.apply(old).forEach(thing -> before.put(name.apply(thing), thing));
    Map<String, T> after = new LinkedHashMap<>();
    things.apply(now).forEach(thing -> after.put(name.apply(thing), thing));
    comings(before.keySet(), after.keySet(), kind, added, removed);
    after.forEach(
        (each, thing) -> {
          T was = before.get(each);
          if (was != null) {
            both.compare(was, thing, kind + each);
          }
        });
  }

  private void chart(SizeChart was, SizeChart is) {
    comings(sizes(was), sizes(is), "size ", Changed.SIZE_ADDED, Changed.SIZE_REMOVED);
    comings(columns(was), columns(is), "", Changed.MEASUREMENT_ADDED, Changed.MEASUREMENT_REMOVED);
    for (SizeChart.Column column : is.columns()) {
      Optional<SizeChart.Column> before = was.column(column.name());
      Map<String, Change.Values> values = new LinkedHashMap<>();
      if (before.isPresent() && column.kind() == QuantityKind.LENGTH) {
        for (Size size : is.sizes()) {
          OptionalDouble now = column.cells().get(size.position()).value();
          OptionalDouble then =
              was.size(size.name())
                  .map(own -> before.get().cells().get(own.position()).value())
                  .orElse(OptionalDouble.empty());
          if (now.isPresent()
              && then.isPresent()
              && Math.abs(now.getAsDouble() - then.getAsDouble()) > Tolerance.DRAWN_LENGTH) {
            values.put(size.name(), Change.Values.of(then.getAsDouble(), now.getAsDouble()));
          }
        }
      }
      if (!values.isEmpty()) {
        changes.add(Change.of(Changed.MEASUREMENT, column.name(), values));
      }
    }
  }

  private static Set<String> sizes(SizeChart chart) {
    Set<String> names = new LinkedHashSet<>();
    chart.sizes().forEach(size -> names.add(size.name()));
    return names;
  }

  private static Set<String> columns(SizeChart chart) {
    Set<String> names = new LinkedHashSet<>();
    chart.columns().forEach(column -> names.add(column.name()));
    return names;
  }

  private void fabric(Fabric was, Fabric is, String subject) {
    said(Changed.FABRIC_TITLE, subject, Argument.of(was.title()), Argument.of(is.title()));
    said(Changed.FABRIC_KIND, subject, term(was.kind()), term(is.kind()));
    said(Changed.FABRIC_WIDTHS, subject, widths(was), widths(is));
    said(
        Changed.FABRIC_STRETCH_ACROSS,
        subject,
        stretch(was.stretchAcross()),
        stretch(is.stretchAcross()));
    said(
        Changed.FABRIC_STRETCH_ALONG,
        subject,
        stretch(was.stretchAlong()),
        stretch(is.stretchAlong()));
    said(Changed.FABRIC_NAP, subject, nap(was), nap(is));
    said(Changed.FABRIC_SIDES, subject, sides(was), sides(is));
    stripes(was.repeat(), is.repeat(), subject);
  }

  private void stripes(Optional<Fabric.Repeat> was, Optional<Fabric.Repeat> is, String subject) {
    said(
        Changed.FABRIC_REPEAT_ALONG,
        subject,
        every(was.map(Fabric.Repeat::along)),
        every(is.map(Fabric.Repeat::along)));
    said(
        Changed.FABRIC_REPEAT_ACROSS,
        subject,
        every(was.map(Fabric.Repeat::across)),
        every(is.map(Fabric.Repeat::across)));
    said(Changed.FABRIC_UNEVEN, subject, uneven(was), uneven(is));
    said(Changed.FABRIC_MATCHED, subject, matched(was), matched(is));
  }

  private static Argument every(Optional<OptionalDouble> repeat) {
    OptionalDouble every = repeat.orElse(OptionalDouble.empty());
    return every.isPresent()
        ? Argument.of(Quantity.length(every.getAsDouble()))
        : new Argument.Term("none");
  }

  private static Argument uneven(Optional<Fabric.Repeat> repeat) {
    boolean along = repeat.filter(Fabric.Repeat::unevenAlong).isPresent();
    boolean across = repeat.filter(Fabric.Repeat::unevenAcross).isPresent();
    return new Argument.Term(
        along && across
            ? "uneven-both"
            : along ? "uneven-along" : across ? "uneven-across" : "even");
  }

  private static Argument matched(Optional<Fabric.Repeat> repeat) {
    List<String> names = repeat.map(Fabric.Repeat::matched).orElse(List.of());
    return names.isEmpty() ? new Argument.Term("none") : Argument.of(names);
  }

  private static Argument widths(Fabric fabric) {
    return fabric.widths().isEmpty()
        ? new Argument.Term("none")
        : new Argument.Sold(fabric.widths());
  }

  private static Argument sides(Fabric fabric) {
    return new Argument.Term(fabric.sidesAlike() ? "sides-alike" : "right-side");
  }

  private static Argument nap(Fabric fabric) {
    return fabric.hasNoNap() ? new Argument.Term("no-nap") : term(fabric.nap());
  }

  private static Argument stretch(OptionalDouble share) {
    return share.isPresent()
        ? Argument.of(Quantity.ratio(share.getAsDouble()))
        : new Argument.Term("unsaid");
  }

  private void dial(Dial was, Dial is, String subject) {
    said(
        Changed.DIAL_VALUE,
        subject,
        Argument.of(new Quantity(was.kind(), was.value())),
        Argument.of(new Quantity(is.kind(), is.value())));
    said(Changed.DIAL_RANGE, subject, range(was), range(is));
  }

  private static Argument range(Dial dial) {
    return new Argument.Range(
        new Quantity(dial.kind(), dial.from()), new Quantity(dial.kind(), dial.to()));
  }

  private void view(View was, View is, String subject) {
    said(Changed.VIEW_TITLE, subject, Argument.of(was.title()), Argument.of(is.title()));
    said(
        Changed.VIEW_PIECES,
        subject,
        Argument.of(was.pieces().stream().map(names::piece).toList()),
        Argument.of(is.pieces()));
  }

  private void paper() {
    said(Changed.PAPER_GROUPS, "paper", run -> groups(run.pattern().paper()));
    said(Changed.PAPER_STITCH_LINES, "paper", run -> yes(run.pattern().paper().stitchLines()));
    said(Changed.PAPER_WHOLE_PIECES, "paper", run -> yes(run.pattern().paper().wholePieces()));
    said(Changed.PAPER_RECTANGLES, "paper", run -> yes(run.pattern().paper().rectangleTable()));
  }

  private static Argument groups(PaperChoices paper) {
    List<String> groups = new ArrayList<>();
    paper
        .groups()
        .forEach(group -> groups.add(group.first().name() + " to " + group.last().name()));
    return groups.isEmpty() ? new Argument.Term("none") : Argument.of(groups);
  }

  private static Argument yes(boolean said) {
    return new Argument.Term(said ? "yes" : "no");
  }
}
