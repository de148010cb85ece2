package org.hemwright.paper;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** A checker that is not ours; where it is not installed, the test is skipped and says so. */
public final class OutsideTool {
  private OutsideTool() {}

  /** What the tool prints, both streams; the test fails where the tool does. */
  public static String run(Path folder, String... command) {
    assumeTrue(installed(command[0]), command[0] + " is not installed");
    try {
      Process process =
          new ProcessBuilder(List.of(command))
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      int code = process.waitFor();
      if (code != 0) {
        throw new AssertionError(Arrays.toString(command) + " ended with " + code + ":\n" + said);
      }
      return said;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean installed(String tool) {
    String path = System.getenv("PATH");
    return path != null
        && Arrays.stream(path.split(":", -1))
            .anyMatch(dir -> Files.isExecutable(Path.of(dir, tool)));
  }
}
