package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.part.Parts;
import org.hemwright.pattern.make.Step;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The booklet of every example as a value: its parts, its words, its figures. */
class BookletTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void itsPartsStandInTheOrderOfTheHandbook(String example) {
    // Handbook section 7, "Order"; layouts and cloth tables are left out where nothing was laid.
    List<String> order = new ArrayList<>(Parts.IDS);
    List<String> ids =
        Examples.booklet(example).booklet().sections().stream().map(Section::id).toList();
    order.retainAll(ids);
    assertThat(ids).isEqualTo(order);
    assertThat(ids)
        .contains("level", "printing", "supplies", "safety", "sizes", "finished", "choosing")
        .contains("pieces", "glossary", "key", "stitches", "steps", "care", "version", "licence");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void generatedTextHoldsNoBareDigit(String example) {
    for (List<Inline> text : Examples.booklet(example).booklet().texts()) {
      for (Inline inline : Inline.all(text)) {
        if (inline instanceof Inline.Text plain) {
          assertThat(plain.text()).doesNotContainPattern("\\p{N}");
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void everyStepIsToldOnceInItsOrder(String example) {
    BookletMaking made = Examples.booklet(example);
    List<String> told =
        made.booklet().blocks().stream()
            .filter(Block.Step.class::isInstance)
            .map(block -> ((Block.Step) block).id())
            .toList();
    List<String> steps =
        made.given().telling().run().pattern().making().steps().stream().map(Step::id).toList();
    assertThat(told).isEqualTo(steps).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void everyFigureSaysWhatItShowsAndHasANameOfItsOwn(String example) {
    List<Figure> figures = Examples.booklet(example).booklet().figures();
    assertThat(figures).extracting(Figure::id).doesNotHaveDuplicates();
    assertThat(figures).allSatisfy(figure -> assertThat(figure.alt()).isNotBlank());
  }
}
