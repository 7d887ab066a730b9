package rungwork.impact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungwork.check.Check;
import rungwork.check.LimitState;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.joint.Factors;
import rungwork.loadpath.ChainSheet;
import rungwork.quantity.Kind;

/** What the chain of a mount says about the deceleration at which it gives way. */
final class ChainFigures {
  private ChainFigures() {}

  /** The weakest check on yield, and on rupture; utilisations in proportion to the hit. */
  static OrderOfFailure.Part of(OrderOfFailure.Part part, ChainSheet sheet, double at) {
    Guard.positive("deceleration of the chain's loads", at, Scale.G);
    Optional<Check> yield = worst(sheet, LimitState.YIELD);
    Optional<Check> ultimate = worst(sheet, LimitState.ULTIMATE);
    Check first =
        yield
            .or(() -> ultimate)
            .orElseThrow(
                () ->
                    new ModelException(
                        "mount "
                            + sheet.chain().mount()
                            + " has no unfactored check on yield or rupture that was made; part "
                            + part.name()
                            + " learns nothing from it"));
    Optional<Range> breaks = ultimate.map(check -> scaled(check, at));
    return new OrderOfFailure.Part(
        part.name(),
        part.zone(),
        part.station(),
        Optional.of(earlier(scaled(first, at), breaks)),
        breaks,
        detail(sheet, first));
  }

  /** What breaks before it yields, first gives way by breaking. */
  private static Range earlier(Range yields, Optional<Range> breaks) {
    return breaks.filter(range -> range.low() < yields.low()).orElse(yields);
  }

  private static OrderOfFailure.Detail detail(ChainSheet sheet, Check first) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "utilisations in proportion to the deceleration; high end: 1.4 times the minimum strength"
            + " and a wall 10 % thick");
    sheet
        .sheet()
        .notChecked()
        .forEach(check -> notes.add("not checked: " + check.what() + " of " + check.part()));
    return new OrderOfFailure.Detail(
        first.what(), first.part() + " of mount " + sheet.chain().mount(), first.working(), notes);
  }

  private static Optional<Check> worst(ChainSheet sheet, LimitState state) {
    return sheet.sheet().checks().stream()
        .filter(Check::made)
        .filter(check -> Factors.unfactored(check.basis()))
        .filter(check -> check.basis().limitState() == state)
        .filter(check -> check.utilisation().orElse(0) > 0)
        .max(Comparator.comparingDouble(check -> check.utilisation().orElseThrow()));
  }

  private static Range scaled(Check check, double at) {
    double low = at / check.utilisation().orElseThrow();
    double more = TubeStrength.EXPECTED_YIELD * (1 + TubeStrength.WALL_TOLERANCE);
    return new Range(Kind.ACCELERATION, low, low * more);
  }
}
