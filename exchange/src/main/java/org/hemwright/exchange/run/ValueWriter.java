package org.hemwright.exchange.run;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;

/**
 * Writes values of the domain.
 *
 * @param json where to
 * @param origins whether places in the document are written; without them two texts that differ in
 *     their comments alone come to the same
 */
record ValueWriter(JsonGenerator json, boolean origins) {
  void write(Type type, Object value) throws IOException {
    Class<?> kind = Kinds.raw(type);
    if (value instanceof Double number) {
      json.writeNumber(number);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof String || value instanceof LocalDate) {
      json.writeString(value.toString());
    } else if (value instanceof Enum<?> choice) {
      json.writeString(Kinds.snake(choice.name()));
    } else if (value instanceof OptionalDouble number) {
      json.writeNumber(number.orElseThrow());
    } else if (value instanceof Optional<?> present) {
      write(Kinds.held(type, 0), present.orElseThrow());
    } else if (value instanceof Collection<?> list) {
      json.writeStartArray();
      for (Object each : list) {
        write(Kinds.held(type, 0), each);
      }
      json.writeEndArray();
    } else if (value instanceof Map<?, ?> map) {
      map(type, map);
    } else if (value instanceof Path path) {
      path(path);
    } else if (value instanceof Record held) {
      record(kind, held);
    } else {
      throw new IllegalArgumentException("a run has no component of the type " + value.getClass());
    }
  }

  private void map(Type type, Map<?, ?> map) throws IOException {
    json.writeStartObject();
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      if (!(entry.getKey() instanceof String name)) {
        throw new IllegalArgumentException("a run's maps go by names");
      }
      json.writeFieldName(name);
      write(Kinds.held(type, 1), entry.getValue());
    }
    json.writeEndObject();
  }

  private void path(Path path) throws IOException {
    json.writeStartArray();
    for (Curve curve : path.curves()) {
      json.writeStartArray();
      point(curve.start());
      if (curve instanceof Cubic cubic) {
        point(cubic.control1());
        point(cubic.control2());
      }
      point(curve.end());
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void point(Point point) throws IOException {
    json.writeNumber(point.x());
    json.writeNumber(point.y());
  }

  private void record(Class<?> declared, Record held) throws IOException {
    json.writeStartObject();
    if (declared.isSealed()) {
      json.writeStringField(Kinds.IS, Kinds.name(held.getClass()));
    }
    for (RecordComponent component : held.getClass().getRecordComponents()) {
      Object value = Components.value(component, held);
      if (isSaid(value)) {
        json.writeFieldName(Kinds.snake(component.getName()));
        write(component.getGenericType(), value);
      }
    }
    json.writeEndObject();
  }

  /** What is empty is left out. */
  private boolean isSaid(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(this::isSaid).orElse(false);
    }
    if (value instanceof OptionalDouble number) {
      return number.isPresent();
    }
    if (value instanceof Collection<?> list) {
      return !list.isEmpty();
    }
    if (value instanceof Map<?, ?> map) {
      return !map.isEmpty();
    }
    return origins || !(value instanceof Origin);
  }
}
