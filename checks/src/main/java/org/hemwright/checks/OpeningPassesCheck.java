package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * An opening, stretched as far as its stiffest cloth allows, goes over the largest part that it
 * must pass (handbook section 4): a waist over the hip, a neck over the head. A slit beside it adds
 * both its sides. Asked only where the document says what it passes, or the edge's name does, and
 * the chart has that measurement.
 */
record OpeningPassesCheck(CheckSettings settings) implements EachSizeCheck {
  private static final Map<String, String> PASSED =
      Map.of("waist", "hip", "neck", "head", "cuff", "hand", "wrist", "hand", "ankle", "heel");

  @Override
  public String id() {
    return "opening-passes";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (View view : pattern.views()) {
      List<Piece> pieces =
          sized.pieces().stream().filter(p -> view.pieces().contains(p.name())).toList();
      Set<Passage> passages = new LinkedHashSet<>();
      pieces.forEach(piece -> piece.openings().forEach(e -> passage(piece, e, passages)));
      for (Passage passage : passages) {
        OptionalDouble body = BodyMeasurement.of(passage.over(), sized, pattern);
        List<Piece> round = pieces.stream().filter(p -> opens(p, passage)).toList();
        if (body.isPresent() && !round.isEmpty()) {
          judge(pattern, passage, round, body.getAsDouble(), findings);
        }
      }
    }
    return findings;
  }

  /** Edges of one name that pass the same part of the body. */
  private record Passage(String edge, String over) {}

  /** What an edge must pass: as the document says, else by its name. */
  private static void passage(Piece piece, String edge, Set<Passage> passages) {
    Optional<String> over =
        piece.bodyOpenings().stream()
            .filter(opening -> opening.edge().equals(edge))
            .findFirst()
            .flatMap(BodyOpening::over)
            .or(() -> Optional.ofNullable(PASSED.get(edge)));
    over.ifPresent(part -> passages.add(new Passage(edge, part)));
  }

  private static boolean opens(Piece piece, Passage passage) {
    Set<Passage> own = new LinkedHashSet<>();
    piece.openings().forEach(edge -> passage(piece, edge, own));
    return own.contains(passage) && piece.edge(passage.edge()).isPresent();
  }

  /** The slit beside an opening, if something closes one. */
  private static double slit(List<Piece> round, String edge) {
    return round.stream()
        .flatMap(piece -> piece.bodyOpenings().stream())
        .filter(opening -> opening.edge().equals(edge))
        .flatMap(opening -> opening.closure().stream())
        .mapToDouble(BodyOpening.Closure::length)
        .max()
        .orElse(0);
  }

  private void judge(
      Pattern pattern, Passage passage, List<Piece> round, double body, List<Finding> findings) {
    String opening = passage.edge();
    double slit = slit(round, opening);
    double length = 0;
    double stretch = Double.MAX_VALUE;
    for (Piece piece : round) {
      double edge = piece.edge(opening).map(piece::sewnLength).orElse(0.0);
      int halves = piece.foldEdge().isPresent() ? 2 : 1;
      length += edge * halves * Math.max(1, piece.card().copies().size());
      stretch = Math.min(stretch, stretch(piece, pattern));
    }
    double reach = length * (1 + stretch) + 2 * slit;
    double wanted = stretch == 0 ? body + settings.wear().passWoven() : body;
    if (reach >= wanted - Tolerance.DRAWN_LENGTH) {
      return;
    }
    Piece first = round.get(0);
    Edge edge = first.edge(opening).orElseThrow();
    Finding.Builder finding =
        Finding.fail(stretch == 0 ? "opening-fixed" : "opening-stretched", "opening " + opening);
    if (slit > 0) {
      finding
          .with("slit", Argument.mm(slit))
          .with("longer", Argument.mm(slit + (wanted - reach) / 2));
    }
    findings.add(
        finding
            .with("opening", opening)
            .with("pieces", Argument.of(round.stream().map(Piece::name).distinct().toList()))
            .with("part", passage.over())
            .with("length", Argument.mm(length))
            .with("body", Argument.mm(body))
            .with("reach", Argument.mm(reach))
            .with("wanted", Argument.mm(wanted))
            .with("stretch", Argument.of(Quantity.ratio(stretch)))
            .with("needed", Argument.of(Quantity.ratio((wanted - 2 * slit) / length - 1)))
            .values(reach, wanted, "mm")
            .at(
                Place.on(
                    edge.origin(), first.name(), edge.path().at(edge.path().length() / 2).point()))
            .build()
            .as(reach < body ? Status.FAIL : Status.WARN));
  }

  /** How far the cloth of a piece stretches across; a woven, and a knit of unsaid stretch, 0. */
  private static double stretch(Piece piece, Pattern pattern) {
    return piece.card().cuts().stream()
        .findFirst()
        .flatMap(cut -> pattern.fabric(cut.fabric()))
        .map(Fabric::stretchAcross)
        .flatMap(
            across ->
                across.isPresent() ? Optional.of(across.getAsDouble()) : Optional.<Double>empty())
        .orElse(0.0);
  }
}
