package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.check.Verdict;
import rungwork.quantity.Units;

/** The lines behind a check: each formula with its numbers, then the sources and the caution. */
final class Working {
  private Working() {}

  static List<String> lines(Check check, Units units) {
    List<String> lines = new ArrayList<>();
    check.working().forEach(step -> lines.add(step.text(units)));
    String reason = reason(check.verdict());
    if (!reason.isEmpty()) {
      lines.add(reason);
    }
    lines.add("Source: " + check.source());
    if (!check.caution().isEmpty()) {
      lines.add("Caution: " + check.caution());
    }
    return lines;
  }

  /** Why a check was not made within its range; empty when it was. */
  static String reason(Verdict verdict) {
    if (verdict instanceof Verdict.NotChecked open) {
      return open.reason();
    }
    return verdict instanceof Verdict.OutsideRange outside ? outside.outside() : "";
  }
}
