package rungwork.fault;

/** The common refusals, each worded the same way: what, value with unit, limit. */
public final class Guard {
  private Guard() {}

  /**
   * Passes a finite number on.
   *
   * @param what the thing as the user named it
   * @param value the value in SI units
   * @return the value
   * @throws ModelException when it is NaN or infinite
   */
  public static double finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new ModelException(what + " is " + Scale.NUMBER.show(value) + "; give a finite number");
    }
    return value;
  }

  /**
   * Passes a number above zero on.
   *
   * @param what the thing as the user named it
   * @param value the value in SI units
   * @param scale how to write it
   * @return the value
   * @throws ModelException when it is not finite, zero or negative
   */
  public static double positive(String what, double value, Scale scale) {
    if (finite(what, value) <= 0) {
      throw new ModelException(what + " " + scale.show(value) + " is not above zero");
    }
    return value;
  }

  /**
   * Passes a number that is zero or above on.
   *
   * @param what the thing as the user named it
   * @param value the value in SI units
   * @param scale how to write it
   * @return the value
   * @throws ModelException when it is not finite or negative
   */
  public static double notNegative(String what, double value, Scale scale) {
    if (finite(what, value) < 0) {
      throw new ModelException(what + " " + scale.show(value) + " is below zero");
    }
    return value;
  }

  /**
   * Passes a name on, its outer blanks removed.
   *
   * @param what what is being named, such as {@code node}
   * @param name the name
   * @return the name without outer blanks
   * @throws ModelException when nothing is left of it
   */
  public static String name(String what, String name) {
    if (name == null || name.isBlank()) {
      throw new ModelException("a " + what + " has no name; give it one");
    }
    return name.strip();
  }
}
