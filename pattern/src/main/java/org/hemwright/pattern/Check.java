package org.hemwright.pattern;

import java.util.List;
import org.hemwright.pattern.finding.Finding;

/**
 * One question asked of a whole size run. It changes nothing and answers with findings only; no
 * finding means that all is well.
 */
public interface Check {
  /** The check's name, which {@code check --json} gives as {@code id}: {@code seam-length}. */
  String id();

  /** What it found, one finding for one cause, sizes grouped. */
  List<Finding> check(SizeRun run);

  /**
   * Whether it is asked again where pieces are cut apart for narrow cloth. Not what is asked of the
   * steps of making: the parts are joined before the piece is first used, and from there on are
   * what the whole piece is.
   */
  default boolean asksOfParts() {
    return true;
  }
}
