package org.hemwright.draft.plan;

import java.util.List;
import java.util.OptionalInt;
import org.hemwright.draft.plan.node.Program;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.seam.SeamMemory;
import org.hemwright.pattern.traced.TracedInputs;

/**
 * A document read as a whole: every name resolved, every quantity checked, and the nodes that give
 * its values in an order in which each comes after those it reads. It is the same for every size.
 */
public final class Plan {
  private final Document document;
  private final SizeChart chart;
  private final Program program;
  private final PatternFacts facts;
  private final Parts parts;

  /** Remembers answers, never values: which copies meet is the same in nearly every size. */
  private final SeamMemory seamMemory = new SeamMemory();

  Plan(Document document, SizeChart chart, Program program, PatternFacts facts, Parts parts) {
    this.document = document;
    this.chart = chart;
    this.program = program;
    this.facts = facts;
    this.parts = parts;
  }

  /** Plans a document over a chart. What could not be planned is told and left unknown. */
  public static Planned of(Document document, SizeChart chart) {
    return of(document, chart, TracedInputs.NONE);
  }

  /** The same for a document that names drawings and rule tables. */
  public static Planned of(Document document, SizeChart chart, TracedInputs inputs) {
    return new PlanBuilder(document, chart, inputs).build();
  }

  /**
   * Works out everything.
   *
   * @param sizes of the chart, in its order
   * @param dials where dials stand, as far as not where the document has them
   */
  public Evaluation evaluate(List<Size> sizes, DialSettings dials) {
    return Evaluation.of(this, sizes, dials);
  }

  /** Works out everything in every size, dials as the document has them. */
  public Evaluation evaluate() {
    return evaluate(chart.sizes(), DialSettings.NONE);
  }

  /** The literals of the document that values depend on; a literal is known by its index here. */
  public List<Expression.Literal> literals() {
    return List.copyOf(program.literals());
  }

  /** The index of the literal at a place in the text. */
  public OptionalInt literalAt(Span span) {
    for (int i = 0; i < program.literals().size(); i++) {
      if (program.literals().get(i).span().equals(span)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Every point, path, edge and level that has a name, in the order of the document. */
  public List<PlannedThing> things() {
    return parts.things();
  }

  /** The document. */
  public Document document() {
    return document;
  }

  /** The chart. */
  public SizeChart chart() {
    return chart;
  }

  Program program() {
    return program;
  }

  PatternFacts facts() {
    return facts;
  }

  SeamMemory seamMemory() {
    return seamMemory;
  }

  Parts parts() {
    return parts;
  }
}
