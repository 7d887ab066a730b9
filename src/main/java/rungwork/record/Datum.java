package rungwork.record;

import java.util.Optional;
import rungwork.check.Verdict.Amount;
import rungwork.fault.Guard;
import rungwork.frame.Point;

/**
 * One datum of the vehicle as it is, with where it comes from.
 *
 * @param what what it is, such as {@code wheelbase}
 * @param value what it is said to be
 * @param origin where that comes from
 * @param how with what it was measured, from which drawing, or what the guess rests on; may be
 *     empty
 * @param model what the calculation has for the same, where that is computed and not put in; a
 *     measured value stands beside it and never overwrites it
 */
public record Datum(String what, Value value, Origin origin, String how, Optional<Amount> model)
    implements Entry {
  /** Refuses a datum without a name. */
  public Datum {
    what = Guard.name("datum", what);
    how = how.strip();
  }

  /**
   * What a datum is said to be: words, a size, a place, or several of these.
   *
   * @param words such as a section and its material; may be empty
   * @param size a number with what it measures
   * @param at a place in vehicle axes
   */
  public record Value(String words, Optional<Amount> size, Optional<Point> at) {
    static Value of(Amount size) {
      return new Value("", Optional.of(size), Optional.empty());
    }

    static Value of(String words) {
      return new Value(words, Optional.empty(), Optional.empty());
    }

    Value at(Point place) {
      return new Value(words, size, Optional.of(place));
    }
  }

  static Datum of(String what, Value value) {
    return new Datum(what, value, Origin.NOT_STATED, "", Optional.empty());
  }

  Datum from(Origin known, String by) {
    return new Datum(what, value, known, by, model);
  }

  Datum beside(Amount computed) {
    return new Datum(what, value, origin, how, Optional.of(computed));
  }

  /**
   * By how much the measured value differs from the calculation's.
   *
   * @return (stated − calculated) / calculated [1], where both are numbers of one kind
   */
  public Optional<Double> offModel() {
    return value
        .size()
        .filter(size -> model.filter(one -> one.kind() == size.kind()).isPresent())
        .map(size -> (size.value() - model.get().value()) / model.get().value());
  }
}
