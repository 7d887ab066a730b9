package rungwork.fuzz;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Values at hand, by class, and the arguments that an entry took last. */
final class Pool {
  private static final int MOST = 24;

  private final Map<Class<?>, List<Object>> values = new LinkedHashMap<>();
  private final Map<Class<?>, List<List<Object>>> byAsked = new HashMap<>();

  Pool copy() {
    Pool copy = new Pool();
    values.forEach((type, list) -> copy.values.put(type, new ArrayList<>(list)));
    return copy;
  }

  boolean wants(Object value) {
    List<Object> known = values.get(value.getClass());
    return known == null || known.size() < MOST;
  }

  void add(Object value, Random random) {
    List<Object> known = values.get(value.getClass());
    if (known == null) {
      known = new ArrayList<>();
      values.put(value.getClass(), known);
      byAsked.clear();
    }
    if (known.size() < MOST) {
      known.add(value);
    } else {
      known.set(random.nextInt(MOST), value);
    }
  }

  /** Any value that is an instance of a type. */
  Optional<Object> any(Class<?> type, Random random) {
    List<List<Object>> fitting =
        byAsked.computeIfAbsent(
            type,
            asked ->
                values.entrySet().stream()
                    .filter(entry -> asked.isAssignableFrom(entry.getKey()))
                    .map(Map.Entry::getValue)
                    .toList());
    if (fitting.isEmpty()) {
      return Optional.empty();
    }
    List<Object> kind = fitting.get(random.nextInt(fitting.size()));
    return Optional.of(kind.get(random.nextInt(kind.size())));
  }
}
