package org.hemwright.cli;

import java.nio.file.Path;
import org.hemwright.workbench.out.KeptLayings;

/** Keeps layings for the next time, also those made so far where the program is stopped. */
final class LayingKeeper implements AutoCloseable {
  private final KeptLayings layings;
  private final Thread whenStopped;

  /**
   * Begins with what is kept in a folder.
   *
   * @param folder need not be there yet
   */
  LayingKeeper(Path folder) {
    layings = KeptLayings.in(folder);
    whenStopped = new Thread(layings::keep, "keep layings");
    Runtime.getRuntime().addShutdownHook(whenStopped);
  }

  KeptLayings layings() {
    return layings;
  }

  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(whenStopped);
      layings.keep();
    } catch (IllegalStateException stopping) {
      // It keeps them itself now.
    }
  }
}
