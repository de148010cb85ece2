package org.hemwright.cloth.yardage;

import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.Misfit;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.split.SplitChoice;

/**
 * One row of the table.
 *
 * @param view the garment
 * @param fabric the cloth
 * @param nap whether it is laid for cloth with a nap
 * @param size the size
 * @param width of the cloth as sold (mm)
 * @param fold how it is folded
 * @param need what it takes; absent where it does not fit
 * @param misfits what does not fit
 * @param variant which pieces are cut apart, and how; none where all are cut whole
 * @param best whether no other fold of this width needs less to buy, nor is as good and easier to
 *     cut
 */
public record YardageRow(
    View view,
    Fabric fabric,
    Fabric.Nap nap,
    Size size,
    double width,
    Fold fold,
    Optional<Need> need,
    List<Misfit> misfits,
    List<SplitChoice> variant,
    boolean best) {
  public YardageRow {
    variant = List.copyOf(variant);
    misfits = List.copyOf(misfits);
  }

  /** Whether every piece finds room. */
  public boolean fits() {
    return need.isPresent();
  }

  /** Whether it is cut from a length of cloth that is there already (mm), not yet shrunk. */
  public boolean isCutFrom(double owned) {
    return need.filter(each -> each.bought() <= owned + Tolerance.DRAWN_LENGTH).isPresent();
  }

  /** The same, the one that is drawn of its cloth. */
  public YardageRow asBest() {
    return new YardageRow(view, fabric, nap, size, width, fold, need, misfits, variant, true);
  }

  /** The same, not the one that is drawn of its cloth. */
  public YardageRow asOther() {
    return new YardageRow(view, fabric, nap, size, width, fold, need, misfits, variant, false);
  }

  /** The same, laid otherwise. */
  public YardageRow with(Need other) {
    return new YardageRow(
        view, fabric, nap, size, width, fold, Optional.of(other), misfits, variant, best);
  }
}
