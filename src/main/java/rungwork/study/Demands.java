package rungwork.study;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.study.Search.Limit;
import rungwork.vehicle.Assessment;

/**
 * What a ladder must meet to be found.
 *
 * @param parts the parts of which everything asked must have been checked
 * @param limits what it must meet beside the checks
 */
record Demands(List<String> parts, List<Limit> limits) {
  Demands {
    parts = List.copyOf(parts);
    limits = List.copyOf(limits);
  }

  /** What a ladder does not meet. */
  List<String> objections(Assessment assessment) {
    List<String> objections = new ArrayList<>();
    CheckSheet sheet = assessment.sheet();
    if (sheet.outcome() == CheckSheet.Outcome.DOES_NOT_PASS) {
      objections.add("a check does not pass");
    }
    for (String part : parts) {
      CheckSheet own = sheet.about(part);
      refuseUnknown(part, own, sheet);
      if (!own.complete() || own.governing().isEmpty()) {
        objections.add("the " + part + " is not wholly checked");
      }
    }
    limits.stream()
        .filter(limit -> !limit.met().apply(assessment))
        .forEach(limit -> objections.add(limit.words()));
    return objections;
  }

  private static void refuseUnknown(String part, CheckSheet own, CheckSheet sheet) {
    if (own.checks().isEmpty()) {
      throw new ModelException(
          "no check is about part %s; there are checks of %s"
              .formatted(
                  part,
                  String.join(
                      ", ", sheet.checks().stream().map(c -> c.part()).distinct().toList())));
    }
  }
}
