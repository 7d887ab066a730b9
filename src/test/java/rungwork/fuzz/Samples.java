package rungwork.fuzz;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import rungwork.impact.Fronts;
import rungwork.impact.Runabout;
import rungwork.joint.Parts;
import rungwork.loadpath.Axles;
import rungwork.loadpath.Belts;
import rungwork.loadpath.Corners;
import rungwork.report.Mounts;
import rungwork.study.Curlew;

/** Sound values to begin with: the examples of the rooms' tests and what they hold. */
final class Samples {
  private static final List<Class<?>> EXAMPLES =
      List.of(
          Curlew.class,
          Runabout.class,
          Fronts.class,
          Parts.class,
          Corners.class,
          Belts.class,
          Mounts.class,
          Axles.class,
          Recipes.class);

  private static final int DEPTH = 6;

  private final Pool pool = new Pool();
  private final TreeSet<String> names = new TreeSet<>();
  private final Random random = new Random(0);

  private Samples() {}

  static Samples gathered() {
    Samples samples = new Samples();
    EXAMPLES.forEach(samples::gather);
    samples.names.addAll(
        List.of("50 mm", "1 1/2 in", "4 kN", "3 kN/m", "355 MPa", "62 kg", "3 g", "50 km/h"));
    samples.names.addAll(List.of("2 kJ", "30 ms", "45 deg", "200 N/mm", "30 N·m/deg", "1 kN·m"));
    samples.names.addAll(List.of("S235JR", "8.8", "M10"));
    return samples;
  }

  Pool pool() {
    return pool;
  }

  List<String> names() {
    return List.copyOf(names);
  }

  private void gather(Class<?> examples) {
    try {
      for (Field field : examples.getFields()) {
        take(field.get(null), DEPTH);
      }
      for (Method method : sorted(examples)) {
        take(method.invoke(null), DEPTH);
      }
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(examples.getName(), e);
    }
  }

  private static List<Method> sorted(Class<?> type) {
    return Arrays.stream(type.getDeclaredMethods())
        .filter(method -> Modifier.isPublic(method.getModifiers()))
        .filter(method -> Modifier.isStatic(method.getModifiers()))
        .filter(method -> method.getParameterCount() == 0 && !method.isSynthetic())
        .sorted(Comparator.comparing(Method::getName))
        .toList();
  }

  private void take(Object value, int depth) {
    if (value instanceof Collection<?> all) {
      all.stream().limit(8).forEach(part -> take(part, depth));
    } else if (value instanceof Map<?, ?> map) {
      map.values().stream().limit(8).forEach(part -> take(part, depth));
    } else if (value instanceof Optional<?> some) {
      some.ifPresent(part -> take(part, depth));
    } else if (value instanceof String word) {
      names.add(word);
    } else if (value.getClass().getName().startsWith("rungwork.") && depth > 0) {
      pool.add(value, random);
      if (value.getClass().isRecord()) {
        Arrays.stream(Reading.parts(value)).forEach(part -> take(part, depth - 1));
      }
    }
  }
}
