package org.hemwright.draft.plan.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.make.Garment.PieceNames;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.WorkName;
import org.hemwright.pattern.make.Work;

/** Finds what the names in a step stand for. */
final class WorkReader {
  private final Garment garment;
  private final Scope document;
  private final Problems problems;

  /** The pieces that each cord and opening belongs to. */
  private final Map<String, String> cords = new LinkedHashMap<>();

  private final Map<String, List<String>> openings = new LinkedHashMap<>();

  WorkReader(Garment garment, Scope document, Problems problems) {
    this.garment = garment;
    this.document = document;
    this.problems = problems;
  }

  /** Notes a cord; whether its piece is known. */
  boolean cord(Name name, Name piece) {
    if (garment.piece(piece.text()).isEmpty()) {
      tell(piece, "piece", List.copyOf(garment.pieces().keySet()));
      return false;
    }
    cords.put(name.text(), piece.text());
    return true;
  }

  /** Notes an opening and the views in which it is left; they may grow. */
  void opening(String name, List<String> views) {
    openings.computeIfAbsent(name, each -> new ArrayList<>()).addAll(views);
  }

  /** What a name stands for; told where it stands for nothing. */
  Optional<Work> find(WorkName written) {
    List<Name> parts = written.parts();
    String first = parts.get(0).text();
    if (parts.size() == 1) {
      return single(parts.get(0));
    }
    Optional<PieceNames> piece = garment.piece(first);
    if (piece.isEmpty()) {
      tell(parts.get(0), "piece", List.copyOf(garment.pieces().keySet()));
      return Optional.empty();
    }
    String second = parts.get(1).text();
    if (parts.size() == 3) {
      return edgeOfCopy(parts, piece.get());
    } else if (piece.get().edges().contains(second)) {
      return Optional.of(new Work.OfEdge(first, Optional.empty(), second));
    } else if (piece.get().marks().contains(second)) {
      return Optional.of(new Work.OfMark(first, second));
    } else if (piece.get().intakes().contains(second)) {
      return Optional.of(new Work.OfIntake(first, second));
    } else if (piece.get().copies().contains(second)) {
      return Optional.of(new Work.OfPiece(first, Optional.of(second)));
    }
    tellInPiece(parts.get(1), "edge-mark-or-copy", first, piece.get().all());
    return Optional.empty();
  }

  private Optional<Work> edgeOfCopy(List<Name> parts, PieceNames piece) {
    String owner = parts.get(0).text();
    String copy = parts.get(1).text();
    String edge = parts.get(2).text();
    if (!piece.copies().contains(copy)) {
      tellInPiece(parts.get(1), "copy-of-piece", owner, piece.copies());
    } else if (!piece.edges().contains(edge)) {
      tellInPiece(parts.get(2), "edge-of-piece", owner, piece.edges());
    } else {
      return Optional.of(new Work.OfEdge(owner, Optional.of(copy), edge));
    }
    return Optional.empty();
  }

  private Optional<Work> single(Name name) {
    String text = name.text();
    if (garment.seams().containsKey(text)) {
      return Optional.of(new Work.OfSeam(text));
    } else if (garment.elastics().containsKey(text)) {
      return Optional.of(new Work.OfElastic(text));
    } else if (cords.containsKey(text)) {
      return Optional.of(new Work.OfCord(text));
    } else if (openings.containsKey(text)) {
      return Optional.of(new Work.OfOpening(text));
    } else if (garment.pieces().containsKey(text)) {
      return Optional.of(new Work.OfPiece(text, Optional.empty()));
    }
    List<String> known = new ArrayList<>(garment.seams().keySet());
    known.addAll(openings.keySet());
    known.addAll(held());
    known.addAll(garment.pieces().keySet());
    tell(name, "seam-edge-or-piece", known);
    return Optional.empty();
  }

  /** An elastic or a cord; told where there is none of that name. */
  Optional<Work> held(Name name) {
    if (garment.elastics().containsKey(name.text())) {
      return Optional.of(new Work.OfElastic(name.text()));
    } else if (cords.containsKey(name.text())) {
      return Optional.of(new Work.OfCord(name.text()));
    }
    tell(name, "elastic-or-cord", held());
    return Optional.empty();
  }

  private List<String> held() {
    List<String> held = new ArrayList<>(garment.elastics().keySet());
    held.addAll(cords.keySet());
    return held;
  }

  /** An opening that a step leaves; told where none does. */
  Optional<Work.OfOpening> opening(Name name) {
    if (!openings.containsKey(name.text())) {
      tell(name, "opening-left", List.copyOf(openings.keySet()));
      return Optional.empty();
    }
    return Optional.of(new Work.OfOpening(name.text()));
  }

  /** The names of the views that have all that a work takes. */
  List<String> views(Work work) {
    if (work instanceof Work.OfOpening opening) {
      return openings.getOrDefault(opening.opening(), List.of());
    }
    return garment.viewsOf(pieces(work));
  }

  /** The names of the pieces that a work takes. */
  List<String> pieces(Work work) {
    if (work instanceof Work.OfSeam seam) {
      return garment.seams().getOrDefault(seam.seam(), List.of());
    } else if (work instanceof Work.OfEdge edge) {
      return List.of(edge.piece());
    } else if (work instanceof Work.OfPiece piece) {
      return List.of(piece.piece());
    } else if (work instanceof Work.OfMark mark) {
      return List.of(mark.piece());
    } else if (work instanceof Work.OfIntake intake) {
      return List.of(intake.piece());
    } else if (work instanceof Work.OfElastic elastic) {
      return List.of(garment.elastics().getOrDefault(elastic.elastic(), ""));
    } else if (work instanceof Work.OfCord cord) {
      return List.of(cords.getOrDefault(cord.cord(), ""));
    }
    return List.of();
  }

  void tell(Name name, String what, List<String> known) {
    if (!document.excuses(name.text())) {
      Unknown.tell(problems, name, what, known);
    }
  }

  private void tellInPiece(Name name, String what, String piece, List<String> known) {
    if (!document.excuses(name.text())) {
      Unknown.tell(problems, name, what, piece, known);
    }
  }
}
