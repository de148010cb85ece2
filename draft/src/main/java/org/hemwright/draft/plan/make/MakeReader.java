package org.hemwright.draft.plan.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.hemwright.draft.plan.name.Registry;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.name.SizeNames;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.StepClause;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Step;

/** Reads the {@code make} section of a document. */
public final class MakeReader {
  private final Problems problems;
  private final NodeList nodes;
  private final Scope document;
  private final ToIntFunction<Expression> slots;
  private final WorkReader works;
  private final StepReader steps;
  private final Registry<Cord> cords;
  private final Set<String> ids = new LinkedHashSet<>();
  private final Map<String, Name> named = new LinkedHashMap<>();
  private final Map<String, Left> left = new LinkedHashMap<>();

  /** Where an opening is left, and in which views. */
  private record Left(Name name, List<String> views) {}

  /**
   * Reads over what a garment has.
   *
   * @param slots the slot of a number's value
   */
  public MakeReader(
      Garment garment,
      SizeNames sizes,
      Scope document,
      NodeList nodes,
      Problems problems,
      ToIntFunction<Expression> slots) {
    this.problems = problems;
    this.nodes = nodes;
    this.document = document;
    this.slots = slots;
    this.works = new WorkReader(garment, document, problems);
    this.steps = new StepReader(garment, works, sizes, problems, this::amount);
    this.cords = new Registry<>("elastic-or-cord", problems, document);
  }

  /** How the garment is made; {@link Making#NONE} where the document does not say. */
  public Making read(Document text) {
    for (Statement statement : text.statements()) {
      if (statement instanceof Statement.MakeSection make) {
        return read(make);
      }
    }
    return Making.NONE;
  }

  private Making read(Statement.MakeSection make) {
    boolean sleepwear = false;
    Optional<Needle> needle = Optional.empty();
    for (Statement line : make.body()) {
      if (line instanceof Statement.Sleepwear) {
        sleepwear = true;
      } else if (line instanceof Statement.UsualNeedle usual) {
        needle = Optional.of(StitchReader.needle(usual.needle()));
      } else if (line instanceof Statement.UsualStitch usual) {
        steps.usual(usual);
      } else if (line instanceof Statement.CordLine cord) {
        cord(cord);
      } else if (line instanceof Statement.Unread unread) {
        unread.name().ifPresent(name -> document.excuse(name.text()));
      }
    }
    openings(make);
    return new Making(stages(make), cords.all(), sleepwear, needle);
  }

  private void cord(Statement.CordLine cord) {
    about(cord.name().text());
    if (works.cord(cord.name(), cord.piece())) {
      cords.add(
          cord.name(),
          new Cord(
              cord.name().text(),
              cord.piece().text(),
              cord.place(),
              amount(cord.length()),
              cord.freeEnds().map(this::amount),
              cord.toggles(),
              cord.tacked(),
              problems.origin(cord.span())));
    }
  }

  private void about(String subject) {
    nodes.set(new NodeList.Setting(document.sizes(), "", subject, false));
  }

  /** Notes every opening that a step leaves, so that steps before it may name it too. */
  private void openings(Statement.MakeSection make) {
    for (Statement line : make.body()) {
      if (line instanceof Statement.Step step) {
        List<StepClause.Leaving> leaves = StepReader.clauses(step, StepClause.Leaving.class);
        for (StepClause.Leaving leaving : leaves) {
          works.opening(leaving.name().text(), List.of());
        }
        if (!leaves.isEmpty()) {
          List<String> views =
              steps.work(step).map(work -> steps.views(step, work)).orElse(List.of());
          leaves.forEach(leaving -> opening(leaving.name(), views));
        }
      }
    }
  }

  private void opening(Name name, List<String> views) {
    Left before = left.putIfAbsent(name.text(), new Left(name, new ArrayList<>(views)));
    if (before != null) {
      if (before.views().stream().anyMatch(views::contains)) {
        twice(name, before.name());
      }
      before.views().addAll(views);
    }
    works.opening(name.text(), views);
  }

  private void twice(Name name, Name before) {
    problems.add(
        problems
            .at(name.span(), "name-twice", name.text())
            .with("name", name.text())
            .with("line", problems.line(before.span())));
  }

  private List<Making.Stage> stages(Statement.MakeSection make) {
    for (Statement line : make.body()) {
      if (line instanceof Statement.Step step) {
        StepReader.clauses(step, StepClause.As.class).forEach(as -> named(as.name()));
      }
    }
    List<Making.Stage> stages = new ArrayList<>();
    String title = "";
    List<Step> open = new ArrayList<>();
    for (Statement line : make.body()) {
      if (line instanceof Statement.Stage stage) {
        add(stages, title, open);
        title = stage.title();
        open.clear();
      } else if (line instanceof Statement.Step step) {
        about("");
        steps.read(step).map(read -> withId(read, step)).ifPresent(open::add);
      }
    }
    add(stages, title, open);
    return stages;
  }

  private static void add(List<Making.Stage> stages, String title, List<Step> steps) {
    if (!steps.isEmpty()) {
      stages.add(new Making.Stage(title, steps));
    }
  }

  private void named(Name name) {
    Name before = named.putIfAbsent(name.text(), name);
    if (before != null) {
      twice(name, before);
    }
  }

  /** Under the designer's name, or one of act and work that other steps do not disturb. */
  private Step withId(Step step, Statement.Step written) {
    String id =
        StepReader.clauses(written, StepClause.As.class).stream()
            .findFirst()
            .map(as -> as.name().text())
            .orElseGet(() -> free(stem(step)));
    ids.add(id);
    return new Step(
        id,
        step.act(),
        step.work(),
        step.sewing(),
        step.press(),
        step.leaves(),
        step.words(),
        step.views(),
        step.sizes(),
        step.origin());
  }

  private String free(String stem) {
    String id = stem;
    for (int i = 2; ids.contains(id) || named.containsKey(id); i++) {
      id = stem + "_" + i;
    }
    return id;
  }

  private static String stem(Step step) {
    String word = step.act().word().replace(' ', '_');
    if (step.act() instanceof Act.Own own && step.work().isEmpty()) {
      String[] words = own.words().toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+", 5);
      return word + "_" + String.join("_", List.of(words).subList(0, Math.min(3, words.length)));
    }
    return step.work().isEmpty() ? word : word + "_" + step.work().get(0).text().replace('.', '_');
  }

  /** A length that is written, or a number of the document, whose kind is looked over. */
  private Amount amount(Expression expression) {
    if (expression instanceof Expression.Literal literal) {
      return Amount.mm(StitchReader.mm(literal));
    }
    Expression.Named number = (Expression.Named) expression;
    nodes.add(new StepLengthNode(slots.applyAsInt(number)), number.span());
    String piece = number.reference().piece().map(name -> name.text() + ".").orElse("");
    return new Amount.Named(piece + number.reference().name().text());
  }
}
