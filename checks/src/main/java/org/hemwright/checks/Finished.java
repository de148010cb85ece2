package org.hemwright.checks;

import java.util.stream.Stream;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/** What the steps of making do with an edge that no seam takes. */
final class Finished {
  private Finished() {}

  /** Whether a step binds an edge, or declares that it stays raw, in some view. */
  static boolean apart(Piece piece, Edge edge, SizedPattern sized, Pattern pattern) {
    return pattern.views().stream()
        .flatMap(view -> steps(view, piece, edge, sized, pattern))
        .map(Step::act)
        .anyMatch(act -> act instanceof Act.Bind || act instanceof Act.LeaveRaw);
  }

  /** Whether a step of a view deals with an edge by itself. */
  static boolean inView(View view, Piece piece, Edge edge, SizedPattern sized, Pattern pattern) {
    return steps(view, piece, edge, sized, pattern)
        .map(Step::act)
        .anyMatch(
            act ->
                act instanceof Act.Finish
                    || act instanceof Act.Bind
                    || act instanceof Act.Hem
                    || act instanceof Act.LeaveRaw);
  }

  private static Stream<Step> steps(
      View view, Piece piece, Edge edge, SizedPattern sized, Pattern pattern) {
    return pattern.making().steps(view.name(), sized.size()).stream()
        .filter(
            step ->
                step.work(Work.OfEdge.class).stream()
                    .anyMatch(
                        work ->
                            work.piece().equals(piece.name()) && work.edge().equals(edge.name())));
  }
}
