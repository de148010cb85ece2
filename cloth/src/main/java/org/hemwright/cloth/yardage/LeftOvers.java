package org.hemwright.cloth.yardage;

import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.SizeRun;

/** What the best fold of each view, cloth, width and size leaves of the cloth. */
public final class LeftOvers {
  private final IdentityHashMap<YardageRow, LeftOver> byRow;

  private LeftOvers(IdentityHashMap<YardageRow, LeftOver> byRow) {
    this.byRow = byRow;
  }

  /**
   * Looks through the best rows of a table.
   *
   * @param owned a length of cloth that is there (mm); nothing where it is bought
   */
  public static LeftOvers of(SizeRun run, YardageTable table, OptionalDouble owned) {
    IdentityHashMap<YardageRow, LeftOver> byRow = new IdentityHashMap<>();
    for (YardageRow row : table.rows()) {
      if (row.best()) {
        LeftOver.of(run, row, owned).ifPresent(left -> byRow.put(row, left));
      }
    }
    return new LeftOvers(byRow);
  }

  /** What this row of the table leaves; nothing where it is not known. */
  public Optional<LeftOver> of(YardageRow row) {
    return Optional.ofNullable(byRow.get(row));
  }
}
