package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.quantity.QuantityKind;

/** Refuses literals whose units do not go together, where a form alone can tell. */
final class LiteralKinds {
  private LiteralKinds() {}

  /** All must measure the same; 0 may lack its unit. */
  static void same(List<Expression.Literal> literals) {
    Optional<Unit> unit =
        literals.stream().map(Expression.Literal::unit).filter(u -> u != Unit.NONE).findFirst();
    for (Expression.Literal literal : literals) {
      if (unit.isPresent()) {
        need(literal, unit.get());
      }
    }
  }

  /** It must be a length, angle or share, as the unit given is. */
  static void need(Expression.Literal literal, Unit unit) {
    QuantityKind kind = literal.unit().kind();
    if (literal.unit() == Unit.NONE && literal.value() != 0) {
      throw new Refusal(
          "missing-unit",
          literal.span(),
          finding -> finding.with("number", spelled(literal)).with("unit", unit.word()));
    }
    if (literal.unit() != Unit.NONE && kind != unit.kind()) {
      throw new Refusal(
          "unit-unlike",
          literal.span(),
          finding -> finding.with("number", spelled(literal)).with("unit", unit.word()));
    }
  }

  private static String spelled(Expression.Literal literal) {
    String number = NumberText.decimal(literal.value());
    return literal.unit() == Unit.PERCENT
        ? number + "%"
        : (number + " " + literal.unit().word()).strip();
  }
}
