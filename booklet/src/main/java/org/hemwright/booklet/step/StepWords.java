package org.hemwright.booklet.step;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.SeamWalk;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * The words of one step: whom it is for, what is done, what follows. Long for one branch for each
 * act; the words themselves are in the message files.
 */
public final class StepWords {
  /** A layer that is longer than this share of the other is not stretched. */
  private static final double STRETCHED = 0.995;

  private final Telling telling;
  private final Step step;
  private final WorkWords work;
  private final LayerWords layers;
  private final SewingWords sewing;
  private final Slots slots;

  private StepWords(Telling telling, Step step, Set<String> folded, Set<String> pinned) {
    this.telling = telling;
    this.step = step;
    this.work = new WorkWords(telling, step);
    this.layers = new LayerWords(telling, step, folded, pinned);
    this.sewing = new SewingWords(telling, step);
    this.slots =
        Slots.of("work", work.all())
            .and("with", sewing.with())
            .and("distance", sewing.distance())
            .and("rows", sewing.rows());
  }

  /**
   * The words of a step.
   *
   * @param before the steps before it, in the order of the document
   */
  public static StepWords of(Telling telling, Step step, List<Step> before) {
    Set<String> folded = new LinkedHashSet<>();
    Set<String> pinned = new LinkedHashSet<>();
    for (Step earlier : before) {
      boolean turned =
          earlier.act() instanceof Act.Handle handle && handle.kind() == Act.Handling.TURN_OUT;
      if (earlier.act() instanceof Act.Fold || turned) {
        earlier.work(Work.OfPiece.class).forEach(piece -> folded.add(piece.piece()));
      } else if (earlier.act() instanceof Act.Handle handle
          && handle.kind() == Act.Handling.PIN
          && !earlier.words().notes().isEmpty()) {
        earlier.work(Work.OfSeam.class).forEach(seam -> pinned.add(seam.seam()));
      }
    }
    return new StepWords(telling, step, folded, pinned);
  }

  /** Its title: "Sew side seams". */
  public List<Inline> title() {
    if (step.act() instanceof Act.Own) {
      return step.work().isEmpty() && work.dealt().isEmpty()
          ? telling.say("title.do.plain")
          : telling.words().capital(work.listed(work.dealt()));
    }
    Slots named = Slots.of("work", work.named());
    String one = step.act() instanceof Act.Fasten fasten && fasten.count() == 1 ? ".one" : "";
    String key = "title." + key();
    return telling
        .words()
        .capital(telling.say(telling.words().has(key + one) ? key + one : key, named));
  }

  /** All that is said of it: who it is for, what to do, how to press, what to look at, tips. */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    List<Inline> text = new ArrayList<>();
    add(text, limits());
    add(text, layers.laying());
    add(text, act());
    if (handled()) {
      String how = telling.own(step.words().notes().get(0)).strip();
      if (goesOn(how)) {
        withoutStop(text);
        text.add(new Inline.Own(" " + (how.endsWith(".") ? how : how + ".")));
      } else {
        add(text, List.of(new Inline.Own(sentence(how))));
      }
    }
    add(text, sewing.raw());
    add(text, leaving());
    add(text, pressing());
    add(text, sewing.needle());
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, text));
    for (String look : step.words().look()) {
      blocks.add(
          new Block.Paragraph(
              Block.Tone.LOOK,
              telling.say(
                  "step.look", Slots.of("look", new Inline.Own(sentence(telling.own(look)))))));
    }
    List<String> notes = step.words().notes();
    for (String note : handled() ? notes.subList(1, notes.size()) : notes) {
      blocks.add(
          new Block.Paragraph(
              Block.Tone.NOTE,
              telling.say(
                  "step.note", Slots.of("note", new Inline.Own(sentence(telling.own(note)))))));
    }
    return blocks;
  }

  /** Whether the designer's first words say how a thing is handled, rather than give a tip. */
  private boolean handled() {
    return step.act() instanceof Act.Handle && !step.words().notes().isEmpty();
  }

  /** Whether her words go on with the sentence before them: they begin with a small letter. */
  private static boolean goesOn(String words) {
    return !words.isEmpty() && Character.isLowerCase(words.codePointAt(0));
  }

  /** Takes the full stop off the last sentence, so that it can go on. */
  private static void withoutStop(List<Inline> text) {
    int last = text.size() - 1;
    if (last >= 0 && text.get(last) instanceof Inline.Text end && end.text().endsWith(".")) {
      String without = end.text().substring(0, end.text().length() - 1);
      text.remove(last);
      if (!without.isEmpty()) {
        text.add(new Inline.Text(without));
      }
    }
  }

  static void add(List<Inline> text, List<Inline> sentence) {
    if (!sentence.isEmpty()) {
      if (!text.isEmpty()) {
        text.add(new Inline.Text(" "));
      }
      text.addAll(sentence);
    }
  }

  private static String sentence(String words) {
    String stripped = words.strip();
    String text =
        stripped.isEmpty()
            ? stripped
            : stripped.substring(0, 1).toUpperCase(Locale.ROOT) + stripped.substring(1);
    return text.endsWith(".") || text.endsWith("?") || text.endsWith("!") ? text : text + ".";
  }

  /** The key of an act's sentence and title. */
  private String key() {
    return step.act().word().replace(' ', '-');
  }

  // --- whom it is for -------------------------------------------------------------------------

  private List<Inline> limits() {
    List<Inline> limits = new ArrayList<>();
    int views = telling.run().pattern().views().size();
    if (step.views().size() < views) {
      limits.addAll(telling.say("step.only-views", Slots.of("views", telling.views(step.views()))));
    }
    List<String> sizes =
        telling.sizes().stream()
            .filter(size -> step.sizes().filter(range -> !range.contains(size)).isEmpty())
            .map(size -> size.name())
            .toList();
    if (sizes.size() < telling.run().sizes().size()) {
      add(limits, telling.say("step.only-sizes", Slots.of("sizes", telling.sizes(sizes))));
    }
    return limits.isEmpty() ? limits : List.of(new Inline.Strong(telling.words().capital(limits)));
  }

  // --- the act itself -------------------------------------------------------------------------

  private List<Inline> act() {
    Act act = step.act();
    if (layers.isLaid() && (act instanceof Act.Sew || act instanceof Act.SetIn)) {
      int passes =
          step.work(Work.OfSeam.class).stream()
              .flatMap(work -> telling.seam(work.seam()).stream())
              .mapToInt(seam -> seam.joins().size())
              .sum();
      return telling.say(passes == 1 ? "act.sew.this" : "act.sew.these", slots);
    }
    if (act instanceof Act.Attach attach) {
      slots.and("parts", parts(attach.parts()));
      boolean laid =
          step.work(Work.OfSeam.class).stream().anyMatch(seam -> layers.isPinned(seam.seam()));
      String stretch = isStretched() ? "" : ".even";
      return telling.say((laid ? "act.attach.pinned" : "act.attach") + stretch, slots);
    } else if (act instanceof Act.Apply apply) {
      slots.and("parts", parts(Math.max(1, apply.parts())));
      if (apply.parts() < 2) {
        return telling.say("act.apply.plain", slots);
      }
    } else if (act instanceof Act.Finish finish) {
      return telling.say(finish.together() ? "act.finish.together" : "act.finish", slots);
    } else if (act instanceof Act.LeaveRaw raw) {
      return withOwn(telling.say("act.leave-raw", slots), raw.why());
    } else if (act instanceof Act.Hem) {
      return hem();
    } else if (act instanceof Act.Bind bind) {
      return bind.tape()
          .map(
              tape ->
                  telling.say(
                      "act.bind.tape",
                      slots.and(
                          "tape", telling.amount(tape, LengthKind.NOTION, step.id(), "tape"))))
          .orElseGet(() -> telling.say("act.bind", slots));
    } else if (act instanceof Act.FormCasing casing) {
      slots.and("held", telling.name(casing.holds()));
    } else if (act instanceof Act.ThreadThrough through) {
      slots.and("opening", telling.name(through.opening()));
    } else if (act instanceof Act.JoinEnds join) {
      return join.overlapped() ? overlapped() : telling.say("act.join.end-to-end", slots);
    } else if (act instanceof Act.InsertZip zip) {
      List<List<Inline>> sold = new ArrayList<>();
      for (int i = 0; i < zip.sold().size(); i++) {
        sold.add(
            List.of(
                telling
                    .words()
                    .length(
                        zip.sold().get(i),
                        LengthKind.NOTION,
                        Provenance.of(Source.STEP, step.id(), "sold", Integer.toString(i)))));
      }
      List<Inline> said = new ArrayList<>(telling.say("act.insert-zip", slots));
      if (!sold.isEmpty()) {
        add(
            said,
            telling.say("act.insert-zip.sold", Slots.of("lengths", telling.words().either(sold))));
      }
      return said;
    } else if (act instanceof Act.Close) {
      String what =
          step.work().stream().allMatch(Work.OfOpening.class::isInstance)
              ? "act.close"
              : isPleat() ? "act.close.pleat" : "act.close.dart";
      return telling.say(what, slots);
    } else if (act instanceof Act.Handle handle
        && handle.kind() == Act.Handling.TURN_OUT
        && handled()
        && goesOn(telling.own(step.words().notes().get(0)).strip())) {
      return telling.say("act.turn-out.how", slots);
    } else if (act instanceof Act.Press) {
      return step.press().isPresent() ? List.of() : telling.say("act.press", slots);
    } else if (act instanceof Act.Fold fold) {
      slots.and(
          "along",
          fold.along()
              .map(line -> telling.say("fold.along", Slots.of("line", telling.name(line))))
              .orElseGet(() -> telling.say("fold.half")));
      return telling.say(fold.wrongSidesTogether() ? "act.fold.wrong" : "act.fold.right", slots);
    } else if (act instanceof Act.CutInto cut) {
      slots.and(
          "to",
          cut.to()
              .map(to -> telling.amount(to, LengthKind.ALLOWANCE, step.id(), "to"))
              .orElse(List.of()));
    } else if (act instanceof Act.Fuse fuse) {
      slots.and(
          "fabric",
          fuse.fabric()
              .map(name -> List.<Inline>of(telling.fabric(name)))
              .orElseGet(() -> telling.say("word.interfacing")));
    } else if (act instanceof Act.Fasten fasten) {
      slots
          .and("count", new Inline.Value(Integer.toString(fasten.count()), from("count")))
          .and("size", telling.amount(fasten.size(), LengthKind.NOTION, step.id(), "size"));
      return telling.say(fasten.count() == 1 ? "act." + key() + ".one" : "act." + key(), slots);
    } else if (act instanceof Act.Own own) {
      List<Inline> text =
          new ArrayList<>(List.of(new Inline.Own(sentence(telling.own(own.words())))));
      if (!step.sewing().choices().isEmpty()) {
        add(text, telling.say("act.do.with", slots));
      }
      return text;
    } else if (act instanceof Act.Handle && step.work().isEmpty()) {
      String plain = "act." + key() + ".plain";
      return telling.words().has(plain)
          ? telling.say(plain, slots)
          : telling.say("act." + key(), slots);
    }
    return telling.say("act." + key(), slots);
  }

  /** Whether what is closed is a pleat, which is folded and held, not sewn to a point. */
  private boolean isPleat() {
    return step.work(Work.OfIntake.class).stream()
        .findFirst()
        .flatMap(work -> telling.intake(work))
        .filter(Intake.Pleat.class::isInstance)
        .isPresent();
  }

  /** Whether the first layer of its first seam is shorter than what it is sewn to. */
  private boolean isStretched() {
    return step.work(Work.OfSeam.class).stream()
        .findFirst()
        .flatMap(work -> telling.seam(work.seam()))
        .map(
            seam -> {
              Seam.Join join = seam.joins().get(0);
              SeamWalk walk = SeamWalk.of(seam, join, join.layers().size() - 1, telling.drawn());
              return walk.first().length() < STRETCHED * walk.second().length();
            })
        .orElse(false);
  }

  private List<Inline> withOwn(List<Inline> said, Optional<String> own) {
    List<Inline> text = new ArrayList<>(said);
    own.ifPresent(words -> add(text, List.of(new Inline.Own(sentence(telling.own(words))))));
    return text;
  }

  private Provenance from(String what) {
    return Provenance.of(Source.STEP, step.id(), what);
  }

  private List<Inline> parts(int parts) {
    List<Inline> word =
        parts == 2
            ? telling.say("parts.halves")
            : parts == 4
                ? telling.say("parts.quarters")
                : parts == 8
                    ? telling.say("parts.eighths")
                    : telling.say(
                        "parts.many",
                        Slots.of(
                            "count", new Inline.Value(Integer.toString(parts), from("parts"))));
    return word;
  }

  private List<Inline> overlapped() {
    for (Work.OfElastic work : step.work(Work.OfElastic.class)) {
      Map<String, Double> overlaps = new LinkedHashMap<>();
      for (SizedPattern sized : telling.run().sizes()) {
        for (Elastic elastic : sized.elastics()) {
          if (elastic.name().equals(work.elastic())) {
            overlaps.put(sized.size().name(), elastic.overlap());
          }
        }
      }
      slots.and(
          "overlap",
          telling.range(
              overlaps,
              LengthKind.NOTION,
              Provenance.of(Source.ELASTIC, work.elastic(), "overlap")));
      return telling.say("act.join", slots);
    }
    return telling.say("act.join.cord", slots);
  }

  /** How deep a hem is turned, as its allowance is folded. */
  private List<Inline> hem() {
    List<List<Inline>> said = new ArrayList<>();
    for (Work.OfEdge work : step.work(Work.OfEdge.class)) {
      List<Inline> depth = depth(work);
      if (!said.contains(depth) && !depth.isEmpty()) {
        said.add(depth);
      }
    }
    slots.and("depth", said.isEmpty() ? List.of() : said.get(0));
    return telling.say(said.isEmpty() ? "act.hem.plain" : "act.hem", slots);
  }

  private List<Inline> depth(Work.OfEdge work) {
    List<List<Inline>> turns = new ArrayList<>();
    for (int fold = 0; fold < 2; fold++) {
      int which = fold;
      List<Inline> turn =
          sewing.allowance(
              work.piece(),
              work.edge(),
              allowance ->
                  allowance instanceof Allowance.TurnedBack back && which < back.folds().size()
                      ? Optional.of(back.folds().get(which))
                      : which == 0 && allowance.width() > 0 && allowance instanceof Allowance.Plain
                          ? Optional.of(allowance.width())
                          : Optional.empty(),
              Integer.toString(fold));
      if (!turn.isEmpty()) {
        turns.add(turn);
      }
    }
    return turns.isEmpty()
        ? List.of()
        : turns.size() == 1
            ? telling.say("hem.once", Slots.of("depth", turns.get(0)))
            : telling.say("hem.twice", Slots.of("depth", turns.get(0)).and("under", turns.get(1)));
  }

  // --- what follows ---------------------------------------------------------------------------

  private List<Inline> leaving() {
    List<Inline> all = new ArrayList<>();
    for (Step.Opening opening : step.leaves()) {
      Slots at =
          Slots.of(
                  "length",
                  telling.amount(
                      opening.length(), LengthKind.FINISHED, step.id(), "leaves/" + opening.name()))
              .and("opening", telling.name(opening.name()));
      add(
          all,
          opening
              .where()
              .map(
                  where ->
                      telling.say(
                          "step.leave.where", at.and("where", new Inline.Own(telling.own(where)))))
              .orElseGet(() -> telling.say("step.leave", at)));
    }
    return all;
  }

  private List<Inline> pressing() {
    if (step.press().isEmpty()) {
      return List.of();
    }
    PressDirection press = step.press().get();
    boolean itself = step.act() instanceof Act.Press;
    String what = itself ? "press." : "then.press.";
    if (step.act() instanceof Act.Close && !step.work(Work.OfIntake.class).isEmpty()) {
      return telling.say(
          press instanceof PressDirection.Toward ? "then.press.dart" : "then.press.flat");
    }
    if (press instanceof PressDirection.Toward toward) {
      slots.and("toward", telling.piece(toward.piece(), toward.copy()));
      String side = toward.seenFrom() == PressDirection.Side.RIGHT ? "" : ".wrong";
      String key = what + "toward" + side;
      return telling.say(telling.words().has(key) ? key : what + "toward", slots);
    }
    String way =
        press instanceof PressDirection.Open
            ? "open"
            : press instanceof PressDirection.Up
                ? "up"
                : press instanceof PressDirection.Down ? "down" : "flat";
    boolean seam = !itself && !step.work(Work.OfSeam.class).isEmpty();
    boolean edges = itself && step.work().stream().allMatch(Work.OfEdge.class::isInstance);
    String key = what + way + (seam ? ".seam" : edges ? ".edges" : "");
    return telling.say(telling.words().has(key) ? key : what + way, slots);
  }
}
