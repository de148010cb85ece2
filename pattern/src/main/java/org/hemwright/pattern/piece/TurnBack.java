package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Tolerance;

/**
 * Draws the end of a turned-back allowance at one corner: the neighbour's cut line, folded out over
 * the edge, so that the allowance lies flat on the piece once it is turned (handbook section 3).
 *
 * <p>A place on the piece at depth <i>u</i> inside the edge, square to it, comes to lie at the
 * width <i>u</i> outside it. On a straight edge that is the mirror image; on a curved one the cloth
 * is eased or stretched along the edge as the maker turns it. Beyond its corners the edge runs on
 * straight. In a hem turned twice the turn-under is folded out once more, over the hem's own fold
 * line.
 */
final class TurnBack {
  private static final int STEPS = 8;
  private static final int CHORDS = 60;

  /**
   * The end of the allowance.
   *
   * @param onHem where the hem's cut line begins, as a place of its arm
   * @param fromNeighbour the way there from the neighbour's cut line
   */
  record End(double onHem, List<Curve> fromNeighbour) {}

  private final AllowanceArm hem;
  private final AllowanceArm neighbour;
  private final double onNeighbour;
  private final List<Double> folds;
  private final AllowanceFindings findings;

  private TurnBack(
      AllowanceArm hem, AllowanceArm neighbour, double onNeighbour, AllowanceFindings findings) {
    this.hem = hem;
    this.neighbour = neighbour;
    this.onNeighbour = onNeighbour;
    this.findings = findings;
    this.folds =
        hem.edge().allowance() instanceof Allowance.TurnedBack turned
            ? turned.folds()
            : List.of(hem.width());
  }

  /**
   * The end at a corner where the neighbour's cut line meets the edge, run on, at {@code
   * onNeighbour}.
   */
  static TurnBack of(
      AllowanceArm hem, AllowanceArm neighbour, double onNeighbour, AllowanceFindings findings) {
    return new TurnBack(hem, neighbour, onNeighbour, findings);
  }

  /** The end, absent where the piece cannot be folded so; then a finding says why. */
  Optional<End> end() {
    double depth = folds.get(0);
    double under = folds.size() > 1 ? folds.get(1) : 0;
    if (under > depth) {
      findings.turnUnderTooDeep(hem.edge(), depth, under);
      return Optional.empty();
    }
    try {
      return end(depth, under);
    } catch (FoldMap.TooSharp tooSharp) {
      findings.hemTooCurved(hem.edge(), depth);
      return Optional.empty();
    }
  }

  private Optional<End> end(double depth, double under) {
    Path away = away(depth);
    FoldMap map = FoldMap.of(hem, neighbour.width() + hem.width(), away.start());
    OptionalDouble reached = along(away, map, depth);
    if (reached.isEmpty()) {
      findings.hemWithoutSide(hem.edge(), neighbour.edge(), depth);
      return Optional.empty();
    }
    double turned = reached.getAsDouble();
    double stitched = neighbour.cut().length() - Math.max(0, onNeighbour);
    if (turned > stitched + Math.max(0, -onNeighbour) + Tolerance.SAME_POINT) {
      findings.hemTooDeep(hem.edge(), neighbour.edge(), depth);
    }
    List<Curve> way = new ArrayList<>(map.foldedOut(away.part(0, turned)));
    if (under > 0) {
      double from = under < depth ? along(away, map, depth - under).orElse(0) : 0;
      way.addAll(map.foldedOutAgain(away.part(from, turned).reversed(), depth));
    }
    double onHem = map.alongHem(way.get(way.size() - 1).end());
    return Optional.of(new End(onHem, map.endingAt(way, hem.at(onHem))));
  }

  /** The neighbour's cut line from the fold on, away from the corner and as far straight on. */
  private Path away(double depth) {
    Path cut = neighbour.cut();
    List<Curve> run = new ArrayList<>();
    if (onNeighbour < -Tolerance.NO_LENGTH) {
      run.add(new Line(neighbour.at(onNeighbour), cut.start()));
    }
    run.addAll(cut.part(Math.max(0, onNeighbour), cut.length()).curves());
    run.add(new Line(cut.end(), cut.end().plus(cut.endDirection().times(2 * depth))));
    return Path.of(run);
  }

  /** The first length along the neighbour's cut line at which it lies so deep inside the fold. */
  private static OptionalDouble along(Path away, FoldMap map, double depth) {
    double near = 0;
    double nearDepth = map.depth(away.start());
    while (near < away.length()) {
      double far = Math.min(away.length(), near + depth / STEPS);
      double farDepth = map.depth(away.at(far).point());
      if (farDepth >= depth) {
        return OptionalDouble.of(
            between(away, map, depth, near, nearDepth - depth, far, farDepth - depth));
      }
      near = far;
      nearDepth = farDepth;
    }
    return OptionalDouble.empty();
  }

  /** Chords, with the end that stays put losing half its weight (the Illinois rule). */
  private static double between(
      Path away, FoldMap map, double depth, double low, double lowOver, double high, double over) {
    double from = low;
    double fromOver = lowOver;
    double to = high;
    double toOver = over;
    for (int i = 0; i < CHORDS && to - from > Tolerance.PLACE; i++) {
      double at = (from * toOver - to * fromOver) / (toOver - fromOver);
      double atOver = map.depth(away.at(at).point()) - depth;
      if (Math.abs(atOver) <= Tolerance.PLACE) {
        return at;
      }
      if (atOver < 0) {
        from = at;
        fromOver = atOver;
        toOver /= 2;
      } else {
        to = at;
        toOver = atOver;
        fromOver /= 2;
      }
    }
    return to;
  }
}
