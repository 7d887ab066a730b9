package rungwork.fuzz;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.measure.Quantity;

/** Looks for numbers in a result that are no numbers. */
final class Inspection {
  private static final int DEPTH = 5;
  private static final int LOOKED_AT = 50;

  /** Where an infinite number is what the documentation promises. */
  private static final Set<String> MAY_BE_INFINITE =
      Set.of(
          "Step.values",
          "Step.result",
          "Onset.factor",
          "Measured.reserve",
          "Part.station",
          "Shortage.factor");

  private Inspection() {}

  /** Where a number is not finite, such as {@code Crash.Body.speed}; empty when all are. */
  static Optional<String> fault(String name, Object result) {
    return fault(name, result, DEPTH);
  }

  private static Optional<String> fault(String name, Object value, int depth) {
    if (value == null) {
      return Optional.of(name + " is null");
    }
    if (depth == 0) {
      return Optional.empty();
    }
    if (value instanceof Double number) {
      return number(name, number);
    }
    if (value instanceof String text) {
      return text.matches("(?s).*\\bNaN\\b.*") ? Optional.of(name + " says NaN") : Optional.empty();
    }
    return parts(name, value, depth);
  }

  private static Optional<String> number(String name, double number) {
    if (Double.isFinite(number) || Double.isInfinite(number) && MAY_BE_INFINITE.contains(name)) {
      return Optional.empty();
    }
    return Optional.of(name + " is " + number);
  }

  private static Optional<String> parts(String name, Object value, int depth) {
    if (value instanceof double[] numbers) {
      return first(name, Arrays.stream(numbers).boxed().toList(), depth);
    }
    if (value instanceof OptionalDouble number) {
      return number.isPresent() ? number(name, number.getAsDouble()) : Optional.empty();
    }
    if (value instanceof Optional<?> some) {
      return some.flatMap(inner -> fault(name, inner, depth));
    }
    if (value instanceof Quantity<?> quantity) {
      return number(name, quantity.getValue().doubleValue());
    }
    if (value instanceof Collection<?> all) {
      return first(name, all, depth);
    }
    if (value instanceof Map<?, ?> map) {
      return first(name, map.values(), depth);
    }
    return value.getClass().isRecord() ? components(value, depth) : Optional.empty();
  }

  private static Optional<String> first(String name, Collection<?> all, int depth) {
    return all.stream()
        .limit(LOOKED_AT)
        .flatMap(inner -> fault(name, inner, depth - 1).stream())
        .findFirst();
  }

  private static Optional<String> components(Object record, int depth) {
    if (!record.getClass().getName().startsWith("rungwork")) {
      return Optional.empty();
    }
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] parts = Reading.parts(record);
    for (int i = 0; i < parts.length; i++) {
      String name = record.getClass().getSimpleName() + "." + components[i].getName();
      Optional<String> fault = fault(name, parts[i], depth - 1);
      if (fault.isPresent()) {
        return fault;
      }
    }
    return Optional.empty();
  }
}
