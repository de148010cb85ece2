package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class LanguageReferenceTest {
  private static final Path GUIDE = Path.of("../docs/language.md");

  /** Run with {@code -Dwrite.docs=true} the test writes the page; without, it holds it. */
  @Test
  void theGuideHoldsTheListAsItIs() throws IOException {
    String page = SampleTexts.read(GUIDE);
    String made = LanguageReference.within(page);
    if (Boolean.getBoolean("write.docs")) {
      Files.writeString(GUIDE, made);
      page = made;
    }
    assertThat(page).isEqualTo(made);
  }

  @Test
  void showsEveryFormWithItsExample() {
    String list = LanguageReference.markdown();
    assertThat(Forms.rows())
        .allSatisfy(form -> assertThat(list).contains("`" + form.example() + "`"));
    assertThat(list)
        .contains("- `dial <name> = <value> from <lowest> to <highest> \"words\"`")
        .contains("- `cut <count> of <fabric>{, (mirrored | on the fold)}`")
        .contains(
            "- `[double] notch <edge> <along> [as <name>] [when <condition>] [in sizes <sizes>]`");
  }

  @Test
  void aPageWithoutTheMarksIsRefused() {
    assertThatThrownBy(() -> LanguageReference.within("# Language"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("forms: begin");
  }
}
