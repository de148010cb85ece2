package org.hemwright.exchange.run;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/** Reads values of the domain; what does not belong is told by an {@link Unreadable}. */
final class ValueReader {
  private static final int LINE = 4;
  private static final int CUBIC = 8;

  private ValueReader() {}

  /** The value does not belong where it stands. */
  static final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unreadable(String where) {
      super(where);
    }
  }

  /**
   * One value.
   *
   * @param type what belongs here
   * @param where names the place to a person: {@code sizes.3.pieces.0}
   */
  static Object read(Type type, JsonNode node, String where) {
    Class<?> kind = Kinds.raw(type);
    if (kind == double.class || kind == Double.class) {
      return number(node, where);
    }
    if (kind == int.class || kind == Integer.class) {
      return demand(node.isInt(), node, where).intValue();
    }
    if (kind == boolean.class || kind == Boolean.class) {
      return demand(node.isBoolean(), node, where).booleanValue();
    }
    if (kind == String.class) {
      return text(node, where);
    }
    if (kind == LocalDate.class) {
      return LocalDate.parse(text(node, where));
    }
    if (kind == OptionalDouble.class) {
      return OptionalDouble.of(number(node, where));
    }
    if (kind == Optional.class) {
      return Optional.of(read(Kinds.held(type, 0), node, where));
    }
    if (kind == List.class) {
      return list(Kinds.held(type, 0), node, where);
    }
    if (kind == Map.class) {
      return map(Kinds.held(type, 1), node, where);
    }
    if (kind == Path.class) {
      return path(node, where);
    }
    if (kind.isEnum()) {
      return constant(kind, text(node, where), where);
    }
    return record(kind, node, where);
  }

  private static double number(JsonNode node, String where) {
    return node.isTextual() && List.of("NaN", "Infinity", "-Infinity").contains(node.textValue())
        ? Double.parseDouble(node.textValue())
        : demand(node.isNumber(), node, where).doubleValue();
  }

  private static String text(JsonNode node, String where) {
    return demand(node.isTextual(), node, where).textValue();
  }

  private static JsonNode demand(boolean right, JsonNode node, String where) {
    if (!right) {
      throw new Unreadable(where);
    }
    return node;
  }

  private static List<Object> list(Type held, JsonNode node, String where) {
    List<Object> list = new ArrayList<>();
    demand(node.isArray(), node, where);
    for (JsonNode each : node) {
      list.add(read(held, each, where + "." + list.size()));
    }
    return list;
  }

  private static Map<String, Object> map(Type held, JsonNode node, String where) {
    Map<String, Object> map = new LinkedHashMap<>();
    demand(node.isObject(), node, where);
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      map.put(entry.getKey(), read(held, entry.getValue(), where + "." + entry.getKey()));
    }
    return map;
  }

  private static Path path(JsonNode node, String where) {
    List<Curve> curves = new ArrayList<>();
    demand(node.isArray(), node, where);
    for (JsonNode each : node) {
      double[] c = new double[each.size()];
      for (int i = 0; i < c.length; i++) {
        c[i] = number(each.get(i), where);
      }
      demand(c.length == LINE || c.length == CUBIC, node, where);
      Point start = new Point(c[0], c[1]);
      Point end = new Point(c[c.length - 2], c[c.length - 1]);
      curves.add(
          c.length == LINE
              ? new Line(start, end)
              : new Cubic(start, new Point(c[2], c[3]), new Point(c[4], c[5]), end));
    }
    return Path.of(curves);
  }

  private static Object constant(Class<?> choice, String name, String where) {
    for (Object constant : choice.getEnumConstants()) {
      if (constant instanceof Enum<?> each && Kinds.snake(each.name()).equals(name)) {
        return constant;
      }
    }
    throw new Unreadable(where);
  }

  private static Object record(Class<?> declared, JsonNode node, String where) {
    demand(node.isObject(), node, where);
    Class<?> kind = declared;
    if (declared.isSealed()) {
      String name = text(node.path(Kinds.IS), where + "." + Kinds.IS);
      kind = Kinds.of(declared).get(name);
      if (kind == null) {
        throw new Unreadable(where + "." + Kinds.IS);
      }
    }
    if (!kind.isRecord()) {
      throw new Unreadable(where);
    }
    List<Object> values = new ArrayList<>();
    for (RecordComponent component : kind.getRecordComponents()) {
      String name = Kinds.snake(component.getName());
      JsonNode held = node.get(name);
      String inside = where.isEmpty() ? name : where + "." + name;
      values.add(
          held == null
              ? absent(component.getGenericType(), inside)
              : read(component.getGenericType(), held, inside));
    }
    return Components.make(kind, values);
  }

  /** What stands for a member that is left out. */
  private static Object absent(Type type, String where) {
    Class<?> kind = Kinds.raw(type);
    if (kind == Optional.class) {
      return Optional.empty();
    }
    if (kind == OptionalDouble.class) {
      return OptionalDouble.empty();
    }
    if (kind == List.class) {
      return List.of();
    }
    if (kind == Map.class) {
      return Map.of();
    }
    throw new Unreadable(where);
  }
}
