package rungwork.impact;

import java.util.Optional;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * Inputs between which crashes of road vehicles lie. Outside, a number is more likely mistyped than
 * meant: it warns, and the warning stands with the result. Common practice, no source.
 */
enum Sane {
  CLOSING_SPEED("closing speed", Kind.SPEED, 5 / 3.6, 130 / 3.6),
  VEHICLE_MASS("mass of a vehicle", Kind.MASS, 100, 3500),
  CRUSH("crush", Kind.LENGTH, 0.02, 1.5),
  FRONT_STIFFNESS("stiffness of a front", Kind.STIFFNESS, 1e5, 2e7),
  BELT_STIFFNESS("stiffness of a belt", Kind.STIFFNESS, 2e4, 2e5),
  BELT_SLACK("slack of a belt", Kind.LENGTH, 0, 0.15),
  PERSON("mass of a person", Kind.MASS, 20, 160),
  MEAN_DECELERATION("mean deceleration", Kind.ACCELERATION, 9.80665, 100 * 9.80665),
  COLLAPSE("deceleration at collapse", Kind.ACCELERATION, 9.80665, 150 * 9.80665);

  private final String what;
  private final Range range;

  Sane(String what, Kind kind, double low, double high) {
    this.what = what;
    this.range = new Range(kind, low, high);
  }

  /** What to say of an input; nothing when it is inside. */
  Optional<String> warning(Range input, Units units) {
    if (input.low() >= range.low() && input.high() <= range.high()) {
      return Optional.empty();
    }
    return Optional.of(
        what
            + " "
            + input.show(units)
            + " is outside "
            + range.show(units)
            + ", between which crashes of road vehicles lie; is it mistyped?");
  }
}
