package org.hemwright.draft.plan.shape;

import java.util.Optional;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.syntax.Span;

/** One line of a piece that shapes its outline, with the slots that it reads. */
public sealed interface ShapeForm permits DartForm, DartMove, CutForm, PleatForm, GatherForm {
  /** The slots it reads. */
  int[] inputs();

  /** Says whether its quantities fit. */
  void check(Typing typing);

  /** The name of the dart that it makes or adds to, if it does. */
  default Optional<String> dartNamed() {
    return Optional.empty();
  }

  /** Where it stands in the text. */
  Span span();

  /** The slots that are there, of some. */
  static int[] with(int[] some, int... more) {
    int[] there = Node.slots(more);
    int[] all = new int[some.length + there.length];
    System.arraycopy(some, 0, all, 0, some.length);
    System.arraycopy(there, 0, all, some.length, there.length);
    return all;
  }
}
