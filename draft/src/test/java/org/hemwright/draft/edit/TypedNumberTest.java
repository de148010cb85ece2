package org.hemwright.draft.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Expression.Literal;
import org.hemwright.pattern.body.Size;
import org.junit.jupiter.api.Test;

/** Numbers that are typed: exact in the unit that stands there, two ways in another (design). */
class TypedNumberTest {
  private static List<String> ways(String line, String there, String typed) {
    String text = "language 1\n" + line + "\n";
    Plan plan = Plan.of(DocumentReader.read("pattern.hem", text), DragTest.CHART).plan();
    Literal literal =
        plan.literals().stream()
            .filter(each -> each.span().start() == text.indexOf(there))
            .findFirst()
            .orElseThrow();
    Size size = DragTest.CHART.sizes().get(0);
    return TypedNumber.of(plan, literal, typed, size).ways().stream()
        .map(way -> way.text().substring(11).strip())
        .toList();
  }

  @Test
  void asTypedInTheUnitThatStandsThere() {
    assertThat(ways("let a = 1.5 cm", "1.5 cm", "2.25")).containsExactly("let a = 2.25 cm");
    assertThat(ways("let a = 1 1/4 in", "1 1/4 in", "3/8")).containsExactly("let a = 3/8 in");
    assertThat(ways("let a = 30%", "30%", "1/3")).hasSize(2);
    assertThat(ways("let a = 1.5 cm", "1.5 cm", "2,25 cm")).containsExactly("let a = 2.25 cm");
    assertThat(ways("let a = 1.5 cm", "1.5 cm", "\u00bd in"))
        .containsExactly("let a = 1.3 cm", "let a = 1/2 in");
  }

  @Test
  void belowZeroItsSignIsWrittenAsAPersonWould() {
    assertThat(ways("let a = 10 cm + 1.5 cm", "1.5 cm", "-2 cm"))
        .containsExactly("let a = 10 cm - 2 cm");
    assertThat(ways("let a = 10 cm - 1.5 cm", "1.5 cm", "-2"))
        .containsExactly("let a = 10 cm + 2 cm");
  }

  @Test
  void whatIsNoNumberForThatPlaceIsNotTaken() {
    assertThat(ways("let a = 1.5 cm", "1.5 cm", "30 deg")).isEmpty();
    assertThat(ways("let a = 1.5 cm", "1.5 cm", "a yard")).isEmpty();
    assertThat(ways("let a = 1.5 cm", "1.5 cm", "")).isEmpty();
  }
}
