package org.hemwright.pattern.construction;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.seam.Seam;

/** What is a tube or a bag by now, as the seams that are sewn have made it. */
final class Rounds {
  /** An edge looks away from another where it lies less than 60 degrees off. */
  private static final double FACING = -0.5;

  private final Table table;

  Rounds(Table table) {
    this.table = table;
  }

  /** The later of two seams that bring opposite edges of a part together to a round. */
  Optional<Pass> closing(Part part) {
    for (Pass pass : passesOn(part)) {
      List<Strip> ends = pass.strips();
      boolean tube = pass.isWithinOnePart() && ends.size() == 2 && joinsParts(pass);
      if (tube && !table.folded.containsKey(part) && face(ends.get(0), ends.get(1))) {
        return Optional.of(pass);
      }
    }
    List<Strip> strips =
        table.cloth.strips(part).stream()
            .filter(strip -> table.sewnAlong(strip).stream().anyMatch(this::joinsParts))
            .toList();
    for (Strip one : strips) {
      for (Strip other : strips) {
        if (face(one, other)) {
          if (isOpposite(one, other) && meet(partners(one), partners(other), part)) {
            return table.sewnAlong(other).stream().filter(this::joinsParts).findFirst();
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Whether two edges look away from each other, as the sides of a leg do. */
  private boolean isOpposite(Strip one, Strip other) {
    return table.cloth.outward(one).unit().dot(table.cloth.outward(other).unit()) < FACING;
  }

  /** Whether parts are the same, or sewn to each other without the one between them. */
  private boolean meet(Set<Part> some, Set<Part> others, Part without) {
    return some.stream()
        .anyMatch(
            one ->
                others.contains(one)
                    || passesOn(one).stream()
                        .filter(this::joinsParts)
                        .filter(pass -> !pass.parts().contains(without))
                        .anyMatch(pass -> pass.parts().stream().anyMatch(others::contains)));
  }

  /** Whether a part is a tube that is open at both its ends, as a leg is. */
  boolean isTube(Part part) {
    List<Strip> open =
        table.cloth.strips(part).stream()
            .filter(strip -> table.sewnAlong(strip).isEmpty())
            .toList();
    return closing(part).isPresent()
        && open.stream().anyMatch(one -> open.stream().anyMatch(other -> face(one, other)));
  }

  /** A part and all that hangs on it by seams that are sewn. */
  Set<Part> hanging(Part part) {
    Set<Part> all = new LinkedHashSet<>(List.of(part));
    List<Part> left = new java.util.ArrayList<>(all);
    while (!left.isEmpty()) {
      for (Pass pass : passesOn(left.remove(left.size() - 1))) {
        pass.parts().stream().filter(all::add).forEach(left::add);
      }
    }
    return all;
  }

  /** Whether every edge of some parts that hang together is sewn, so that they make a bag. */
  boolean isBag(Set<Part> parts) {
    return parts.stream()
        .flatMap(part -> table.cloth.strips(part).stream())
        .noneMatch(strip -> table.sewnAlong(strip).isEmpty());
  }

  List<Pass> passesOn(Part part) {
    return table.cloth.passesOn(part).stream().filter(table::isSewn).toList();
  }

  private boolean joinsParts(Pass pass) {
    return !table.cloth.isPlaced(pass);
  }

  /** The parts that lie on a strip, in other layers of its seams. */
  private Set<Part> partners(Strip strip) {
    Set<Part> met = new HashSet<>();
    for (Pass pass : table.sewnAlong(strip)) {
      if (joinsParts(pass)) {
        for (Seam.Layer layer : pass.join().layers()) {
          List<Strip> along = layer.run().stream().map(Strip::of).toList();
          if (!along.contains(strip)) {
            along.stream()
                .map(Strip::part)
                .filter(part -> !part.equals(strip.part()))
                .forEach(met::add);
          }
        }
      }
    }
    return met;
  }

  /** Whether who leaves an edge squarely into the cloth comes to the other, and back. */
  private boolean face(Strip one, Strip other) {
    Vector across = table.cloth.middle(other).minus(table.cloth.middle(one));
    double wide = across.length();
    return wide > 0
        && table.cloth.outward(one).dot(across) < FACING * wide
        && table.cloth.outward(other).dot(across) > -FACING * wide;
  }
}
