package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Measured;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;

/**
 * A rod end on the mount's pin: its ball turns about y, its shank lies in the x-z plane. Its
 * ratings are the maker's, given by the user; none is built in.
 *
 * @param name the rod end's name
 * @param rating what its maker allows
 * @param shank its threaded shank
 * @param misalignment largest angle between shank and the ball's middle plane over the whole travel
 *     of the suspension [rad], at least zero
 */
public record RodEnd(String name, Rating rating, Shank shank, double misalignment)
    implements Joint {
  private static final Scale DEGREE = new Scale("deg", Math.PI / 180);
  private static final String MAKER = "the maker's rating, given by the user: ";

  private static final Symbol RADIAL = Letters.force("Fr", "force across the ball's axis");
  private static final Symbol AXIAL = Letters.force("Fa", "force along the ball's axis");
  private static final Symbol RATED = Letters.force("C", "rating");
  private static final Symbol ALLOWED = Letters.force("C,d", "rating divided by the factor");
  private static final Symbol CX = Letters.ratio("cx", "direction of the shank along x");
  private static final Symbol CZ = Letters.ratio("cz", "direction of the shank along z");
  private static final Symbol ARM = Letters.length("l", "from the ball to the shank's support");
  private static final Symbol ROOT = Letters.length("d3", "diameter at the thread's root");
  private static final Symbol N = Letters.force("N", "force along the shank");
  private static final Symbol Q = Letters.force("Q", "force across the shank");
  private static final Symbol FYB = Letters.stress("fy", "yield strength of the shank");

  private static final Formula ACROSS =
      new Formula(
          RADIAL,
          "√({Fx}² + {Fz}²)",
          List.of(Letters.FX, Letters.FZ),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  private static final Formula ALONG =
      new Formula(AXIAL, "|{Fy}|", List.of(Letters.FY_LATERAL), "statics", in -> Math.abs(in[0]));
  private static final Formula ALLOWANCE =
      new Formula(ALLOWED, "{C}/{γ}", List.of(RATED, Letters.GAMMA), "rating", in -> in[0] / in[1]);
  private static final Formula BOTH =
      new Formula(
          Letters.UTILISATION,
          "{γ}·({Fr}/{Cr} + {Fa}/{Ca})",
          List.of(
              Letters.GAMMA,
              RADIAL,
              Letters.force("Cr", "radial rating"),
              AXIAL,
              Letters.force("Ca", "axial rating")),
          "linear interaction; common practice, no source",
          in -> in[0] * (in[1] / in[2] + in[3] / in[4]));
  private static final Formula ON_LINE =
      new Formula(
          N,
          "|{Fx}·{cx} + {Fz}·{cz}|",
          List.of(Letters.FX, CX, Letters.FZ, CZ),
          "statics",
          in -> Math.abs(in[0] * in[1] + in[2] * in[3]));
  private static final Formula OFF_LINE =
      new Formula(
          Q,
          "√(({Fx}·{cz} − {Fz}·{cx})² + {Fy}²)",
          List.of(Letters.FX, CZ, Letters.FZ, CX, Letters.FY_LATERAL),
          "statics",
          in -> Math.hypot(in[0] * in[1] - in[2] * in[3], in[4]));
  private static final Formula STRESS =
      new Formula(
          Letters.stress("σ", "normal stress in the shank"),
          "4·{N}/(π·{d3}²) + 32·{Q}·{l}/(π·{d3}³)",
          List.of(N, ROOT, Q, ARM),
          "strength of materials, round bar of the thread's root",
          in ->
              4 * in[0] / (Math.PI * in[1] * in[1])
                  + 32 * in[2] * in[3] / (Math.PI * in[1] * in[1] * in[1]));
  private static final Formula YIELD =
      new Formula(
          Letters.stress("fyd", "yield strength divided by the factor"),
          "{fy}/{γ}",
          List.of(FYB, Letters.GAMMA),
          "strength of materials: first yield at the thread's root",
          in -> in[0] / in[1]);

  /** Refuses a negative angle. */
  public RodEnd {
    name = Guard.name("rod end", name);
    Guard.notNegative("misalignment of " + name, misalignment, DEGREE);
  }

  /**
   * What the maker allows.
   *
   * @param radial static radial rating [N], above zero
   * @param axial static axial rating [N], above zero
   * @param angle largest misalignment to each side [rad], above zero
   * @param evidence where the user has it from
   */
  public record Rating(double radial, double axial, double angle, String evidence) {
    /** Refuses ratings of nothing and ratings without evidence. */
    public Rating {
      Guard.positive("radial rating", radial, Scale.KN);
      Guard.positive("axial rating", axial, Scale.KN);
      Guard.positive("misalignment limit", angle, DEGREE);
      evidence = Guard.name("source of a rod end's rating", evidence);
    }

    /**
     * A rating from typed quantities.
     *
     * @param radial static radial rating
     * @param axial static axial rating
     * @param angle largest misalignment to each side
     * @param evidence where the user has it from, such as {@code data sheet of the part}
     * @return the rating
     */
    public static Rating of(
        Quantity<Force> radial, Quantity<Force> axial, Quantity<Angle> angle, String evidence) {
      return new Rating(
          si("radial rating", radial),
          si("axial rating", axial),
          si("misalignment limit", angle),
          evidence);
    }
  }

  /**
   * The threaded shank.
   *
   * @param root diameter at the thread's root [m], above zero
   * @param arm from the ball's middle to where the shank is held [m], at least zero
   * @param yield its yield strength [Pa], above zero
   * @param direction its angle from z towards x, seen from the ball [rad]
   */
  public record Shank(double root, double arm, double yield, double direction) {
    /** Refuses a shank of no thickness or strength. */
    public Shank {
      Guard.positive("root diameter of the shank", root, Scale.MM);
      Guard.notNegative("length of the shank", arm, Scale.MM);
      Guard.positive("yield strength of the shank", yield, Scale.MPA);
      Guard.finite("direction of the shank", direction);
    }

    /**
     * A shank from typed quantities, along z.
     *
     * @param root diameter at the thread's root
     * @param arm from the ball's middle to where the shank is held
     * @param yield its yield strength
     * @return the shank
     */
    public static Shank of(Quantity<Length> root, Quantity<Length> arm, Quantity<Pressure> yield) {
      return new Shank(
          si("root diameter", root),
          si("length of the shank", arm),
          si("yield strength", yield),
          0);
    }

    /**
     * The same shank in another direction.
     *
     * @param fromZ its angle from z towards x
     * @return the shank
     */
    public Shank turned(Quantity<Angle> fromZ) {
      return new Shank(root, arm, yield, si("direction of the shank", fromZ));
    }
  }

  /**
   * The same rod end with an angle that the travel asks of it.
   *
   * @param angle largest angle over droop and bump
   * @return the rod end
   */
  public RodEnd withMisalignment(Quantity<Angle> angle) {
    return new RodEnd(name, rating, shank, si("misalignment", angle));
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    Wrench wrench = load.wrench();
    if (Math.abs(wrench.my()) > Rounding.TOLERANCE) {
      throw new ModelException(
          "rod end "
              + name
              + " is asked to hold "
              + Scale.NM.show(wrench.my())
              + " about its pin under "
              + load.loadCase()
              + "; a ball turns freely");
    }
    Step across = ACROSS.with(wrench.fx(), wrench.fz());
    Step along = ALONG.with(wrench.fy());
    return List.of(
        rated("radial load", across, rating.radial(), load),
        rated("axial load", along, rating.axial(), load),
        both(across, along, load),
        angle(load),
        bending(load));
  }

  private Check rated(String what, Step demand, double allowed, FaceLoad load) {
    return Finding.compare(demand, ALLOWANCE.with(allowed, gamma(load)))
        .sourcedBy(MAKER + rating.evidence())
        .answers(asks(what, load), load.factors().rating());
  }

  private Check both(Step across, Step along, FaceLoad load) {
    Step ratio =
        BOTH.with(gamma(load), across.result(), rating.radial(), along.result(), rating.axial());
    return Finding.ratio(ratio)
        .after(across, along)
        .answers(asks("radial and axial load", load), load.factors().rating());
  }

  private Check angle(FaceLoad load) {
    Measured numbers = new Measured(misalignment, rating.angle(), Kind.ANGLE);
    return new Finding(List.of(), numbers, MAKER + rating.evidence(), List.of())
        .answers(
            asks("misalignment over the travel", load)
                .with("At its limit the ball's housing meets the tab and the shank bends."));
  }

  private Check bending(FaceLoad load) {
    double cx = Math.sin(shank.direction());
    double cz = Math.cos(shank.direction());
    Wrench wrench = load.wrench();
    Step on = ON_LINE.with(wrench.fx(), cx, wrench.fz(), cz);
    Step off = OFF_LINE.with(wrench.fx(), cz, wrench.fz(), cx, wrench.fy());
    Step stress = STRESS.with(on.result(), shank.root(), off.result(), shank.arm());
    return Finding.compare(stress, YIELD.with(shank.yield(), gamma(load)))
        .after(on, off)
        .answers(asks("bending of the shank", load), load.factors().yield());
  }

  private Question asks(String what, FaceLoad load) {
    return Question.of(what, name, load);
  }

  private static double gamma(FaceLoad load) {
    return load.factors().design().value();
  }
}
