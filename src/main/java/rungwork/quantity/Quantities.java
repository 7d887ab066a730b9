package rungwork.quantity;

import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import rungwork.fault.Guard;
import tech.units.indriya.unit.Units;

/** Makers of typed quantities, meant for static import. */
public final class Quantities {
  private static final Unit<Length> MILLIMETRE = MILLI(Units.METRE);
  private static final Unit<Force> KILONEWTON = KILO(Units.NEWTON);
  private static final Unit<Pressure> MEGAPASCAL = MEGA(Units.PASCAL);

  private Quantities() {}

  /**
   * A length in millimetres.
   *
   * @param value the number of millimetres; finite
   * @return the length
   */
  public static Quantity<Length> mm(double value) {
    return of("length in mm", value, MILLIMETRE);
  }

  /**
   * A force in kilonewtons.
   *
   * @param value the number of kilonewtons; finite
   * @return the force
   */
  public static Quantity<Force> kN(double value) {
    return of("force in kN", value, KILONEWTON);
  }

  /**
   * A stress in megapascals.
   *
   * @param value the number of megapascals; finite
   * @return the stress
   */
  public static Quantity<Pressure> MPa(double value) {
    return of("stress in MPa", value, MEGAPASCAL);
  }

  /**
   * A mass in kilograms.
   *
   * @param value the number of kilograms; finite
   * @return the mass
   */
  public static Quantity<Mass> kg(double value) {
    return of("mass in kg", value, Units.KILOGRAM);
  }

  /**
   * The SI value of a quantity.
   *
   * @param what the thing as the user named it, for the message
   * @param quantity the quantity
   * @return its value in the coherent SI unit of its kind
   */
  public static double si(String what, Quantity<?> quantity) {
    return Guard.finite(what, quantity.toSystemUnit().getValue().doubleValue());
  }

  private static <Q extends Quantity<Q>> Quantity<Q> of(String what, double value, Unit<Q> unit) {
    return tech.units.indriya.quantity.Quantities.getQuantity(Guard.finite(what, value), unit);
  }
}
