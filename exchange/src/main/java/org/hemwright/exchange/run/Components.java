package org.hemwright.exchange.run;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** Reads the components of records and makes records of them. */
final class Components {
  private Components() {}

  static Object value(RecordComponent component, Record held) {
    try {
      return component.getAccessor().invoke(held);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("the domain's records are open", impossible);
    }
  }

  /** The record of some components, which its constructor may refuse. */
  static Object make(Class<?> kind, List<Object> values) {
    Class<?>[] types =
        Arrays.stream(kind.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      Constructor<?> constructor = kind.getDeclaredConstructor(types);
      return constructor.newInstance(values.toArray());
    } catch (InvocationTargetException refused) {
      if (refused.getCause() instanceof RuntimeException reason) {
        throw reason;
      }
      throw new IllegalStateException(refused.getCause());
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("the domain's records are open", impossible);
    }
  }
}
