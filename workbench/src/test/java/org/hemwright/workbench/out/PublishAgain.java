package org.hemwright.workbench.out;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Publication;
import org.hemwright.workbench.PublishOrder;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.release.ReleaseShelf;

/**
 * Publishes and releases version after version of a small pattern, without end, until it is killed.
 * Says {@code ready} after the first.
 */
final class PublishAgain {
  private PublishAgain() {}

  /** Arguments: the pattern's folder, and the first version's second number. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    String document = Files.readString(folder.resolve("pattern.hem"));
    for (int i = Integer.parseInt(args[1]); ; i++) {
      String now = document.replaceFirst("version [0-9.]+", "version 1." + i);
      // Moved into place, so that a kill never leaves half a document for the next writer.
      Path next = Files.writeString(folder.resolve("pattern.next"), now, StandardCharsets.UTF_8);
      Files.move(next, folder.resolve("pattern.hem"), StandardCopyOption.ATOMIC_MOVE);
      Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder));
      Publication.of(
          evaluated,
          evaluated.run().orElseThrow(),
          new PublishOrder(
              PaperOptions.everything().on(PageFormat.EITHER, PageFormat.A0),
              progress -> new YardageTable(List.of()),
              new OutFolder(folder.resolve("out")),
              Optional.of(ReleaseShelf.of(folder)),
              true),
          Progress.SILENT);
      System.out.println("ready");
    }
  }
}
