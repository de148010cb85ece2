package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/** Seams and elastics, found again by name; the old ones in the new names of pieces and edges. */
record SeamComparing(SizeRun was, SizeRun now, List<Change> changes) {
  void compare() {
    comings(SizedPattern::seams, Seam::name, "seam ", Changed.SEAM_ADDED, Changed.SEAM_REMOVED);
    comings(
        SizedPattern::elastics,
        Elastic::name,
        "elastic ",
        Changed.ELASTIC_ADDED,
        Changed.ELASTIC_REMOVED);
    int common = (int) now.sizes().stream().filter(s -> was.size(name(s)).isPresent()).count();
    BySize found = new BySize(common);
    for (SizedPattern sized : now.sizes()) {
      Optional<SizedPattern> before = was.size(name(sized));
      if (before.isPresent()) {
        Map<String, Seam> seams = byName(before.get().seams(), Seam::name);
        for (Seam seam : sized.seams()) {
          Optional.ofNullable(seams.get(seam.name()))
              .ifPresent(old -> seam(name(sized), old, seam, found));
        }
        Map<String, Elastic> elastics = byName(before.get().elastics(), Elastic::name);
        for (Elastic elastic : sized.elastics()) {
          Optional.ofNullable(elastics.get(elastic.name()))
              .ifPresent(old -> elastic(name(sized), old, elastic, found));
        }
      }
    }
    changes.addAll(found.changes());
  }

  private static String name(SizedPattern sized) {
    return sized.size().name();
  }

  private static <T> Map<String, T> byName(List<T> things, Function<T, String> name) {
    Map<String, T> named = new LinkedHashMap<>();
    things.forEach(thing -> named.put(name.apply(thing), thing));
    return named;
  }

  private <T> void comings(
      Function<SizedPattern, List<T>> things,
      Function<T, String> name,
      String kind,
      Changed added,
      Changed removed) {
    Set<String> before = names(was, things, name);
    Set<String> after = names(now, things, name);
    for (String each : after) {
      if (!before.contains(each)) {
        changes.add(Change.of(added, kind + each));
      }
    }
    for (String each : before) {
      if (!after.contains(each)) {
        changes.add(Change.of(removed, kind + each));
      }
    }
  }

  private static <T> Set<String> names(
      SizeRun run, Function<SizedPattern, List<T>> things, Function<T, String> name) {
    return run.sizes().stream()
        .flatMap(sized -> things.apply(sized).stream())
        .map(name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static void seam(String size, Seam was, Seam is, BySize found) {
    String subject = "seam " + is.name();
    if (!was.joins().equals(is.joins())) {
      found.add(
          size, Changed.SEAM_LAYERS, subject, Optional.of(layers(was)), Optional.of(layers(is)));
    }
    found.add(
        size,
        Changed.SEAM_EASE,
        subject,
        Optional.of(ease(was.ease())),
        Optional.of(ease(is.ease())));
    found.add(size, Changed.SEAM_MARKS, subject, Optional.of(marks(was)), Optional.of(marks(is)));
  }

  private static Argument layers(Seam seam) {
    String first =
        seam.joins().get(0).layers().stream()
            .map(Seam.Layer::text)
            .collect(Collectors.joining(" with "));
    return Argument.of(seam.joins().size() == 1 ? first : first + ", " + seam.joins().size() + "×");
  }

  private static Argument ease(Seam.Ease ease) {
    Quantity least = ease.share() ? Quantity.ratio(ease.least()) : Quantity.length(ease.least());
    Quantity most = ease.share() ? Quantity.ratio(ease.most()) : Quantity.length(ease.most());
    return new Argument.Range(least, most);
  }

  private static Argument marks(Seam seam) {
    return seam.even().map(even -> Argument.of(even.parts())).orElse(new Argument.Term("none"));
  }

  private static void elastic(String size, Elastic was, Elastic is, BySize found) {
    String subject = "elastic " + is.name();
    found.add(
        size,
        Changed.ELASTIC_PIECE,
        subject,
        Optional.of(Argument.of(was.piece())),
        Optional.of(Argument.of(is.piece())));
    length(size, Changed.ELASTIC_WIDTH, subject, was.width(), is.width(), found);
    length(size, Changed.ELASTIC_LENGTH, subject, was.finished(), is.finished(), found);
    length(size, Changed.ELASTIC_OVERLAP, subject, was.overlap(), is.overlap(), found);
    said(size, Changed.ELASTIC_HOLDS, subject, was.round(), is.round(), found);
    said(size, Changed.ELASTIC_PASSES, subject, was.over(), is.over(), found);
    found.add(
        size,
        Changed.ELASTIC_STRETCH,
        subject,
        Optional.of(stretch(was.stretch())),
        Optional.of(stretch(is.stretch())));
  }

  private static void said(
      String size,
      Changed changed,
      String subject,
      Optional<String> was,
      Optional<String> is,
      BySize found) {
    found.add(size, changed, subject, Optional.of(unsaid(was)), Optional.of(unsaid(is)));
  }

  private static Argument unsaid(Optional<String> said) {
    return said.map(Argument::of).orElse(new Argument.Term("unsaid"));
  }

  private static Argument stretch(OptionalDouble share) {
    return share.isPresent()
        ? Argument.of(Quantity.ratio(share.getAsDouble()))
        : new Argument.Term("unsaid");
  }

  private static void length(
      String size, Changed changed, String subject, double was, double is, BySize found) {
    if (Math.abs(was - is) > Tolerance.DRAWN_LENGTH) {
      found.add(size, changed, subject, Change.Values.of(was, is));
    }
  }
}
