package rungwork.check;

import java.util.List;
import java.util.Optional;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

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
   * Why there is no answer, or which range was left.
   *
   * @param units the reader's units
   * @return one sentence; empty where demand and capacity were compared within the range
   */
  String reason(Units units);

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

    @Override
    public String reason(Units units) {
      return "";
    }
  }

  /**
   * Demand against capacity by a formula used outside its range: shown, but no pass.
   *
   * @param shown the numbers
   * @param outside what is outside which range, such as {@code outside EN 1993-1-8: throat 2.1 mm}
   */
  record OutsideRange(Measured shown, Reason outside) implements Verdict {
    /** Refuses to leave the reader without the range. */
    public OutsideRange {
      Guard.name("range that was left", outside.words());
    }

    /**
     * A range told without numbers that have a unit.
     *
     * @param shown the numbers
     * @param outside what is outside which range
     */
    public OutsideRange(Measured shown, String outside) {
      this(shown, Reason.of(outside));
    }

    @Override
    public Optional<Measured> numbers() {
      return Optional.of(shown);
    }

    @Override
    public String reason(Units units) {
      return outside.text(units);
    }
  }

  /**
   * Not checked.
   *
   * @param why why, and what would be needed
   */
  record NotChecked(Reason why) implements Verdict {
    /** Refuses to leave the reader without a reason. */
    public NotChecked {
      Guard.name("reason for not checking", why.words());
    }

    /**
     * A reason without numbers that have a unit.
     *
     * @param why why, and what would be needed
     */
    public NotChecked(String why) {
      this(Reason.of(why));
    }

    @Override
    public Optional<Measured> numbers() {
      return Optional.empty();
    }

    @Override
    public String reason(Units units) {
      return why.text(units);
    }
  }

  /**
   * A sentence whose numbers follow the reader's units.
   *
   * @param words the sentence, with {@code {}} in the place of each number
   * @param amounts the numbers in order
   */
  record Reason(String words, List<Amount> amounts) {
    private static final String PLACE = "{}";

    /** Refuses other than one place a number; copies the numbers. */
    public Reason {
      amounts = List.copyOf(amounts);
      int places = words.split("\\{\\}", -1).length - 1;
      if (places != amounts.size()) {
        throw new ModelException(
            "the reason \"%s\" has %d places {} for %d numbers"
                .formatted(words, places, amounts.size()));
      }
    }

    /**
     * A sentence with its numbers.
     *
     * @param words the sentence, with {@code {}} in the place of each number
     * @param amounts the numbers in order
     * @return the reason
     */
    public static Reason of(String words, Amount... amounts) {
      return new Reason(words, List.of(amounts));
    }

    /**
     * Several reasons in one sentence.
     *
     * @param reasons the reasons
     * @return all of them, with semicolons between
     */
    public static Reason joined(List<Reason> reasons) {
      return new Reason(
          String.join("; ", reasons.stream().map(Reason::words).toList()),
          reasons.stream().flatMap(reason -> reason.amounts().stream()).toList());
    }

    /**
     * The sentence as read.
     *
     * @param units the reader's units
     * @return such as {@code throat 2.100 mm}
     */
    public String text(Units units) {
      StringBuilder text = new StringBuilder(words);
      int from = 0;
      for (Amount amount : amounts) {
        int place = text.indexOf(PLACE, from);
        String shown = units.show(amount.kind(), amount.value());
        text.replace(place, place + PLACE.length(), shown);
        from = place + shown.length();
      }
      return text.toString();
    }

    @Override
    public String toString() {
      return text(Units.METRIC);
    }
  }

  /**
   * A number in a sentence.
   *
   * @param kind what it measures
   * @param value in SI units
   */
  record Amount(Kind kind, double value) {
    /** Refuses what is not finite. */
    public Amount {
      Guard.finite(kind.noun(), value);
    }

    /**
     * A length.
     *
     * @param value the length [m]
     * @return the number
     */
    public static Amount length(double value) {
      return new Amount(Kind.LENGTH, value);
    }
  }
}
