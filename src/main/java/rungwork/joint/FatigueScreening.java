package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.LimitState;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * Screening of a welded detail for repeated load: nominal stress ranges and their counts over a
 * stated use against the detail's class, damage added up by Miner's rule. It compares designs; it
 * is never a life.
 *
 * @param part the part
 * @param detail the detail and its class
 * @param use stress ranges over the stated use, one at least
 * @param gammaMf what the class is divided by, γMf [1], at least 1
 */
public record FatigueScreening(String part, Detail detail, List<Swings> use, double gammaMf) {
  /** Safe life, high consequence of failure: EN 1993-1-9:2005, table 3.1 (from memory). */
  public static final double SAFE_LIFE = 1.35;

  private static final double REFERENCE_CYCLES = 2e6;
  private static final String METHOD =
      "EN 1993-1-9:2005, 7.1 and annex A (from memory): N = 2·10⁶·(FAT/Δσ)³ for every range, no"
          + " limit below which a range is harmless, on the safe side; Miner's sum";
  private static final Symbol DAMAGE = Letters.ratio("D", "sum of damage");
  private static final Symbol BEFORE = Letters.ratio("D′", "sum of damage so far");
  private static final Symbol COUNT = Letters.number("n", "count");
  private static final Symbol RANGE = Letters.stress("Δσ", "stress range");
  private static final Symbol CLASS = Letters.stress("FAT", "detail's class");
  private static final Symbol FACTOR = Letters.ratio("γMf", "partial factor on fatigue strength");
  private static final Formula ADD =
      new Formula(
          DAMAGE,
          "{D′} + {n}/(2·10⁶)·({Δσ}·{γMf}/{FAT})³",
          List.of(BEFORE, COUNT, RANGE, FACTOR, CLASS),
          METHOD,
          in -> in[0] + in[1] / REFERENCE_CYCLES * Math.pow(in[2] * in[3] / in[4], 3));
  private static final Formula EQUIVALENT =
      new Formula(
          Letters.stress("ΔσE", "equal range of 2·10⁶ cycles"),
          "{FAT}/{γMf}·{D}^(1/3)",
          List.of(CLASS, FACTOR, DAMAGE),
          METHOD,
          in -> in[0] / in[1] * Math.cbrt(in[2]));
  private static final Formula ALLOWED =
      new Formula(
          Letters.stress("Δσ,d", "class divided by the factor"),
          "{FAT}/{γMf}",
          List.of(CLASS, FACTOR),
          METHOD,
          in -> in[0] / in[1]);
  private static final String SCREENING =
      "A screening, never a life: counts and ranges are guesses, and weld quality, misalignment,"
          + " corrosion and repairs change the class. Inspect welds; a crack ends their use.";

  /** Refuses a use without a range and a factor that would raise the class. */
  public FatigueScreening {
    part = Guard.name("part", part);
    use = List.copyOf(use);
    if (use.isEmpty()) {
      throw new ModelException(
          "the fatigue screening of " + part + " has no stress range; state one at least");
    }
    if (Guard.finite("γMf", gammaMf) < 1) {
      throw new ModelException(
          "γMf " + Scale.NUMBER.show(gammaMf) + " is below 1; it would raise the class");
    }
  }

  /**
   * A detail and its class.
   *
   * @param name what it is, such as {@code toe of a fillet weld}
   * @param strength stress range at two million cycles, FAT [Pa], above zero
   * @param source of the class
   */
  public record Detail(String name, double strength, String source) {
    private static final String CLASSES =
        "IIW recommendations (IIW-1823-07), classes from memory; all structural steels alike";

    /** End of a plate along the stress, fillet welded, long: the low end of its classes. */
    public static final Detail LONGITUDINAL_ATTACHMENT =
        new Detail("end of a plate welded along the stress", 63e6, CLASSES);

    /** Toe of a load-carrying fillet weld: the low end of its classes. */
    public static final Detail FILLET_TOE = new Detail("toe of a fillet weld", 63e6, CLASSES);

    /** Root of a load-carrying fillet weld, stress on the throat. */
    public static final Detail FILLET_ROOT = new Detail("root of a fillet weld", 36e6, CLASSES);

    /** Refuses a class of nothing. */
    public Detail {
      name = Guard.name("detail", name);
      Guard.positive("class of " + name, strength, Scale.MPA);
      source = Guard.name("source of a detail's class", source);
    }
  }

  /**
   * Equal swings of stress.
   *
   * @param event what makes them, such as {@code braking to a stop}
   * @param range Δσ, from lowest to highest [Pa], at least zero
   * @param count how often in the stated use, at least zero
   */
  public record Swings(String event, double range, double count) {
    /** Refuses a negative range or count. */
    public Swings {
      event = Guard.name("event", event);
      Guard.notNegative("stress range of " + event, range, Scale.MPA);
      Guard.notNegative("count of " + event, count, Scale.NUMBER);
    }

    /**
     * Swings from a typed stress.
     *
     * @param event what makes them
     * @param range from lowest to highest
     * @param count how often in the stated use
     * @return the swings
     */
    public static Swings of(String event, Quantity<Pressure> range, double count) {
      return new Swings(event, si("stress range of " + event, range), count);
    }
  }

  /**
   * Miner's sum over the stated use.
   *
   * @return the damage [1]; 1 uses the class up
   */
  public double damage() {
    List<Step> sums = sums();
    return sums.get(sums.size() - 1).result();
  }

  /**
   * The equal range of two million cycles against the class: linear in the stresses.
   *
   * @return the check
   */
  public Check check() {
    Step allowed = ALLOWED.with(detail.strength(), gammaMf);
    Step equivalent = EQUIVALENT.with(detail.strength(), gammaMf, damage());
    Basis basis =
        new Basis(LimitState.FATIGUE, "γMf = " + Scale.NUMBER.number(gammaMf, 3) + ", screening");
    String events = String.join(", ", use.stream().map(Swings::event).toList());
    Question question = new Question("fatigue screening", part, detail.name(), events, SCREENING);
    return Finding.compare(equivalent, allowed)
        .after(sums())
        .sourcedBy(METHOD + "; class: " + detail.source())
        .answers(question, basis);
  }

  private List<Step> sums() {
    List<Step> sums = new ArrayList<>();
    double damage = 0;
    for (Swings swings : use) {
      Step next = ADD.with(damage, swings.count(), swings.range(), gammaMf, detail.strength());
      sums.add(next);
      damage = next.result();
    }
    return sums;
  }
}
