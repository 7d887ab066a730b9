package rungwork.check;

import java.util.Optional;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;

/** What a check found: a measured utilisation, or that it could not be checked. Never "OK". */
public sealed interface Verdict {
  /**
   * The numbers, if there are any: those of a check that was made, or those shown by one that ran
   * outside its formula's range.
   *
   * @return demand and capacity, or nothing when it was not checked
   */
  Optional<Measured> numbers();

  /**
   * Demand against capacity.
   *
   * @param demand what the load asks, SI unit, at least zero
   * @param capacity what the part can give, SI unit, above zero
   * @param kind what both measure
   */
  record Measured(double demand, double capacity, Kind kind) implements Verdict {
    /** Refuses a demand below zero and a capacity of nothing. */
    public Measured {
      Guard.notNegative("demand", demand, Scale.NUMBER);
      Guard.positive("capacity", capacity, Scale.NUMBER);
    }

    /**
     * Demand over capacity; above 1 does not pass.
     *
     * @return the utilisation [1]
     */
    public double utilisation() {
      return demand / capacity;
    }

    /**
     * By how much the demand could grow: 1 / utilisation.
     *
     * @return the reserve factor [1]; infinite without a demand
     */
    public double reserve() {
      return capacity / demand;
    }

    @Override
    public Optional<Measured> numbers() {
      return Optional.of(this);
    }
  }

  /**
   * Demand against capacity by a formula used outside its range: shown, but no pass.
   *
   * @param shown the numbers
   * @param outside what is outside which range, such as {@code outside EN 1993-1-8: throat 2.1 mm}
   */
  record OutsideRange(Measured shown, String outside) implements Verdict {
    /** Refuses to leave the reader without the range. */
    public OutsideRange {
      outside = Guard.name("range that was left", outside);
    }

    @Override
    public Optional<Measured> numbers() {
      return Optional.of(shown);
    }
  }

  /**
   * Not checked.
   *
   * @param reason why, and what would be needed
   */
  record NotChecked(String reason) implements Verdict {
    /** Refuses to leave the reader without a reason. */
    public NotChecked {
      reason = Guard.name("reason for not checking", reason);
    }

    @Override
    public Optional<Measured> numbers() {
      return Optional.empty();
    }
  }
}
