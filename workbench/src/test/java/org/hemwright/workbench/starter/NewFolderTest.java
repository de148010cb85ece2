package org.hemwright.workbench.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewFolderTest {
  @Test
  void aNewFolderHoldsTheStarterUnderItsOwnName(@TempDir Path in) throws IOException {
    NewFolder folder = NewFolder.called("kelp \"tee\" no. 2", in);
    assertThat(folder.path()).isEqualTo(in.resolve("kelp-tee-no-2"));
    assertThat(folder.isTaken()).isFalse();
    folder.fill(Starter.named("knit-tee").orElseThrow());
    assertThat(folder.isTaken()).isTrue();
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder.path()));
    assertThat(evaluated.problems()).isEmpty();
    assertThat(evaluated.run().orElseThrow().pattern().details().title())
        .isEqualTo("Kelp 'tee' no. 2");
  }

  @Test
  void aNameOfSignsAloneStillGivesAFolder(@TempDir Path in) {
    assertThat(NewFolder.called(" ../ ", in).path()).isEqualTo(in.resolve("new-pattern"));
  }
}
