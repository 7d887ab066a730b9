package rungwork.quantity;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import rungwork.fault.Scale;

/** The reader's choice of units: one of the two for a whole notebook, never mixed in one table. */
public enum Units {
  /** mm, kN, kN·m, MPa, cm², kg, g. */
  METRIC(metric()),
  /** in, lbf, lbf·ft, ksi, in², lb, g. */
  INCH_POUND(inchPound());

  private static final int DIGITS = 4;

  /** A force, moment, line load or stress below this [SI] is rounding of double numbers. */
  private static final double NOTHING = 1e-6;

  private static final Set<Kind> LOADS =
      EnumSet.of(Kind.FORCE, Kind.MOMENT, Kind.LINE_LOAD, Kind.STRESS);

  private final Map<Kind, Scale> scales;

  Units(Map<Kind, Scale> scales) {
    this.scales = scales;
  }

  /**
   * How a kind of number is written in these units.
   *
   * @param kind what the number measures
   * @return its unit and size
   */
  public Scale scale(Kind kind) {
    return scales.get(kind);
  }

  /**
   * A number with its unit, four significant digits; a millionth of a newton, newton metre, newton
   * a metre or pascal is nothing.
   *
   * @param kind what the number measures
   * @param si the value in SI units
   * @return for example {@code 12.40 kN}
   */
  public String show(Kind kind, double si) {
    boolean nothing = LOADS.contains(kind) && Math.abs(si) < NOTHING;
    return scale(kind).show(nothing ? 0 : si, DIGITS);
  }

  /**
   * A typed quantity in these units, at most four significant digits.
   *
   * @param quantity made by {@link Quantities}; one of a kind not known there shows as it is
   * @return for example {@code 12.4 kN}
   */
  public String show(Quantity<?> quantity) {
    return Measure.of(quantity)
        .map(measure -> brief(measure.kind(), Quantities.si(measure.kind().noun(), quantity)))
        .orElseGet(quantity::toString);
  }

  /** Without the zeros that end a decimal fraction: a person typed 50 mm, not 50.00 mm. */
  private String brief(Kind kind, double si) {
    return show(kind, si)
        .replaceFirst("(\\.\\d*?)0+(?=\\s|$)", "$1")
        .replaceFirst("\\.(?=\\s|$)", "");
  }

  private static Map<Kind, Scale> metric() {
    Map<Kind, Scale> map = shared();
    map.put(Kind.LENGTH, Scale.MM);
    map.put(Kind.AREA, new Scale("cm²", 1e-4));
    map.put(Kind.SECOND_MOMENT, new Scale("cm⁴", 1e-8));
    map.put(Kind.SECTION_MODULUS, new Scale("cm³", 1e-6));
    map.put(Kind.WARPING_CONSTANT, new Scale("cm⁶", 1e-12));
    map.put(Kind.FORCE, Scale.KN);
    map.put(Kind.MOMENT, new Scale("kN·m", 1e3));
    map.put(Kind.LINE_LOAD, new Scale("N/mm", 1e3));
    map.put(Kind.STRESS, Scale.MPA);
    map.put(Kind.MODULUS, new Scale("GPa", 1e9));
    map.put(Kind.MASS, Scale.KG);
    map.put(Kind.MASS_PER_LENGTH, new Scale("kg/m", 1));
    map.put(Kind.DENSITY, new Scale("kg/m³", 1));
    map.put(Kind.INERTIA, new Scale("kg·m²", 1));
    map.put(Kind.SPEED, new Scale("km/h", 1 / 3.6));
    map.put(Kind.ENERGY, new Scale("kJ", 1e3));
    map.put(Kind.STIFFNESS, new Scale("N/mm", 1e3));
    map.put(Kind.ROTATIONAL_STIFFNESS, new Scale("N·m/deg", 180 / Math.PI));
    return map;
  }

  private static Map<Kind, Scale> inchPound() {
    double inch = Customary.INCH / 1000;
    double foot = Customary.FOOT / 1000;
    double pound = Customary.POUND;
    double poundForce = Customary.POUND_FORCE;
    Scale kipPerSquareInch = new Scale("ksi", 1000 * poundForce / (inch * inch));
    Map<Kind, Scale> map = shared();
    map.put(Kind.LENGTH, new Scale("in", inch));
    map.put(Kind.AREA, new Scale("in²", inch * inch));
    map.put(Kind.SECTION_MODULUS, new Scale("in³", Math.pow(inch, 3)));
    map.put(Kind.SECOND_MOMENT, new Scale("in⁴", Math.pow(inch, 4)));
    map.put(Kind.WARPING_CONSTANT, new Scale("in⁶", Math.pow(inch, 6)));
    map.put(Kind.FORCE, new Scale("lbf", poundForce));
    map.put(Kind.MOMENT, new Scale("lbf·ft", poundForce * foot));
    map.put(Kind.LINE_LOAD, new Scale("lbf/in", poundForce / inch));
    map.put(Kind.STRESS, kipPerSquareInch);
    map.put(Kind.MODULUS, kipPerSquareInch);
    map.put(Kind.MASS, new Scale("lb", pound));
    map.put(Kind.MASS_PER_LENGTH, new Scale("lb/ft", pound / foot));
    map.put(Kind.DENSITY, new Scale("lb/in³", pound / Math.pow(inch, 3)));
    map.put(Kind.INERTIA, new Scale("lb·ft²", pound * foot * foot));
    map.put(Kind.SPEED, new Scale("mph", Customary.MILE_PER_HOUR / 3.6));
    map.put(Kind.ENERGY, new Scale("ft·lbf", poundForce * foot));
    map.put(Kind.STIFFNESS, new Scale("lbf/in", poundForce / inch));
    map.put(Kind.ROTATIONAL_STIFFNESS, new Scale("lbf·ft/deg", poundForce * foot * 180 / Math.PI));
    return map;
  }

  private static Map<Kind, Scale> shared() {
    Map<Kind, Scale> map = new EnumMap<>(Kind.class);
    map.put(Kind.NUMBER, Scale.NUMBER);
    map.put(Kind.RATIO, Scale.NUMBER);
    map.put(Kind.ACCELERATION, Scale.G);
    map.put(Kind.ANGULAR_ACCELERATION, new Scale("rad/s²", 1));
    map.put(Kind.TIME, new Scale("ms", 1e-3));
    map.put(Kind.ANGLE, new Scale("deg", Math.PI / 180));
    return map;
  }
}
