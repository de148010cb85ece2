package org.hemwright.workroom.paper;

import com.fasterxml.jackson.databind.node.ArrayNode;
import org.hemwright.paper.PrintedFile;

/** A file that was made, as windows are told of it. */
public final class MadeFile {
  private MadeFile() {}

  /** Puts it into a list, with its name, its paper and how many pages it has. */
  public static void tell(PrintedFile file, ArrayNode list) {
    list.addObject().put("name", file.name()).put("paper", file.paper()).put("pages", file.pages());
  }
}
