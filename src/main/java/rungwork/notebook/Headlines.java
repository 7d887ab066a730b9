package rungwork.notebook;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.fault.Scale;
import rungwork.impact.RigidOrCrush;
import rungwork.loadpath.ChainSheet;
import rungwork.study.Comparison;
import rungwork.study.Search;
import rungwork.vehicle.Assessment;

/**
 * The lines about a displayed value that belong on the terminal: what governs, and what was chosen.
 */
final class Headlines {
  private static final int DIGITS = 3;
  private static final String CAUTION = Caution.IMPACT.inBrief();

  private Headlines() {}

  /** The lines; none for a value that judges nothing. */
  static List<String> of(Object value) {
    if (value instanceof CheckSheet sheet) {
      return sheet(sheet);
    }
    if (value instanceof Assessment assessment) {
      return sheet(assessment.sheet());
    }
    if (value instanceof ChainSheet chain) {
      return sheet(chain.sheet());
    }
    if (value instanceof Comparison comparison) {
      return List.of(comparison.choiceLine(Rungwork.units()));
    }
    if (value instanceof Search search) {
      return List.of(search.line(Rungwork.units()));
    }
    if (value instanceof RigidOrCrush choice) {
      return choice(choice);
    }
    return value instanceof Comparison.Choice choice
        ? List.of(choice.line(Rungwork.units()))
        : List.of();
  }

  private static List<String> choice(RigidOrCrush choice) {
    List<String> lines = new ArrayList<>();
    lines.add(choice.scene().name() + ": " + choice.occupant().name() + ". " + CAUTION);
    for (RigidOrCrush.Outcome one : choice.outcomes()) {
      String person = ", person " + one.ride().peak().show(Rungwork.units());
      String vehicle = ": vehicle " + one.peak().show(Rungwork.units());
      lines.add("  " + one.design().name() + vehicle + person + "; " + one.order().words());
    }
    return lines;
  }

  private static List<String> sheet(CheckSheet sheet) {
    List<String> lines = new ArrayList<>();
    lines.add(sheet.title() + ": " + sheet.verdictLine());
    sheet.governingByPart().forEach(check -> lines.add("  " + line(check)));
    return lines;
  }

  private static String line(Check check) {
    String used = Scale.NUMBER.number(check.utilisation().orElseThrow(), DIGITS);
    return used + "  " + check.part() + ": " + check.what() + " under " + check.loadCase();
  }
}
