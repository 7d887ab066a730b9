package rungwork.joint;

import java.util.stream.Stream;
import rungwork.check.Basis;
import rungwork.check.DesignFactor;
import rungwork.check.LimitState;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * What a joint's capacities are divided by. The design factor divides every one of them, as the
 * load factors of a building code would raise the load; a capacity on ultimate strength is divided
 * by its code's own factor too.
 *
 * @param design the design factor, on yield and on ultimate strength
 * @param gammaM2 γM2 of EN 1993-1-8, on ultimate strength [1], at least 1
 * @param phi φ of AISC 360, on ultimate strength [1], above 0, at most 1
 */
public record Factors(DesignFactor design, double gammaM2, double phi) {
  /**
   * Road cases: 1.5 on everything; γM2 = 1.25 (EN 1993-1-8:2005, table 2.1; from memory) and φ =
   * 0.75 (AISC 360-16, chapters D5, J; from memory) on ultimate strength besides.
   */
  public static final Factors ROAD = new Factors(DesignFactor.ROAD, 1.25, 0.75);

  /** Impact cases, which ask what gives way first: nothing is divided. */
  public static final Factors UNFACTORED = new Factors(DesignFactor.NONE, 1, 1);

  /** Refuses factors that would raise a capacity. */
  public Factors {
    if (Guard.finite("γM2", gammaM2) < 1) {
      throw new ModelException(
          "γM2 " + Scale.NUMBER.show(gammaM2) + " is below 1; it would raise the capacity");
    }
    if (!(phi > 0 && phi <= 1)) {
      throw new ModelException("φ " + Scale.NUMBER.show(phi) + " is outside above 0 to 1");
    }
  }

  /**
   * Whether a check on a joint divided by nothing, so that it may stand in an order of failure.
   *
   * @param basis the check's basis
   * @return true for a basis of {@link #UNFACTORED}
   */
  public static boolean unfactored(Basis basis) {
    return Stream.of(UNFACTORED.yield(), UNFACTORED.ultimate(), UNFACTORED.american())
        .anyMatch(basis::equals);
  }

  /** The basis of a capacity on yield. */
  Basis yield() {
    return new Basis(LimitState.YIELD, design + " on yield; γM0 = γM1 = γM5 = 1.0");
  }

  /** The basis of a capacity on ultimate strength by EN 1993-1-8. */
  Basis ultimate() {
    return new Basis(LimitState.ULTIMATE, "γM2 = " + number(gammaM2) + " and " + design);
  }

  /** The basis of a capacity on ultimate strength by AISC 360. */
  Basis american() {
    return new Basis(LimitState.ULTIMATE, "φ = " + number(phi) + " and " + design);
  }

  /** The basis of a maker's rating. */
  Basis rating() {
    return new Basis(LimitState.RATING, design + " on the rating");
  }

  /** The basis of a limit on shape. */
  static Basis proportion() {
    return new Basis(LimitState.PROPORTION, "none");
  }

  private static String number(double factor) {
    return Scale.NUMBER.number(factor, 3);
  }
}
