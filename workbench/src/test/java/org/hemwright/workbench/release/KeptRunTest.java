package org.hemwright.workbench.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.run.ReadRun;
import org.hemwright.exchange.run.SizeRunJson;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PackedFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of the kept run: what is read is what was written, and nothing else is read at all. */
class KeptRunTest {
  @ParameterizedTest
  @ValueSource(strings = {"eddy-skirt", "inlet-tee", "marram-trousers"})
  void aRunIsReadAsItWasWritten(String example) {
    SizeRun run = run(example);
    byte[] written = SizeRunJson.write(run);

    ReadRun read = SizeRunJson.read("run.json", written);

    assertThat(read.findings()).isEmpty();
    assertThat(read.run()).contains(run);
    assertThat(SizeRunJson.write(read.run().orElseThrow())).isEqualTo(written);
  }

  @Test
  void commentsAndBlankLinesChangeNoContent() {
    PackedFolder folder = new PackedFolder("eddy-skirt");
    SizeRun run = run("eddy-skirt");
    String text =
        new String(Workbench.evaluate(folder).sources().get("pattern.hem"), StandardCharsets.UTF_8);
    SizeRun other =
        Drafting.draft("pattern.hem", "# A note.\n\n" + text, run.pattern().chart())
            .run()
            .orElseThrow();
    SizeRun longer =
        Drafting.draft("pattern.hem", text.replace("68 cm ", "69 cm "), run.pattern().chart())
            .run()
            .orElseThrow();

    assertThat(other).isNotEqualTo(run);
    assertThat(SizeRunJson.content(other)).isEqualTo(SizeRunJson.content(run));
    assertThat(SizeRunJson.content(longer)).isNotEqualTo(SizeRunJson.content(run));
  }

  @Test
  void whatIsNoRunIsToldAndNeverThrown() {
    assertThat(code("")).isEqualTo("run-broken");
    assertThat(code("[]")).isEqualTo("run-broken");
    assertThat(code("{\"size_run\":1")).isEqualTo("run-broken");
    assertThat(code("{\"size_run\":1}")).isEqualTo("run-odd");
    assertThat(code("{\"size_run\":2,\"run\":{}}")).isEqualTo("run-newer");
    assertThat(code("[".repeat(100_000))).isEqualTo("run-broken");
  }

  /** Any one byte altered: read as some run, or told; seeded, so that a failure comes again. */
  @Test
  void aDamagedFileNeverThrows() {
    byte[] written = SizeRunJson.write(run("eddy-skirt"));
    SplittableRandom random = new SplittableRandom(5);
    int told = 0;
    for (int i = 0; i < 40; i++) {
      byte[] damaged = written.clone();
      damaged[random.nextInt(damaged.length)] = (byte) "{}[],:\"x-9".charAt(random.nextInt(10));
      ReadRun read = SizeRunJson.read("run.json", damaged);
      assertThat(read.run().isPresent()).isEqualTo(read.findings().isEmpty());
      told += read.findings().size();
    }
    assertThat(told).isPositive();
  }

  private static String code(String text) {
    ReadRun read = SizeRunJson.read("run.json", text.getBytes(StandardCharsets.UTF_8));
    assertThat(read.run()).isEmpty();
    return read.findings().stream().map(finding -> finding.code()).findFirst().orElse("");
  }

  private static SizeRun run(String example) {
    return Workbench.evaluate(new PackedFolder(example)).run().orElseThrow();
  }

  /** Sizes of the files, for the record: a whole run stays below what a folder's file may hold. */
  @Test
  void aRunOfTwentyFourSizesStaysSmallEnoughToRead() {
    for (String example : List.of("eddy-skirt", "inlet-tee", "marram-trousers")) {
      assertThat(SizeRunJson.write(run(example)).length).isLessThan(16 << 20);
    }
  }
}
