package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;

/** The garments of the examples folder, drafted. */
final class Examples {
  private Examples() {}

  static Path folder(String example) {
    return Path.of("..", "examples", example);
  }

  static SizeRun run(String example) {
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder(example)));
    assertThat(evaluated.problems()).isEmpty();
    return evaluated.run().orElseThrow();
  }

  static SizedPattern baseSize(String example) {
    SizeRun run = run(example);
    return run.size(run.pattern().base().name()).orElseThrow();
  }
}
