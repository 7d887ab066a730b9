package rungwork.fuzz;

import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;

/** A record made anew with one component changed for a hostile one. */
final class Rebuilt {
  private Rebuilt() {}

  /** The changed record; the same one when it is none or the change is refused. */
  static Object with(Object value, Draw draw) {
    Class<?> type = value.getClass();
    if (!type.isRecord() || type.getRecordComponents().length == 0) {
      return value;
    }
    RecordComponent[] components = type.getRecordComponents();
    Object[] parts = Reading.parts(value);
    int changed = draw.random().nextInt(parts.length);
    try {
      parts[changed] = draw.hostile(components[changed].getGenericType());
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      return type.getConstructor(types).newInstance(parts);
    } catch (ReflectiveOperationException | Draw.Unknown refused) {
      return value;
    }
  }

  /** The types of a record's components. */
  static Type[] types(Class<?> type) {
    return Arrays.stream(type.getRecordComponents())
        .map(RecordComponent::getGenericType)
        .toArray(Type[]::new);
  }
}
