package org.hemwright.pattern.seam;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Origin;

/**
 * What is sewn in one pass: two or more layers that lie on each other along a line.
 *
 * <p>Resolved: each layer names the very copies and halves it takes, in the order in which the
 * needle meets them. The first layer's length is the base of ease: ease is how much longer the
 * first layer is than the second.
 *
 * @param name {@code side_seams}
 * @param joins the passes that the designer named at once (a left and a right side seam)
 * @param ease how much longer the first layer may be than each other layer
 * @param even where evenly spaced notches of one layer meet seams and folds of the others
 * @param origin where the document states it
 */
public record Seam(
    String name, List<Join> joins, Ease ease, Optional<SeamRequest.Even> even, Origin origin) {
  public Seam {
    joins = List.copyOf(joins);
    if (joins.isEmpty()) {
      throw new IllegalArgumentException("a seam joins something: " + name);
    }
  }

  /** A seam without even marks. */
  public Seam(String name, List<Join> joins, Ease ease, Origin origin) {
    this(name, joins, ease, Optional.empty(), origin);
  }

  /**
   * One pass of sewing.
   *
   * @param layers two or more; all run the same way
   */
  public record Join(List<Layer> layers) {
    public Join {
      layers = List.copyOf(layers);
      if (layers.size() < 2) {
        throw new IllegalArgumentException("a seam has two layers or more");
      }
    }
  }

  /**
   * One layer: edge places end to end.
   *
   * @param run in the order in which they are sewn, at least one
   */
  public record Layer(List<EdgePlace> run) {
    public Layer {
      run = List.copyOf(run);
      if (run.isEmpty()) {
        throw new IllegalArgumentException("a layer has at least one edge");
      }
    }

    /** The edges it takes, copies aside: {@code front.armhole and back.armhole}. */
    public String text() {
      return run.stream()
          .map(place -> place.piece() + "." + place.edge())
          .distinct()
          .collect(Collectors.joining(" and "));
    }
  }

  /**
   * How much the first layer's length exceeds the others', as declared.
   *
   * @param least (mm, or a share of the other layer's length); negative where the first layer is
   *     stretched onto the other
   * @param most in the same unit, at or above least
   * @param share whether both are shares rather than millimetres
   */
  public record Ease(double least, double most, boolean share) {
    /** None: the layers are equal. */
    public static final Ease NONE = new Ease(0, 0, false);

    public Ease {
      if (!(least <= most)) {
        throw new IllegalArgumentException("ease runs from least to most");
      }
    }
  }
}
