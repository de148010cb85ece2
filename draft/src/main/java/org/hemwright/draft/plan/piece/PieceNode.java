package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * The piece itself. It needs its outline and its allowances; a notch, a mark or a grain arrow that
 * could not be worked out is left out, and a finding says why.
 *
 * @param outline the slot of the outline that has been looked over
 * @param edges in the designer's order
 * @param corners how corners are finished
 * @param notches the slots of notches, on this piece and on seams
 * @param grain the slot of the grain arrow, or {@link Node#NONE}
 * @param marks the slots of marks
 * @param openings the names of the edges that go over the body
 * @param bodyOpenings the slots of what is said of them
 * @param stack the slot of the stack point, or NONE for the usual one
 */
public record PieceNode(
    PieceCard card,
    int outline,
    List<PieceEdge> edges,
    CornerRules corners,
    List<Integer> notches,
    int grain,
    List<Integer> marks,
    List<String> openings,
    List<Integer> bodyOpenings,
    int stack)
    implements DrawnNode<Piece>, ChoiceNode {
  public PieceNode {
    edges = List.copyOf(edges);
    notches = List.copyOf(notches);
    marks = List.copyOf(marks);
    openings = List.copyOf(openings);
    bodyOpenings = List.copyOf(bodyOpenings);
  }

  /**
   * An edge of the piece.
   *
   * @param allowance the slot of what is added outside it
   */
  public record PieceEdge(String name, boolean onFold, int allowance, Origin origin) {}

  @Override
  public int[] inputs() {
    IntStream.Builder slots = IntStream.builder();
    for (int slot : Node.slots(outline, grain, stack)) {
      slots.add(slot);
    }
    edges.forEach(edge -> slots.add(edge.allowance));
    notches.forEach(slots::add);
    marks.forEach(slots::add);
    bodyOpenings.forEach(slots::add);
    return slots.build().distinct().toArray();
  }

  @Override
  public int cost() {
    return 40;
  }

  @Override
  public Piece value(Values values) {
    values.need(outline);
    edges.forEach(edge -> values.need(edge.allowance));
    DrawnOutline drawn = values.thing(outline, DrawnOutline.class);
    List<Edge> round = new ArrayList<>();
    for (DrawnEdge edge : drawn.edges()) {
      PieceEdge form = edges.get(edge.index());
      round.add(
          new Edge(
              form.name,
              edge.path(),
              form.onFold,
              values.thing(form.allowance, Allowance.class),
              edge.reversed(),
              form.origin));
    }
    List<Intake> intakes = new ArrayList<>();
    drawn.edges().forEach(edge -> intakes.addAll(edge.intakes()));
    return new Piece(
        card,
        drawn.stitchLine(),
        round,
        corners(round),
        notches(values, round, drawn),
        grain != Node.NONE && values.has(grain)
            ? Optional.of(values.thing(grain, Grain.class))
            : Optional.empty(),
        marks(values),
        openings,
        stackPoint(values, drawn),
        intakes,
        bodyOpenings.stream()
            .filter(values::has)
            .map(slot -> values.thing(slot, BodyOpening.class))
            .toList());
  }

  private List<Corner> corners(List<Edge> round) {
    List<Corner> turns = new ArrayList<>();
    for (int i = 0; i < round.size(); i++) {
      Edge before = round.get((i + round.size() - 1) % round.size());
      Edge after = round.get(i);
      turns.add(
          new Corner(
              before.name(), after.name(), after.path().start(), corners.finish(before, after)));
    }
    return turns;
  }

  private List<Notch> notches(Values values, List<Edge> round, DrawnOutline drawn) {
    List<Notch> cut = new ArrayList<>();
    for (int slot : notches) {
      if (!values.has(slot)) {
        continue;
      }
      for (EdgeNotches each : values.thing(slot, EdgeNotches.Several.class).all()) {
        if (each.piece().equals(card.name())) {
          for (Edge edge : round) {
            if (edge.name().equals(each.edge())) {
              addAll(cut, each, edge);
            }
          }
        }
      }
    }
    cut.addAll(IntakeMarks.notches(drawn.edges()));
    return cut;
  }

  private static void addAll(List<Notch> cut, EdgeNotches each, Edge edge) {
    double length = edge.path().length();
    for (double hers : each.distances()) {
      double distance = edge.reversed() ? length - hers : hers;
      double on = Math.max(0, Math.min(length, distance));
      cut.add(new Notch(edge.name(), on, each.kind(), each.name(), each.origin()));
    }
  }

  private List<Mark> marks(Values values) {
    List<Mark> drawn = new ArrayList<>();
    for (int slot : marks) {
      if (values.has(slot)) {
        drawn.add(values.thing(slot, Mark.class));
      }
    }
    drawn.addAll(IntakeMarks.marks(values.thing(outline, DrawnOutline.class)));
    return drawn;
  }

  private Point stackPoint(Values values, DrawnOutline drawn) {
    if (stack != Node.NONE && values.has(stack)) {
      return values.point(stack);
    }
    for (DrawnEdge edge : drawn.edges()) {
      if (edges.get(edge.index()).onFold) {
        return edge.reversed() ? edge.path().end() : edge.path().start();
      }
    }
    return drawn.edges().get(0).path().start();
  }
}
