package rungwork.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwork.check.Verdict;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/** How numbers stand in tables. */
final class Numbers {
  private static final int DIGITS = 4;

  /** Less than this part of a whole is rounding of double numbers [1]. */
  private static final double ROUNDING = 1e-9;

  private Numbers() {}

  /** A utilisation, with the word <em>over</em> above 1. */
  static String utilisation(double value) {
    String rounded = decimals(value, 2);
    if (value <= 1) {
      return rounded;
    }
    return rounded.equals("1.00") ? "above 1.00 over" : rounded + " over";
  }

  /** A coordinate, two decimals of a millimetre or three of an inch. */
  static String place(double metres, Units units) {
    return decimals(metres / units.scale(Kind.LENGTH).inSi(), units == Units.METRIC ? 2 : 3);
  }

  /** A figure on a drawing: the coordinate without zeros at its end. */
  static String dimension(double metres, Units units) {
    return trimmed(place(metres, units));
  }

  private static String trimmed(String figure) {
    return figure.contains(".") ? figure.replaceAll("0+$", "").replaceAll("\\.$", "") : figure;
  }

  /** A figure that a person gave, with its unit, without zeros at its end. */
  static String given(double si, Kind kind, Units units) {
    Scale scale = units.scale(kind);
    String figure = kind == Kind.LENGTH ? dimension(si, units) : trimmed(scale.number(si, DIGITS));
    return (figure + " " + scale.unit()).strip();
  }

  /** A mass on a drawing, three significant digits at most and no zeros at its end. */
  static String mass(double kilograms, Units units) {
    Scale scale = units.scale(Kind.MASS);
    String figure = scale.number(kilograms, 3);
    return trimmed(figure) + " " + scale.unit();
  }

  /** A number in a column, zero where it is rounding beside the size of its whole. */
  static String beside(double si, double size, Kind kind, Units units) {
    boolean nothing = Math.abs(si) <= ROUNDING * size;
    return nothing ? "0" : units.scale(kind).number(si, DIGITS);
  }

  /** A number with a fixed count of decimals; never a negative zero. */
  static String decimals(double value, int decimals) {
    String shown = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return shown.matches("-[0.]+") ? shown.substring(1) : shown;
  }

  /** A utilisation's cell: its colour and its number. */
  static Table.Cell cell(Verdict verdict) {
    Optional<Verdict.Measured> numbers = verdict.numbers();
    if (numbers.isEmpty()) {
      return new Table.Cell("not checked", "none");
    }
    double value = numbers.get().utilisation();
    String mark = verdict instanceof Verdict.OutsideRange ? " outside range" : "";
    return new Table.Cell(utilisation(value) + mark, Look.band(value));
  }

  /** A property's row: its shown quantity parted into number and unit. */
  static Table.Row property(String property, String symbol, String shown) {
    int blank = shown.indexOf(' ');
    return Table.Row.of(property, symbol, shown.substring(0, blank), shown.substring(blank + 1));
  }

  /** A column's head for numbers of one kind, its unit in it; without a unit when kinds differ. */
  static Table.Column column(String head, Optional<Kind> kind, Units units) {
    return Table.Column.number(head, kind.map(k -> units.scale(k).unit()).orElse(""));
  }

  /** A number for a column of one kind, or with its own unit when kinds differ. */
  static String number(double si, Kind kind, Optional<Kind> column, Units units) {
    return column.isPresent() ? units.scale(kind).number(si, DIGITS) : units.show(kind, si);
  }

  /** The one kind of all, if there is but one. */
  static Optional<Kind> common(List<Kind> kinds) {
    List<Kind> different = kinds.stream().distinct().toList();
    return different.size() == 1 ? Optional.of(different.get(0)) : Optional.empty();
  }
}
