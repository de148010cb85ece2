package org.hemwright.pattern.compare;

import static org.hemwright.pattern.compare.SaidComparing.names;
import static org.hemwright.pattern.compare.SaidComparing.text;
import static org.hemwright.pattern.compare.SaidComparing.yes;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.quantity.LengthFormat;

/** How it is made: stages and steps, cords, the needle, whether it is slept in. */
final class MakingComparing {
  private final SizeRun old;
  private final SizeRun now;
  private final Making was;
  private final Making is;
  private final StepText before;
  private final StepText after;
  private final List<Change> changes;
  private final SaidComparing comparing;
  private final StepPairs pairs;

  MakingComparing(SizeRun old, SizeRun now, Renaming names, List<Change> changes) {
    this.old = old;
    this.now = now;
    this.was = old.pattern().making();
    this.is = now.pattern().making();
    LengthFormat lengths = now.pattern().details().lengths();
    this.before = new StepText(Optional.of(names), lengths);
    this.after = new StepText(Optional.empty(), lengths);
    this.changes = changes;
    this.comparing = new SaidComparing(old, now, changes);
    this.pairs = new StepPairs(was.steps(), is.steps(), before, after);
  }

  void compare() {
    comparing.said(Changed.NEEDLE, "pattern", needle(was), needle(is));
    comparing.said(Changed.SLEEPWEAR, "pattern", yes(was.sleepwear()), yes(is.sleepwear()));
    new CordComparing(was, is, before, comparing).compare();
    stages();
    steps();
  }

  private void stages() {
    Set<String> gone = titles(was);
    gone.removeAll(titles(is));
    for (Making.Stage stage : is.stages()) {
      if (titles(was).contains(stage.title()) || stage.title().isBlank()) {
        continue;
      }
      Optional<String> then =
          stage.steps().stream()
              .flatMap(step -> pairs.then(step).stream())
              .map(step -> stage(was, step))
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

  private static String stage(Making making, Step step) {
    return making.stages().stream()
        .filter(stage -> stage.steps().contains(step))
        .map(Making.Stage::title)
        .findFirst()
        .orElse("");
  }

  private void steps() {
    Set<Step> kept = pairs.inOrder();
    for (Step step : is.steps()) {
      String subject = "step " + step.id();
      Optional<Step> then = pairs.then(step);
      if (then.isEmpty()) {
        changes.add(
            Change.of(Changed.STEP_ADDED, subject, new Argument.Term("none"), place(is, step)));
        continue;
      }
      if (!then.get().id().equals(step.id())) {
        changes.add(
            Change.of(
                Changed.STEP_RENAMED,
                subject,
                Argument.of(then.get().id()),
                Argument.of(step.id())));
      }
      if (!kept.contains(step)) {
        changes.add(
            Change.of(Changed.STEP_MOVED, subject, place(was, then.get()), place(is, step)));
      }
      step(then.get(), step, subject);
    }
    for (Step then : pairs.gone()) {
      changes.add(Change.of(Changed.STEP_REMOVED, "step " + then.id()));
    }
  }

  /** After which step it is done. */
  private static Argument place(Making making, Step step) {
    return StepPairs.earlier(making.steps(), step)
        .map(earlier -> Argument.of("after " + earlier.id()))
        .orElse(new Argument.Term("first"));
  }

  private void step(Step then, Step step, String subject) {
    comparing.said(
        Changed.STEP_ACT,
        subject,
        Argument.of(before.act(then.act())),
        Argument.of(after.act(step.act())));
    comparing.said(Changed.STEP_WORK, subject, names(before.work(then)), names(after.work(step)));
    comparing.said(
        Changed.STEP_STITCHING,
        subject,
        text(before.stitching(then.sewing())),
        text(after.stitching(step.sewing())));
    comparing.said(
        Changed.STEP_PRESS,
        subject,
        text(then.press().map(before::press).orElse("")),
        text(step.press().map(after::press).orElse("")));
    comparing.said(
        Changed.STEP_WORDS, subject, names(StepText.words(then)), names(StepText.words(step)));
    comparing.said(Changed.STEP_LENGTHS, subject, kinds(then), kinds(step));
    for (StepText.Length length : StepText.lengths(step)) {
      Optional<Amount> earlier =
          StepText.lengths(then).stream()
              .filter(own -> own.of().equals(length.of()))
              .map(StepText.Length::amount)
              .findFirst();
      comparing.length(
          Changed.STEP_LENGTH,
          length.of() + " of " + subject,
          earlier,
          Optional.of(length.amount()));
    }
    comparing.said(Changed.STEP_VIEWS, subject, views(then), views(step));
    comparing.said(Changed.STEP_SIZES, subject, sizes(then.sizes()), sizes(step.sizes()));
    Set<String> both = titles(was);
    both.retainAll(titles(is));
    String stage = stage(is, step);
    String earlier = stage(was, then);
    if (both.contains(stage) && both.contains(earlier)) {
      comparing.said(Changed.STEP_STAGE, subject, text(earlier), text(stage));
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
}
