package rungwork.quantity;

import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import rungwork.fault.ModelException;

/** Reads what people write: a number or a workshop fraction, then a unit. */
final class Reader {
  private static final String EXAMPLE = "a number and a unit, such as 50 mm or 1 1/2 in";

  /** A sign, then a decimal number, a fraction, or a whole number with a fraction; the rest. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<sign>[+-]?)(?:"
              + "(?:(?<whole>\\d+)[ -]+)?(?<over>\\d+) ?/ ?(?<under>\\d+)"
              + "|(?<decimal>(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)"
              + ")(?<rest>.*)");

  private Reader() {}

  /** A bare number: {@code 0.095}, {@code 3/16} or {@code 1 1/2}. */
  static double number(String text) {
    Matcher parts = parts(text);
    if (!parts.group("rest").isBlank()) {
      throw new ModelException(
          quoted(text) + " is not a number alone; write it like 0.095, 3/16 or 1 1/2");
    }
    return value(text, parts);
  }

  /** A quantity of whatever kind its unit says. */
  static Quantity<?> quantity(String text) {
    Matcher parts = parts(text);
    return maker(text, parts.group("rest").strip()).apply(value(text, parts));
  }

  /** A quantity of one kind. */
  static <Q extends Quantity<Q>> Quantity<Q> quantity(String text, Measure<Q> wanted) {
    Quantity<?> found = quantity(text);
    if (found.getUnit() != wanted.unit()) {
      throw new ModelException(
          text.strip()
              + " is "
              + withArticle(kindOf(found).noun())
              + ", not "
              + withArticle(wanted.kind().noun()));
    }
    return wanted.inWorkshopUnit(found.getValue().doubleValue());
  }

  private static Matcher parts(String text) {
    Matcher parts = NUMBER.matcher(text.strip());
    if (!parts.matches()) {
      throw new ModelException(quoted(text) + " does not begin with a number; write " + EXAMPLE);
    }
    if (parts.group("rest").startsWith(",")) {
      throw new ModelException(
          quoted(text) + " has a comma in its number; write the decimal sign as a point");
    }
    return parts;
  }

  private static double value(String text, Matcher parts) {
    double size =
        parts.group("decimal") == null
            ? fraction(text, parts)
            : Double.parseDouble(parts.group("decimal"));
    return parts.group("sign").equals("-") ? -size : size;
  }

  private static double fraction(String text, Matcher parts) {
    double over = Double.parseDouble(parts.group("over"));
    double under = Double.parseDouble(parts.group("under"));
    if (under == 0) {
      throw new ModelException(quoted(text) + " divides by zero; a fraction looks like 3/16");
    }
    if (parts.group("whole") == null) {
      return over / under;
    }
    if (over >= under) {
      throw new ModelException(
          quoted(text) + " has a fraction of one or more after a whole number; write 1 1/2");
    }
    return Double.parseDouble(parts.group("whole")) + over / under;
  }

  private static DoubleFunction<Quantity<?>> maker(String text, String unit) {
    if (unit.isEmpty()) {
      throw new ModelException(quoted(text) + " has no unit; write " + EXAMPLE);
    }
    return Vocabulary.maker(unit)
        .orElseThrow(
            () ->
                new ModelException(
                    quoted(text)
                        + " has the unknown unit "
                        + unit
                        + "; known are "
                        + String.join(", ", Vocabulary.known())));
  }

  private static Kind kindOf(Quantity<?> quantity) {
    return Measure.ALL.stream()
        .filter(measure -> measure.unit() == quantity.getUnit())
        .findFirst()
        .orElseThrow()
        .kind();
  }

  private static String withArticle(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) < 0 ? "a " : "an ") + noun;
  }

  private static String quoted(String text) {
    return '"' + text.strip() + '"';
  }
}
