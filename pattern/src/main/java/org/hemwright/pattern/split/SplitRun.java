package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.Acceptance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/** A size run in which pieces are cut apart as their splits say: a run like any other. */
public final class SplitRun {
  private SplitRun() {}

  /**
   * The run with pieces in parts. A piece stays whole in a size in which its split cannot be made.
   *
   * @param choices one for each piece that is cut apart
   */
  public static SizeRun of(SizeRun run, List<SplitChoice> choices) {
    SizeRun split = run;
    for (SplitChoice choice : choices) {
      split = of(split, choice);
    }
    return split;
  }

  private static SizeRun of(SizeRun run, SplitChoice choice) {
    List<SizedPattern> sizes = new ArrayList<>();
    Set<PieceCard> cards = new LinkedHashSet<>();
    Optional<PieceParts> any = Optional.empty();
    Set<String> seams = new LinkedHashSet<>();
    Set<String> elastics = new LinkedHashSet<>();
    for (SizedPattern sized : run.sizes()) {
      Optional<PieceParts> parts =
          sized.piece(choice.piece()).flatMap(piece -> Divided.of(piece, choice.split()));
      if (parts.isEmpty()) {
        sizes.add(sized);
        continue;
      }
      any = any.or(() -> parts);
      parts.get().parts().forEach(part -> cards.add(part.card()));
      sized.seams().stream()
          .filter(seam -> takes(seam, choice.piece()))
          .forEach(seam -> seams.add(seam.name()));
      sized.elastics().stream()
          .filter(elastic -> elastic.piece().equals(choice.piece()))
          .forEach(elastic -> elastics.add(elastic.name()));
      sizes.add(sized(sized, parts.get()));
    }
    return any.isEmpty()
        ? run
        : new SizeRun(pattern(run.pattern(), any.get(), cards, seams, elastics), sizes);
  }

  private static boolean takes(Seam seam, String piece) {
    return seam.joins().stream()
        .flatMap(join -> join.layers().stream())
        .flatMap(layer -> layer.run().stream())
        .anyMatch(place -> place.piece().equals(piece));
  }

  private static SizedPattern sized(SizedPattern sized, PieceParts parts) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      if (piece.name().equals(parts.whole().name())) {
        pieces.addAll(parts.parts());
      } else {
        pieces.add(piece);
      }
    }
    SplitSeams split = new SplitSeams(parts);
    List<Seam> seams = new ArrayList<>(split.joining());
    sized.seams().forEach(seam -> seams.add(split.along(seam)));
    List<Elastic> elastics = sized.elastics().stream().map(e -> held(e, parts)).toList();
    return new SizedPattern(sized.size(), pieces, seams, elastics, sized.numbers());
  }

  /** An elastic is told of the first part that has its edge. */
  private static Elastic held(Elastic elastic, PieceParts parts) {
    if (!elastic.piece().equals(parts.whole().name())) {
      return elastic;
    }
    Optional<PieceParts.Stretch> edge =
        parts.stretches().stream()
            .filter(stretch -> elastic.edge().filter(stretch.edge()::equals).isPresent())
            .findFirst();
    return new Elastic(
        elastic.name(),
        parts.parts().get(edge.map(PieceParts.Stretch::part).orElse(0)).name(),
        elastic.width(),
        elastic.finished(),
        elastic.overlap(),
        edge.map(PieceParts.Stretch::name),
        elastic.round(),
        elastic.over(),
        elastic.stretch(),
        elastic.origin());
  }

  private static Pattern pattern(
      Pattern pattern,
      PieceParts parts,
      Set<PieceCard> cards,
      Set<String> seams,
      Set<String> elastics) {
    String whole = parts.whole().name();
    List<PieceCard> all = new ArrayList<>();
    for (PieceCard card : pattern.pieces()) {
      if (card.name().equals(whole)) {
        cards.stream().filter(part -> part.sizes().equals(card.sizes())).forEach(all::add);
      } else {
        all.add(card);
      }
    }
    List<View> views = new ArrayList<>();
    for (View view : pattern.views()) {
      List<String> pieces = new ArrayList<>();
      for (String piece : view.pieces()) {
        if (piece.equals(whole)) {
          cards.stream().map(PieceCard::name).distinct().forEach(pieces::add);
        } else {
          pieces.add(piece);
        }
      }
      views.add(new View(view.name(), view.title(), pieces, view.origin()));
    }
    return new Pattern(
        pattern.details(),
        pattern.chart(),
        pattern.base(),
        pattern.fabrics(),
        pattern.dials(),
        views,
        all,
        pattern.paper(),
        acceptances(pattern, whole, cards),
        new SplitMaking(parts, seams, elastics, pattern.views()).of(pattern.making()));
  }

  /** What is accepted of the whole piece is accepted of its parts. */
  private static List<Acceptance> acceptances(Pattern pattern, String whole, Set<PieceCard> cards) {
    List<Acceptance> all = new ArrayList<>(pattern.acceptances());
    for (Acceptance acceptance : pattern.acceptances()) {
      if (acceptance.subject().equals(whole)) {
        for (PieceCard part : cards) {
          all.add(
              new Acceptance(
                  acceptance.check(),
                  part.name(),
                  acceptance.sizes(),
                  acceptance.reason(),
                  acceptance.origin()));
        }
      }
    }
    return all;
  }
}
