package org.hemwright.workroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workroom.keep.Remembered;
import org.hemwright.workroom.serve.FirstVisit;

/**
 * One opening of an example in a folder of its own, as a browser would open it: for whoever builds
 * an archive of the classes that a start loads.
 */
final class WarmUp {
  private static final String EXAMPLE = "inlet-tee";

  private WarmUp() {}

  static void once() throws IOException, BrowserDoor.Refused {
    Path folder = Files.createTempDirectory("hemwright-warm");
    try {
      PackedFolder example = new PackedFolder(EXAMPLE);
      for (String file : example.names()) {
        if (example.file(file) instanceof FolderFile.Content content) {
          Files.write(folder.resolve(file), content.bytes());
        }
      }
      Workroom workroom = new Workroom(Remembered.in(folder.resolve("remembered.txt")), folder);
      try (BrowserDoor.Opened opened = workroom.open(Optional.of(folder), 0, ignored -> {})) {
        FirstVisit.to(opened.address());
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
      }
    } finally {
      clear(folder);
    }
  }

  private static void clear(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
