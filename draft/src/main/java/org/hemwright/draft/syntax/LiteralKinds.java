package org.hemwright.draft.syntax;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Refuses literals whose units do not go together, where a form alone can tell. */
final class LiteralKinds {
  private LiteralKinds() {}

  /** All must measure the same; 0 may lack its unit. */
  static void same(List<Expression.Literal> literals) {
    List<Unit> units =
        literals.stream().map(Expression.Literal::unit).filter(u -> u != Unit.NONE).toList();
    Optional<Unit> usual = units.stream().max(Comparator.comparing(u -> alike(units, u)));
    usual.ifPresent(unit -> literals.forEach(literal -> need(literal, unit)));
  }

  private static long alike(List<Unit> units, Unit one) {
    return units.stream().filter(unit -> unit.kind() == one.kind()).count();
  }

  /** It must be a length, angle or share, as the unit given is; 0 may lack its unit. */
  static void need(Expression.Literal literal, Unit unit) {
    if (literal.unit() == Unit.NONE && literal.value() != 0) {
      String meant = spelled(literal.value(), unit);
      throw new Refusal("missing-unit", literal.span())
          .with("number", spelled(literal.value(), Unit.NONE))
          .with("meant", meant)
          .mendedBy(meant);
    }
    if (literal.unit() != Unit.NONE && literal.unit().kind() != unit.kind()) {
      throw new Refusal("unit-unlike", literal.span())
          .with("number", spelled(literal.value(), literal.unit()))
          .with("unit", unit.word());
    }
  }

  /** It must be a plain number. */
  static void plain(Expression.Literal literal) {
    if (literal.unit() != Unit.NONE) {
      String meant = spelled(literal.value(), Unit.NONE);
      throw new Refusal("unit-extra", literal.span())
          .with("number", spelled(literal.value(), literal.unit()))
          .with("meant", meant)
          .mendedBy(meant);
    }
  }

  private static String spelled(double value, Unit unit) {
    String number = NumberText.decimal(value);
    return unit == Unit.PERCENT ? number + "%" : (number + " " + unit.word()).strip();
  }
}
