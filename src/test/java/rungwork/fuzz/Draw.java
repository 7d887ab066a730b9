package rungwork.fuzz;

import java.lang.reflect.Array;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.vehicle.Assessment;

/** Makes a value of any type that a public entry asks for. */
final class Draw {
  /** That no such value can be made. */
  static final class Unknown extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unknown(Type type) {
      super("no value of " + type.getTypeName() + " is at hand");
    }
  }

  /** Of how many values one is hostile inside a hostile list or record. */
  private static final int ONE_OF = 3;

  private final Thread thread = Thread.currentThread();
  private final Pool pool;
  private final Random random;
  private final List<String> names;
  private List<String> preferred = List.of();
  private boolean usedNull;

  Draw(Pool pool, Random random, List<String> names) {
    this.pool = pool;
    this.random = random;
    this.names = names;
  }

  /** Whether a null was among what was drawn since this was last asked. */
  boolean tookNull() {
    boolean taken = usedNull;
    usedNull = false;
    return taken;
  }

  Random random() {
    return random;
  }

  Object good(Type type) {
    return value(type, false);
  }

  Object hostile(Type type) {
    return value(type, true);
  }

  private Object value(Type type, boolean hostile) {
    if (type instanceof Class<?> plain) {
      return plain.isArray() ? array(plain.getComponentType(), hostile) : plain(plain, hostile);
    }
    if (type instanceof ParameterizedType generic) {
      return generic(generic, hostile);
    }
    if (type instanceof WildcardType wild) {
      return value(wild.getUpperBounds()[0], hostile);
    }
    if (type instanceof GenericArrayType generic) {
      return array(raw(generic.getGenericComponentType()), hostile);
    }
    return value(standsFor((TypeVariable<?>) type), hostile);
  }

  /** What every type variable stands for, so that values made for one entry fit another. */
  private static Class<?> standsFor(TypeVariable<?> variable) {
    return variable.getBounds()[0] instanceof ParameterizedType ? Length.class : Assessment.class;
  }

  private static Class<?> raw(Type type) {
    if (type instanceof ParameterizedType generic) {
      return (Class<?>) generic.getRawType();
    }
    return type instanceof Class<?> plain ? plain : standsFor((TypeVariable<?>) type);
  }

  /** What a user's function answers each time: drawn once, for many threads may ask it. */
  private Object answer(Type type) {
    return type == void.class ? "" : good(type);
  }

  /** Keeps what a user's function was told, such as a study's setting. */
  private void keep(Object told) {
    if (Thread.currentThread() == thread
        && told.getClass().getName().startsWith("rungwork.")
        && pool.wants(told)) {
      pool.add(told, random);
    }
  }

  /** Names that the entry just called wants, learned from its refusals. */
  void preferring(List<String> names) {
    preferred = names;
  }

  private Object array(Class<?> component, boolean hostile) {
    int length = random.nextInt(5);
    Object array = Array.newInstance(component, length);
    for (int i = 0; i < length; i++) {
      Array.set(array, i, value(component, sometimes(hostile)));
    }
    return array;
  }

  private boolean sometimes(boolean hostile) {
    return hostile && random.nextInt(ONE_OF) == 0;
  }

  private Object plain(Class<?> type, boolean hostile) {
    if (type.isPrimitive() || Number.class.isAssignableFrom(type) || type == Boolean.class) {
      return number(type, hostile);
    }
    if (hostile && random.nextInt(8) == 0) {
      usedNull = true;
      return null;
    }
    if (type == String.class) {
      return word(hostile);
    }
    if (type.isEnum()) {
      Object[] constants = type.getEnumConstants();
      return constants[random.nextInt(constants.length)];
    }
    return library(type, hostile).or(() -> ours(type, hostile)).orElseThrow(() -> unknown(type));
  }

  private static Unknown unknown(Type type) {
    return new Unknown(type);
  }

  private Object number(Class<?> type, boolean hostile) {
    if (type == double.class || type == Double.class) {
      return hostile ? Hostile.number(random) : Amounts.number(random);
    }
    if (type == boolean.class || type == Boolean.class) {
      return random.nextBoolean();
    }
    int count = hostile ? Hostile.count(random) : random.nextInt(9);
    return type == long.class || type == Long.class ? (Object) (long) count : (Object) count;
  }

  private String word(boolean hostile) {
    if (hostile) {
      return Hostile.word(random);
    }
    List<String> from = preferred.isEmpty() || random.nextInt(4) == 0 ? names : preferred;
    return from.get(random.nextInt(from.size()));
  }

  private Optional<Object> library(Class<?> type, boolean hostile) {
    if (type == Path.class) {
      return Optional.of(Path.of("target", "fuzz", Integer.toString(random.nextInt(4))));
    }
    if (type == Duration.class) {
      return Optional.of(Duration.ofMillis(hostile ? -1 : random.nextInt(200)));
    }
    if (type == OptionalDouble.class) {
      return Optional.of(OptionalDouble.of((double) number(double.class, hostile)));
    }
    if (type == DoubleStream.class) {
      return Optional.of(DoubleStream.of((double[]) array(double.class, hostile)));
    }
    return type == Object.class ? pool.any(Object.class, random) : Optional.empty();
  }

  private Optional<Object> ours(Class<?> type, boolean hostile) {
    if (Hooks.isHook(type)) {
      Object answer = answer(Hooks.result(type));
      return Optional.of(Hooks.hook(type, () -> answer, this::keep));
    }
    Optional<Object> known = pool.any(type, random);
    if (!hostile || known.isEmpty()) {
      return known;
    }
    return Optional.of(Rebuilt.with(known.get(), this));
  }

  private Object generic(ParameterizedType type, boolean hostile) {
    Class<?> raw = (Class<?>) type.getRawType();
    Type[] inner = type.getActualTypeArguments();
    if (raw == Quantity.class) {
      Class<?> kind = inner[0] instanceof WildcardType ? Amounts.anyKind(random) : raw(inner[0]);
      return hostile ? Amounts.hostile(kind, random) : Amounts.usual(kind, random);
    }
    if (List.class == raw || Set.class == raw) {
      List<Object> list = list(inner[0], hostile);
      return raw == List.class ? list : new HashSet<>(list);
    }
    if (raw == Optional.class) {
      boolean empty = random.nextInt(4) == 0;
      return empty ? Optional.empty() : Optional.ofNullable(value(inner[0], hostile));
    }
    if (raw == Map.class) {
      return map(inner, hostile);
    }
    if (Hooks.isHook(raw)) {
      Type result = inner[inner.length - 1];
      Object answer = Hooks.isNumeric(raw) ? number(double.class, hostile) : answer(result);
      return Hooks.hook(raw, () -> answer, this::keep);
    }
    return raw.isRecord() && inner[0] instanceof Class<?> own && own != Assessment.class
        ? recordOf(raw, own)
        : plain(raw, hostile);
  }

  /** A generic record for another class than type variables stand for. */
  private Object recordOf(Class<?> type, Class<?> own) {
    Object[] parts =
        Arrays.stream(Rebuilt.types(type))
            .map(part -> part instanceof Class<?> ? good(part) : ownHook(part, own))
            .toArray();
    try {
      return type.getConstructors()[0].newInstance(parts);
    } catch (ReflectiveOperationException e) {
      throw new Unknown(type);
    }
  }

  private Object ownHook(Type hook, Class<?> own) {
    Object answer = answer(own);
    return Hooks.hook(raw(hook), () -> answer, this::keep);
  }

  /** Few values; hostile lists may be empty, hold one value twice, or be long. */
  private List<Object> list(Type inner, boolean hostile) {
    List<Object> list = new ArrayList<>();
    int most = hostile && random.nextInt(20) == 0 ? 300 : 4;
    int length = hostile ? random.nextInt(most) : 1 + random.nextInt(3);
    for (int i = 0; i < length; i++) {
      list.add(value(inner, sometimes(hostile)));
    }
    if (hostile && length > 0 && random.nextBoolean()) {
      list.add(list.get(0));
    }
    return list;
  }

  private Map<Object, Object> map(Type[] inner, boolean hostile) {
    Map<Object, Object> map = new HashMap<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      map.put(value(inner[0], sometimes(hostile)), value(inner[1], sometimes(hostile)));
    }
    return map;
  }
}
