package rungwork.fault;

/** The common refusals, each worded the same way: what, value with unit, limit. */
public final class Guard {
  /** Larger numbers in SI units than this overflow on the way; nothing built comes near it. */
  private static final double LARGEST = 1e30;

  /** Smaller positive ones vanish on the way; a warping constant of a thin wire is 1e-20 m⁶. */
  private static final double SMALLEST = 1e-30;

  private Guard() {}

  /**
   * Passes a finite number on.
   *
   * @param what the thing as the user named it
   * @param value the value in SI units
   * @return the value
   * @throws ModelException when it is NaN, infinite or beyond 1e30
   */
  public static double finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new ModelException(what + " is " + Scale.NUMBER.show(value) + "; give a finite number");
    }
    if (Math.abs(value) > LARGEST) {
      throw new ModelException(
          what
              + " is "
              + Scale.NUMBER.show(value)
              + " in SI units; numbers beyond 1e30 cannot be calculated with");
    }
    return value;
  }

  /**
   * Passes on a number that was calculated.
   *
   * @param what what came out
   * @param value the value in SI units; for several values their sum does
   * @return the value
   * @throws SolveException when it is NaN or infinite
   */
  public static double solved(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new SolveException(
          what
              + " comes out as "
              + Scale.NUMBER.show(value)
              + "; the numbers put in lie too far apart to be calculated with");
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
   * @throws ModelException when it is not finite, zero, negative or below 1e-30
   */
  public static double positive(String what, double value, Scale scale) {
    if (finite(what, value) <= 0) {
      throw new ModelException(what + " " + scale.show(value) + " is not above zero");
    }
    if (value < SMALLEST) {
      throw new ModelException(
          what
              + " "
              + scale.show(value)
              + " is too small to be calculated with; 1e-30 in SI units is the least");
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
