package org.hemwright.exchange.run;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** How the domain's types are called in the JSON. */
final class Kinds {
  /** The member that says which of several kinds a value is. */
  static final String IS = "is";

  private Kinds() {}

  /** The kinds that a closed choice comes to, by their names in the JSON. */
  static Map<String, Class<?>> of(Class<?> choice) {
    Map<String, Class<?>> kinds = new LinkedHashMap<>();
    for (Class<?> kind : choice.getPermittedSubclasses()) {
      if (kind.isSealed()) {
        kinds.putAll(of(kind));
      } else {
        kinds.put(name(kind), kind);
      }
    }
    return kinds;
  }

  /** {@code turned_back} for {@code Allowance.TurnedBack}. */
  static String name(Class<?> kind) {
    return snake(kind.getSimpleName());
  }

  /** {@code stitch_line} for the component {@code stitchLine}. */
  static String snake(String name) {
    return name.replaceAll("(?<=[a-z0-9])([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }

  /** The class of a type, whatever it holds. */
  static Class<?> raw(Type type) {
    if (type instanceof ParameterizedType holding) {
      return (Class<?>) holding.getRawType();
    }
    if (type instanceof Class<?> plain) {
      return plain;
    }
    throw new IllegalArgumentException("a run has no component of the type " + type);
  }

  /** What a list, an optional or a map holds: the argument of that index. */
  static Type held(Type type, int index) {
    if (type instanceof ParameterizedType holding) {
      return holding.getActualTypeArguments()[index];
    }
    throw new IllegalArgumentException("a run has no component of the bare type " + type);
  }
}
