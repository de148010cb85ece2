package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class ProgressWordsTest {
  private static String line(double share, int seconds, int most) {
    return ProgressWords.line(
        "Publishing", "laying on cloth", share, Duration.ofSeconds(seconds), most);
  }

  @Test
  void saysHowFarHowLongAndAboutHowLongYet() {
    assertThat(line(0.25, 60, 120))
        .isEqualTo(
            "Publishing [======>                 ] 25%  1:00 so far, about 3:00 left  laying on"
                + " cloth");
  }

  @Test
  void guessesNothingAtTheStartAndNothingAtTheEnd() {
    assertThat(line(0, 7, 120)).contains("0%  0:07 so far  laying").doesNotContain("left");
    assertThat(line(1, 7, 120)).contains("100%").doesNotContain("left").doesNotContain(">");
  }

  @Test
  void isNeverWiderThanTheTerminal() {
    assertThat(line(0.5, 600, 40)).hasSize(40).startsWith("Publishing [");
  }
}
