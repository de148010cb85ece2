package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * A view has all the pieces that its seams take: of every edge that is sewn, at least one seam is
 * whole in it, or a step of it finishes the edge.
 */
record ViewWholeCheck() implements EachSizeCheck {
  @Override
  public String id() {
    return "view-whole";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (View view : pattern.views()) {
      Set<String> told = new LinkedHashSet<>();
      for (Piece piece : sized.pieces()) {
        if (view.pieces().contains(piece.name())) {
          for (Edge edge : piece.edges()) {
            if (!Finished.inView(view, piece, edge, sized, pattern)) {
              look(view, piece, edge, sized, told, findings);
            }
          }
        }
      }
    }
    return findings;
  }

  private void look(
      View view,
      Piece piece,
      Edge edge,
      SizedPattern sized,
      Set<String> told,
      List<Finding> findings) {
    List<Seam> seams =
        sized.seams().stream().filter(seam -> takes(seam, piece.name(), edge.name())).toList();
    boolean whole =
        seams.stream()
            .anyMatch(
                seam ->
                    SewnLoop.places(seam).stream()
                        .allMatch(place -> view.pieces().contains(place.piece())));
    if (seams.isEmpty() || whole) {
      return;
    }
    List<String> lacking =
        SewnLoop.places(seams.get(0)).stream()
            .map(EdgePlace::piece)
            .filter(name -> !view.pieces().contains(name))
            .distinct()
            .toList();
    if (told.add(seams.get(0).name())) {
      findings.add(
          Finding.fail("view-whole", "view " + view.name())
              .with("view", view.name())
              .with("lacking", Argument.of(lacking))
              .with("seam", seams.get(0).name())
              .with("edge", piece.name() + "." + edge.name())
              .at(view.origin())
              .at(
                  Place.on(
                      edge.origin(),
                      piece.name(),
                      edge.path().at(edge.path().length() / 2).point()))
              .build());
    }
  }

  private static boolean takes(Seam seam, String piece, String edge) {
    return SewnLoop.places(seam).stream()
        .anyMatch(place -> place.piece().equals(piece) && place.edge().equals(edge));
  }
}
