package org.hemwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a list of transforms: {@code translate(10 20) rotate(30, 5, 5)}. */
final class TransformText {
  private static final int MOST = 1000;

  private TransformText() {}

  /** The whole list as one; nothing where it cannot be read. */
  static Optional<Affine> read(String text) {
    Affine all = Affine.IDENTITY;
    int at = 0;
    for (int round = 0; round < MOST; round++) {
      while (at < text.length() && (text.charAt(at) <= ' ' || text.charAt(at) == ',')) {
        at++;
      }
      if (at >= text.length()) {
        return Optional.of(all);
      }
      int open = text.indexOf('(', at);
      int close = text.indexOf(')', at);
      if (open < 0 || close < open) {
        return Optional.empty();
      }
      Optional<Affine> one = one(text.substring(at, open).strip(), text.substring(open + 1, close));
      if (one.isEmpty()) {
        return Optional.empty();
      }
      all = all.times(one.get());
      at = close + 1;
    }
    return Optional.empty();
  }

  private static Optional<Affine> one(String name, String inside) {
    List<Double> n = new ArrayList<>();
    SvgNumbers numbers = new SvgNumbers(inside.replace("px", "").replace("deg", ""));
    while (!numbers.atEnd()) {
      OptionalDouble number = numbers.number();
      if (number.isEmpty()) {
        return Optional.empty();
      }
      n.add(number.getAsDouble());
    }
    int count = n.size();
    return Optional.ofNullable(
        switch (name) {
          case "matrix" ->
              count == 6
                  ? new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5))
                  : null;
          case "translate" ->
              count == 1 || count == 2 ? Affine.move(n.get(0), count == 2 ? n.get(1) : 0) : null;
          case "scale" ->
              count == 1 || count == 2
                  ? Affine.scale(n.get(0), count == 2 ? n.get(1) : n.get(0))
                  : null;
          case "rotate" -> {
            if (count == 1) {
              yield Affine.turn(n.get(0));
            }
            yield count == 3
                ? Affine.move(n.get(1), n.get(2))
                    .times(Affine.turn(n.get(0)))
                    .times(Affine.move(-n.get(1), -n.get(2)))
                : null;
          }
          case "skewX" -> count == 1 ? new Affine(1, 0, slope(n.get(0)), 1, 0, 0) : null;
          case "skewY" -> count == 1 ? new Affine(1, slope(n.get(0)), 0, 1, 0, 0) : null;
          default -> null;
        });
  }

  private static double slope(double degrees) {
    return StrictMath.tan(StrictMath.toRadians(degrees));
  }
}
