package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Where a seam ends, the cut edges of its layers reach equally far beyond it, so that the maker can
 * lay corner on corner (handbook section 3, "Corner types").
 */
record AllowanceEndsCheck(CutLines cutLines, CheckSettings settings) implements CutLineCheck {
  /** A hem that meets a seam at a smaller sine than this has no end to speak of. */
  private static final double STEEP = 0.1;

  @Override
  public String id() {
    return "allowance-ends";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern, Drawn drawn) {
    List<Finding> findings = new ArrayList<>();
    for (SeamEnd end : SeamEnd.in(sized, TurnedOut.in(sized))) {
      if (isTurnedBack(end.first()) == isTurnedBack(end.second())) {
        judge(end.seam(), end.first(), end.second(), drawn, findings);
      }
    }
    return findings;
  }

  private void judge(
      Seam seam, EdgeTip first, EdgeTip second, Drawn drawn, List<Finding> findings) {
    if (first.isAt(second) || isFold(first.beside()) || isFold(second.beside())) {
      return;
    }
    boolean folded = isFoldedFlat(first) && isFoldedFlat(second);
    OptionalDouble here = folded ? alongSeam(first) : beyond(first, drawn);
    OptionalDouble there = folded ? alongSeam(second) : beyond(second, drawn);
    if (here.isEmpty() || there.isEmpty()) {
      return;
    }
    double apart = Math.abs(here.getAsDouble() - there.getAsDouble());
    if (apart <= settings.sewing().endsWarn()) {
      return;
    }
    findings.add(
        Finding.fail(id(), "seam " + seam.name())
            .with("seam", seam.name())
            .with("first", first.text())
            .with("second", second.text())
            .with("beside", first.beside().text())
            .with("other", second.beside().text())
            .with("here", Argument.mm(here.getAsDouble()))
            .with("there", Argument.mm(there.getAsDouble()))
            .with("by", Argument.mm(apart))
            .values(here.getAsDouble(), there.getAsDouble(), "mm")
            .at(Place.on(seam.origin(), first.piece().name(), first.point()))
            .at(Place.on(second.drawn().origin(), second.piece().name(), second.point()))
            .build()
            .as(apart > settings.sewing().endsFail() ? Status.FAIL : Status.WARN));
  }

  /** Whether the edge beside is turned back; where one is and one is not, it is folded before. */
  private static boolean isTurnedBack(EdgeTip tip) {
    return tip.beside().drawn().allowance() instanceof Allowance.TurnedBack;
  }

  /** Whether the cut line is mirrored over the hem beside, as it is folded. */
  private static boolean isFoldedFlat(EdgeTip tip) {
    String hem = tip.beside().drawn().name();
    return isTurnedBack(tip)
        && tip.piece().corners().stream()
            .filter(corner -> corner.point().isAt(tip.point()))
            .anyMatch(corner -> corner.finish().equals(new CornerFinish.TurnedBack(hem)));
  }

  /**
   * How far the seam is sewn on through the hem beside (mm): there it is the mirror image of
   * itself, and two layers that meet it at angles of 180° together match on the seam, not at the
   * corner.
   */
  private static OptionalDouble alongSeam(EdgeTip tip) {
    double slant = StrictMath.sin(tip.interior());
    return slant > STEEP
        ? OptionalDouble.of(tip.beside().drawn().allowance().width() / slant)
        : OptionalDouble.empty();
  }

  private static boolean isFold(EdgeTip tip) {
    return tip.drawn().onFold() && tip.half() != EdgePlace.Half.WHOLE;
  }

  /** How far the cut edge of a sewn edge reaches beyond the end of its stitch line (mm). */
  private static OptionalDouble beyond(EdgeTip tip, Drawn drawn) {
    Optional<CutLine> cutLine = drawn.cutLine(tip.piece());
    if (cutLine.isEmpty()) {
      return OptionalDouble.empty();
    }
    Path stitch = tip.drawn().path();
    Vector out = tip.last() ? stitch.endDirection() : stitch.startDirection().negated();
    EdgeTip beside = tip.beside();
    double own = end(cutLine.get().edges().get(tip.edge()), tip).minus(tip.point()).dot(out);
    double next = end(cutLine.get().edges().get(beside.edge()), beside).minus(tip.point()).dot(out);
    return OptionalDouble.of(Math.max(own, next));
  }

  private static Point end(Path cut, EdgeTip tip) {
    return tip.last() ? cut.end() : cut.start();
  }
}
