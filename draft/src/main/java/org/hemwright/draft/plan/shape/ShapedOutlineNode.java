package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.piece.MovedPart;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;

/**
 * The outline of a piece after its darts, cuts, pleats and gathers.
 *
 * @param drafted the slot of the outline as drafted
 * @param fold the fold edge's place in the designer's list, or {@link Node#NONE}; it stays where it
 *     is, and without one her first edge does
 * @param names the names of the edges in her list
 * @param forms in the order of the document
 */
public record ShapedOutlineNode(int drafted, int fold, List<String> names, List<ShapeForm> forms)
    implements DrawnNode<DrawnOutline> {
  public ShapedOutlineNode {
    names = List.copyOf(names);
    forms = List.copyOf(forms);
  }

  @Override
  public int[] inputs() {
    IntStream of = forms.stream().flatMapToInt(form -> IntStream.of(form.inputs()));
    return IntStream.concat(IntStream.of(drafted), of).distinct().toArray();
  }

  @Override
  public void check(Typing typing) {
    forms.forEach(form -> form.check(typing));
  }

  @Override
  public int cost() {
    return 200 * forms.size();
  }

  @Override
  public DrawnOutline value(Values values) {
    DrawnOutline outline = values.thing(drafted, DrawnOutline.class);
    values.spend(20L * outline.stitchLine().path().curves().size() * forms.size());
    Shaping shaping = new Shaping(values, outline, fold == Node.NONE ? 0 : fold);
    for (ShapeForm form : forms) {
      told(form, () -> shaping.add(form));
    }
    DrawnOutline shaped = shaped(outline, shaping);
    for (ShapeForm form : forms) {
      if (form instanceof GatherForm gathers) {
        List<DrawnOutline> result = new ArrayList<>();
        DrawnOutline before = shaped;
        told(form, () -> result.add(gathered(gathers, values, before)));
        shaped = result.get(0);
      }
    }
    return shaped;
  }

  /** Lets a form fail at its own line. */
  private static void told(ShapeForm form, Runnable work) {
    try {
      work.run();
    } catch (Failure failure) {
      throw new Failure(
          failure.causes().stream()
              .map(cause -> cause.span().isPresent() ? cause : cause.at(form.span()))
              .toList());
    }
  }

  private DrawnOutline gathered(GatherForm gathers, Values values, DrawnOutline shaped) {
    List<DrawnEdge> edges = new ArrayList<>();
    for (DrawnEdge edge : shaped.edges()) {
      edges.add(edge.index() == gathers.edge() ? gathers.on(values, edge, shaped) : edge);
    }
    return new DrawnOutline(shaped.stitchLine(), edges, shaped.moved());
  }

  private DrawnOutline shaped(DrawnOutline outline, Shaping shaping) {
    List<Joint> joints = shaping.joints();
    if (joints.isEmpty()) {
      return outline;
    }
    List<Region> regions = shaping.regions();
    List<ShapedEdge.Drawn> drawn = new ArrayList<>();
    for (DrawnEdge edge : outline.edges()) {
      List<Joint> own = new ArrayList<>(joints);
      own.removeIf(joint -> joint.edge() != edge.index());
      own.sort(Comparator.comparingDouble(Joint::at));
      drawn.add(drawn(edge, own, movedAt(shaping.startOf(edge.index()), regions)));
    }
    return joined(outline, drawn, parts(shaping, regions));
  }

  private ShapedEdge.Drawn drawn(DrawnEdge edge, List<Joint> joints, Motion start) {
    try {
      return ShapedEdge.of(names.get(edge.index()), edge.path(), joints, start);
    } catch (GeometryProblem problem) {
      Cause cause =
          Cause.of("edge-not-trued")
              .with("edge", names.get(edge.index()))
              .with("reason", problem.reason());
      throw new Failure(joints.isEmpty() ? cause : cause.at(joints.get(0).span()));
    }
  }

  /** How the piece has moved just after a place round the outline. */
  private static Motion movedAt(double round, List<Region> regions) {
    Motion motion = Motion.identity();
    for (Region region : regions) {
      if (region.holds(round)) {
        motion = region.motion().then(motion);
      }
    }
    return motion;
  }

  private static List<MovedPart> parts(Shaping shaping, List<Region> regions) {
    List<MovedPart> parts = new ArrayList<>();
    Path round = shaping.round();
    regions.forEach(region -> parts.add(region.part(round)));
    return parts;
  }

  /** Takes each edge out of the whole, so that its ends are the outline's corners. */
  private static DrawnOutline joined(
      DrawnOutline outline, List<ShapedEdge.Drawn> drawn, List<MovedPart> moved) {
    List<Curve> curves = new ArrayList<>();
    drawn.forEach(edge -> curves.addAll(edge.path().curves()));
    Path round = Path.of(curves);
    List<DrawnEdge> edges = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < drawn.size(); i++) {
      DrawnEdge before = outline.edges().get(i);
      ShapedEdge.Drawn now = drawn.get(i);
      List<Curve> own = round.curves().subList(from, from + now.path().curves().size());
      from += own.size();
      Path welded = own.equals(now.path().curves()) ? now.path() : Path.of(own);
      edges.add(
          new DrawnEdge(
              before.index(),
              welded,
              before.reversed(),
              now.intakes(),
              now.closed(),
              now.opened()));
    }
    return new DrawnOutline(Outline.of(round), edges, moved);
  }
}
