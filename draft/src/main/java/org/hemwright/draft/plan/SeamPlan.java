package org.hemwright.draft.plan;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.SeamRequest;

/**
 * A seam as planned.
 *
 * @param layers as the document states them
 * @param least the slot of the least ease, or {@link Node#NONE}
 * @param most the slot of the most ease, or NONE where it is the least
 * @param check the slot that looks the ease over, or NONE
 * @param stretched whether the slot gives how far the first layer is stretched instead
 */
record SeamPlan(
    String name,
    List<SeamRequest.Run> layers,
    int least,
    int most,
    int check,
    boolean stretched,
    Optional<SeamRequest.Even> even,
    Origin origin) {
  SeamPlan {
    layers = List.copyOf(layers);
  }

  /** The names of the pieces that it takes, each once. */
  List<String> pieces() {
    return layers.stream()
        .flatMap(layer -> layer.places().stream())
        .map(SeamRequest.Term::piece)
        .distinct()
        .toList();
  }

  /** What is asked for in one size; nothing where its ease could not be worked out. */
  Optional<SeamRequest> in(Values values) {
    if (least == Node.NONE) {
      return Optional.of(new SeamRequest(name, layers, Seam.Ease.NONE, even, origin));
    }
    int upper = most == Node.NONE ? least : most;
    if (!values.has(check)) {
      return Optional.empty();
    }
    boolean share =
        values.program().kind(least) != Kind.LENGTH && values.program().kind(upper) != Kind.LENGTH;
    double from = values.number(least);
    double to = values.number(upper);
    if (stretched) {
      from = share ? -from / (1 + from) : -from;
      to = from;
    }
    Seam.Ease ease = new Seam.Ease(Math.min(from, to), Math.max(from, to), share);
    return Optional.of(new SeamRequest(name, layers, ease, even, origin));
  }
}
