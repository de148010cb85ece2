package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hemwright.workroom.keep.Remembered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher's archive of classes is made from leaves nothing behind. */
class WarmUpTest {
  @TempDir Path home;

  @Test
  void leavesNothing() throws Exception {
    List<String> before = warm();
    Remembered remembered = Remembered.in(home.resolve("remembered.txt"));
    new Workroom(remembered, home).warmUp();
    assertThat(remembered.folders()).isEmpty();
    assertThat(home).isEmptyDirectory();
    assertThat(warm()).isEqualTo(before);
  }

  private static List<String> warm() throws Exception {
    try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.startsWith("hemwright-warm"))
          .sorted()
          .toList();
    }
  }
}
