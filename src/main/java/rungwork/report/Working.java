package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.quantity.Units;

/** The lines behind a check: each formula with its numbers, then the sources and the caution. */
final class Working {
  private Working() {}

  static List<String> lines(Check check, Units units) {
    List<String> lines = new ArrayList<>();
    check.working().forEach(step -> lines.add(step.text(units)));
    String reason = check.verdict().reason(units);
    if (!reason.isEmpty()) {
      lines.add(reason);
    }
    lines.add("Source: " + check.source());
    if (!check.caution().isEmpty()) {
      lines.add("Caution: " + check.caution());
    }
    return lines;
  }
}
