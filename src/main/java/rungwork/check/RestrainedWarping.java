package rungwork.check;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import rungwork.check.Member.Ends;
import rungwork.check.Member.Warping;
import rungwork.frame.Stock;
import rungwork.material.Elasticity;
import rungwork.quantity.Kind;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.section.Torsion;

/**
 * Torsion of a bay of an open section whose ends let the warping happen or hold it.
 *
 * <p>G·It·θ' − E·Iw·θ''' = T, with θ' = 0 at an end that holds and θ'' = 0 at one that does not (V.
 * Z. Vlasov, Thin-Walled Elastic Beams; from memory). For a torque that is the same all along,
 * bimoment and Saint-Venant's part of the torque are largest as below. They are at most that for
 * any other torque of no larger size.
 *
 * @param section the section
 * @param elasticity of its material
 * @param warping what the ends do, and the bay's length
 */
record RestrainedWarping(Section section, Elasticity elasticity, Warping warping) {
  private static final String SOURCE = "V. Z. Vlasov, Thin-Walled Elastic Beams, uniform torque";

  /** Below this a bay is so short that x − tanh x is better taken from its series [1]. */
  private static final double SHORT = 1e-3;

  private static final Symbol DECAY =
      new Symbol("a", Kind.LENGTH, "length over which held warping dies away");
  private static final Symbol LENGTH = new Symbol("L", Kind.LENGTH, "of the bay");
  private static final Symbol IW =
      new Symbol("Iw", Kind.WARPING_CONSTANT, "warping constant, the walls' thickness counted");
  private static final Symbol OMEGA =
      new Symbol("ω", Kind.AREA, "sectorial coordinate of the fibre");
  private static final Symbol STIFFENING =
      new Symbol("r", Kind.RATIO, "torsional stiffness over that of free ends");
  private static final Symbol SIGMA_W = new Symbol("σω", Kind.STRESS, "stress of held warping");
  private static final Symbol PART =
      new Symbol("c", Kind.RATIO, "largest part of the torque that twists the walls");

  private static final Formula DECAY_LENGTH =
      new Formula(
          DECAY,
          "√({E}·{Iw}/({G}·{It}))",
          List.of(Letters.E, IW, Letters.G, Letters.IT),
          SOURCE,
          in -> Math.sqrt(in[0] * in[1] / (in[2] * in[3])));
  private static final Formula BOTH_STIFFER =
      ofBay(STIFFENING, "1/(1 − 2·{a}/{L}·tanh({L}/(2·{a})))", x -> stiffening(x / 2));
  private static final Formula ONE_STIFFER =
      ofBay(STIFFENING, "1/(1 − {a}/{L}·tanh({L}/{a}))", RestrainedWarping::stiffening);
  private static final Formula BOTH_PART =
      ofBay(PART, "1 − 1/cosh({L}/(2·{a}))", x -> 1 - 1 / Math.cosh(x / 2));
  private static final Formula ONE_PART =
      ofBay(PART, "1 − 1/cosh({L}/{a})", x -> 1 - 1 / Math.cosh(x));
  private static final Formula BOTH_STRESS =
      stress("tanh({L}/(2·{a}))", in -> Math.tanh(in[2] / (2 * in[1])));
  private static final Formula ONE_STRESS = stress("tanh({L}/{a})", in -> Math.tanh(in[2] / in[1]));

  static RestrainedWarping of(LoadedMember member) {
    Stock stock = member.stock();
    return new RestrainedWarping(
        stock.section(), stock.material().elasticity(), member.member().warping());
  }

  /** The stock with the stiffness that these ends give it. */
  static Stock stiffened(Stock stock, Warping warping) {
    RestrainedWarping restrained =
        new RestrainedWarping(stock.section(), stock.material().elasticity(), warping);
    if (!restrained.held()) {
      return stock;
    }
    return new Stock(stock.section().stiffened(restrained.stiffening().result()), stock.material());
  }

  /** Whether an end holds the warping of an open section that is known. */
  boolean held() {
    return known() && (oneHeld() || warping.ends() == Ends.BOTH_HELD);
  }

  /** Whether the section is open and its warping is known. */
  boolean known() {
    return section.torsion() == Torsion.OPEN && constant() > 0;
  }

  private double constant() {
    return section.properties().iw() + section.properties().iwAcross();
  }

  /** √(E·Iw/(G·It)) [m]. */
  Step decay() {
    Properties p = section.properties();
    return DECAY_LENGTH.with(
        elasticity.youngsModulus(), constant(), elasticity.shearModulus(), p.it());
  }

  /** How many times as stiff the bay is: with one end held if it says so, else with both. */
  Step stiffening() {
    return (oneHeld() ? ONE_STIFFER : BOTH_STIFFER).with(decay().result(), warping.length());
  }

  /** The largest part of the torque that twists the walls by Saint-Venant; the same ends. */
  Step twistingPart() {
    return (oneHeld() ? ONE_PART : BOTH_PART).with(decay().result(), warping.length());
  }

  /** The largest stress of held warping at a point, for a torque [N·m]; the same ends. */
  Step stress(double torque, StressPoint point) {
    Formula formula = oneHeld() ? ONE_STRESS : BOTH_STRESS;
    double omega = Math.abs(point.sectorial());
    return formula.with(torque, decay().result(), warping.length(), omega, constant());
  }

  private boolean oneHeld() {
    return warping.ends() == Ends.ONE_HELD;
  }

  /** x/(x − tanh x). */
  private static double stiffening(double x) {
    return x < SHORT ? 3 / (x * x) + 1.2 : x / (x - Math.tanh(x));
  }

  private static Formula ofBay(Symbol result, String text, DoubleUnaryOperator ofLengthOverDecay) {
    return new Formula(
        result,
        text,
        List.of(DECAY, LENGTH),
        SOURCE,
        in -> ofLengthOverDecay.applyAsDouble(in[1] / in[0]));
  }

  private static Formula stress(String share, Formula.Evaluation ofEnds) {
    return new Formula(
        SIGMA_W,
        "{T}·{a}·" + share + "·{ω}/{Iw}",
        List.of(Letters.TORQUE, DECAY, LENGTH, OMEGA, IW),
        SOURCE,
        in -> in[0] * in[1] * ofEnds.of(in) * in[3] / in[4]);
  }
}
