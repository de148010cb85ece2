package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hemwright.workbench.out.Sha256;

/** What stands in a folder. */
final class StandingFiles {
  private StandingFiles() {}

  /** The hash of every file in a folder, by its whole name. */
  static Map<String, String> in(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(file.toString(), Sha256.of(Files.readAllBytes(file)));
      }
    }
    return files;
  }
}
