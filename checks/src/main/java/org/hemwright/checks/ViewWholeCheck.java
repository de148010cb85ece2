package org.hemwright.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
    Map<String, List<Seam>> taking = taking(sized);
    for (View view : pattern.views()) {
      Set<String> told = new LinkedHashSet<>();
      for (Piece piece : sized.pieces()) {
        if (view.pieces().contains(piece.name())) {
          for (Edge edge : piece.edges()) {
            List<Seam> seams = taking.getOrDefault(piece.name() + "." + edge.name(), List.of());
            if (!seams.isEmpty()
                && seams.stream().noneMatch(seam -> isWhole(seam, view))
                && !Finished.inView(view, piece, edge, sized, pattern)) {
              tell(view, piece, edge, seams, told, findings);
            }
          }
        }
      }
    }
    return findings;
  }

  /** The seams that take each edge, as {@code piece.edge}, in their order. */
  private static Map<String, List<Seam>> taking(SizedPattern sized) {
    Map<String, List<Seam>> taking = new HashMap<>();
    for (Seam seam : sized.seams()) {
      SewnLoop.places(seam).stream()
          .map(place -> place.piece() + "." + place.edge())
          .distinct()
          .forEach(edge -> taking.computeIfAbsent(edge, each -> new ArrayList<>()).add(seam));
    }
    return taking;
  }

  private static boolean isWhole(Seam seam, View view) {
    return SewnLoop.places(seam).stream().allMatch(place -> view.pieces().contains(place.piece()));
  }

  private void tell(
      View view,
      Piece piece,
      Edge edge,
      List<Seam> seams,
      Set<String> told,
      List<Finding> findings) {
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
}
