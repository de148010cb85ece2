package org.hemwright.pattern.finding;

import java.util.List;
import org.hemwright.pattern.quantity.Quantity;

/** One typed value that a finding's wording may name; formatted only when it is worded. */
public sealed interface Argument {
  /** Text as it stands: a name, a token that was read. */
  record Text(String text) implements Argument {}

  /** A measured value. */
  record Measured(Quantity quantity) implements Argument {}

  /**
   * Values of one kind that differ from size to size.
   *
   * @param least the smallest
   * @param most the largest, of the same kind
   */
  record Range(Quantity least, Quantity most) implements Argument {
    public Range {
      if (least.kind() != most.kind() || least.amount() > most.amount()) {
        throw new IllegalArgumentException("a range runs from least to most of one kind");
      }
    }
  }

  /** Several values, in order; worded as "a, b and c". */
  record Values(List<Quantity> quantities) implements Argument {
    public Values {
      quantities = List.copyOf(quantities);
    }
  }

  /**
   * Widths (mm) in which a cloth is sold, in order; told as finely as a list of cloth tells them,
   * and the same in every size.
   */
  record Sold(List<Double> widths) implements Argument {
    public Sold {
      widths = List.copyOf(widths);
    }
  }

  /** A count. */
  record Count(long count) implements Argument {}

  /** Several names, in order; worded as "a, b and c". */
  record Names(List<String> names) implements Argument {
    public Names {
      names = List.copyOf(names);
    }
  }

  /**
   * A phrase that itself stands in the message files, under {@code term.KEY}.
   *
   * @param key such as {@code name} for "a name"
   */
  record Term(String key) implements Argument {}

  /**
   * A phrase of the message files, under {@code term.KEY}, with {@code {number}} in it: "notch 2".
   */
  record Numbered(String key, long number) implements Argument {}

  /** Any one of several, in order; worded as "a, b or c". */
  record AnyOf(List<Argument> options) implements Argument {
    public AnyOf {
      options = List.copyOf(options);
    }
  }

  /** Text. */
  static Argument of(String text) {
    return new Text(text);
  }

  /** A count. */
  static Argument of(long count) {
    return new Count(count);
  }

  /** A measured value. */
  static Argument of(Quantity quantity) {
    return new Measured(quantity);
  }

  /** A length in millimetres. */
  static Argument mm(double mm) {
    return new Measured(Quantity.length(mm));
  }

  /** A width of cloth as sold (mm). */
  static Argument sold(double width) {
    return new Sold(List.of(width));
  }

  /** Names. */
  static Argument of(List<String> names) {
    return new Names(names);
  }
}
