package rungwork.section;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import rungwork.fault.Scale;

/** How sections and their parts are named. */
final class Label {
  private static final MathContext DIGITS = new MathContext(4);
  private static final Set<String> SIDES = Set.of("top", "bottom", "left", "right");

  /** Closer to an axis than this is on it [m]. */
  private static final double ON_AXIS = 1e-7;

  private Label() {}

  /** A kind with its sizes [m], such as {@code RHS 80x40x3}. */
  static String sized(String kind, double... sizes) {
    return Arrays.stream(sizes)
        .mapToObj(size -> new BigDecimal(size / Scale.MM.inSi()).round(DIGITS))
        .map(size -> size.stripTrailingZeros().toPlainString())
        .collect(Collectors.joining("x", kind + " ", ""));
  }

  /** A part with the side on which it lies, such as {@code top left corner}. */
  static String sided(Spot place, String part) {
    String height = side(place.z(), "top ", "bottom ");
    return height + side(place.y(), "left ", "right ") + part;
  }

  /** The part without its side. */
  static String part(String name) {
    return Arrays.stream(name.split(" "))
        .filter(word -> !SIDES.contains(word))
        .collect(Collectors.joining(" "));
  }

  private static String side(double coordinate, String positive, String negative) {
    if (Math.abs(coordinate) < ON_AXIS) {
      return "";
    }
    return coordinate > 0 ? positive : negative;
  }
}
