package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/**
 * Resolves the seams of many sizes quickly: which copies and halves meet depends on names, cut
 * copies and the sense of edges alone, which are the same in nearly every size. The answers are
 * those of {@link SeamResolution#resolve}; only the ease is taken anew.
 */
public final class SeamMemory {
  /** More kinds of size than this are worked out each time. */
  private static final int MOST = 16;

  private final List<Remembered> known = new CopyOnWriteArrayList<>();

  /** As {@link SeamResolution#resolve(List, List, Set)}. */
  public SeamResolution resolve(
      List<SeamRequest> requests, List<Piece> pieces, Set<String> absent) {
    for (Remembered remembered : known) {
      if (remembered.fits(requests, pieces, absent)) {
        return remembered.eased(requests);
      }
    }
    CutParts parts = new CutParts(pieces);
    SeamResolution resolution = new SeamResolver(parts, absent).resolve(requests);
    if (known.size() < MOST) {
      known.add(
          new Remembered(
              List.copyOf(requests),
              List.copyOf(pieces),
              Set.copyOf(absent),
              parts.mirrorsAsked(),
              resolution));
    }
    return resolution;
  }

  /** One resolution and what it was worked out from. */
  private record Remembered(
      List<SeamRequest> requests,
      List<Piece> pieces,
      Set<String> absent,
      List<CutParts.MirrorAsked> mirrors,
      SeamResolution resolution) {

    boolean fits(List<SeamRequest> asked, List<Piece> drawn, Set<String> missing) {
      if (asked.size() != requests.size()
          || drawn.size() != pieces.size()
          || !absent.equals(missing)) {
        return false;
      }
      for (int i = 0; i < drawn.size(); i++) {
        if (!alike(drawn.get(i), pieces.get(i))) {
          return false;
        }
      }
      for (int i = 0; i < asked.size(); i++) {
        if (!alike(asked.get(i), requests.get(i)) || !ordered(asked.get(i), drawn)) {
          return false;
        }
      }
      for (CutParts.MirrorAsked mirror : mirrors) {
        Optional<Piece> piece = piece(drawn, mirror.piece());
        if (piece.isEmpty() || Symmetry.about(piece.get(), mirror.edge()) != mirror.isOwnMirror()) {
          return false;
        }
      }
      return true;
    }

    private static Optional<Piece> piece(List<Piece> pieces, String name) {
      return pieces.stream().filter(piece -> piece.name().equals(name)).findFirst();
    }

    private static boolean alike(SeamRequest one, SeamRequest other) {
      return one.name().equals(other.name())
          && one.layers().equals(other.layers())
          && one.origin().equals(other.origin());
    }

    private static boolean alike(Piece one, Piece other) {
      if (!one.name().equals(other.name())
          || !one.card().copies().equals(other.card().copies())
          || one.edges().size() != other.edges().size()) {
        return false;
      }
      for (int i = 0; i < one.edges().size(); i++) {
        Edge a = one.edges().get(i);
        Edge b = other.edges().get(i);
        if (!a.name().equals(b.name())
            || a.onFold() != b.onFold()
            || a.reversed() != b.reversed()) {
          return false;
        }
      }
      return lines(one).equals(lines(other)) && notches(one).equals(notches(other));
    }

    private static List<String> lines(Piece piece) {
      return piece.marks(Mark.Placement.class).stream().map(Mark.Placement::name).toList();
    }

    private static List<String> notches(Piece piece) {
      List<String> names = new ArrayList<>();
      for (Notch notch : piece.notches()) {
        notch.name().ifPresent(name -> names.add(notch.edge() + "." + name));
      }
      return names;
    }

    /** Whether every stretch from notch to notch ends after it starts, as it did. */
    private static boolean ordered(SeamRequest request, List<Piece> pieces) {
      for (SeamRequest.Run run : request.layers()) {
        for (SeamRequest.Term term : run.places()) {
          if (term.from().isPresent() && term.to().isPresent()) {
            Optional<Piece> piece = piece(pieces, term.piece());
            Optional<Edge> edge = piece.flatMap(found -> found.edge(term.edge()));
            if (edge.isEmpty()) {
              return false;
            }
            OptionalDouble from = NotchPlace.along(piece.get(), edge.get(), term.from().orElse(""));
            OptionalDouble to = NotchPlace.along(piece.get(), edge.get(), term.to().orElse(""));
            if (from.isEmpty() || to.isEmpty() || from.getAsDouble() >= to.getAsDouble()) {
              return false;
            }
          }
        }
      }
      return true;
    }

    /** The same joins with the ease and marks asked for now. */
    SeamResolution eased(List<SeamRequest> asked) {
      List<Seam> seams = new ArrayList<>();
      for (Seam seam : resolution.seams()) {
        for (SeamRequest request : asked) {
          if (request.name().equals(seam.name()) && request.origin().equals(seam.origin())) {
            seams.add(
                new Seam(seam.name(), seam.joins(), request.ease(), request.even(), seam.origin()));
            break;
          }
        }
      }
      return new SeamResolution(seams, resolution.findings());
    }
  }
}
