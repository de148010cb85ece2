package org.hemwright.cli;

import java.io.IOException;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import org.hemwright.workbench.Progress;

/** A bar on the terminal; nothing where there is none. */
final class ProgressLine implements Progress, AutoCloseable {
  private final ProgressBar bar;

  private ProgressLine(ProgressBar bar) {
    this.bar = bar;
  }

  /** What to run some work with: a bar that is closed again, or silence. */
  @SuppressWarnings("SystemConsoleNull") // the launcher asks later Javas for the old answer
  static <T> T during(String task, boolean quiet, Work<T> work) throws IOException {
    if (quiet || System.console() == null) {
      return work.with(Progress.SILENT);
    }
    ProgressBar bar =
        new ProgressBarBuilder()
            .setTaskName(task)
            .setInitialMax(1)
            .setRenderer(new ProgressWords())
            .clearDisplayOnFinish()
            .build();
    try (ProgressLine line = new ProgressLine(bar)) {
      return work.with(line);
    }
  }

  /** Work that tells how far it has come. */
  interface Work<T> {
    T with(Progress progress) throws IOException;
  }

  @Override
  public void step(String doing, int done, int of) {
    bar.maxHint(of);
    bar.stepTo(done);
    bar.setExtraMessage(doing);
  }

  @Override
  public void close() {
    bar.close();
  }
}
