package rungwork.vehicle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.check.Check;
import rungwork.check.Verdict;

/**
 * Of the same question asked of the same part in the same event under several assumptions, the
 * worst answer. An answer that could not be given, or ran outside its range, stays beside the
 * numbers.
 */
final class WorstChecks {
  private final Map<List<String>, Check> worst = new LinkedHashMap<>();

  void add(Event event, List<Check> checks) {
    checks.forEach(check -> worst.merge(question(event, check), check, WorstChecks::worse));
  }

  List<Check> all() {
    return List.copyOf(worst.values());
  }

  private static List<String> question(Event event, Check check) {
    return List.of(event.name(), check.part(), check.what(), kind(check.verdict()));
  }

  private static Check worse(Check before, Check now) {
    return now.utilisation().orElse(0) > before.utilisation().orElse(0) ? now : before;
  }

  /** Each reason for no answer is kept apart, and so is each range that was left. */
  private static String kind(Verdict verdict) {
    if (verdict instanceof Verdict.NotChecked open) {
      return open.reason();
    }
    return verdict instanceof Verdict.OutsideRange outside ? outside.outside() : "measured";
  }
}
