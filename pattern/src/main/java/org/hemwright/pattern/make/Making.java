package org.hemwright.pattern.make;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.body.Size;

/**
 * How the garment is made.
 *
 * @param stages in order; steps before the first named stage stand in one without a title
 * @param cords and drawstrings, in the order of the document
 * @param sleepwear whether it is slept in
 * @param usualNeedle the needle for every step that names no other
 */
public record Making(
    List<Stage> stages, List<Cord> cords, boolean sleepwear, Optional<Needle> usualNeedle) {
  /** The document says nothing of how it is made. */
  public static final Making NONE = new Making(List.of(), List.of(), false, Optional.empty());

  public Making {
    stages = List.copyOf(stages);
    cords = List.copyOf(cords);
  }

  /**
   * Some steps that are done together, and shown in one post.
   *
   * @param title as the maker reads it; blank before the first stage that has one
   * @param steps in order
   */
  public record Stage(String title, List<Step> steps) {
    public Stage {
      steps = List.copyOf(steps);
    }
  }

  /** Whether the document says how it is made. */
  public boolean isStated() {
    return !steps().isEmpty();
  }

  /** Every step in order. */
  public List<Step> steps() {
    return stages.stream().flatMap(stage -> stage.steps().stream()).toList();
  }

  /** The fabrics that a step fuses, by name, in the order of the steps. */
  public Set<String> fused() {
    Set<String> fused = new LinkedHashSet<>();
    for (Step step : steps()) {
      if (step.act() instanceof Act.Fuse fuse) {
        fuse.fabric().ifPresent(fused::add);
      }
    }
    return fused;
  }

  /** The steps of one view in one size, in order. */
  public List<Step> steps(String view, Size size) {
    return stages.stream()
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.isIn(view, size))
        .toList();
  }

  /** The step of that id. */
  public Optional<Step> step(String id) {
    return steps().stream().filter(step -> step.id().equals(id)).findFirst();
  }

  /** The cord of that name. */
  public Optional<Cord> cord(String name) {
    return cords.stream().filter(cord -> cord.name().equals(name)).findFirst();
  }
}
