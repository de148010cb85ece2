package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/** Looks up the names that a seam is written with; every name that nothing bears is found. */
final class TermReader {
  private final CutParts parts;
  private final Set<String> absent;
  private final List<Finding> findings;

  TermReader(CutParts parts, Set<String> absent, List<Finding> findings) {
    this.parts = parts;
    this.absent = absent;
    this.findings = findings;
  }

  /** The layers of a seam, or nothing where a name is unknown or a piece absent in this size. */
  Optional<List<List<Sought>>> read(SeamRequest request) {
    boolean whole = true;
    List<List<Sought>> layers = new ArrayList<>();
    for (SeamRequest.Run run : request.layers()) {
      List<Sought> layer = new ArrayList<>();
      for (SeamRequest.Term term : run.places()) {
        Optional<Sought> sought = read(request, term);
        sought.ifPresent(layer::add);
        whole &= sought.isPresent();
      }
      layers.add(layer);
    }
    return whole ? Optional.of(layers) : Optional.empty();
  }

  private Optional<Sought> read(SeamRequest request, SeamRequest.Term term) {
    List<CutPart> all = parts.of(term.piece());
    if (all.isEmpty()) {
      if (!absent.contains(term.piece())) {
        Set<String> known = new LinkedHashSet<>(parts.pieces());
        known.addAll(absent);
        findings.add(SeamProblem.PIECE_UNKNOWN.unknown(request, term, term.piece(), known));
      }
      return Optional.empty();
    }
    Piece piece = all.get(0).piece();
    int index = Sought.edgeIndex(piece, term.edge());
    boolean known = index >= 0 || lines(piece).contains(term.edge());
    if (!known) {
      findings.add(SeamProblem.EDGE_UNKNOWN.unknown(request, term, term.edge(), names(piece)));
    }
    Optional<List<CutPart>> chosen = copies(request, term, all);
    if (!known || chosen.isEmpty() || !sewable(request, term, piece, index)) {
      return Optional.empty();
    }
    return Optional.of(new Sought(term, chosen.get(), index));
  }

  private Optional<List<CutPart>> copies(
      SeamRequest request, SeamRequest.Term term, List<CutPart> all) {
    if (term.copy().isEmpty()) {
      return Optional.of(all);
    }
    String name = term.copy().get();
    List<CutPart> chosen = all.stream().filter(part -> part.copy().name().equals(name)).toList();
    if (chosen.isEmpty()) {
      List<String> known = all.stream().map(part -> part.copy().name()).distinct().toList();
      findings.add(SeamProblem.COPY_UNKNOWN.unknown(request, term, name, known));
      return Optional.empty();
    }
    return Optional.of(chosen);
  }

  private static List<String> lines(Piece piece) {
    return piece.marks(Mark.Placement.class).stream().map(Mark.Placement::name).toList();
  }

  private static List<String> names(Piece piece) {
    List<String> names = new ArrayList<>(piece.edges().stream().map(Edge::name).toList());
    names.addAll(lines(piece));
    return names;
  }

  /** Whether the edge can be sewn, and its notches are there and in order. */
  private boolean sewable(SeamRequest request, SeamRequest.Term term, Piece piece, int index) {
    if (index >= 0 && piece.edges().get(index).onFold()) {
      findings.add(
          SeamProblem.EDGE_ON_FOLD
              .in(request, term.origin())
              .with("piece", term.piece())
              .with("edge", term.edge())
              .build());
      return false;
    }
    OptionalDouble from = notch(request, term, piece, index, term.from());
    OptionalDouble to = notch(request, term, piece, index, term.to());
    if ((term.from().isPresent() && from.isEmpty()) || (term.to().isPresent() && to.isEmpty())) {
      return false;
    }
    if (from.isPresent() && to.isPresent() && from.getAsDouble() >= to.getAsDouble()) {
      findings.add(
          SeamProblem.NOTCHES_TURNED
              .in(request, term.origin())
              .with("edge", term.piece() + "." + term.edge())
              .with("from", term.from().orElse(""))
              .with("to", term.to().orElse(""))
              .build());
      return false;
    }
    return true;
  }

  private OptionalDouble notch(
      SeamRequest request, SeamRequest.Term term, Piece piece, int index, Optional<String> name) {
    if (name.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble along =
        index < 0
            ? OptionalDouble.empty()
            : NotchPlace.along(piece, piece.edges().get(index), name.get());
    if (along.isEmpty()) {
      List<String> known =
          piece.notches().stream()
              .filter(notch -> notch.edge().equals(term.edge()))
              .map(Notch::name)
              .flatMap(Optional::stream)
              .toList();
      findings.add(SeamProblem.NOTCH_UNKNOWN.unknown(request, term, name.get(), known));
    }
    return along;
  }
}
