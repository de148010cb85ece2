package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;

/**
 * A slit with a zip is as long where a step leaves it and down to its notch as its opening says
 * (common practice, no source: handbook section 1 notches the end of a zip).
 */
record ClosureLengthCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "closure-length";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    Set<String> zipped =
        pattern.making().steps().stream()
            .filter(step -> step.act() instanceof Act.InsertZip)
            .flatMap(step -> step.work(Work.OfOpening.class).stream())
            .map(Work.OfOpening::opening)
            .collect(Collectors.toSet());
    for (Piece piece : sized.pieces()) {
      for (BodyOpening opening : piece.bodyOpenings()) {
        if (opening.closure().isPresent()
            && opening.closure().get().kind() == BodyOpening.Kind.ZIP
            && piece.edge(opening.edge()).isPresent()) {
          double slit = opening.closure().get().length();
          if (zipped.isEmpty() && pattern.making().isStated()) {
            findings.add(
                Finding.fail("closure-missing", piece.name() + "." + opening.edge())
                    .with("piece", piece.name())
                    .with("opening", opening.edge())
                    .at(opening.origin())
                    .build());
          }
          for (Step step : pattern.making().steps()) {
            for (Step.Opening left : step.leaves()) {
              if (zipped.contains(left.name())) {
                beside(piece, opening, step, sized)
                    .ifPresent(
                        edge -> judge(piece, opening, edge, slit, step, left, sized, findings));
              }
            }
          }
        }
      }
    }
    return findings;
  }

  /** The edge next to the opening that the step's seam takes. */
  private static Optional<Edge> beside(
      Piece piece, BodyOpening opening, Step step, SizedPattern sized) {
    List<Edge> edges = piece.edges();
    int at = edges.indexOf(piece.edge(opening.edge()).orElseThrow());
    List<Edge> neighbours =
        List.of(
            edges.get((at + 1) % edges.size()), edges.get((at + edges.size() - 1) % edges.size()));
    List<Seam> seams =
        step.work(Work.OfSeam.class).stream()
            .flatMap(work -> sized.seams().stream().filter(seam -> seam.name().equals(work.seam())))
            .toList();
    return neighbours.stream()
        .filter(
            edge ->
                seams.stream()
                    .flatMap(seam -> SewnLoop.places(seam).stream())
                    .anyMatch(
                        place ->
                            place.piece().equals(piece.name()) && place.edge().equals(edge.name())))
        .findFirst();
  }

  private void judge(
      Piece piece,
      BodyOpening opening,
      Edge edge,
      double slit,
      Step step,
      Step.Opening left,
      SizedPattern sized,
      List<Finding> findings) {
    double off = settings.sewing().seamFail();
    OptionalDouble open = left.length().in(sized.numbers());
    if (open.isPresent() && Math.abs(open.getAsDouble() - slit) > off) {
      findings.add(
          told("closure-step", piece, opening, left, step, slit)
              .with("found", Argument.mm(open.getAsDouble()))
              .values(open.getAsDouble(), slit, "mm")
              .at(Place.on(step.origin(), piece.name(), end(piece, opening, edge, slit)))
              .build());
    }
    OptionalDouble nearest =
        piece.notches().stream()
            .filter(notch -> notch.edge().equals(edge.name()))
            .mapToDouble(notch -> fromOpening(piece, opening, edge, notch))
            .boxed()
            .min(Comparator.comparingDouble(at -> Math.abs(at - slit)))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    // A slit that is longer than the edge ends on the piece that is sewn on there.
    boolean endsHere = slit <= edge.path().length() + off;
    if (endsHere && (nearest.isEmpty() || Math.abs(nearest.getAsDouble() - slit) > off)) {
      Finding.Builder finding =
          told("closure-notch", piece, opening, left, step, slit)
              .with("edge", edge.name())
              .at(Place.on(opening.origin(), piece.name(), end(piece, opening, edge, slit)));
      nearest.ifPresent(at -> finding.with("found", Argument.mm(at)).values(at, slit, "mm"));
      findings.add(finding.build().as(Status.WARN));
    }
  }

  private static Finding.Builder told(
      String code, Piece piece, BodyOpening opening, Step.Opening left, Step step, double slit) {
    return Finding.fail(code, piece.name() + "." + opening.edge())
        .with("piece", piece.name())
        .with("opening", opening.edge())
        .with("gap", left.name())
        .with("step", step.id())
        .with("slit", Argument.mm(slit));
  }

  private static boolean follows(Piece piece, BodyOpening opening, Edge edge) {
    int at = piece.edges().indexOf(piece.edge(opening.edge()).orElseThrow());
    return piece.edges().get((at + 1) % piece.edges().size()).equals(edge);
  }

  /** How far a notch lies from the opening along its edge (mm). */
  private static double fromOpening(Piece piece, BodyOpening opening, Edge edge, Notch notch) {
    return follows(piece, opening, edge)
        ? notch.distance()
        : edge.path().length() - notch.distance();
  }

  private static Point end(Piece piece, BodyOpening opening, Edge edge, double slit) {
    double length = edge.path().length();
    double at = Math.min(slit, length);
    return edge.path().at(follows(piece, opening, edge) ? at : length - at).point();
  }
}
