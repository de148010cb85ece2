package org.hemwright.cli;

import java.util.stream.Collectors;
import org.hemwright.paper.PrintedFile;

/** One printed file told to a person: its name, its pages, and the pages of each group of sizes. */
final class PrintedLine {
  private PrintedLine() {}

  static String of(PrintedFile file) {
    String pages = file.pages() == 1 ? "1 page" : file.pages() + " pages";
    if (file.paper().isEmpty()) {
      pages =
          file.name().endsWith(".html")
              ? "page for a screen"
              : file.name().endsWith(".svg") ? "drawing" : "picture";
    }
    String groups =
        file.groups().stream()
            .map(group -> group.pages() + " for " + sizes(group))
            .collect(Collectors.joining(", "));
    return "  %-44s %s%s".formatted(file.name(), pages, groups.isEmpty() ? "" : ": " + groups);
  }

  private static String sizes(PrintedFile.GroupPages group) {
    String first = group.sizes().get(0);
    String last = group.sizes().get(group.sizes().size() - 1);
    return first.equals(last) ? "size " + first : "sizes " + first + " to " + last;
  }
}
