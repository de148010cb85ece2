package org.hemwright.draft.edit;

import java.util.List;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;

/**
 * A statement that makes a thing what it is, with the numbers of hers that stand in it.
 *
 * @param statement which
 * @param line its line, from 1
 * @param numbers in the order of the text, each once
 */
public record SaidLine(Statement statement, int line, List<Expression.Literal> numbers) {
  public SaidLine {
    numbers = List.copyOf(numbers);
  }

  /** Where it stands. */
  public Span span() {
    return statement.span();
  }
}
