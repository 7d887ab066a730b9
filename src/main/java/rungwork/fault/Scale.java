package rungwork.fault;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How a number in SI units is written for a person: a unit's name and its size.
 *
 * @param unit the unit's name, such as {@code mm}; empty for a bare number
 * @param inSi the size of one such unit in SI units, such as 0.001 for mm
 */
public record Scale(String unit, double inSi) {
  /** Digits of numbers in messages. */
  private static final int MESSAGE_DIGITS = 4;

  /** A double has no more. */
  private static final int MOST_DIGITS = 17;

  /** Smaller numbers than 10 to this power are written with the power, such as 1.23e-5. */
  private static final int LEAST_POWER = -4;

  /** Larger numbers likewise. */
  private static final int MOST_POWER = 9;

  /** A bare number. */
  public static final Scale NUMBER = new Scale("", 1);

  /** Millimetres, for lengths [m]. */
  public static final Scale MM = new Scale("mm", 1e-3);

  /** Square millimetres, for areas [m²]. */
  public static final Scale MM2 = new Scale("mm²", 1e-6);

  /** Kilograms, for masses [kg]. */
  public static final Scale KG = new Scale("kg", 1);

  /** Kilonewtons, for forces [N]. */
  public static final Scale KN = new Scale("kN", 1e3);

  /** Newton metres, for moments [N·m]. */
  public static final Scale NM = new Scale("N·m", 1);

  /** Megapascals, for stresses [Pa]. */
  public static final Scale MPA = new Scale("MPa", 1e6);

  /** Standard accelerations of free fall, 9.80665 m/s² (ISO 80000-3), for accelerations [m/s²]. */
  public static final Scale G = new Scale("g", 9.80665);

  /** Refuses a unit of no size. */
  public Scale {
    if (!(inSi > 0 && inSi < Double.POSITIVE_INFINITY)) {
      throw new ModelException(
          "the size of a unit \""
              + unit
              + "\" is "
              + NUMBER.show(inSi)
              + "; give a finite number above zero");
    }
  }

  /**
   * The number alone, rounded.
   *
   * @param si the value in SI units; finite
   * @param digits significant digits, 1 to 17
   * @return the rounded number in this unit, digits grouped by nothing, the decimal sign a point;
   *     very small and very large ones with a power of ten, such as {@code 1.23e-5}
   */
  public String number(double si, int digits) {
    if (digits < 1 || digits > MOST_DIGITS) {
      throw new ModelException(digits + " digits cannot be shown; ask for 1 to " + MOST_DIGITS);
    }
    double value = si / inSi;
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "-infinite";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
    if (rounded.signum() == 0) {
      return "0";
    }
    int power = rounded.precision() - rounded.scale() - 1;
    return power < LEAST_POWER || power > MOST_POWER
        ? decimals(rounded.movePointLeft(power), digits - 1) + "e" + power
        : decimals(rounded, Math.max(0, digits - 1 - power));
  }

  private static String decimals(BigDecimal number, int decimals) {
    return number.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /**
   * The number with its unit, as messages show it: four significant digits.
   *
   * @param si the value in SI units
   * @return for example {@code 13.00 mm}
   */
  public String show(double si) {
    return show(si, MESSAGE_DIGITS);
  }

  /**
   * The number with its unit.
   *
   * @param si the value in SI units
   * @param digits significant digits, 1 to 17
   * @return for example {@code 13.0 mm}
   */
  public String show(double si, int digits) {
    String number = number(si, digits);
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
