package rungwork.study;

import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * A measure without what it measures: how its numbers are named and shown.
 *
 * @param name its name
 * @param kind what its numbers measure
 * @param unit what they count where no kind does; empty where the kind says it
 * @param better which way they are better
 */
record Asked(String name, Kind kind, String unit, Measure.Better better) {
  /**
   * The head of a column.
   *
   * @param units the reader's units
   * @return name and unit
   */
  String head(Units units) {
    String shown = unit.isEmpty() ? units.scale(kind).unit() : unit;
    return shown.isEmpty() ? name : name + " [" + shown + "]";
  }

  /**
   * A number with its unit.
   *
   * @param value the number [SI]
   * @param units the reader's units
   * @return for example {@code 12.4 kg}; {@code no number} where there is none
   */
  String show(double value, Units units) {
    return Double.isNaN(value) ? "no number" : show(value, units, 3);
  }

  /** A number that somebody stated, to four digits, so that it is known again. */
  String stated(double value, Units units) {
    return show(value, units, 4);
  }

  private String show(double value, Units units, int digits) {
    return unit.isEmpty()
        ? units.scale(kind).show(value, digits)
        : Scale.NUMBER.number(value, digits) + " " + unit;
  }
}
