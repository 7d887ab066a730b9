package rungwork.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;
import static si.uom.NonSI.DEGREE_ANGLE;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.KILOMETRE_PER_HOUR;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.SECOND;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import rungwork.fault.Guard;

/**
 * A kind of typed quantity with its metric workshop unit. Whatever unit a person types, the
 * quantity holds this one, so that two ways of writing a length are equal and print alike.
 *
 * @param kind what is measured
 * @param unit the metric workshop unit, as {@link Units#METRIC} shows it; m/s² for accelerations,
 *     since the library has no readable g
 * @param inSi the size of that unit in SI units
 * @param <Q> the quantity's type
 */
record Measure<Q extends Quantity<Q>>(Kind kind, Unit<Q> unit, double inSi) {
  static final Measure<Length> LENGTH = new Measure<>(Kind.LENGTH, MILLI(METRE));
  static final Measure<Area> AREA =
      new Measure<>(Kind.AREA, CENTI(METRE).pow(2).asType(Area.class));
  static final Measure<SectionModulus> SECTION_MODULUS =
      new Measure<>(Kind.SECTION_MODULUS, CENTI(METRE).pow(3).asType(SectionModulus.class));
  static final Measure<SecondMoment> SECOND_MOMENT =
      new Measure<>(Kind.SECOND_MOMENT, CENTI(METRE).pow(4).asType(SecondMoment.class));
  static final Measure<Force> FORCE = new Measure<>(Kind.FORCE, KILO(NEWTON));
  static final Measure<Moment> MOMENT =
      new Measure<>(Kind.MOMENT, KILO(NEWTON).multiply(METRE).asType(Moment.class));
  static final Measure<LineLoad> LINE_LOAD =
      new Measure<>(Kind.LINE_LOAD, NEWTON.divide(MILLI(METRE)).asType(LineLoad.class));
  static final Measure<Pressure> STRESS = new Measure<>(Kind.STRESS, MEGA(PASCAL));
  static final Measure<Mass> MASS = new Measure<>(Kind.MASS, KILOGRAM);
  static final Measure<Density> DENSITY =
      new Measure<>(Kind.DENSITY, KILOGRAM.divide(METRE.pow(3)).asType(Density.class));
  static final Measure<MomentOfInertia> INERTIA =
      new Measure<>(Kind.INERTIA, KILOGRAM.multiply(METRE.pow(2)).asType(MomentOfInertia.class));
  static final Measure<Acceleration> ACCELERATION =
      new Measure<>(Kind.ACCELERATION, METRE_PER_SQUARE_SECOND, 1);
  static final Measure<Speed> SPEED = new Measure<>(Kind.SPEED, KILOMETRE_PER_HOUR);
  static final Measure<Energy> ENERGY = new Measure<>(Kind.ENERGY, KILO(JOULE));
  static final Measure<Time> TIME = new Measure<>(Kind.TIME, MILLI(SECOND));
  static final Measure<Angle> ANGLE = new Measure<>(Kind.ANGLE, DEGREE_ANGLE);
  static final Measure<Stiffness> STIFFNESS =
      new Measure<>(Kind.STIFFNESS, NEWTON.divide(MILLI(METRE)).asType(Stiffness.class));
  static final Measure<RotationalStiffness> ROTATIONAL_STIFFNESS =
      new Measure<>(
          Kind.ROTATIONAL_STIFFNESS,
          NEWTON.multiply(METRE).divide(ANGLE.unit).asType(RotationalStiffness.class));

  static final List<Measure<?>> ALL =
      List.of(
          LENGTH,
          AREA,
          SECTION_MODULUS,
          SECOND_MOMENT,
          FORCE,
          MOMENT,
          LINE_LOAD,
          STRESS,
          MASS,
          DENSITY,
          INERTIA,
          ACCELERATION,
          SPEED,
          ENERGY,
          TIME,
          ANGLE,
          STIFFNESS,
          ROTATIONAL_STIFFNESS);

  private Measure(Kind kind, Unit<Q> unit) {
    this(kind, unit, Units.METRIC.scale(kind).inSi());
  }

  /** The kind of a quantity that this room made. */
  static Optional<Measure<?>> of(Quantity<?> quantity) {
    for (Measure<?> measure : ALL) {
      if (measure.unit == quantity.getUnit()) {
        return Optional.of(measure);
      }
    }
    return Optional.empty();
  }

  /**
   * A quantity of this kind.
   *
   * @param symbol the unit as the user wrote it, for the message
   * @param value the number in that unit; finite
   * @param size the size of that unit in workshop units
   * @return the quantity, in the workshop unit
   */
  Quantity<Q> of(String symbol, double value, double size) {
    String what = kind.noun() + " in " + symbol;
    Guard.finite(what, value);
    return inWorkshopUnit(size == 1 ? value : Guard.finite(what, decimalProduct(value, size)));
  }

  /** As by hand, with the digits typed: 3/16 in is 4.7625 mm, not 4.762499999999999 mm. */
  private static double decimalProduct(double value, double size) {
    return BigDecimal.valueOf(value).multiply(BigDecimal.valueOf(size)).doubleValue();
  }

  /** A quantity of this kind from a finite number in the workshop unit. */
  Quantity<Q> inWorkshopUnit(double value) {
    return tech.units.indriya.quantity.Quantities.getQuantity(value, unit);
  }
}
