package org.hemwright.workroom.start;

import java.nio.file.Path;

/** Opens a folder in the place of the start page, and leads back to it. */
public interface Opener {
  /** What comes of opening. */
  enum Outcome {
    /** It is open; pages that load anew show it. */
    OPEN,
    /** Another workroom has it open. */
    BUSY,
    /** There is no folder with a document at that path. */
    NONE,
    /** It cannot be read or written. */
    CLOSED
  }

  /** Opens a folder; called by the start page, on its own thread. */
  Outcome open(Path folder);

  /** Closes the folder that is open, everything kept, and goes back to the start page. */
  void away();
}
