package rungwork.quantity;

import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SECOND;

import javax.measure.Quantity;
import javax.measure.Unit;
import rungwork.fault.Scale;
import systems.uom.common.USCustomary;

/**
 * Sizes of the US customary units in metric workshop units. They are exact by the yard and pound
 * agreement of 1959; the library's own conversions to SI units keep them so.
 */
final class Customary {
  /** [mm]. */
  static final double INCH = 1000 * size(USCustomary.INCH, METRE);

  /** [mm]. */
  static final double FOOT = 1000 * size(USCustomary.FOOT, METRE);

  /** [kg]. */
  static final double POUND = size(USCustomary.POUND, KILOGRAM);

  /** [km/h]. */
  static final double MILE_PER_HOUR = 3.6 * size(USCustomary.MILE_PER_HOUR, METRE_PER_SECOND);

  /** The weight of a pound [N]; the library has no such unit. */
  static final double POUND_FORCE = POUND * Scale.G.inSi();

  /** [N·m]. */
  static final double POUND_FORCE_FOOT = POUND_FORCE * FOOT / 1000;

  /** [MPa]. */
  static final double POUND_FORCE_PER_SQUARE_INCH = POUND_FORCE / (INCH * INCH);

  private Customary() {}

  private static <Q extends Quantity<Q>> double size(Unit<Q> unit, Unit<Q> in) {
    return unit.getConverterTo(in).convert(1.0);
  }
}
