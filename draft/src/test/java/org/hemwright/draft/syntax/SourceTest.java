package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import org.hemwright.pattern.finding.Origin;
import org.junit.jupiter.api.Test;

class SourceTest {
  @Test
  void countsLinesWhateverEndsThem() {
    Source source = new Source("p", "one\ntwo\r\nthree\rfour\n");
    assertThat(source.lines()).isEqualTo(5);
    assertThat(source.origin(0)).isEqualTo(new Origin("p", 1, 1));
    assertThat(source.origin(4)).isEqualTo(new Origin("p", 2, 1));
    assertThat(source.origin(source.text().indexOf("hree"))).isEqualTo(new Origin("p", 3, 2));
    assertThat(source.origin(source.text().indexOf("four"))).isEqualTo(new Origin("p", 4, 1));
    assertThat(source.origin(source.text().length())).isEqualTo(new Origin("p", 5, 1));
    for (int line = 1; line <= 4; line++) {
      assertThat(source.text(new Span(source.lineStart(line), source.lineEnd(line))))
          .isEqualTo(new String[] {"one", "two", "three", "four"}[line - 1]);
    }
  }

  @Test
  void anEmptyTextHasOneLine() {
    Source source = new Source("p", "");
    assertThat(source.lines()).isEqualTo(1);
    assertThat(source.origin(0)).isEqualTo(new Origin("p", 1, 1));
    assertThat(source.lineEnd(1)).isZero();
  }

  @Test
  void aByteOrderMarkIsNoCharacterOfTheLine() {
    Source source = new Source("p", "\ufefflanguage 1");
    assertThat(source.origin(0)).isEqualTo(new Origin("p", 1, 1));
    assertThat(source.origin(1)).isEqualTo(new Origin("p", 1, 1));
    assertThat(source.origin(10)).isEqualTo(new Origin("p", 1, 10));
  }
}
