package org.hemwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FileNamesTest {
  /** Marks come off by Unicode's compatibility decomposition (UAX 15). */
  @Test
  void lettersLoseTheirMarksAndAllElseBecomesHyphens() {
    assertThat(FileNames.slug("Größe 44")).isEqualTo("grosse-44");
    assertThat(FileNames.slug("Été à l'île")).isEqualTo("ete-a-l-ile");
    assertThat(FileNames.slug("S/M")).isEqualTo("s-m");
    assertThat(FileNames.slug("../x")).isEqualTo("x");
    assertThat(FileNames.slug("∅")).isEqualTo("pattern");
  }
}
