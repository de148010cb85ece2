package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/** A file that the workroom writes, read as any other program reads it. */
record OnDisk(Path file) {
  /** What stands in it; nothing while it is not there or is just being replaced. */
  String text() {
    try {
      return Files.readString(file);
    } catch (IOException between) {
      return "";
    }
  }

  /** Its text once that is as wanted, or after two minutes as it then is. */
  String once(Predicate<String> wanted) throws InterruptedException {
    await(() -> wanted.test(text()));
    return text();
  }

  /** Its text once these words stand in it, within two minutes. */
  String once(String words) throws InterruptedException {
    String text = once(now -> now.contains(words));
    assertThat(text).contains(words);
    return text;
  }

  /** Waits until something is so, at most two minutes: a slow machine takes its time. */
  static void await(BooleanSupplier wanted) throws InterruptedException {
    for (int i = 0; i < 6000 && !wanted.getAsBoolean(); i++) {
      Thread.sleep(20);
    }
  }
}
