package rungwork.kernel;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * How values of each type are shown: a class, and the function that makes its bundle.
 *
 * <p>The nearest registered type of a value wins: its own class, then its superclass and
 * interfaces, breadth first. A value of no registered type shows as its {@code toString()}. A
 * registry never changes; {@link #with} makes a larger one.
 */
public final class DisplayRegistry {
  private final Map<Class<?>, Function<Object, MimeBundle>> makers;

  private DisplayRegistry(Map<Class<?>, Function<Object, MimeBundle>> makers) {
    this.makers = makers;
  }

  /** A registry that shows everything as plain text. */
  public static DisplayRegistry plain() {
    return new DisplayRegistry(Map.of());
  }

  /** This registry with one more type, which replaces an earlier entry of the same type. */
  public <T> DisplayRegistry with(Class<T> type, Function<? super T, MimeBundle> maker) {
    Map<Class<?>, Function<Object, MimeBundle>> more = new LinkedHashMap<>(makers);
    more.put(type, value -> maker.apply(type.cast(value)));
    return new DisplayRegistry(more);
  }

  /** The registered types, in the order in which they came. */
  public Set<Class<?>> types() {
    return Collections.unmodifiableSet(makers.keySet());
  }

  /** The forms of a value. */
  public MimeBundle bundle(Object value) {
    return nearest(value.getClass())
        .map(maker -> maker.apply(value))
        .orElseGet(() -> MimeBundle.text(String.valueOf(value)));
  }

  private Optional<Function<Object, MimeBundle>> nearest(Class<?> start) {
    Deque<Class<?>> waiting = new ArrayDeque<>();
    waiting.add(start);
    while (!waiting.isEmpty()) {
      Class<?> type = waiting.remove();
      if (makers.containsKey(type)) {
        return Optional.of(makers.get(type));
      }
      Optional.ofNullable(type.getSuperclass()).ifPresent(waiting::add);
      waiting.addAll(List.of(type.getInterfaces()));
    }
    return Optional.empty();
  }
}
