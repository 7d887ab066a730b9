package rungwork.quantity;

import java.util.Optional;
import javax.measure.Quantity;
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
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * Makers and readers of typed quantities, meant for static import.
 *
 * <p>A maker takes a number and refuses NaN and infinity: {@code mm(50)}, {@code inch("3/16")},
 * {@code kN(4)}. A reader takes what a person writes: {@code length("1 1/2 in")}, {@code
 * stress("355 MPa")}. All hold metric workshop units inside, so that {@code inch(2)} equals {@code
 * mm(50.8)} and prints like it. A quantity from elsewhere is as welcome at every door.
 */
public final class Quantities {
  private Quantities() {}

  /**
   * A length in mm.
   *
   * @param value the number of millimetres; finite
   * @return the length
   */
  public static Quantity<Length> mm(double value) {
    return Measure.LENGTH.of("mm", value, 1);
  }

  /**
   * A length in cm.
   *
   * @param value the number of centimetres; finite
   * @return the length
   */
  public static Quantity<Length> cm(double value) {
    return Measure.LENGTH.of("cm", value, 10);
  }

  /**
   * A length in m.
   *
   * @param value the number of metres; finite
   * @return the length
   */
  public static Quantity<Length> m(double value) {
    return Measure.LENGTH.of("m", value, 1000);
  }

  /**
   * A length in in.
   *
   * @param value the number of inches; finite
   * @return the length
   */
  public static Quantity<Length> inch(double value) {
    return Measure.LENGTH.of("in", value, Customary.INCH);
  }

  /**
   * A length in inches, written as workshops do.
   *
   * @param inches a number, a fraction or both: {@code "0.095"}, {@code "3/16"}, {@code "1 1/2"}
   * @return the length
   */
  public static Quantity<Length> inch(String inches) {
    return inch(Reader.number(inches));
  }

  /**
   * A length in ft.
   *
   * @param value the number of feet; finite
   * @return the length
   */
  public static Quantity<Length> ft(double value) {
    return Measure.LENGTH.of("ft", value, Customary.FOOT);
  }

  /**
   * An area in mm².
   *
   * @param value the number of square millimetres; finite
   * @return the area
   */
  public static Quantity<Area> mm2(double value) {
    return Measure.AREA.of("mm²", value, 0.01);
  }

  /**
   * An area in cm².
   *
   * @param value the number of square centimetres; finite
   * @return the area
   */
  public static Quantity<Area> cm2(double value) {
    return Measure.AREA.of("cm²", value, 1);
  }

  /**
   * A section modulus in mm³.
   *
   * @param value the number of cubic millimetres; finite
   * @return the section modulus
   */
  public static Quantity<SectionModulus> mm3(double value) {
    return Measure.SECTION_MODULUS.of("mm³", value, 1e-3);
  }

  /**
   * A section modulus in cm³.
   *
   * @param value the number of cubic centimetres; finite
   * @return the section modulus
   */
  public static Quantity<SectionModulus> cm3(double value) {
    return Measure.SECTION_MODULUS.of("cm³", value, 1);
  }

  /**
   * A second moment of area in mm⁴.
   *
   * @param value the number of millimetres to the fourth; finite
   * @return the second moment of area
   */
  public static Quantity<SecondMoment> mm4(double value) {
    return Measure.SECOND_MOMENT.of("mm⁴", value, 1e-4);
  }

  /**
   * A second moment of area in cm⁴.
   *
   * @param value the number of centimetres to the fourth; finite
   * @return the second moment of area
   */
  public static Quantity<SecondMoment> cm4(double value) {
    return Measure.SECOND_MOMENT.of("cm⁴", value, 1);
  }

  /**
   * A force in N.
   *
   * @param value the number of newtons; finite
   * @return the force
   */
  public static Quantity<Force> N(double value) {
    return Measure.FORCE.of("N", value, 1e-3);
  }

  /**
   * A force in kN.
   *
   * @param value the number of kilonewtons; finite
   * @return the force
   */
  public static Quantity<Force> kN(double value) {
    return Measure.FORCE.of("kN", value, 1);
  }

  /**
   * A force in lbf.
   *
   * @param value the number of pounds-force; finite
   * @return the force
   */
  public static Quantity<Force> lbf(double value) {
    return Measure.FORCE.of("lbf", value, Customary.POUND_FORCE / 1000);
  }

  /**
   * A force in kip.
   *
   * @param value the number of thousands of pounds-force; finite
   * @return the force
   */
  public static Quantity<Force> kip(double value) {
    return Measure.FORCE.of("kip", value, Customary.POUND_FORCE);
  }

  /**
   * A moment in N·m.
   *
   * @param value the number of newton metres; finite
   * @return the moment
   */
  public static Quantity<Moment> Nm(double value) {
    return Measure.MOMENT.of("N·m", value, 1e-3);
  }

  /**
   * A moment in kN·m.
   *
   * @param value the number of kilonewton metres; finite
   * @return the moment
   */
  public static Quantity<Moment> kNm(double value) {
    return Measure.MOMENT.of("kN·m", value, 1);
  }

  /**
   * A moment in lbf·ft.
   *
   * @param value the number of pound-force feet; finite
   * @return the moment
   */
  public static Quantity<Moment> lbft(double value) {
    return Measure.MOMENT.of("lbf·ft", value, Customary.POUND_FORCE_FOOT / 1000);
  }

  /**
   * A moment in lbf·in.
   *
   * @param value the number of pound-force inches; finite
   * @return the moment
   */
  public static Quantity<Moment> lbin(double value) {
    return Measure.MOMENT.of("lbf·in", value, Customary.POUND_FORCE_FOOT / 12_000);
  }

  /**
   * A line load in N/m.
   *
   * @param value the number of newtons a metre; finite
   * @return the line load
   */
  public static Quantity<LineLoad> Npm(double value) {
    return Measure.LINE_LOAD.of("N/m", value, 0.001);
  }

  /**
   * A line load in kN/m.
   *
   * @param value the number of kilonewtons a metre; finite
   * @return the line load
   */
  public static Quantity<LineLoad> kNpm(double value) {
    return Measure.LINE_LOAD.of("kN/m", value, 1);
  }

  /**
   * A line load in lbf/ft.
   *
   * @param value the number of pounds-force a foot; finite
   * @return the line load
   */
  public static Quantity<LineLoad> lbfpft(double value) {
    return Measure.LINE_LOAD.of("lbf/ft", value, Customary.POUND_FORCE / Customary.FOOT);
  }

  /**
   * A stress in MPa.
   *
   * @param value the number of megapascals, that is N/mm²; finite
   * @return the stress
   */
  public static Quantity<Pressure> MPa(double value) {
    return Measure.STRESS.of("MPa", value, 1);
  }

  /**
   * A stress in GPa.
   *
   * @param value the number of gigapascals; finite
   * @return the stress
   */
  public static Quantity<Pressure> GPa(double value) {
    return Measure.STRESS.of("GPa", value, 1000);
  }

  /**
   * A stress in ksi.
   *
   * @param value the number of thousands of pounds-force a square inch; finite
   * @return the stress
   */
  public static Quantity<Pressure> ksi(double value) {
    return Measure.STRESS.of("ksi", value, 1000 * Customary.POUND_FORCE_PER_SQUARE_INCH);
  }

  /**
   * A stress in psi.
   *
   * @param value the number of pounds-force a square inch; finite
   * @return the stress
   */
  public static Quantity<Pressure> psi(double value) {
    return Measure.STRESS.of("psi", value, Customary.POUND_FORCE_PER_SQUARE_INCH);
  }

  /**
   * A mass in kg.
   *
   * @param value the number of kilograms; finite
   * @return the mass
   */
  public static Quantity<Mass> kg(double value) {
    return Measure.MASS.of("kg", value, 1);
  }

  /**
   * A mass in lb.
   *
   * @param value the number of pounds; finite
   * @return the mass
   */
  public static Quantity<Mass> lb(double value) {
    return Measure.MASS.of("lb", value, Customary.POUND);
  }

  /**
   * A density in kg/m³.
   *
   * @param value the number of kilograms a cubic metre; finite
   * @return the density
   */
  public static Quantity<Density> kgpm3(double value) {
    return Measure.DENSITY.of("kg/m³", value, 1);
  }

  /**
   * A moment of inertia in kg·m².
   *
   * @param value the number of kilogram square metres; finite
   * @return the moment of inertia
   */
  public static Quantity<MomentOfInertia> kgm2(double value) {
    return Measure.INERTIA.of("kg·m²", value, 1);
  }

  /**
   * An acceleration in g.
   *
   * @param value the number of standard accelerations of free fall, 9.80665 m/s² each; finite
   * @return the acceleration
   */
  public static Quantity<Acceleration> g(double value) {
    return Measure.ACCELERATION.of("g", value, Scale.G.inSi());
  }

  /**
   * An acceleration in m/s².
   *
   * @param value the number of metres a second squared; finite
   * @return the acceleration
   */
  public static Quantity<Acceleration> mps2(double value) {
    return Measure.ACCELERATION.of("m/s²", value, 1);
  }

  /**
   * A speed in km/h.
   *
   * @param value the number of kilometres an hour; finite
   * @return the speed
   */
  public static Quantity<Speed> kmh(double value) {
    return Measure.SPEED.of("km/h", value, 1);
  }

  /**
   * A speed in mph.
   *
   * @param value the number of miles an hour; finite
   * @return the speed
   */
  public static Quantity<Speed> mph(double value) {
    return Measure.SPEED.of("mph", value, Customary.MILE_PER_HOUR);
  }

  /**
   * A speed in m/s.
   *
   * @param value the number of metres a second; finite
   * @return the speed
   */
  public static Quantity<Speed> mps(double value) {
    return Measure.SPEED.of("m/s", value, 3.6);
  }

  /**
   * An energy in J.
   *
   * @param value the number of joules; finite
   * @return the energy
   */
  public static Quantity<Energy> J(double value) {
    return Measure.ENERGY.of("J", value, 1e-3);
  }

  /**
   * An energy in kJ.
   *
   * @param value the number of kilojoules; finite
   * @return the energy
   */
  public static Quantity<Energy> kJ(double value) {
    return Measure.ENERGY.of("kJ", value, 1);
  }

  /**
   * A time in ms.
   *
   * @param value the number of milliseconds; finite
   * @return the time
   */
  public static Quantity<Time> ms(double value) {
    return Measure.TIME.of("ms", value, 1);
  }

  /**
   * A time in s.
   *
   * @param value the number of seconds; finite
   * @return the time
   */
  public static Quantity<Time> s(double value) {
    return Measure.TIME.of("s", value, 1000);
  }

  /**
   * An angle in deg.
   *
   * @param value the number of degrees; finite
   * @return the angle
   */
  public static Quantity<Angle> deg(double value) {
    return Measure.ANGLE.of("deg", value, 1);
  }

  /**
   * An angle in rad.
   *
   * @param value the number of radians; finite
   * @return the angle
   */
  public static Quantity<Angle> rad(double value) {
    return Measure.ANGLE.of("rad", value, 180 / Math.PI);
  }

  /**
   * A stiffness in N/mm.
   *
   * @param value the number of newtons a millimetre; finite
   * @return the stiffness
   */
  public static Quantity<Stiffness> Npmm(double value) {
    return Measure.STIFFNESS.of("N/mm", value, 1);
  }

  /**
   * A stiffness in kN/mm.
   *
   * @param value the number of kilonewtons a millimetre; finite
   * @return the stiffness
   */
  public static Quantity<Stiffness> kNpmm(double value) {
    return Measure.STIFFNESS.of("kN/mm", value, 1000);
  }

  /**
   * A stiffness in lbf/in.
   *
   * @param value the number of pounds-force an inch; finite
   * @return the stiffness
   */
  public static Quantity<Stiffness> lbfpin(double value) {
    return Measure.STIFFNESS.of("lbf/in", value, Customary.POUND_FORCE / Customary.INCH);
  }

  /**
   * A rotational stiffness in N·m/deg.
   *
   * @param value the number of newton metres a degree; finite
   * @return the rotational stiffness
   */
  public static Quantity<RotationalStiffness> Nmpdeg(double value) {
    return Measure.ROTATIONAL_STIFFNESS.of("N·m/deg", value, 1);
  }

  /**
   * A rotational stiffness in N·m/rad.
   *
   * @param value the number of newton metres a radian; finite
   * @return the rotational stiffness
   */
  public static Quantity<RotationalStiffness> Nmprad(double value) {
    return Measure.ROTATIONAL_STIFFNESS.of("N·m/rad", value, Math.PI / 180);
  }

  /**
   * A rotational stiffness in lbf·ft/deg.
   *
   * @param value the number of pound-force feet a degree; finite
   * @return the rotational stiffness
   */
  public static Quantity<RotationalStiffness> lbftpdeg(double value) {
    return Measure.ROTATIONAL_STIFFNESS.of("lbf·ft/deg", value, Customary.POUND_FORCE_FOOT);
  }

  /**
   * A quantity of any kind from its text.
   *
   * @param text a number and a unit, such as {@code 50 mm}, {@code 1 1/2 in} or {@code 355 MPa}
   * @return the quantity, in its metric workshop unit
   */
  public static Quantity<?> parse(String text) {
    return Reader.quantity(text);
  }

  /**
   * A length from its text.
   *
   * @param text a number and a unit, such as {@code 1 1/2 in}
   * @return the length
   */
  public static Quantity<Length> length(String text) {
    return Reader.quantity(text, Measure.LENGTH);
  }

  /**
   * A force from its text.
   *
   * @param text a number and a unit, such as {@code 4 kN}
   * @return the force
   */
  public static Quantity<Force> force(String text) {
    return Reader.quantity(text, Measure.FORCE);
  }

  /**
   * A moment from its text.
   *
   * @param text a number and a unit, such as {@code 860 N·m}
   * @return the moment
   */
  public static Quantity<Moment> moment(String text) {
    return Reader.quantity(text, Measure.MOMENT);
  }

  /**
   * A line load from its text.
   *
   * @param text a number and a unit, such as {@code 120 N/m}
   * @return the line load
   */
  public static Quantity<LineLoad> lineLoad(String text) {
    return Reader.quantity(text, Measure.LINE_LOAD);
  }

  /**
   * A stress from its text.
   *
   * @param text a number and a unit, such as {@code 355 MPa}
   * @return the stress
   */
  public static Quantity<Pressure> stress(String text) {
    return Reader.quantity(text, Measure.STRESS);
  }

  /**
   * A mass from its text.
   *
   * @param text a number and a unit, such as {@code 62 kg}
   * @return the mass
   */
  public static Quantity<Mass> mass(String text) {
    return Reader.quantity(text, Measure.MASS);
  }

  /**
   * An acceleration from its text.
   *
   * @param text a number and a unit, such as {@code 3 g}
   * @return the acceleration
   */
  public static Quantity<Acceleration> acceleration(String text) {
    return Reader.quantity(text, Measure.ACCELERATION);
  }

  /**
   * A speed from its text.
   *
   * @param text a number and a unit, such as {@code 50 km/h}
   * @return the speed
   */
  public static Quantity<Speed> speed(String text) {
    return Reader.quantity(text, Measure.SPEED);
  }

  /**
   * An energy from its text.
   *
   * @param text a number and a unit, such as {@code 62.2 kJ}
   * @return the energy
   */
  public static Quantity<Energy> energy(String text) {
    return Reader.quantity(text, Measure.ENERGY);
  }

  /**
   * A time from its text.
   *
   * @param text a number and a unit, such as {@code 90 ms}
   * @return the time
   */
  public static Quantity<Time> time(String text) {
    return Reader.quantity(text, Measure.TIME);
  }

  /**
   * An angle from its text.
   *
   * @param text a number and a unit, such as {@code 12 deg}
   * @return the angle
   */
  public static Quantity<Angle> angle(String text) {
    return Reader.quantity(text, Measure.ANGLE);
  }

  /**
   * A stiffness from its text.
   *
   * @param text a number and a unit, such as {@code 70 N/mm}
   * @return the stiffness
   */
  public static Quantity<Stiffness> stiffness(String text) {
    return Reader.quantity(text, Measure.STIFFNESS);
  }

  /**
   * A rotational stiffness from its text.
   *
   * @param text a number and a unit, such as {@code 3000 N·m/deg}
   * @return the rotational stiffness
   */
  public static Quantity<RotationalStiffness> rotationalStiffness(String text) {
    return Reader.quantity(text, Measure.ROTATIONAL_STIFFNESS);
  }

  /**
   * The SI value of a quantity.
   *
   * @param what the thing as the user named it, for the message
   * @param quantity the quantity
   * @return its value in the coherent SI unit of its kind
   */
  public static double si(String what, Quantity<?> quantity) {
    Optional<Measure<?>> made = Measure.of(quantity);
    if (made.isPresent()) {
      return Guard.finite(what, quantity.getValue().doubleValue() * made.get().inSi());
    }
    return Guard.finite(what, quantity.toSystemUnit().getValue().doubleValue());
  }

  /**
   * What a quantity measures.
   *
   * @param what the thing as the user named it, for the message
   * @param quantity the quantity, made by this class
   * @return its kind
   * @throws ModelException when it is of no kind that is known here
   */
  public static Kind kind(String what, Quantity<?> quantity) {
    return Measure.of(quantity)
        .map(Measure::kind)
        .orElseThrow(
            () -> new ModelException(what + " " + quantity + " is of no kind that is known here"));
  }
}
