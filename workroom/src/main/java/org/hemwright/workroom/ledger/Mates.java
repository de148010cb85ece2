package org.hemwright.workroom.ledger;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * What an edge is sewn to: the edges that lie on it in a seam, and by how much the layers differ.
 *
 * @param piece the edge's piece
 * @param edge its name
 */
record Mates(SizeRun run, String piece, String edge) {
  void write(ObjectNode head, Measure measure) {
    Set<String> seams = new LinkedHashSet<>();
    Set<EdgeName> mates = new LinkedHashSet<>();
    for (SizedPattern sized : run.sizes()) {
      for (Seam seam : sized.seams()) {
        for (Seam.Join join : seam.joins()) {
          if (join.layers().stream().anyMatch(this::holds)) {
            seams.add(seam.name());
            join.layers()
                .forEach(layer -> layer.run().forEach(place -> mates.add(EdgeName.of(place))));
          }
        }
      }
    }
    mates.remove(new EdgeName(piece, edge));
    ArrayNode list = head.putArray("mates");
    mates.forEach(
        mate ->
            list.addObject().put("kind", "edge").put("piece", mate.piece).put("name", mate.edge));
    ArrayNode names = head.putArray("seams");
    seams.forEach(names::add);
    for (String seam : seams) {
      LedgerView.words(head, "sewn", LedgerView.shown(seam));
      measure.length("longer", LedgerView.shown(seam), sized -> difference(sized, seam));
    }
  }

  private record EdgeName(String piece, String edge) {
    static EdgeName of(EdgePlace place) {
      return new EdgeName(place.piece(), place.edge());
    }
  }

  private boolean holds(Seam.Layer layer) {
    return layer.run().stream().anyMatch(p -> p.piece().equals(piece) && p.edge().equals(edge));
  }

  private OptionalDouble difference(SizedPattern sized, String name) {
    for (Seam seam : sized.seams()) {
      if (seam.name().equals(name)) {
        for (Seam.Join join : seam.joins()) {
          Optional<Seam.Layer> own = join.layers().stream().filter(this::holds).findFirst();
          if (own.isPresent()) {
            Optional<Seam.Layer> other =
                join.layers().stream().filter(layer -> !holds(layer)).findFirst();
            if (other.isPresent()) {
              return OptionalDouble.of(
                  LayerWalk.of(own.get(), sized).length()
                      - LayerWalk.of(other.get(), sized).length());
            }
          }
        }
      }
    }
    return OptionalDouble.empty();
  }
}
