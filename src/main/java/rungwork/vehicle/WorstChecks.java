package rungwork.vehicle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.check.Check;
import rungwork.quantity.Units;

/**
 * Of the same question asked of the same part in the same event under several assumptions, the
 * worst answer. An answer that could not be given, or ran outside its range, stays beside the
 * numbers.
 */
final class WorstChecks {
  /** Of answers nearer to each other than this the first stays: they differ by rounding [1]. */
  private static final double ALIKE = 1 + 1e-9;

  private final Map<List<String>, Check> worst = new LinkedHashMap<>();

  void add(Event event, List<Check> checks) {
    checks.forEach(check -> worst.merge(question(event, check), check, WorstChecks::worse));
  }

  List<Check> all() {
    return List.copyOf(worst.values());
  }

  /** Each reason for no answer is kept apart, and so is each range that was left. */
  private static List<String> question(Event event, Check check) {
    return List.of(event.name(), check.part(), check.what(), check.verdict().reason(Units.METRIC));
  }

  private static Check worse(Check before, Check now) {
    double least = before.utilisation().orElse(0) * ALIKE;
    return now.utilisation().orElse(0) > least ? now : before;
  }
}
