package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.fault.Guard;
import rungwork.fault.Scale;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;

/**
 * The bolt through a tab's hole and what it carries: a rod end's ball or a bush between spacers, at
 * the side of one tab (single shear) or between a pair (double shear).
 *
 * <pre>
 *   single shear             double shear
 *      tab                   tab      tab
 *     ||  gap  centre        ||  gap centre gap  ||
 *   ==||=====[ ball ]==    ==||=====[ ball ]=====||==   bolt along y
 *     ||                     ||                  ||
 * </pre>
 *
 * <p>Bending of the bolt counts; what preload and clamped spacers take of it does not.
 *
 * @param name the bolt's name
 * @param tab the tab that it goes through
 * @param threads where its thread ends
 * @param stack what stands beside the tab
 */
public record Pivot(String name, Tab tab, Bolt.Threads threads, Stack stack) implements Joint {
  private static final Symbol N = Letters.number("n", "number of shear planes");
  private static final Symbol F = Letters.force("F", "force across the bolt");
  private static final Symbol FV = Letters.force("Fv", "shear force on one plane");
  private static final Symbol FA = Letters.force("Fa", "force along the bolt");
  private static final Symbol GAP = Letters.length("c", "gap beside the tab");
  private static final Symbol CENTRE = Letters.length("b", "width of ball or bush");
  private static final Symbol M = Letters.moment("M", "bending moment of the bolt");
  private static final Symbol W = Letters.modulus("W", "section modulus of the bolt");
  private static final Symbol A = Letters.area("A", "area of the bolt in the plane");
  private static final Symbol BAR = Letters.length("ds", "diameter that counts");
  private static final Symbol MRD = Letters.moment("MRd", "bending resistance of the pin");
  private static final Symbol FVRD = Letters.force("Fv,Rd", "shear resistance of one plane");
  private static final Symbol FYB = Letters.stress("fyb", "yield strength of the bolt");

  private static final Formula ACROSS =
      new Formula(
          F,
          "√({Fx}² + {Fz}²)",
          List.of(Letters.FX, Letters.FZ),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  private static final Formula SHEAR =
      new Formula(FV, "{F}/{n}", List.of(F, N), "statics", in -> in[0] / in[1]);
  private static final Formula ALONG =
      new Formula(FA, "|{Fy}|", List.of(Letters.FY_LATERAL), "statics", in -> Math.abs(in[0]));
  private static final Formula SINGLE_BENDING =
      new Formula(
          M,
          "{F}·({t}/2 + {c} + {b}/2)",
          List.of(F, Letters.T, GAP, CENTRE),
          "statics, from the tab's middle to the ball's middle; common practice, no source",
          in -> in[0] * (in[1] / 2 + in[2] + in[3] / 2));
  private static final Formula DOUBLE_BENDING =
      new Formula(
          M,
          "{F}/8·({b} + 4·{c} + 2·{t})",
          List.of(F, CENTRE, GAP, Letters.T),
          "EN 1993-1-8:2005, figure 3.11",
          in -> in[0] / 8 * (in[1] + 4 * in[2] + 2 * in[3]));
  private static final Formula MODULUS =
      new Formula(
          W,
          "π·{ds}³/32",
          List.of(BAR),
          "geometry; a thread counts as the round bar of its stress area",
          in -> Math.PI * in[0] * in[0] * in[0] / 32);
  private static final Formula STRESS =
      new Formula(
          Letters.stress("σv", "equivalent stress"),
          "√(({M}/{W} + {Fa}/{A})² + 3·({Fv}/{A})²)",
          List.of(M, W, FA, A, FV),
          "von Mises, the mean shear taken where bending is greatest; common practice, no source",
          in -> Math.sqrt(square(in[0] / in[1] + in[2] / in[3]) + 3 * square(in[4] / in[3])));
  private static final Formula PIN_BENDING =
      new Formula(
          MRD,
          "1.5·{W}·{fyb}/{γ}",
          List.of(W, FYB, Letters.GAMMA),
          "EN 1993-1-8:2005, table 3.10",
          in -> 1.5 * in[0] * in[1] / in[2]);
  private static final Formula PIN =
      new Formula(
          Letters.UTILISATION,
          "√(({M}/{MRd})² + ({Fv}/{Fv,Rd})²)",
          List.of(M, MRD, FV, FVRD),
          "EN 1993-1-8:2005, table 3.10, combined shear and bending of a pin; the root of its sum,"
              + " which grows with the load",
          in -> Math.hypot(in[0] / in[1], in[2] / in[3]));

  /** A moment below this is rounding [N·m]. */
  private static final double NOTHING = 1e-6;

  private static final String UNCLAMPED =
      "Counts no preload: a tight, well-clamped stack bends the bolt less, a loose one does not.";

  /** Refuses a bolt without a name. */
  public Pivot {
    name = Guard.name("pivot bolt", name);
  }

  /**
   * What stands beside the tab, or between the pair.
   *
   * @param gap spacers between a tab and the ball or bush, on one side [m], at least zero
   * @param centre width of the ball or bush [m], above zero
   */
  public record Stack(double gap, double centre) {
    /** Refuses a negative gap and a ball of no width. */
    public Stack {
      Guard.notNegative("gap beside the tab", gap, Scale.MM);
      Guard.positive("width of ball or bush", centre, Scale.MM);
    }

    /**
     * A stack from typed lengths.
     *
     * @param gap spacers between a tab and the ball or bush, on one side
     * @param centre width of the ball or bush
     * @return the stack
     */
    public static Stack of(Quantity<Length> gap, Quantity<Length> centre) {
      return new Stack(si("gap beside the tab", gap), si("width of ball or bush", centre));
    }
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    BoltStrength strength = new BoltStrength(tab.eye().bolt(), threads, load.factors());
    Loaded loaded = loaded(load);
    List<Check> checks = new ArrayList<>();
    checks.add(shear(load, strength, loaded));
    checks.add(shearSecond(load, strength, loaded));
    checks.add(bearing(load, strength, loaded));
    checks.add(bending(load, strength, loaded));
    turning(load).ifPresent(checks::add);
    if (tab.plate().count() == Tab.Count.PAIR) {
      checks.add(pin(load, strength, loaded));
    }
    if (loaded.along().result() > 0) {
      checks.add(tension(load, strength, loaded));
      checks.add(combined(load, strength, loaded));
    }
    return checks;
  }

  /**
   * The bending moment of the bolt.
   *
   * @param load the load
   * @return the moment [N·m]
   */
  public double bendingMoment(FaceLoad load) {
    return loaded(load).moment().result();
  }

  private Loaded loaded(FaceLoad load) {
    Wrench wrench = load.wrench();
    Step across = ACROSS.with(wrench.fx(), wrench.fz());
    Step shear = SHEAR.with(across.result(), tab.plate().count().plates());
    return new Loaded(across, shear, ALONG.with(wrench.fy()), moment(across.result()));
  }

  private Step moment(double force) {
    double thickness = tab.plate().thickness();
    return switch (tab.plate().count()) {
      case SINGLE -> SINGLE_BENDING.with(force, thickness, stack.gap(), stack.centre());
      case PAIR -> DOUBLE_BENDING.with(force, stack.centre(), stack.gap(), thickness);
    };
  }

  private Check shear(FaceLoad load, BoltStrength strength, Loaded loaded) {
    return Finding.compare(loaded.shear(), strength.shear())
        .after(loaded.across())
        .outside(strength.outside())
        .answers(asks("bolt shear", load), load.factors().ultimate());
  }

  private Check shearSecond(FaceLoad load, BoltStrength strength, Loaded loaded) {
    return Finding.compare(loaded.shear(), strength.americanShear())
        .after(loaded.across())
        .answers(asks("bolt shear, second opinion", load), load.factors().american());
  }

  private Check bearing(FaceLoad load, BoltStrength strength, Loaded loaded) {
    BoltStrength.Hole hole =
        new BoltStrength.Hole(
            tab.eye().hole(), tab.edge(), tab.plate().thickness(), tab.ultimateAtHole());
    Question question = Question.of("bearing of the tab", tab.name(), load).at("hole");
    Optional<Reason> tooNear = hole.tooNear();
    if (tooNear.isPresent()) {
      return question.open(load.factors().ultimate(), tooNear.get(), "EN 1993-1-8:2005, table 3.4");
    }
    List<Step> steps =
        tab.plate().count() == Tab.Count.SINGLE
            ? strength.bearingOfSingleLap(hole)
            : strength.bearing(hole);
    return Finding.compare(loaded.shear(), steps.get(2))
        .after(steps.subList(0, 2))
        .after(loaded.across())
        .outside(strength.outside())
        .answers(question, load.factors().ultimate());
  }

  private Check bending(FaceLoad load, BoltStrength strength, Loaded loaded) {
    Step modulus = MODULUS.with(strength.barDiameter());
    Step stress =
        STRESS.with(
            loaded.moment().result(),
            modulus.result(),
            loaded.along().result(),
            strength.area(),
            loaded.shear().result());
    return Finding.compare(stress, strength.yield())
        .after(loaded.all())
        .after(modulus)
        .answers(asks("bolt bending, first yield", load).with(UNCLAMPED), load.factors().yield());
  }

  private Check pin(FaceLoad load, BoltStrength strength, Loaded loaded) {
    Step modulus = MODULUS.with(strength.barDiameter());
    double yield = strength.bolt().strength().nominalYield();
    Step resistance = PIN_BENDING.with(modulus.result(), yield, load.factors().design().value());
    Step shear = strength.shear();
    Step together =
        PIN.with(
            loaded.moment().result(), resistance.result(), loaded.shear().result(), shear.result());
    return Finding.ratio(together)
        .after(modulus, resistance, shear)
        .after(loaded.all())
        .outside(strength.outside())
        .answers(asks("bolt as a pin", load).with(UNCLAMPED), load.factors().ultimate());
  }

  /** A ball or a free bush gives the bolt forces only; anything else is more than is asked here. */
  private Optional<Check> turning(FaceLoad load) {
    Wrench wrench = load.about(tab.hole());
    double moment = Math.hypot(Math.hypot(wrench.mx(), wrench.my()), wrench.mz());
    return moment <= NOTHING
        ? Optional.empty()
        : Optional.of(
            asks("moment on the bolt", load)
                .open(
                    load.factors().yield(),
                    Reason.of(
                        "the load turns the bolt with {} besides its force; only a force at the"
                            + " hole is checked",
                        new Amount(Kind.MOMENT, moment)),
                    "statics"));
  }

  private Check tension(FaceLoad load, BoltStrength strength, Loaded loaded) {
    return Finding.compare(loaded.along(), strength.tension())
        .outside(strength.outside())
        .answers(asks("bolt tension", load).with("Counts no preload."), load.factors().ultimate());
  }

  private Check combined(FaceLoad load, BoltStrength strength, Loaded loaded) {
    Step together = strength.combined(loaded.shear().result(), loaded.along().result());
    return Finding.ratio(together)
        .after(loaded.shear(), loaded.along(), strength.shear(), strength.tension())
        .outside(strength.outside())
        .answers(asks("bolt shear and tension", load), load.factors().ultimate());
  }

  private Question asks(String what, FaceLoad load) {
    return Question.of(what, name, load);
  }

  private static double square(double value) {
    return value * value;
  }

  /** What the bolt takes. */
  private record Loaded(Step across, Step shear, Step along, Step moment) {
    List<Step> all() {
      return List.of(across, shear, along, moment);
    }
  }
}
