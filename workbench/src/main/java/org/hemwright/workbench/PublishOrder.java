package org.hemwright.workbench;

import java.util.Optional;
import java.util.function.Function;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.PaperOptions;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.release.ReleaseShelf;

/**
 * What is to be published, and where.
 *
 * @param options which printed files; whether every page says that it is a proof
 * @param yardage lays the pattern on its cloths, once the checks have passed
 * @param out where publications go
 * @param shelf the pattern's releases, where it has a folder that may hold some
 * @param release whether this version is frozen on the shelf once it is published
 */
public record PublishOrder(
    PaperOptions options,
    Function<Progress, YardageTable> yardage,
    OutFolder out,
    Optional<ReleaseShelf> shelf,
    boolean release) {
  public PublishOrder {
    if (release && (shelf.isEmpty() || options.proof().isPresent())) {
      throw new IllegalArgumentException("a release is no proof, and has a shelf to stand on");
    }
  }

  /** Whether it goes out although a check fails, every page marked. */
  public boolean proof() {
    return options.proof().isPresent();
  }
}
