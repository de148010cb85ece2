package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Section;
import org.junit.jupiter.api.Test;

/** The booklet's cautions for children's clothes (handbook section 7, "Safety texts"). */
class CautionsTest {
  private static final String CORD =
      "  cord waist_cord in band at waist, length 120 cm, free ends 7 cm\n";

  private static String safety(BookletMaking making) {
    return making.booklet().sections().stream()
        .filter(section -> section.id().equals("safety"))
        .map(Section::blocks)
        .flatMap(blocks -> Block.texts(blocks).stream())
        .map(Inline::plain)
        .collect(Collectors.joining("\n"));
  }

  @Test
  void childrensNightwearWithACordBearsEveryCautionAndDefersToLocalRules() {
    String said =
        safety(
            Examples.changed(
                "eddy-skirt",
                Map.of(
                    "\nfor women\n",
                    "\nfor children\n",
                    "\nmake\n",
                    "\nmake\n  sleepwear\n" + CORD)));
    assertThat(said)
        .contains("sleepwear can burn", "drawstrings can catch", "small parts")
        .contains("Rules for children", "ask which hold where the garment is worn or sold");
  }

  @Test
  void clothesForGrownPeopleBearNoneOfThem() {
    String said =
        safety(Examples.changed("eddy-skirt", Map.of("\nmake\n", "\nmake\n  sleepwear\n" + CORD)));
    assertThat(said).doesNotContain("hildren’s").contains("iron");
  }
}
