package org.hemwright.booklet.step;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.SeamWalk;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/** The words of one step. */
public final class StepWords {
  /** A layer that is longer than this share of the other is not stretched. */
  private static final double STRETCHED = 0.995;

  private final Telling telling;
  private final Step step;
  private final Set<String> folded;
  private final Set<String> pinned;
  private final Slots slots;

  private StepWords(Telling telling, Step step, Set<String> folded, Set<String> pinned) {
    this.telling = telling;
    this.step = step;
    this.folded = folded;
    this.pinned = pinned;
    this.slots =
        Slots.of("work", work())
            .and("with", with())
            .and("distance", distance())
            .and("rows", rows());
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
      return step.work().isEmpty() && dealt().isEmpty()
          ? telling.say("title.do.plain")
          : telling.words().capital(listed(dealt()));
    }
    Slots named = Slots.of("work", named());
    String one = step.act() instanceof Act.Fasten fasten && fasten.count() == 1 ? ".one" : "";
    String key = "title." + key();
    return telling
        .words()
        .capital(telling.say(telling.words().has(key + one) ? key + one : key, named));
  }

  /**
   * What the title names: of a hem the pieces alone, where the edges are called by nothing else.
   */
  private List<Inline> named() {
    List<Work.OfEdge> edges = step.work(Work.OfEdge.class);
    boolean hems =
        step.act() instanceof Act.Hem
            && edges.size() == step.work().size()
            && edges.stream().allMatch(edge -> edge.edge().contains("hem"));
    return hems
        ? telling
            .words()
            .listed(
                edges.stream()
                    .map(edge -> telling.piece(edge.piece(), edge.copy()))
                    .distinct()
                    .toList())
        : work();
  }

  /** All that is said of it: who it is for, what to do, how to press, what to look at, tips. */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    List<Inline> text = new ArrayList<>();
    add(text, limits());
    add(text, laying());
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
    add(text, raw());
    add(text, leaving());
    add(text, pressing());
    add(text, needle());
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

  private static void add(List<Inline> text, List<Inline> sentence) {
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

  // --- what it is done to ---------------------------------------------------------------------

  private List<Inline> work() {
    return listed(step.work());
  }

  private List<Work> dealt() {
    return step.act() instanceof Act.Own own
        ? own.deals().stream().map(Act.Dealing::work).distinct().toList()
        : List.of();
  }

  private List<Inline> listed(List<Work> works) {
    Map<Owner, List<String>> edges = new LinkedHashMap<>();
    for (Work work : works) {
      if (work instanceof Work.OfEdge edge) {
        edges.computeIfAbsent(Owner.of(edge), k -> new ArrayList<>()).add(edge.edge());
      }
    }
    List<List<Inline>> items = new ArrayList<>();
    Set<List<String>> told = new LinkedHashSet<>();
    Set<String> taken = new LinkedHashSet<>();
    for (Work work : works) {
      if (work instanceof Work.OfEdge edge) {
        List<String> names = edges.getOrDefault(Owner.of(edge), List.of());
        if (told.add(names)) {
          items.add(
              edges(
                  edges.entrySet().stream()
                      .filter(entry -> entry.getValue().equals(names))
                      .map(Map.Entry::getKey)
                      .toList(),
                  names));
        }
      } else if (work instanceof Work.OfIntake intake) {
        List<Inline> names =
            telling
                .words()
                .listed(
                    works.stream()
                        .filter(Work.OfIntake.class::isInstance)
                        .map(Work.OfIntake.class::cast)
                        .filter(other -> other.piece().equals(intake.piece()))
                        .map(other -> List.<Inline>of(telling.name(other.intake())))
                        .toList());
        if (taken.add(intake.piece())) {
          items.add(
              telling.say(
                  "work.intake",
                  Slots.of("intake", names).and("piece", telling.piece(intake.piece()))));
        }
      } else {
        items.add(thing(work));
      }
    }
    return telling.words().listed(items);
  }

  /** A piece, or one copy of it. */
  private record Owner(String piece, Optional<String> copy) {
    static Owner of(Work.OfEdge edge) {
      return new Owner(edge.piece(), edge.copy());
    }
  }

  /** Edges of the same names on one piece or several: "the neck edges of front and back". */
  private List<Inline> edges(List<Owner> owners, List<String> names) {
    List<Inline> pieces =
        telling
            .words()
            .listed(owners.stream().map(own -> telling.piece(own.piece(), own.copy())).toList());
    Optional<String> other = owners.size() == 1 ? only(owners.get(0), names) : Optional.empty();
    if (other.isPresent()) {
      return telling.say(
          "work.edges.but",
          Slots.of("edge", telling.edges(List.of(other.get()))).and("piece", pieces));
    }
    return telling.say(
        "work.edge", Slots.of("edges", telling.edges(names, owners.size())).and("piece", pieces));
  }

  /** The one edge of a piece that is left where most of them are named. */
  private Optional<String> only(Owner owner, List<String> names) {
    List<String> others =
        telling.drawn().piece(owner.piece()).stream()
            .flatMap(piece -> piece.edges().stream())
            .map(Edge::name)
            .distinct()
            .filter(name -> !names.contains(name))
            .toList();
    return names.size() > 2 && others.size() == 1 ? Optional.of(others.get(0)) : Optional.empty();
  }

  /** The key of a thing whose name is a word of the language, rather than a name to be quoted. */
  private String said(String key, String name) {
    return telling.isSaid(name) ? key + ".said" : key;
  }

  private List<Inline> thing(Work work) {
    if (work instanceof Work.OfSeam seam) {
      return telling.say(
          said("work.seam", telling.seamStem(seam.seam())),
          Slots.of("seam", telling.seamName(seam.seam())));
    } else if (work instanceof Work.OfPiece piece) {
      return telling.say(
          "work.piece", Slots.of("piece", telling.piece(piece.piece(), piece.copy())));
    } else if (work instanceof Work.OfMark mark) {
      return telling.say(
          said("work.mark", mark.mark()),
          Slots.of("mark", telling.name(mark.mark())).and("piece", telling.piece(mark.piece())));
    } else if (work instanceof Work.OfIntake intake) {
      return telling.say(
          "work.intake",
          Slots.of("intake", telling.name(intake.intake()))
              .and("piece", telling.piece(intake.piece())));
    } else if (work instanceof Work.OfElastic elastic) {
      return telling.say(
          said("work.elastic", elastic.elastic()),
          Slots.of("elastic", telling.name(elastic.elastic())));
    } else if (work instanceof Work.OfCord cord) {
      return telling.say("work.cord", Slots.of("cord", telling.name(cord.cord())));
    } else if (work instanceof Work.OfOpening opening) {
      return telling.say("work.opening", Slots.of("opening", telling.name(opening.opening())));
    }
    Work.OfEdge edge = (Work.OfEdge) work;
    return edges(List.of(Owner.of(edge)), List.of(edge.edge()));
  }

  // --- how the layers are laid ----------------------------------------------------------------

  private boolean joins() {
    return step.act() instanceof Act.Sew
        || step.act() instanceof Act.Attach
        || step.act() instanceof Act.SetIn
        || step.act() instanceof Act.HandSew;
  }

  private List<Inline> laying() {
    if (!joins()) {
      return List.of();
    }
    List<Laying> all = new ArrayList<>();
    for (Work.OfSeam work : step.work(Work.OfSeam.class)) {
      if (!pinned.contains(work.seam())) {
        telling.seam(work.seam()).flatMap(this::laid).ifPresent(laid -> Laying.add(all, laid));
      }
    }
    List<Inline> text = new ArrayList<>();
    all.forEach(laid -> add(text, told(laid)));
    return text;
  }

  /** Whether it has been told how the layers of every seam are laid. */
  private boolean isLaid() {
    List<Work.OfSeam> seams = step.work(Work.OfSeam.class);
    return joins()
        && seams.size() == step.work().size()
        && seams.stream()
            .allMatch(
                work ->
                    !pinned.contains(work.seam())
                        && telling.seam(work.seam()).flatMap(this::laid).isPresent());
  }

  /** How the layers of a seam are laid; nothing where a fold has laid them already. */
  private Optional<Laying> laid(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    Seam.Layer first = join.layers().get(0);
    Seam.Layer second = join.layers().get(join.layers().size() - 1);
    Set<String> here = pieces(first);
    Set<String> there = pieces(second);
    Optional<Seam.Layer> between = between(join);
    if (between.isPresent()) {
      Seam.Layer outside = join.layers().get(join.layers().size() - 1);
      return Optional.of(
          Laying.of("lay.between", pieces(between.get()), pieces(outside))
              .side(edgesOf(between.get()), edgesOf(outside)));
    }
    if (here.equals(there)) {
      if (!Collections.disjoint(here, folded)) {
        return Optional.empty();
      }
      boolean oneCopy = copies(first).equals(copies(second));
      String self = isEnd(first) && isEnd(second) ? "lay.ring" : "lay.self";
      return Optional.of(
          Laying.of(oneCopy ? self : "lay.twins", here, there)
              .side(edgesOf(first), edgesOf(second)));
    }
    if (isPlaced(second) || isPlaced(first)) {
      boolean onSecond = isPlaced(second);
      Seam.Layer on = onSecond ? second : first;
      Seam.Layer laid = onSecond ? first : second;
      return Optional.of(
          Laying.of("lay.placed", pieces(laid), pieces(on)).side(edgesOf(laid), edgesOf(on)));
    }
    boolean band = step.act() instanceof Act.Attach;
    boolean sleeve = step.act() instanceof Act.SetIn;
    Laying laying =
        Laying.of(band ? "lay.band" : sleeve ? "lay.sleeve" : "lay.pair", here, there)
            .side(edgesOf(first), edgesOf(second));
    boolean eased = !band && !sleeve && seam.ease().most() > 0;
    boolean stretched = !band && seam.ease().most() < 0;
    return Optional.of(
        eased ? laying.then("lay.ease") : stretched ? laying.then("lay.stretch") : laying);
  }

  /** The layer that lies between two copies of another piece, where there is one. */
  private static Optional<Seam.Layer> between(Seam.Join join) {
    List<Seam.Layer> layers = join.layers();
    if (layers.size() < 3) {
      return Optional.empty();
    }
    Set<String> outside = pieces(layers.get(layers.size() - 1));
    long copies = layers.stream().filter(layer -> pieces(layer).equals(outside)).count();
    return copies == 2
        ? layers.stream().filter(layer -> !pieces(layer).equals(outside)).findFirst()
        : Optional.empty();
  }

  private List<Inline> told(Laying laid) {
    List<List<Inline>> sides = new ArrayList<>();
    for (Laying.Side side : laid.sides()) {
      sides.add(telling.say("lay.side", Slots.of("edge", side.edge()).and("onto", side.onto())));
    }
    Laying.Side first = laid.sides().get(0);
    List<Inline> text =
        new ArrayList<>(
            telling.say(
                laid.key(),
                Slots.of("first", listedPieces(laid.first()))
                    .and("second", listedPieces(laid.second()))
                    .and("sides", telling.words().listed(sides))
                    .and("edge", first.edge())
                    .and("onto", first.onto())));
    laid.after()
        .ifPresent(
            key -> add(text, telling.say(key, Slots.of("first", listedPieces(laid.first())))));
    return text;
  }

  private boolean isPlaced(Seam.Layer layer) {
    return layer.run().stream()
        .allMatch(
            place ->
                telling
                    .drawn()
                    .piece(place.piece())
                    .filter(piece -> piece.edge(place.edge()).isEmpty())
                    .isPresent());
  }

  /** Whether it is one end of a strip. */
  private static boolean isEnd(Seam.Layer layer) {
    return layer.run().size() == 1
        && layer
            .run()
            .get(0)
            .edge()
            .matches("end|(left|right|upper|lower)_end|end_(left|right|upper|lower)");
  }

  private static Set<String> pieces(Seam.Layer layer) {
    Set<String> pieces = new LinkedHashSet<>();
    layer.run().forEach(place -> pieces.add(place.piece()));
    return pieces;
  }

  private static Set<String> copies(Seam.Layer layer) {
    Set<String> copies = new LinkedHashSet<>();
    layer.run().forEach(place -> copies.add(place.piece() + "." + place.copy()));
    return copies;
  }

  private List<Inline> listedPieces(Set<String> pieces) {
    return telling.words().listed(pieces.stream().map(telling::piece).toList());
  }

  private List<Inline> edgesOf(Seam.Layer layer) {
    List<String> names = layer.run().stream().map(EdgePlace::edge).distinct().toList();
    return isPlaced(layer)
        ? telling
            .words()
            .listed(names.stream().map(name -> List.<Inline>of(telling.name(name))).toList())
        : telling.edges(names);
  }

  // --- the act itself -------------------------------------------------------------------------

  private List<Inline> act() {
    Act act = step.act();
    if (isLaid() && (act instanceof Act.Sew || act instanceof Act.SetIn)) {
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
          step.work(Work.OfSeam.class).stream().anyMatch(seam -> pinned.contains(seam.seam()));
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
          allowance(
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

  private List<Inline> allowance(
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

  // --- how it is stitched ---------------------------------------------------------------------

  private List<Inline> with() {
    List<List<Inline>> choices = new ArrayList<>();
    for (int i = 0; i < step.sewing().choices().size(); i++) {
      choices.add(stitch(telling, step.sewing().choices().get(i), step.id(), i));
    }
    return choices.isEmpty()
        ? List.of()
        : telling.say("with", Slots.of("stitches", telling.words().either(choices)));
  }

  /** That it may be left as it is cut, where that is one of the choices. */
  private List<Inline> raw() {
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

  private List<Inline> distance() {
    Optional<Sewing.Distance> said = step.sewing().distance();
    if (said.isPresent()) {
      String from = said.get().from().name().toLowerCase(Locale.ROOT).replace('_', '-');
      return telling.say(
          "distance." + from,
          Slots.of(
              "distance",
              telling.amount(said.get().amount(), LengthKind.ALLOWANCE, step.id(), "distance")));
    }
    if (!joins() || step.sewing().choices().isEmpty()) {
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

  private List<Inline> rows() {
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

  private List<Inline> needle() {
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
