package rungwork.kernel;

import java.lang.reflect.Array;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;

/**
 * About how much memory a variable holds: what arrays, texts and the JDK's collections say of
 * themselves, their first elements standing for all. An object of another type counts as one small
 * piece; its code is not asked.
 */
final class HeldMemory {
  /** An object's head, and a reference to it, in a 64-bit JVM with compressed references: bytes. */
  private static final long HEAD = 16;

  private static final long REFERENCE = 4;
  private static final int LOOKED_AT = 100;
  private static final int DEEP = 3;
  private static final Map<Class<?>, Integer> SMALL =
      Map.of(int.class, 4, float.class, 4, short.class, 2, char.class, 2, byte.class, 1);

  private static final int OTHERWISE = 8;

  private HeldMemory() {}

  /** An estimate in bytes; of null too. */
  static long bytes(Object held) {
    return bytes(held, DEEP);
  }

  private static long bytes(Object held, int deep) {
    if (held == null || deep == 0) {
      return HEAD;
    }
    if (held instanceof CharSequence text && isOfJdk(held)) {
      return 3 * HEAD + text.length();
    }
    if (held instanceof Collection<?> many && isOfJdk(held)) {
      return all(many, many.size(), deep);
    }
    if (held instanceof Map<?, ?> pairs && isOfJdk(held)) {
      return 2 * all(pairs.values(), pairs.size(), deep);
    }
    if (held instanceof Object[] many) {
      return all(Arrays.asList(many), many.length, deep);
    }
    return HEAD + (held.getClass().isArray() ? primitives(held) : 0);
  }

  private static long primitives(Object array) {
    Class<?> type = array.getClass().getComponentType();
    return (long) Array.getLength(array) * SMALL.getOrDefault(type, OTHERWISE);
  }

  private static long all(Collection<?> many, long size, int deep) {
    double each =
        many.stream().limit(LOOKED_AT).mapToLong(one -> bytes(one, deep - 1)).average().orElse(0);
    return HEAD + (long) (size * (REFERENCE + each));
  }

  private static boolean isOfJdk(Object held) {
    return held.getClass().getClassLoader() == null;
  }
}
