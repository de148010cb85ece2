package org.hemwright.checks;

import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/** What the steps of making do with an edge that no seam takes. */
final class Finished {
  private Finished() {}

  /**
   * Whether a step binds an edge, declares that it stays raw, or sews or hems it in the designer's
   * own words, in some view.
   */
  static boolean apart(Piece piece, Edge edge, SizedPattern sized, Pattern pattern) {
    return pattern.views().stream()
        .flatMap(view -> pattern.making().steps(view.name(), sized.size()).stream())
        .anyMatch(
            step ->
                step.act() instanceof Act.Own own
                    ? own.deals().stream()
                        .filter(
                            deal ->
                                deal.how() == Act.Dealing.How.SEWING
                                    || deal.how() == Act.Dealing.How.HEMMING)
                        .anyMatch(deal -> isOn(deal.work(), piece, edge))
                    : (step.act() instanceof Act.Bind || step.act() instanceof Act.LeaveRaw)
                        && step.work().stream().anyMatch(work -> isOn(work, piece, edge)));
  }

  /** Whether a step of a view deals with an edge by itself. */
  static boolean inView(View view, Piece piece, Edge edge, SizedPattern sized, Pattern pattern) {
    return pattern.making().steps(view.name(), sized.size()).stream()
        .anyMatch(
            step ->
                step.act() instanceof Act.Own own
                    ? own.deals().stream().anyMatch(deal -> isOn(deal.work(), piece, edge))
                    : (step.act() instanceof Act.Finish
                            || step.act() instanceof Act.Bind
                            || step.act() instanceof Act.Hem
                            || step.act() instanceof Act.LeaveRaw)
                        && step.work().stream().anyMatch(work -> isOn(work, piece, edge)));
  }

  private static boolean isOn(Work work, Piece piece, Edge edge) {
    return work instanceof Work.OfEdge on
        && on.piece().equals(piece.name())
        && on.edge().equals(edge.name());
  }
}
