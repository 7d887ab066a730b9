package rungwork.record;

import java.util.List;
import java.util.OptionalDouble;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.material.Source;
import rungwork.vehicle.Side;

/**
 * One place for the tape: what the true frame has there, and what was read.
 *
 * @param kind what is measured
 * @param side of the rail; for a diagonal that of its front end; left for a width
 * @param from its front station, or its only one
 * @param to its rear station, or the same
 * @param truth the true frame's value [m]
 * @param measured what was read [m]; nothing where nobody measured
 */
public record Reading(
    Kind kind, Side side, String from, String to, double truth, OptionalDouble measured) {
  /** Refuses values that are no numbers. */
  public Reading {
    Guard.finite("true value from " + from + " to " + to, truth);
    measured.ifPresent(value -> Guard.finite("reading from " + from + " to " + to, value));
  }

  /** What a tape, a straight-edge or a string measures. */
  public enum Kind {
    /** Along one rail, from mark to mark. */
    LENGTH,
    /** From the left rail's mark to the right rail's at one station. */
    WIDTH,
    /** From one rail's mark at a station to the other rail's at a station behind. */
    DIAGONAL,
    /** A rail's mark above a level datum. */
    HEIGHT,
    /** Outwards from a string between the rail's ends to its mark. */
    BOW
  }

  /**
   * A published tolerance.
   *
   * @param value either way [m]
   * @param source where it stands
   */
  public record Limit(double value, Source source) {}

  /** What a figure says beside published tolerances. */
  public enum Standing {
    /** Nobody measured it. */
    NOT_MEASURED("not measured"),
    /** Inside the tightest published tolerance. */
    WITHIN("within"),
    /** Outside the tightest, inside another. */
    SOURCES_DIFFER("sources differ"),
    /** Outside all of them. */
    OUTSIDE("outside");

    /** What sums of double numbers leave [m]. */
    private static final double ROUNDING = 1e-9;

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /**
     * The standing in words.
     *
     * @return such as {@code outside}
     */
    public String words() {
      return words;
    }

    static Standing of(double difference, List<Limit> limits) {
      double beyond = Math.abs(difference) - ROUNDING;
      long passed = limits.stream().filter(limit -> beyond <= limit.value()).count();
      if (passed == limits.size()) {
        return WITHIN;
      }
      return passed == 0 ? OUTSIDE : SOURCES_DIFFER;
    }
  }

  /**
   * Measured less true.
   *
   * @return the difference [m]; nothing where nobody measured
   */
  public OptionalDouble difference() {
    return measured.isPresent()
        ? OptionalDouble.of(measured.getAsDouble() - truth)
        : OptionalDouble.empty();
  }

  /**
   * What repaired frames are held to.
   *
   * @return published tolerances, the tightest first
   */
  public List<Limit> limits() {
    return kind == Kind.BOW ? Tolerances.BOW : Tolerances.DISTANCE;
  }

  /**
   * Where the difference stands beside these.
   *
   * @return the standing
   */
  public Standing standing() {
    return difference().isPresent()
        ? Standing.of(difference().getAsDouble(), limits())
        : Standing.NOT_MEASURED;
  }

  /**
   * The place in words.
   *
   * @return such as {@code front left to rear right}
   */
  public String where() {
    return switch (kind) {
      case LENGTH -> side.word() + " rail, " + from + " to " + to;
      case WIDTH -> "rail to rail at " + from;
      case DIAGONAL -> from + " " + side.word() + " to " + to + " " + side.other().word();
      case HEIGHT -> "height of the " + side.word() + " rail at " + from;
      case BOW -> "string to " + side.word() + " rail at " + from;
    };
  }

  /** Whether it is taken at the same place. */
  boolean sameAs(Reading other) {
    return kind == other.kind
        && side == other.side
        && from.equals(other.from)
        && to.equals(other.to);
  }

  @Override
  public String toString() {
    String read = measured.isPresent() ? ", measured " + Scale.MM.show(measured.getAsDouble()) : "";
    return where() + ": true " + Scale.MM.show(truth) + read + ", " + standing().words();
  }
}
