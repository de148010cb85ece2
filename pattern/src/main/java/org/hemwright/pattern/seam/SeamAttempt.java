package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.finding.Finding;

/** One attempt to resolve one seam by what is known so far. */
final class SeamAttempt {
  private final SeamRequest request;
  private final List<List<Sought>> layers;
  private final CutParts cut;
  private final SeamTrouble trouble;
  private final List<List<Strand>> strung = new ArrayList<>();
  private final List<List<Strand>> joins = new ArrayList<>();

  /** The layers that lie beneath the first, their right side to its wrong side. */
  private final Set<Integer> beneath = new HashSet<>();

  SeamAttempt(SeamRequest request, List<List<Sought>> layers, CutParts cut, StrandMaker maker) {
    this.request = request;
    this.cut = cut;
    this.layers = layers;
    this.trouble = new SeamTrouble(request, layers);
    for (List<Sought> layer : layers) {
      StrandMaker.Strung strands = maker.string(layer);
      if (strands.brokenAfter() >= 0) {
        List<List<Sought>> holding = maker.turnedToHold(layer);
        boolean senseGiven = layer.stream().anyMatch(sought -> sought.term().reversed());
        if (holding.size() == 1 && !senseGiven) {
          strands = maker.string(holding.get(0));
        } else {
          trouble.breaks(layer, strands.brokenAfter(), holding);
        }
      }
      strung.add(strands.strands());
    }
  }

  /** Why there is no seam, or what is odd about it. */
  List<Finding> findings() {
    return trouble.findings();
  }

  /** The seam, if it resolves. */
  Optional<Seam> seam() {
    if (!trouble.findings().isEmpty()) {
      return Optional.empty();
    }
    strung.get(0).forEach(strand -> joins.add(new ArrayList<>(List.of(strand))));
    for (int layer = 1; layer < layers.size(); layer++) {
      Pairing.Outcome outcome = sewOn(layer);
      if (outcome != Pairing.Outcome.PAIRED) {
        trouble.explain(outcome, layer, strung.get(0), strung.get(layer), isFirstAgain(layer));
        return Optional.empty();
      }
    }
    joins.removeIf(join -> join.size() < layers.size());
    trouble.warnOfCrossing(joins);
    trouble.warnOfEnds(joins);
    return Optional.of(
        new Seam(
            request.name(),
            joins.stream()
                .map(join -> new Seam.Join(join.stream().map(Strand::layer).toList()))
                .toList(),
            request.ease(),
            request.even(),
            request.origin()));
  }

  private Pairing.Outcome sewOn(int layer) {
    boolean under = liesBeneath(layer);
    halvesThatFace(layer, under);
    List<Strand> first = strung.get(0);
    List<Strand> second = strung.get(layer);
    if (isFirstAgain(layer)) {
      Pairing pairing = Pairing.withItself(first, turned(0) != turned(layer));
      List<List<Strand>> paired = new ArrayList<>();
      for (Pairing.Pair pair : pairing.pairs()) {
        paired.add(new ArrayList<>(joins.get(pair.first())));
        paired.get(paired.size() - 1).add(second.get(pair.second()));
      }
      joins.clear();
      joins.addAll(paired);
      return pairing.outcome();
    }
    if (joins.size() != first.size()) {
      return Pairing.Outcome.COUNTS_DIFFER;
    }
    boolean either = pooled(0) || pooled(layer);
    Pairing pairing =
        Pairing.of(first, under ? second.stream().map(Strand::flipped).toList() : second, either);
    boolean turnable = false;
    if (under && pairing.outcome() != Pairing.Outcome.PAIRED) {
      pairing = Pairing.of(first, second, either);
    }
    if (pairing.outcome() == Pairing.Outcome.HANDS_DIFFER && layer > 1) {
      pairing = Pairing.of(first, second.stream().map(Strand::flipped).toList(), false);
    }
    if (pairing.outcome() == Pairing.Outcome.HANDS_DIFFER
        && (isOwnMirror(0, layer) || isOwnMirror(layer, 0))) {
      turnable = true;
      pairing = Pairing.of(first, second, true);
    }
    for (Pairing.Pair pair : pairing.pairs()) {
      List<Strand> join = joins.get(pair.first());
      Strand partner = second.get(pair.second());
      boolean facing = partner.hand() != join.get(0).hand() || partner.placed();
      if (!facing && (pooled(layer) || (turnable && isOwnMirror(layer, 0)))) {
        join.add(partner.flipped());
      } else {
        if (!facing && layer == 1 && !join.get(0).placed()) {
          join.set(0, join.get(0).flipped());
        }
        join.add(partner);
      }
    }
    return pairing.outcome();
  }

  /**
   * Where a left or a right piece stands alone, as the two fronts of a shirt do, it is sewn to the
   * half of a piece on the fold that faces it; the other half is for its partner.
   */
  private void halvesThatFace(int layer, boolean under) {
    List<Strand> first = strung.get(0);
    List<Strand> second = strung.get(layer);
    if (2 * first.size() == second.size()) {
      strung.set(layer, facing(first, second, under));
    } else if (layer == 1 && first.size() == 2 * second.size()) {
      strung.set(0, facing(second, first, false));
      joins.removeIf(join -> !strung.get(0).contains(join.get(0)));
    }
  }

  private static List<Strand> facing(List<Strand> few, List<Strand> many, boolean under) {
    int hand = few.get(0).hand();
    int wanted = under ? hand : -hand;
    boolean halves = many.stream().allMatch(Strand::onHalves);
    boolean oneHand = few.stream().allMatch(strand -> strand.hand() == hand && !strand.placed());
    List<Strand> found = many.stream().filter(strand -> strand.hand() == wanted).toList();
    return halves && oneHand && found.size() == few.size() ? found : many;
  }

  /**
   * Two copies of one piece in a seam, such as the outer and the inner yoke, lie face to face or
   * back to back: where one has its right side to the first layer's, the other has it to the first
   * layer's wrong side.
   */
  private boolean liesBeneath(int layer) {
    for (int before = layer - 1; before > 0; before--) {
      if (piece(before).equals(piece(layer)) && !beneath.contains(before)) {
        beneath.add(layer);
      }
    }
    return beneath.contains(layer);
  }

  private String piece(int layer) {
    return layers.get(layer).get(0).term().piece();
  }

  /** Whether a layer names the same edges as the first. */
  private boolean isFirstAgain(int layer) {
    List<Sought> first = layers.get(0);
    List<Sought> other = layers.get(layer);
    if (first.size() != other.size() || pooled(0) || pooled(layer)) {
      return false;
    }
    for (int i = 0; i < first.size(); i++) {
      if (!first.get(i).term().isStretchOf(other.get(i).term())) {
        return false;
      }
    }
    return true;
  }

  private boolean turned(int layer) {
    return layers.get(layer).get(0).term().reversed();
  }

  private boolean pooled(int layer) {
    return layers.get(layer).stream().anyMatch(sought -> sought.term().every());
  }

  /** Whether a layer is one whole edge of a piece that is its own mirror image. */
  private boolean isOwnMirror(int layer, int other) {
    List<Sought> sought = layers.get(layer);
    SeamRequest.Term term = sought.get(0).term();
    return sought.size() == 1
        && sought.get(0).whole()
        && !sought.get(0).placed()
        && sought.get(0).parts().stream().allMatch(p -> p.half() == EdgePlace.Half.WHOLE)
        && layers.get(other).stream().noneMatch(s -> s.term().piece().equals(term.piece()))
        && cut.isOwnMirror(sought.get(0).parts().get(0).piece(), sought.get(0).edge());
  }
}
