package org.hemwright.workroom.ledger;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * What a seam joins: its edges, how long its first two layers are, and by how much they differ.
 *
 * @param seam its name
 */
record SeamTelling(SizeRun run, String seam) {
  void write(ObjectNode head, Measure measure) {
    Set<List<String>> edges = new LinkedHashSet<>();
    for (SizedPattern sized : run.sizes()) {
      for (Seam each : sized.seams()) {
        if (each.name().equals(seam)) {
          for (Seam.Join join : each.joins()) {
            for (Seam.Layer layer : join.layers()) {
              for (EdgePlace place : layer.run()) {
                edges.add(List.of(place.piece(), place.edge()));
              }
            }
          }
        }
      }
    }
    ArrayNode list = head.putArray("mates");
    for (List<String> edge : edges) {
      list.addObject().put("kind", "edge").put("piece", edge.get(0)).put("name", edge.get(1));
    }
    if (!edges.isEmpty()) {
      head.putArray("seams").add(seam);
      measure.length("first_layer", sized -> layer(sized, 0));
      measure.length("second_layer", sized -> layer(sized, 1));
      measure.length(
          "surplus",
          sized -> {
            OptionalDouble first = layer(sized, 0);
            OptionalDouble second = layer(sized, 1);
            return first.isPresent() && second.isPresent()
                ? OptionalDouble.of(first.getAsDouble() - second.getAsDouble())
                : OptionalDouble.empty();
          });
    }
  }

  private OptionalDouble layer(SizedPattern sized, int number) {
    for (Seam each : sized.seams()) {
      if (each.name().equals(seam) && !each.joins().isEmpty()) {
        List<Seam.Layer> layers = each.joins().get(0).layers();
        if (number < layers.size()) {
          return OptionalDouble.of(LayerWalk.of(layers.get(number), sized).length());
        }
      }
    }
    return OptionalDouble.empty();
  }
}
