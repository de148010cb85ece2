package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;

/**
 * What is not graded is the same in every size: notches and their kinds, marks, folds, how corners
 * are finished and edges turned back, and what each seam takes. It may change once, from a size on;
 * what comes back, or holds in the smallest or the largest size alone, is told.
 */
final class NestAlikeCheck implements Check {
  /** Of fewer sizes none can be told to be the odd one. */
  private static final int FEWEST_SIZES = 5;

  @Override
  public String id() {
    return "nest-alike";
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<Finding> findings = new ArrayList<>();
    for (PieceRun draft : PieceRun.of(run)) {
      piece(draft, findings);
    }
    seams(run, findings);
    List<String> chart = run.pattern().chart().sizes().stream().map(Size::name).toList();
    return new FindingOrder(chart).of(findings);
  }

  private static void piece(PieceRun draft, List<Finding> findings) {
    Map<String, Function<Piece, Object>> kinds = new LinkedHashMap<>();
    kinds.put("edges", piece -> piece.edges().stream().map(e -> e.name() + e.onFold()).toList());
    kinds.put("notches", NestAlikeCheck::notches);
    kinds.put("marks", NestAlikeCheck::marks);
    kinds.put(
        "corners",
        piece -> piece.corners().stream().map(c -> c.before() + c.after() + c.finish()).toList());
    kinds.put("hems", piece -> piece.edges().stream().map(e -> folds(e.allowance())).toList());
    kinds.put("grain", piece -> piece.grain().isPresent());
    kinds.put("openings", Piece::openings);
    kinds.put("card", Piece::card);
    kinds.forEach(
        (kind, aspect) -> {
          List<Object> seen = draft.pieces().stream().map(aspect).toList();
          for (int i : odd(seen)) {
            Piece piece = draft.pieces().get(i);
            findings.add(
                Finding.warn("nest-alike", draft.card().name())
                    .sizes(List.of(draft.size(i)))
                    .with("piece", draft.card().name())
                    .with("what", new Argument.Term("alike-" + kind))
                    .at(
                        Place.on(
                            piece.card().origin(), piece.name(), piece.corners().get(0).point()))
                    .build());
          }
        });
  }

  private static Object notches(Piece piece) {
    return piece.notches().stream()
        .map(notch -> notch.edge() + notch.kind() + notch.name())
        .sorted()
        .toList();
  }

  private static Object marks(Piece piece) {
    return piece.marks().stream()
        .filter(mark -> !(mark instanceof Mark.Label))
        .map(mark -> mark.getClass().getSimpleName() + name(mark))
        .sorted()
        .toList();
  }

  private static String name(Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      return drill.name();
    } else if (mark instanceof Mark.Inner inner) {
      return inner.name();
    } else if (mark instanceof Mark.Placement line) {
      return line.name();
    } else if (mark instanceof Mark.Level level) {
      return level.name();
    }
    return "";
  }

  private static int folds(Allowance allowance) {
    return allowance instanceof Allowance.TurnedBack hem
        ? hem.folds().size()
        : allowance.width() > 0 ? 0 : -1;
  }

  private static void seams(SizeRun run, List<Finding> findings) {
    List<String> names =
        run.sizes().stream().flatMap(s -> s.seams().stream()).map(Seam::name).distinct().toList();
    for (String name : names) {
      List<Object> seen =
          run.sizes().stream()
              .map(
                  sized ->
                      (Object)
                          sized.seams().stream()
                              .filter(seam -> seam.name().equals(name))
                              .map(seam -> seam.joins().toString() + seam.ease() + seam.even())
                              .toList())
              .toList();
      for (int i : odd(seen)) {
        Finding.Builder finding =
            Finding.warn("nest-alike-seam", "seam " + name)
                .sizes(List.of(run.sizes().get(i).size().name()))
                .with("seam", name);
        run.sizes().stream()
            .flatMap(sized -> sized.seams().stream())
            .filter(seam -> seam.name().equals(name))
            .findFirst()
            .ifPresent(seam -> finding.at(seam.origin()));
        findings.add(finding.build());
      }
    }
  }

  /** The sizes that are unlike both neighbours' side, or alone at an end. */
  private static List<Integer> odd(List<Object> seen) {
    List<Integer> odd = new ArrayList<>();
    int count = seen.size();
    if (count < FEWEST_SIZES) {
      return odd;
    }
    for (int from = 0; from < count; ) {
      int to = from;
      while (to + 1 < count && seen.get(to + 1).equals(seen.get(from))) {
        to++;
      }
      boolean between = from > 0 && to + 1 < count && seen.get(from - 1).equals(seen.get(to + 1));
      boolean alone = from == to && (from == 0 || to == count - 1);
      if (between || alone) {
        for (int i = from; i <= to; i++) {
          odd.add(i);
        }
      }
      from = to + 1;
    }
    return odd;
  }
}
