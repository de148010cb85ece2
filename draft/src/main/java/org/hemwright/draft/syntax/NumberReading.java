package org.hemwright.draft.syntax;

import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Expression.Literal;
import org.hemwright.draft.syntax.Expression.Operator;

/**
 * Reads number expressions: sums of products of what the table's number forms, names, brackets and
 * literals give. {@code of} binds tightest, then times and over, then plus and minus.
 */
final class NumberReading {
  /** How many terms one sum may have, or factors one product. */
  private static final int MOST_OPERATORS = 250;

  /** What people write for the units. */
  private static final Map<String, Unit> OTHER_SPELLINGS =
      Map.ofEntries(
          Map.entry("millimetre", Unit.MM),
          Map.entry("millimetres", Unit.MM),
          Map.entry("millimeter", Unit.MM),
          Map.entry("millimeters", Unit.MM),
          Map.entry("centimetre", Unit.CM),
          Map.entry("centimetres", Unit.CM),
          Map.entry("centimeter", Unit.CM),
          Map.entry("centimeters", Unit.CM),
          Map.entry("cms", Unit.CM),
          Map.entry("mms", Unit.MM),
          Map.entry("CM", Unit.CM),
          Map.entry("MM", Unit.MM),
          Map.entry("inch", Unit.IN),
          Map.entry("inches", Unit.IN),
          Map.entry("ins", Unit.IN),
          Map.entry("IN", Unit.IN),
          Map.entry("degree", Unit.DEG),
          Map.entry("degrees", Unit.DEG),
          Map.entry("percent", Unit.PERCENT));

  private final Reading reading;

  NumberReading(Reading reading) {
    this.reading = reading;
  }

  /** {@code a + b - c}. */
  Expression sum() {
    int start = reading.index();
    Expression left = product();
    int operators = 0;
    while (reading.says("+") || reading.says("-")) {
      limit(++operators);
      Operator operator = reading.next().says("+") ? Operator.PLUS : Operator.MINUS;
      left = binary(operator, left, product(), start);
    }
    return left;
  }

  private Expression product() {
    int start = reading.index();
    Expression left = share();
    int operators = 0;
    while (reading.says("*") || reading.says("/")) {
      limit(++operators);
      Operator operator = reading.next().says("*") ? Operator.TIMES : Operator.OVER;
      left = binary(operator, left, share(), start);
    }
    return left;
  }

  /** {@code 90% of waist}. */
  private Expression share() {
    int start = reading.index();
    Expression left = signed();
    if (!reading.takeIf("of")) {
      return left;
    }
    reading.deeper();
    Expression thing = share();
    reading.shallower();
    return binary(Operator.TIMES, left, thing, start);
  }

  private void limit(int operators) {
    if (operators > MOST_OPERATORS) {
      throw reading.refuseMore("too-long-sum", MOST_OPERATORS);
    }
  }

  private Expression binary(Operator operator, Expression left, Expression right, int start) {
    return new Expression.Binary(operator, left, right, reading.spanFrom(start));
  }

  private Expression signed() {
    int start = reading.index();
    if (!reading.takeIf("-")) {
      return primary();
    }
    reading.deeper();
    Expression of = signed();
    reading.shallower();
    return new Expression.Negative(of, reading.spanFrom(start));
  }

  private Expression primary() {
    Optional<Token> token = reading.peek();
    if (token.isEmpty()) {
      throw reading.want("number");
    }
    if (token.get().isNumber()) {
      return number(reading.index(), 1);
    }
    if (reading.says("(")) {
      reading.next();
      reading.deeper();
      Expression inside = sum();
      reading.shallower();
      reading.take(")");
      return inside;
    }
    if (!token.get().isWord()) {
      throw reading.want("number");
    }
    return worded(token.get());
  }

  /** A form of the table, or a name. */
  private Expression worded(Token word) {
    Reading.Mark start = reading.mark();
    for (Form form : Forms.at(Where.NUMBER, word.text())) {
      boolean committed = committed(form);
      reading.deeper();
      try {
        Expression expression = (Expression) reading.form(form);
        reading.shallower();
        return expression;
      } catch (Mismatch mismatch) {
        if (committed) {
          throw mismatch;
        }
        reading.backTo(start);
      }
    }
    return new Expression.Named(reading.words().reference());
  }

  /** Whether the first two fixed words of a form stand here, so that it cannot be a name. */
  private boolean committed(Form form) {
    return form.shape().parts().size() > 1
        && form.shape().parts().get(1) instanceof Shape.Fixed second
        && reading.says(1, second.text());
  }

  /** A number as written, with its sign and unit. */
  Literal literal() {
    int start = reading.index();
    boolean negative = reading.says("-");
    if (negative) {
      reading.next();
    }
    if (reading.peek().filter(Token::isNumber).isEmpty()) {
      throw reading.want("literal");
    }
    return number(start, negative ? -1 : 1);
  }

  private Literal number(int start, int sign) {
    Token number = reading.next();
    Unit unit = unit();
    return new Literal(sign * number.value(), unit, reading.spanFrom(start));
  }

  private Unit unit() {
    Optional<Token> word = reading.peek();
    if (word.isEmpty()) {
      return Unit.NONE;
    }
    for (Unit unit : Unit.values()) {
      if (word.get().says(unit.word())) {
        reading.next();
        return unit;
      }
    }
    if (!word.get().isWord()) {
      return Unit.NONE;
    }
    Optional<Unit> meant = Optional.ofNullable(OTHER_SPELLINGS.get(word.get().text()));
    if (meant.isEmpty()) {
      return Unit.NONE;
    }
    reading.next();
    reading.note(
        reading
            .slips()
            .fail("unknown-unit", word.get().span())
            .with("unit", Slips.shown(word.get().text()))
            .with("meant", meant.get().word())
            .mendedBy(reading.source().replace(word.get().span(), meant.get().word()))
            .build());
    return meant.get();
  }
}
