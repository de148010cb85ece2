package org.hemwright.draft.add;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;

/** The ways to say what is sewn together, by the edges that were pointed at in their order. */
final class SeamWays {
  private final Scene scene;
  private final String start;
  private final Ways ways;

  SeamWays(Scene scene, String name, Ways ways) {
    this.scene = scene;
    this.start = "seam " + name + " ";
    this.ways = ways;
  }

  private void add(Addition.Way way, String layers) {
    ways.add(way, new NewLine(NewLine.Place.SEAM, start + layers));
  }

  void find(List<Pick> picks) {
    List<Pick.OfLine> edges = new ArrayList<>();
    for (Pick pick : picks) {
      if (pick instanceof Pick.OfLine line && scene.isEdge(line)) {
        edges.add(line);
      }
    }
    if (edges.isEmpty()) {
      return;
    }
    String first = named(edges.get(0));
    if (edges.size() == 1) {
      add(Addition.Way.LAYERS, first + " with " + first);
      add(Addition.Way.LAYERS_REVERSED, first + " with " + first + " reversed");
      return;
    }
    List<String> others = edges.subList(1, edges.size()).stream().map(SeamWays::named).toList();
    if (edges.size() == 2) {
      String second = others.get(0);
      add(Addition.Way.LAYERS, first + " with " + second);
      add(Addition.Way.LAYERS_REVERSED, first + " with " + second + " reversed");
      add(Addition.Way.EVERY, first + " with every " + second);
      add(Addition.Way.EVERY, "every " + first + " with every " + second);
      eased(edges, first, second);
      return;
    }
    add(Addition.Way.END_TO_END, first + " with " + String.join(" then ", others));
    add(
        Addition.Way.END_TO_END,
        first + " with " + String.join(" reversed then ", others.subList(0, 2)) + rest(others));
    add(Addition.Way.EVERY, first + " with every " + String.join(" then every ", others));
    add(Addition.Way.LAYERS, first + " with " + String.join(" with ", others));
  }

  private static String rest(List<String> others) {
    return others.size() > 2
        ? " then " + String.join(" then ", others.subList(2, others.size()))
        : "";
  }

  /** Where the first edge is longer, by how much it is eased. */
  private void eased(List<Pick.OfLine> edges, String first, String second) {
    Optional<Path> one = scene.path(edges.get(0).piece(), edges.get(0).name());
    Optional<Path> other = scene.path(edges.get(1).piece(), edges.get(1).name());
    if (one.isPresent() && other.isPresent()) {
      double more = one.get().length() - other.get().length();
      if (more > 0 && !scene.spelling().isNothing(more)) {
        String ease = ", ease " + scene.spelling().length(more);
        add(Addition.Way.EASED, first + " with " + second + ease);
        add(Addition.Way.EASED, first + " with " + second + " reversed" + ease);
      }
    }
  }

  private static String named(Pick.OfLine line) {
    return line.piece() + "." + line.name();
  }
}
