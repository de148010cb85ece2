package org.hemwright.pattern.make;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Origin;

/**
 * One act of making (handbook section 7, "Step record").
 *
 * @param id stays when steps are put in or moved: {@code sew_side_seams}, or the designer's own
 * @param act what is done
 * @param work what it is done to, in order; nothing for an act that needs none (trying on)
 * @param sewing how it is stitched; {@link Sewing#NONE} where no needle is used
 * @param press how it is pressed, as the act itself or after it
 * @param leaves the openings left in what is sewn
 * @param words what the designer adds
 * @param views the names of the views in which it is done, at least one
 * @param sizes the sizes in which it is done; every size when absent
 * @param origin where the document says it
 */
public record Step(
    String id,
    Act act,
    List<Work> work,
    Sewing sewing,
    Optional<PressDirection> press,
    List<Opening> leaves,
    Words words,
    List<String> views,
    Optional<SizeRange> sizes,
    Origin origin) {
  public Step {
    work = List.copyOf(work);
    leaves = List.copyOf(leaves);
    views = List.copyOf(views);
    if (id.isBlank() || views.isEmpty()) {
      throw new IllegalArgumentException("a step has an id and belongs to a view: " + id);
    }
  }

  /**
   * The designer's own words beside a step.
   *
   * @param notes tips, shown beside the step
   * @param look what the maker looks at before going on: "both notches meet"
   */
  public record Words(List<String> notes, List<String> look) {
    /** None. */
    public static final Words NONE = new Words(List.of(), List.of());

    public Words {
      notes = List.copyOf(notes);
      look = List.copyOf(look);
    }
  }

  /**
   * An opening that is left while the rest is sewn.
   *
   * @param name {@code feed}
   * @param length (mm)
   * @param where in the designer's words: "at the centre back"
   */
  public record Opening(String name, Amount length, Optional<String> where) {}

  /** Whether it is done in a view and a size. */
  public boolean isIn(String view, Size size) {
    return views.contains(view) && sizes.filter(range -> !range.contains(size)).isEmpty();
  }

  /** The work of one kind, in order. */
  public <W extends Work> List<W> work(Class<W> kind) {
    return work.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
