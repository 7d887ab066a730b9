package rungwork.fuzz;

import java.lang.reflect.RecordComponent;

/** Reads the components of a record of ours. */
final class Reading {
  private Reading() {}

  static Object[] parts(Object record) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] parts = new Object[components.length];
    for (int i = 0; i < parts.length; i++) {
      try {
        components[i].getAccessor().setAccessible(true);
        parts[i] = components[i].getAccessor().invoke(record);
      } catch (ReflectiveOperationException e) {
        throw new AssertionError(record.getClass() + "." + components[i].getName(), e);
      }
    }
    return parts;
  }
}
