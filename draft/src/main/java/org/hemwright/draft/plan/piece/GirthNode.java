package org.hemwright.draft.plan.piece;

import java.util.List;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NumberNode;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Vector;

/**
 * The whole distance across a piece at the height of a point, over all cut copies and both halves
 * of a fold piece (handbook section 1: sum of widths at the level over all cut copies).
 *
 * @param outline the slot of the piece's outline
 * @param at the slot of the point
 * @param times how often the drawn width is there when all copies are cut and opened
 */
public record GirthNode(int outline, int at, int times) implements NumberNode {
  private static final Vector RIGHT = new Vector(1, 0);

  @Override
  public int[] inputs() {
    return Node.slots(outline, at);
  }

  @Override
  public Kind typed(Typing typing) {
    return Kind.LENGTH;
  }

  @Override
  public int cost() {
    return 40;
  }

  @Override
  public double value(Values values) {
    DrawnOutline drawn = values.thing(outline, DrawnOutline.class);
    List<Across.Stretch> inside = Across.of(drawn.stitchLine(), values.point(at), RIGHT);
    if (inside.isEmpty()) {
      throw new Failure(
          Cause.of("girth-beside-piece")
              .with("point", values.program().text(at))
              .with("piece", values.program().text(outline)));
    }
    return times * inside.stream().mapToDouble(Across.Stretch::length).sum();
  }
}
