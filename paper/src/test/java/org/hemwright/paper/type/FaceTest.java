package org.hemwright.paper.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class FaceTest {
  @ParameterizedTest
  @FieldSource("org.hemwright.paper.type.Face#OURS")
  void figuresAreTabular(Face face) {
    double one = face.set("1", 10).width();
    for (char figure = '0'; figure <= '9'; figure++) {
      assertThat(face.set(String.valueOf(figure), 10).width()).isEqualTo(one);
    }
    assertThat(face.set("118.5", 10).width()).isEqualTo(face.set("444.4", 10).width());
  }

  // The font's own hmtx table: figures of Regular advance by 497 of 1000 units.
  @Test
  void widthsAreTheFontsOwn() {
    assertThat(Face.REGULAR.set("7", 72).width()).isCloseTo(25.4 * 0.497, within(1e-9));
  }

  @Test
  void pairsAreKerned() {
    double apart = Face.REGULAR.set("T", 10).width() + Face.REGULAR.set("o", 10).width();
    assertThat(Face.REGULAR.set("To", 10).width()).isLessThan(apart - 0.1);
    assertThat(Face.REGULAR.set("no", 10).width())
        .isCloseTo(
            Face.REGULAR.set("n", 10).width() + Face.REGULAR.set("o", 10).width(), within(0.05));
  }

  @Test
  void charactersThatTheFamilyLacksAreNamedAndShownAsAQuestionMark() {
    assertThat(Face.REGULAR.missing("Süß 裙 and 裙")).containsExactly("裙");
    assertThat(Face.REGULAR.set("裙", 10).glyphs().get(0).character()).isEqualTo("?");
    assertThat(Face.SEMIBOLD.missing("1 ¼ ½ ¾ ⅛ ⅜ ⅝ ⅞ in · 62.5 cm × – “” °")).isEmpty();
  }
}
