package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import rungwork.check.Check;
import rungwork.check.Step;
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
    Step across = RodEndFormulas.ACROSS.with(wrench.fx(), wrench.fz());
    Step along = RodEndFormulas.ALONG.with(wrench.fy());
    return List.of(
        rated("radial load", across, rating.radial(), load),
        rated("axial load", along, rating.axial(), load),
        both(across, along, load),
        angle(load),
        bending(load));
  }

  private Check rated(String what, Step demand, double allowed, FaceLoad load) {
    return Finding.compare(demand, RodEndFormulas.ALLOWANCE.with(allowed, gamma(load)))
        .sourcedBy(MAKER + rating.evidence())
        .answers(asks(what, load), load.factors().rating());
  }

  private Check both(Step across, Step along, FaceLoad load) {
    Step ratio =
        RodEndFormulas.BOTH.with(
            gamma(load), across.result(), rating.radial(), along.result(), rating.axial());
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
    Step on = RodEndFormulas.ON_LINE.with(wrench.fx(), cx, wrench.fz(), cz);
    Step off = RodEndFormulas.OFF_LINE.with(wrench.fx(), cz, wrench.fz(), cx, wrench.fy());
    Step stress = RodEndFormulas.STRESS.with(on.result(), shank.root(), off.result(), shank.arm());
    return Finding.compare(stress, RodEndFormulas.YIELD.with(shank.yield(), gamma(load)))
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
