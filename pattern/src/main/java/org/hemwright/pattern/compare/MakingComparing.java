package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiPredicate;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.quantity.LengthFormat;

/**
 * How it is made: stages, steps and cords. A step is found again by its name; one whose name is
 * gone by what it does, and else by the step before it that does the same kind of thing.
 */
final class MakingComparing {
  private final SizeRun old;
  private final SizeRun now;
  private final Making was;
  private final Making is;
  private final StepText before;
  private final StepText after;
  private final List<Change> changes;

  MakingComparing(SizeRun old, SizeRun now, Renaming names, List<Change> changes) {
    this.old = old;
    this.now = now;
    this.was = old.pattern().making();
    this.is = now.pattern().making();
    LengthFormat lengths = now.pattern().details().lengths();
    this.before = new StepText(Optional.of(names), lengths);
    this.after = new StepText(Optional.empty(), lengths);
    this.changes = changes;
  }

  void compare() {
    said(Changed.NEEDLE, "pattern", needle(was), needle(is));
    said(Changed.SLEEPWEAR, "pattern", yes(was.sleepwear()), yes(is.sleepwear()));
    cords();
    Map<Step, Step> matched = matched();
    stages(matched);
    steps(matched);
  }

  // --- cords ----------------------------------------------------------------------------------

  private void cords() {
    for (Cord cord : is.cords()) {
      Optional<Cord> then = was.cord(cord.name());
      String subject = "cord " + cord.name();
      if (then.isEmpty()) {
        changes.add(Change.of(Changed.CORD_ADDED, subject));
        continue;
      }
      said(
          Changed.CORD_PIECE,
          subject,
          Argument.of(before.piece(then.get().piece())),
          Argument.of(cord.piece()));
      said(
          Changed.CORD_PLACE,
          subject,
          Argument.of(then.get().place().word()),
          Argument.of(cord.place().word()));
      lengths(
          Changed.CORD_LENGTH,
          subject,
          Optional.of(then.get().length()),
          Optional.of(cord.length()));
      said(
          Changed.CORD_ENDS_SAID,
          subject,
          yes(then.get().freeEnds().isPresent()),
          yes(cord.freeEnds().isPresent()));
      lengths(Changed.CORD_ENDS, subject, then.get().freeEnds(), cord.freeEnds());
      said(Changed.CORD_TOGGLES, subject, yes(then.get().toggles()), yes(cord.toggles()));
      said(Changed.CORD_TACKED, subject, yes(then.get().tacked()), yes(cord.tacked()));
    }
    for (Cord cord : was.cords()) {
      if (is.cord(cord.name()).isEmpty()) {
        changes.add(Change.of(Changed.CORD_REMOVED, "cord " + cord.name()));
      }
    }
  }

  /** A length of both versions in every size that both have. */
  private void lengths(
      Changed changed, String subject, Optional<Amount> then, Optional<Amount> length) {
    if (then.isEmpty() || length.isEmpty()) {
      return;
    }
    Map<String, Change.Values> values = new LinkedHashMap<>();
    for (SizedPattern sized : now.sizes()) {
      String size = sized.size().name();
      OptionalDouble mm = length.get().in(sized.numbers());
      OptionalDouble earlier =
          old.size(size).map(own -> then.get().in(own.numbers())).orElse(OptionalDouble.empty());
      if (mm.isPresent()
          && earlier.isPresent()
          && Math.abs(mm.getAsDouble() - earlier.getAsDouble()) > Tolerance.DRAWN_LENGTH) {
        values.put(size, Change.Values.of(earlier.getAsDouble(), mm.getAsDouble()));
      }
    }
    if (!values.isEmpty()) {
      changes.add(Change.of(changed, subject, values));
    }
  }

  // --- which step is which --------------------------------------------------------------------

  /** The steps of the new version, each with the old one that it is. */
  private Map<Step, Step> matched() {
    Map<Step, Step> matched = new LinkedHashMap<>();
    Set<Step> free = new LinkedHashSet<>(was.steps());
    pair(matched, free, (then, step) -> then.id().equals(step.id()));
    pair(
        matched,
        free,
        (then, step) ->
            then.act().word().equals(step.act().word())
                && before.work(then).equals(after.work(step)));
    pair(
        matched,
        free,
        (then, step) ->
            then.act().word().equals(step.act().word())
                && next(was.steps(), then, -1)
                    .equals(next(is.steps(), step, -1).map(matched::get)));
    return matched;
  }

  private void pair(Map<Step, Step> matched, Set<Step> free, BiPredicate<Step, Step> same) {
    for (Step step : is.steps()) {
      if (!matched.containsKey(step)) {
        free.stream()
            .filter(then -> same.test(then, step))
            .findFirst()
            .ifPresent(
                then -> {
                  matched.put(step, then);
                  free.remove(then);
                });
      }
    }
  }

  private static Optional<Step> next(List<Step> steps, Step step, int by) {
    int at = steps.indexOf(step) + by;
    return at >= 0 && at < steps.size() ? Optional.of(steps.get(at)) : Optional.empty();
  }

  // --- stages ---------------------------------------------------------------------------------

  private void stages(Map<Step, Step> matched) {
    Set<String> gone = titles(was);
    gone.removeAll(titles(is));
    for (Making.Stage stage : is.stages()) {
      if (titles(was).contains(stage.title()) || stage.title().isBlank()) {
        continue;
      }
      Optional<String> then =
          stage.steps().stream()
              .filter(matched::containsKey)
              .map(step -> stage(was, matched.get(step)))
              .filter(gone::contains)
              .findFirst();
      if (then.isPresent()) {
        gone.remove(then.get());
        changes.add(
            Change.of(
                Changed.STAGE_TITLE,
                "stage",
                Argument.of("“" + then.get() + "”"),
                Argument.of("“" + stage.title() + "”")));
      } else {
        changes.add(Change.of(Changed.STAGE_ADDED, "stage “" + stage.title() + "”"));
      }
    }
    for (String title : gone) {
      if (!title.isBlank()) {
        changes.add(Change.of(Changed.STAGE_REMOVED, "stage “" + title + "”"));
      }
    }
  }

  private static Set<String> titles(Making making) {
    Set<String> titles = new LinkedHashSet<>();
    making.stages().forEach(stage -> titles.add(stage.title()));
    return titles;
  }

  private static String stage(Making making, @org.jspecify.annotations.Nullable Step step) {
    return making.stages().stream()
        .filter(stage -> stage.steps().contains(step))
        .map(Making.Stage::title)
        .findFirst()
        .orElse("");
  }

  // --- steps ----------------------------------------------------------------------------------

  private void steps(Map<Step, Step> matched) {
    Set<Step> kept = inOrder(matched);
    for (Step step : is.steps()) {
      Step then = matched.get(step);
      String subject = "step " + step.id();
      if (then == null) {
        changes.add(
            Change.of(Changed.STEP_ADDED, subject, new Argument.Term("none"), place(is, step)));
        continue;
      }
      if (!then.id().equals(step.id())) {
        changes.add(
            Change.of(
                Changed.STEP_RENAMED, subject, Argument.of(then.id()), Argument.of(step.id())));
      }
      if (!kept.contains(step)) {
        changes.add(Change.of(Changed.STEP_MOVED, subject, place(was, then), place(is, step)));
      }
      step(then, step, subject);
    }
    for (Step then : was.steps()) {
      if (!matched.containsValue(then)) {
        changes.add(Change.of(Changed.STEP_REMOVED, "step " + then.id()));
      }
    }
  }

  /** After which step it is done. */
  private static Argument place(Making making, Step step) {
    return next(making.steps(), step, -1)
        .map(earlier -> Argument.of("after " + earlier.id()))
        .orElse(new Argument.Term("first"));
  }

  /** The steps that follow each other as they did: of all such sequences one of the longest. */
  private Set<Step> inOrder(Map<Step, Step> matched) {
    List<Step> steps = is.steps().stream().filter(matched::containsKey).toList();
    int count = steps.size();
    int[] longest = new int[count];
    int[] previous = new int[count];
    int best = -1;
    for (int i = 0; i < count; i++) {
      longest[i] = 1;
      previous[i] = -1;
      for (int j = 0; j < i; j++) {
        if (position(matched, steps.get(j)) < position(matched, steps.get(i))
            && longest[j] + 1 > longest[i]) {
          longest[i] = longest[j] + 1;
          previous[i] = j;
        }
      }
      if (best < 0 || longest[i] > longest[best]) {
        best = i;
      }
    }
    Set<Step> kept = new LinkedHashSet<>();
    for (int i = best; i >= 0; i = previous[i]) {
      kept.add(steps.get(i));
    }
    return kept;
  }

  private int position(Map<Step, Step> matched, Step step) {
    return was.steps().indexOf(matched.get(step));
  }

  private void step(Step then, Step step, String subject) {
    said(
        Changed.STEP_ACT,
        subject,
        Argument.of(before.act(then.act())),
        Argument.of(after.act(step.act())));
    said(Changed.STEP_WORK, subject, names(before.work(then)), names(after.work(step)));
    said(
        Changed.STEP_STITCHING,
        subject,
        text(before.stitching(then.sewing())),
        text(after.stitching(step.sewing())));
    said(
        Changed.STEP_PRESS,
        subject,
        text(then.press().map(before::press).orElse("")),
        text(step.press().map(after::press).orElse("")));
    said(Changed.STEP_WORDS, subject, names(StepText.words(then)), names(StepText.words(step)));
    said(Changed.STEP_LENGTHS, subject, kinds(then), kinds(step));
    for (StepText.Length length : StepText.lengths(step)) {
      Optional<Amount> earlier =
          StepText.lengths(then).stream()
              .filter(own -> own.of().equals(length.of()))
              .map(StepText.Length::amount)
              .findFirst();
      lengths(
          Changed.STEP_LENGTH,
          length.of() + " of " + subject,
          earlier,
          Optional.of(length.amount()));
    }
    said(Changed.STEP_VIEWS, subject, views(then), views(step));
    said(Changed.STEP_SIZES, subject, sizes(then.sizes()), sizes(step.sizes()));
    Set<String> both = titles(was);
    both.retainAll(titles(is));
    String stage = stage(is, step);
    String earlier = stage(was, then);
    if (both.contains(stage) && both.contains(earlier)) {
      said(Changed.STEP_STAGE, subject, text(earlier), text(stage));
    }
  }

  private static Argument kinds(Step step) {
    return names(StepText.lengths(step).stream().map(StepText.Length::of).toList());
  }

  /** Of the views that both versions have: a new view is told once, and not by every step. */
  private Argument views(Step step) {
    return names(
        step.views().stream()
            .filter(view -> has(old, view) && has(now, view))
            .map(view -> "view " + view)
            .toList());
  }

  private static boolean has(SizeRun run, String view) {
    return run.pattern().views().stream().map(View::name).anyMatch(view::equals);
  }

  private static Argument sizes(Optional<SizeRange> range) {
    return range
        .map(sizes -> Argument.of(sizes.first().name() + " to " + sizes.last().name()))
        .orElse(new Argument.Term("all"));
  }

  private static Argument needle(Making making) {
    return text(making.usualNeedle().map(StepText::needle).orElse(""));
  }

  private static Argument yes(boolean said) {
    return new Argument.Term(said ? "yes" : "no");
  }

  private static Argument text(String text) {
    return text.isEmpty() ? new Argument.Term("none") : Argument.of(text);
  }

  private static Argument names(List<String> names) {
    return names.isEmpty() ? new Argument.Term("none") : Argument.of(names);
  }

  private void said(Changed changed, String subject, Argument then, Argument said) {
    if (!then.equals(said)) {
      changes.add(Change.of(changed, subject, then, said));
    }
  }
}
