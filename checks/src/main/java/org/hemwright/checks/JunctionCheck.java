package org.hemwright.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Where a seam ends on an edge that runs on from one layer to the other, the two angles make a half
 * turn, so that the joined edge has neither peak nor dip (handbook section 1, "Junctions").
 *
 * <p>An edge runs on where both parts of it follow each other in a layer of another seam (shoulder
 * to neck), where both are left free (side to hem), or where each is sewn to its own mirror image
 * (inseam to crotch).
 */
record JunctionCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "junction";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    return new Ends(sized).findings();
  }

  /** Where a layer goes on from one edge to the next; from its end to its start where it closes. */
  private record Following(EdgeTip end, EdgeTip start) {
    boolean is(EdgeTip first, EdgeTip second) {
      return end.isAt(first) && start.isAt(second);
    }
  }

  /** The ends of all seams in one size. */
  private final class Ends {
    private final SizedPattern sized;
    private final List<Following> follow = new ArrayList<>();
    private final Set<String> sewn = new HashSet<>();
    private final TurnedOut turnedOut;
    private final List<Finding> findings = new ArrayList<>();

    Ends(SizedPattern sized) {
      this.sized = sized;
      this.turnedOut = TurnedOut.in(sized);
      for (Seam seam : sized.seams()) {
        for (Seam.Join join : seam.joins()) {
          join.layers().forEach(this::walk);
        }
      }
    }

    private void walk(Seam.Layer layer) {
      List<EdgePlace> run = layer.run();
      for (int i = 0; i < run.size(); i++) {
        sewn.add(run.get(i).piece() + "." + run.get(i).edge());
        Optional<EdgeTip> end = EdgeTip.of(run.get(i), false, sized);
        Optional<EdgeTip> start = EdgeTip.of(run.get((i + 1) % run.size()), true, sized);
        if (end.isPresent() && start.isPresent()) {
          follow.add(new Following(end.get(), start.get()));
        }
      }
    }

    List<Finding> findings() {
      SeamEnd.in(sized, turnedOut).forEach(end -> judge(end.seam(), end.first(), end.second()));
      return findings;
    }

    private boolean runsOn(EdgeTip first, EdgeTip second) {
      if (first.isAt(second) || first.drawn().onFold() || second.drawn().onFold()) {
        return false;
      }
      if (!sewn.contains(first.text()) && !sewn.contains(second.text())) {
        return true;
      }
      if (turnedOut.closed().contains(first.text())
          && turnedOut.closed().contains(second.text())
          && !first.text().equals(second.text())) {
        return true;
      }
      return follow.stream().anyMatch(pair -> pair.is(first, second) || pair.is(second, first));
    }

    private void judge(Seam seam, EdgeTip first, EdgeTip second) {
      if (!runsOn(first.beside(), second.beside())) {
        return;
      }
      double sum = first.interior() + second.interior();
      double off = Math.abs(sum - Math.PI);
      if (off <= settings.sewing().angleWarn()) {
        return;
      }
      findings.add(
          Finding.fail(sum > Math.PI ? "junction-dip" : "junction-peak", "seam " + seam.name())
              .with("seam", seam.name())
              .with("first", first.beside().text())
              .with("second", second.beside().text())
              .with("here", Argument.of(Quantity.angle(first.interior())))
              .with("there", Argument.of(Quantity.angle(second.interior())))
              .with("sum", Argument.of(Quantity.angle(sum)))
              .values(Math.toDegrees(sum), 180, "deg")
              .at(Place.on(seam.origin(), first.piece().name(), first.point()))
              .at(Place.on(second.beside().drawn().origin(), second.piece().name(), second.point()))
              .build()
              .as(off > settings.sewing().angleFail() ? Status.FAIL : Status.WARN));
    }
  }
}
