package org.hemwright.draft.plan.make;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hemwright.draft.plan.name.SizeNames;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.StepClause;
import org.hemwright.draft.syntax.StepRule;
import org.hemwright.draft.syntax.WorkName;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;

/**
 * Reads one step; what it names and the pattern has not is told, and the step left out. Its parts,
 * what is done, to what, with which stitches, pressed which way, are read in one class since each
 * is told against the others.
 */
final class StepReader {
  private static final List<String> TWO_WORDS =
      List.of(
          "set in",
          "hand sew",
          "leave raw",
          "form casing",
          "insert zip",
          "turn out",
          "try on",
          "bar tack");

  private final Garment garment;
  private final WorkReader works;
  private final SizeNames sizes;
  private final Problems problems;
  private final Function<Expression, Amount> amounts;
  private List<Stitch> usual = List.of();
  private Optional<Sewing.Raw> usualRaw = Optional.empty();

  StepReader(
      Garment garment,
      WorkReader works,
      SizeNames sizes,
      Problems problems,
      Function<Expression, Amount> amounts) {
    this.garment = garment;
    this.works = works;
    this.sizes = sizes;
    this.problems = problems;
    this.amounts = amounts;
  }

  /** The stitch of steps that name none. */
  void usual(Statement.UsualStitch said) {
    usual = StitchReader.stitches(said.stitches());
    usualRaw = StitchReader.raw(said.stitches());
    if (usualRaw.isPresent()) {
      problems.add(problems.at(said.span(), "raw-elsewhere"));
    }
  }

  /** What a step is done to, in order; empty where something of it is not there. */
  Optional<List<Work>> work(Statement.Step step) {
    List<Work> found = new ArrayList<>();
    boolean all = true;
    Optional<Name> held = held(step.rule());
    if (held.isPresent() && !(step.rule() instanceof StepRule.FormCasing)) {
      Optional<Work> work = works.held(held.get());
      all &= work.isPresent();
      work.ifPresent(found::add);
    }
    for (WorkName name : step.work()) {
      all &= add(name, ActReader.takes(step.rule()), word(step), found);
    }
    for (StepClause.Dealing dealing : clauses(step, StepClause.Dealing.class)) {
      for (WorkName name : dealing.work()) {
        all &= add(name, ActReader.deals(dealing.how()), lower(dealing.how()), found);
      }
    }
    return all ? Optional.of(found) : Optional.empty();
  }

  private static Optional<Name> held(StepRule rule) {
    if (rule instanceof StepRule.ThreadThrough thread) {
      return Optional.of(thread.held());
    } else if (rule instanceof StepRule.LayIn lay) {
      return Optional.of(lay.held());
    } else if (rule instanceof StepRule.Apply apply) {
      return Optional.of(apply.held());
    } else if (rule instanceof StepRule.JoinEnds join) {
      return Optional.of(join.held());
    } else if (rule instanceof StepRule.FormCasing casing) {
      return Optional.of(casing.held());
    }
    return Optional.empty();
  }

  private boolean add(WorkName name, Set<ActReader.Takes> takes, String word, List<Work> found) {
    Optional<Work> work = works.find(name);
    if (work.isEmpty()) {
      return false;
    }
    ActReader.Takes kind = ActReader.Takes.of(work.get());
    if (!takes.contains(kind)) {
      problems.add(
          problems
              .at(name.span(), "step-work", name.text())
              .with("word", word)
              .with(
                  "wanted", new Argument.AnyOf(takes.stream().map(ActReader.Takes::words).toList()))
              .with("name", name.text())
              .with("found", kind.words()));
      return false;
    }
    found.add(work.get());
    return true;
  }

  /** The names of the views in which a step with this work can be done. */
  List<String> views(Statement.Step step, List<Work> work) {
    List<String> all = garment.views().stream().map(View::name).toList();
    if (work.isEmpty()) {
      return all;
    }
    boolean together =
        step.rule() instanceof StepRule.Attach
            || step.rule() instanceof StepRule.Own
            || held(step.rule()).isPresent()
            || !clauses(step, StepClause.OnePass.class).isEmpty();
    return all.stream()
        .filter(
            view ->
                together
                    ? work.stream().allMatch(each -> works.views(each).contains(view))
                    : work.stream().anyMatch(each -> works.views(each).contains(view)))
        .toList();
  }

  /** The step, under an id that is given later. */
  Optional<Step> read(Statement.Step step) {
    Optional<List<Work>> work = work(step);
    Optional<Act> act = work.isEmpty() ? Optional.empty() : act(step, work.get());
    new ClauseRules(problems, word(step)).check(step);
    Optional<StepRule.PressRule> pressed = pressRule(step);
    Optional<PressDirection> press = pressed.flatMap(rule -> press(rule, work.orElse(List.of())));
    Optional<Sewing> sewing = sewing(step);
    Optional<List<String>> views = work.flatMap(found -> viewsSaid(step, found));
    if (work.isEmpty()
        || act.isEmpty()
        || pressed.isPresent() != press.isPresent()
        || sewing.isEmpty()
        || views.isEmpty()) {
      return Optional.empty();
    }
    List<Step.Opening> leaves =
        clauses(step, StepClause.Leaving.class).stream()
            .map(
                left ->
                    new Step.Opening(
                        left.name().text(), amounts.apply(left.length()), left.where()))
            .toList();
    Optional<SizeRange> range =
        clauses(step, StepClause.InSizes.class).stream()
            .findFirst()
            .flatMap(said -> sizes.find(said.sizes()));
    return Optional.of(
        new Step(
            "step",
            act.get(),
            work.get(),
            sewing.get(),
            press,
            leaves,
            words(step),
            views.get(),
            range,
            problems.origin(step.span())));
  }

  private Step.Words words(Statement.Step step) {
    List<String> notes = new ArrayList<>();
    if (step.rule() instanceof StepRule.Handle handle) {
      handle.words().ifPresent(notes::add);
    }
    clauses(step, StepClause.Note.class).forEach(note -> notes.add(note.words()));
    return new Step.Words(
        notes, clauses(step, StepClause.See.class).stream().map(StepClause.See::words).toList());
  }

  private Optional<List<String>> viewsSaid(Statement.Step step, List<Work> work) {
    List<String> possible = views(step, work);
    List<StepClause.InView> said = clauses(step, StepClause.InView.class);
    if (possible.isEmpty()) {
      if (work.stream().noneMatch(each -> works.views(each).isEmpty())
          || work.stream().noneMatch(Work.OfOpening.class::isInstance)) {
        Set<String> pieces = new LinkedHashSet<>();
        work.forEach(each -> pieces.addAll(works.pieces(each)));
        problems.add(
            problems
                .at(step.span(), "step-in-no-view")
                .with("pieces", Argument.of(List.copyOf(pieces))));
      }
      return Optional.empty();
    }
    if (said.isEmpty()) {
      return Optional.of(possible);
    }
    List<String> known = garment.views().stream().map(View::name).toList();
    List<String> wanted = new ArrayList<>();
    for (Name view : said.get(0).views()) {
      if (!known.contains(view.text())) {
        works.tell(view, "view", known);
      } else if (!possible.contains(view.text())) {
        problems.add(problems.at(view.span(), "step-not-in-view").with("view", view.text()));
      } else {
        wanted.add(view.text());
      }
    }
    return wanted.isEmpty() ? Optional.empty() : Optional.of(wanted);
  }

  // --- stitching --------------------------------------------------------------------------------

  private Optional<Sewing> sewing(Statement.Step step) {
    List<Stitch> choices = StitchReader.stitches(step.stitches());
    Optional<Sewing.Raw> raw = StitchReader.raw(step.stitches());
    if (choices.isEmpty() && raw.isEmpty()) {
      choices = ActReader.ownStitch(step.rule()).map(List::of).orElse(List.of());
    }
    if (choices.isEmpty() && ActReader.stitches(step.rule())) {
      choices = step.rule() instanceof StepRule.Finish ? List.of() : usual;
      if (choices.isEmpty()) {
        Finding.Builder missing =
            problems.at(step.span(), "stitch-missing").with("word", word(step));
        problems.add(step.rule() instanceof StepRule.Finish ? missing.with("edges", "") : missing);
        return Optional.empty();
      }
    }
    if (raw.isPresent() && !(step.rule() instanceof StepRule.Finish)) {
      problems.add(problems.at(step.span(), "raw-elsewhere"));
    }
    Optional<StepClause.Rows> rows = clauses(step, StepClause.Rows.class).stream().findFirst();
    Optional<StepClause.Distance> distance =
        clauses(step, StepClause.Distance.class).stream().findFirst();
    Optional<Needle> needle =
        clauses(step, StepClause.WithNeedle.class).stream()
            .map(with -> StitchReader.needle(with.needle()))
            .findFirst();
    return Optional.of(
        new Sewing(
            choices,
            raw,
            needle,
            rows.map(StepClause.Rows::count).orElse(1),
            rows.flatMap(StepClause.Rows::apart).map(amounts),
            distance.map(said -> new Sewing.Distance(amounts.apply(said.amount()), said.from()))));
  }

  // --- acts -------------------------------------------------------------------------------------

  private Optional<Act> act(Statement.Step step, List<Work> work) {
    StepRule rule = step.rule();
    if (rule instanceof StepRule.Sew) {
      return Optional.of(new Act.Sew(!clauses(step, StepClause.OnePass.class).isEmpty()));
    } else if (rule instanceof StepRule.Attach attach) {
      return Optional.of(new Act.Attach(attach.parts()));
    } else if (rule instanceof StepRule.SetIn) {
      return Optional.of(new Act.SetIn());
    } else if (rule instanceof StepRule.HandSew) {
      return Optional.of(new Act.HandSew());
    } else if (rule instanceof StepRule.Finish finish) {
      boolean seam = work.stream().anyMatch(Work.OfSeam.class::isInstance);
      return Optional.of(new Act.Finish(finish.together().orElse(seam)));
    } else if (rule instanceof StepRule.LeaveRaw raw) {
      return Optional.of(new Act.LeaveRaw(raw.why()));
    } else if (rule instanceof StepRule.Hem) {
      return Optional.of(new Act.Hem());
    } else if (rule instanceof StepRule.Bind bind) {
      return Optional.of(new Act.Bind(bind.tape().map(amounts)));
    } else if (rule instanceof StepRule.Stitching stitching) {
      return Optional.of(new Act.Stitching(stitching.line()));
    } else if (rule instanceof StepRule.Press) {
      return Optional.of(new Act.Press());
    } else if (rule instanceof StepRule.Handle handle) {
      return Optional.of(new Act.Handle(handle.how()));
    }
    return holding(step, rule);
  }

  private Optional<Act> holding(Statement.Step step, StepRule rule) {
    if (rule instanceof StepRule.FormCasing casing) {
      return works.held(casing.held()).map(held -> new Act.FormCasing(held.text()));
    } else if (rule instanceof StepRule.ThreadThrough thread) {
      return works
          .opening(thread.opening())
          .map(opening -> new Act.ThreadThrough(opening.opening()));
    } else if (rule instanceof StepRule.LayIn) {
      return Optional.of(new Act.LayIn());
    } else if (rule instanceof StepRule.Apply apply) {
      return Optional.of(new Act.Apply(apply.parts()));
    } else if (rule instanceof StepRule.JoinEnds join) {
      return Optional.of(new Act.JoinEnds(join.overlapped()));
    } else if (rule instanceof StepRule.InsertZip) {
      return Optional.of(new Act.InsertZip(sold(step)));
    } else if (rule instanceof StepRule.Close) {
      return Optional.of(new Act.Close());
    } else if (rule instanceof StepRule.Fold fold) {
      return fold(step, fold);
    } else if (rule instanceof StepRule.CutInto cut) {
      return Optional.of(new Act.CutInto(cut.how(), cut.to().map(amounts)));
    } else if (rule instanceof StepRule.Fuse fuse) {
      return fuse(fuse);
    } else if (rule instanceof StepRule.Fasten fasten) {
      return Optional.of(
          new Act.Fasten(fasten.what(), fasten.count(), amounts.apply(fasten.size())));
    }
    return own(step, (StepRule.Own) rule);
  }

  private static List<Double> sold(Statement.Step step) {
    return clauses(step, StepClause.Sold.class).stream()
        .flatMap(sold -> sold.lengths().stream())
        .map(StitchReader::mm)
        .sorted()
        .distinct()
        .toList();
  }

  private Optional<Act> fold(Statement.Step step, StepRule.Fold fold) {
    if (fold.along().isPresent()) {
      Name line = fold.along().get();
      String piece = step.work().get(0).parts().get(0).text();
      List<String> marks = garment.piece(piece).orElseThrow().marks();
      if (!marks.contains(line.text())) {
        Unknown.tell(problems, line, "line-on-piece", piece, marks);
        return Optional.empty();
      }
    }
    return Optional.of(new Act.Fold(fold.along().map(Name::text), fold.wrongSidesTogether()));
  }

  private Optional<Act> fuse(StepRule.Fuse fuse) {
    if (fuse.fabric().filter(name -> !garment.fabrics().contains(name.text())).isPresent()) {
      works.tell(fuse.fabric().get(), "fabric", garment.fabrics());
      return Optional.empty();
    }
    return Optional.of(new Act.Fuse(fuse.fabric().map(Name::text)));
  }

  private Optional<Act> own(Statement.Step step, StepRule.Own own) {
    List<Act.Dealing> deals = new ArrayList<>();
    for (StepClause.Dealing dealing : clauses(step, StepClause.Dealing.class)) {
      for (WorkName name : dealing.work()) {
        works.find(name).ifPresent(work -> deals.add(new Act.Dealing(dealing.how(), work)));
      }
    }
    return Optional.of(new Act.Own(own.words(), deals));
  }

  // --- pressing ---------------------------------------------------------------------------------

  private static Optional<StepRule.PressRule> pressRule(Statement.Step step) {
    return step.rule() instanceof StepRule.Press press
        ? Optional.of(press.way())
        : clauses(step, StepClause.Pressed.class).stream().map(StepClause.Pressed::way).findFirst();
  }

  private Optional<PressDirection> press(StepRule.PressRule rule, List<Work> work) {
    return rule instanceof StepRule.PressRule.Way way
        ? Optional.of(way(way.word()))
        : toward((StepRule.PressRule.Toward) rule, work);
  }

  private static PressDirection way(String word) {
    return switch (word) {
      case "open" -> new PressDirection.Open();
      case "up" -> new PressDirection.Up();
      case "down" -> new PressDirection.Down();
      default -> new PressDirection.Flat();
    };
  }

  private Optional<PressDirection> toward(StepRule.PressRule.Toward toward, List<Work> work) {
    PressDirection.Side side =
        toward.seenFromRight() ? PressDirection.Side.RIGHT : PressDirection.Side.WRONG;
    Set<String> pieces = new LinkedHashSet<>();
    work.forEach(each -> pieces.addAll(works.pieces(each)));
    List<Name> parts = toward.piece().parts();
    String first = parts.get(0).text();
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    List<String> known = new ArrayList<>(pieces);
    for (String piece : pieces) {
      List<String> copies = garment.piece(piece).map(Garment.PieceNames::copies).orElse(List.of());
      if (parts.size() == 1 && !pieces.contains(first) && copies.contains(first)) {
        return Optional.of(new PressDirection.Toward(piece, Optional.of(first), side));
      }
      if (parts.size() == 2 && piece.equals(first) && copies.contains(parts.get(1).text())) {
        return Optional.of(
            new PressDirection.Toward(piece, Optional.of(parts.get(1).text()), side));
      }
      copies.stream().filter(copy -> Character.isLetter(copy.charAt(0))).forEach(known::add);
    }
    if (parts.size() == 1 && pieces.contains(first)) {
      return Optional.of(new PressDirection.Toward(first, Optional.empty(), side));
    }
    works.tell(new Name(toward.piece().text(), toward.piece().span()), "piece-of-the-seam", known);
    return Optional.empty();
  }

  // --- words ------------------------------------------------------------------------------------

  static <C extends StepClause> List<C> clauses(Statement.Step step, Class<C> kind) {
    return step.clauses().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** The words that the step starts with, before what is its own. */
  private String word(Statement.Step step) {
    String text = problems.text(step.span());
    for (String two : TWO_WORDS) {
      if (text.startsWith(two)) {
        return two;
      }
    }
    int end = text.indexOf(' ');
    return end < 0 ? text : text.substring(0, end);
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(java.util.Locale.ROOT);
  }
}
