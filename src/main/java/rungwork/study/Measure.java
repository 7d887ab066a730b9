package rungwork.study;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rungwork.check.Check;
import rungwork.fault.Guard;
import rungwork.frame.Frame;
import rungwork.frame.Stock;
import rungwork.impact.Collapse;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.Range;
import rungwork.impact.Ride;
import rungwork.loadpath.ChainSheet;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

/**
 * What a study asks of each variant: a number with its kind, and words that go with it, such as
 * where the highest utilisation is.
 *
 * @param name unique in its study
 * @param kind what it measures
 * @param unit what it counts where no kind does, such as a price; empty where the kind says it
 * @param of the number of one variant [SI]; not a number where there is none
 * @param words what goes with the number; empty for nothing
 * @param better which way is better
 * @param <D> what a variant is
 */
public record Measure<D>(
    String name,
    Kind kind,
    String unit,
    ToDoubleFunction<D> of,
    Function<D, String> words,
    Better better) {
  /** Which way a number is better. */
  public enum Better {
    /** Less is better: mass, utilisation, price. */
    LESS,
    /** More is better: stiffness, deceleration at first yield. */
    MORE
  }

  /** Refuses a measure without a name. */
  public Measure {
    name = Guard.name("measure", name);
  }

  /**
   * A number that is better the smaller it is.
   *
   * @param name unique in its study
   * @param kind what it measures
   * @param of the number of one variant [SI]
   * @param <D> what a variant is
   * @return the measure
   */
  public static <D> Measure<D> least(String name, Kind kind, ToDoubleFunction<D> of) {
    return new Measure<>(name, kind, "", of, variant -> "", Better.LESS);
  }

  /**
   * A number that is better the larger it is.
   *
   * @param name unique in its study
   * @param kind what it measures
   * @param of the number of one variant [SI]
   * @param <D> what a variant is
   * @return the measure
   */
  public static <D> Measure<D> most(String name, Kind kind, ToDoubleFunction<D> of) {
    return new Measure<>(name, kind, "", of, variant -> "", Better.MORE);
  }

  /**
   * A count that no unit of measurement fits, such as a price in the user's money.
   *
   * @param name unique in its study
   * @param unit what is counted, as it shall stand in the table's head
   * @param of the number of one variant; less is better
   * @param <D> what a variant is
   * @return the measure
   */
  public static <D> Measure<D> counted(String name, String unit, ToDoubleFunction<D> of) {
    return new Measure<>(name, Kind.NUMBER, unit, of, variant -> "", Better.LESS);
  }

  /**
   * The same with words beside the number.
   *
   * @param beside what goes with the number
   * @return the measure
   */
  public Measure<D> telling(Function<D, String> beside) {
    return new Measure<>(name, kind, unit, of, beside, better);
  }

  /**
   * The mass of a ladder.
   *
   * @return the measure
   */
  public static Measure<Assessment> frameMass() {
    return least("frame mass", Kind.MASS, Assessment::mass);
  }

  /**
   * The torsional stiffness of a ladder with rigid joints.
   *
   * @return the measure
   */
  public static Measure<Assessment> torsionalStiffness() {
    return most(
        "torsional stiffness",
        Kind.ROTATIONAL_STIFFNESS,
        assessment -> assessment.torsionalStiffness(Joints.RIGID));
  }

  /**
   * The highest utilisation of a ladder and where it is.
   *
   * @return the measure
   */
  public static Measure<Assessment> utilisation() {
    return Measure.<Assessment>least(
            "utilisation", Kind.RATIO, assessment -> utilisation(assessment.sheet().governing()))
        .telling(assessment -> words(assessment.sheet().governing()));
  }

  /**
   * The highest utilisation of one part and where it is.
   *
   * @param part the part's name, such as {@code front crossmember}
   * @return the measure
   */
  public static Measure<Assessment> utilisation(String part) {
    return Measure.<Assessment>least(
            "utilisation of the " + part,
            Kind.RATIO,
            assessment -> utilisation(assessment.sheet().about(part).governing()))
        .telling(assessment -> words(assessment.sheet().about(part).governing()));
  }

  /**
   * What a frame's members cost.
   *
   * @param money what is counted, such as {@code crowns}
   * @param perMetre the user's price for a metre of a stock
   * @return the measure
   */
  public static Measure<Assessment> cost(String money, ToDoubleFunction<Stock> perMetre) {
    return counted("cost of the members", money, assessment -> cost(assessment.ladder(), perMetre));
  }

  private static double cost(Ladder ladder, ToDoubleFunction<Stock> perMetre) {
    Frame frame = ladder.frame(Joints.RIGID);
    return frame.beams().stream()
        .mapToDouble(
            beam ->
                frame.length(beam)
                    * perMetre.applyAsDouble(new Stock(beam.section(), beam.material())))
        .sum();
  }

  /**
   * The vehicle's deceleration when the first part of the frame yields, that of low strength;
   * beside it that of high strength.
   *
   * @return the measure
   */
  public static Measure<OrderOfFailure> firstYield() {
    return Measure.<OrderOfFailure>most(
            "deceleration at first yield",
            Kind.ACCELERATION,
            order -> order.elastic().firstYield().low())
        .telling(order -> upTo(order.elastic().firstYield()));
  }

  /**
   * The vehicle's deceleration when the frame collapses, that of low strength; beside it that of
   * high strength.
   *
   * @return the measure
   */
  public static Measure<Collapse> collapse() {
    return Measure.<Collapse>most(
            "deceleration at collapse",
            Kind.ACCELERATION,
            collapse -> collapse.deceleration().low())
        .telling(collapse -> upTo(collapse.deceleration()));
  }

  /**
   * The highest deceleration of a belted person, the worse end of its range; beside it the range.
   * It says nothing of injury.
   *
   * @return the measure
   */
  public static Measure<Ride> occupantPeak() {
    return Measure.<Ride>least(
            "occupant's peak deceleration", Kind.ACCELERATION, ride -> ride.peak().high())
        .telling(ride -> ride.peak().toString());
  }

  private static String upTo(Range range) {
    return "up to " + Units.METRIC.show(range.kind(), range.high()) + " with high strength";
  }

  /**
   * The highest utilisation of a mount's chain of parts, and which part, load case and basis it is
   * of; limits of proportion are left to its sheet.
   *
   * @return the measure
   */
  public static Measure<ChainSheet> chain() {
    return Measure.<ChainSheet>least(
            "utilisation of the chain", Kind.RATIO, sheet -> utilisation(weakest(sheet)))
        .telling(
            sheet ->
                weakest(sheet)
                    .map(
                        check ->
                            "%s of %s, %s (%s)"
                                .formatted(
                                    check.what(),
                                    check.part(),
                                    check.loadCase(),
                                    ChainSheet.shortly(check.basis())))
                    .orElse("nothing"));
  }

  private static Optional<Check> weakest(ChainSheet sheet) {
    return sheet.ranked().values().stream()
        .map(parts -> parts.get(0))
        .max(Comparator.comparingDouble(check -> check.utilisation().orElse(0)));
  }

  /**
   * The same asked of a part of what a variant is, such as of the ride in a design with an
   * assessment and a ride.
   *
   * @param part gives what this measure is asked of
   * @param <W> what a variant is as a whole
   * @return the measure
   */
  public <W> Measure<W> of(Function<W, D> part) {
    return new Measure<>(
        name,
        kind,
        unit,
        whole -> of.applyAsDouble(part.apply(whole)),
        whole -> words.apply(part.apply(whole)),
        better);
  }

  private static double utilisation(Optional<Check> check) {
    return check.map(one -> one.utilisation().orElse(Double.NaN)).orElse(Double.NaN);
  }

  private static String words(Optional<Check> check) {
    return check.map(one -> one.what() + " of " + one.part()).orElse("nothing");
  }

  /** How its numbers are named and shown. */
  Asked asked() {
    return new Asked(name, kind, unit, better);
  }
}
