package org.hemwright.pattern.construction;

import java.util.List;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/**
 * What a step did in one view and size.
 *
 * @param step the step
 * @param work what of its work this view has
 * @param sewn the passes that it sewed, in order
 * @param strips the edges that it dealt with: sewn, hemmed, finished, bound, pressed, left raw
 */
public record Done(Step step, List<Work> work, List<Pass> sewn, List<Strip> strips) {
  public Done {
    work = List.copyOf(work);
    sewn = List.copyOf(sewn);
    strips = List.copyOf(strips);
  }
}
