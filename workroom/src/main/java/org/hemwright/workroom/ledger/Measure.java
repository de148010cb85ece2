package org.hemwright.workroom.ledger;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Writes one measure in every size: {@code {"label", "of", "values": [text], "numbers": [number]}}.
 * Labels are keys of the page's words.
 */
final class Measure {
  private final List<SizedPattern> sizes;
  private final LengthFormat lengths;
  private final ArrayNode rows;

  /** The value in one size; absent where there is none. */
  @FunctionalInterface
  interface InSize {
    OptionalDouble in(SizedPattern sized);
  }

  Measure(SizeRun run, LengthFormat lengths, ArrayNode rows) {
    this.sizes = run.sizes();
    this.lengths = lengths;
    this.rows = rows;
  }

  /** A length (mm). */
  void length(String label, InSize value) {
    write(label, value, mm -> lengths.text(mm, LengthKind.DIFFERENCE));
  }

  /** The same, of which seam. */
  void length(String label, String of, InSize value) {
    length(label, value);
    ((ObjectNode) rows.get(rows.size() - 1)).put("of", of);
  }

  /** An allowance (mm), said by its nominal partner. */
  void allowance(String label, InSize value) {
    write(label, value, mm -> lengths.text(mm, LengthKind.ALLOWANCE));
  }

  /** An area (mm²), said in square centimetres. */
  void area(String label, InSize value) {
    write(label, value, mm2 -> DecimalText.of(mm2 / 100, 0) + " cm\u00b2");
  }

  /** Whatever a number of the document is. */
  void quantity(String label, java.util.function.Function<SizedPattern, Quantity> value) {
    write(
        label,
        sized -> {
          Quantity quantity = value.apply(sized);
          return quantity == null ? OptionalDouble.empty() : OptionalDouble.of(quantity.amount());
        },
        amount -> {
          for (SizedPattern sized : sizes) {
            Quantity quantity = value.apply(sized);
            if (quantity != null) {
              return LedgerView.said(new Quantity(quantity.kind(), amount), lengths);
            }
          }
          return "";
        });
  }

  private void write(String label, InSize value, java.util.function.DoubleFunction<String> said) {
    ObjectNode row = rows.addObject().put("label", label);
    ArrayNode texts = row.putArray("values");
    ArrayNode numbers = row.putArray("numbers");
    for (SizedPattern sized : sizes) {
      OptionalDouble number = value.in(sized);
      if (number.isPresent()) {
        texts.add(said.apply(number.getAsDouble()));
        numbers.add(number.getAsDouble());
      } else {
        texts.addNull();
        numbers.addNull();
      }
    }
  }
}
