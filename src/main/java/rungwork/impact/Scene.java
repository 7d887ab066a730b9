package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Stiffness;
import rungwork.quantity.Units;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;

/**
 * A frontal impact in line: how fast, how heavy, against what. Gives what follows from momentum and
 * energy alone, before anything is known of the frame.
 *
 * @param name what the reader calls it
 * @param closing speed at which both come together [m/s], above zero
 * @param mass of the own vehicle with everything in it [kg], above zero
 * @param obstacle what is hit
 * @param restitution speed apart over speed together [1], from 0 to 1
 */
public record Scene(String name, Range closing, Range mass, Obstacle obstacle, Range restitution) {
  /** The mass of what cannot move, so large that it does not count [kg]. */
  private static final double IMMOVABLE = 1e30;

  /** What vehicles keep of their speed in crashes at road speed: common practice, no source. */
  private static final Range USUAL_RESTITUTION = new Range(Kind.RATIO, 0, 0.2);

  private static final Scale KMH = new Scale("km/h", 1 / 3.6);

  /** Refuses speeds and masses of nothing. */
  public Scene {
    name = Guard.name("scene", name);
    Guard.positive("closing speed", closing.low(), KMH);
    Guard.positive("own mass", mass.low(), Scale.KG);
    if (restitution.low() < 0 || restitution.high() > 1) {
      throw new ModelException(
          "restitution " + restitution + " is outside 0 to 1: 0 stays together, 1 bounces off");
    }
  }

  /**
   * A scene with the usual restitution of 0 to 0.2.
   *
   * @param name what the reader calls it
   * @param closing speed at which both come together
   * @param mass of the own vehicle with everything in it
   * @param obstacle what is hit
   * @return the scene
   */
  public static Scene of(
      String name, Quantity<Speed> closing, Quantity<Mass> mass, Obstacle obstacle) {
    return new Scene(
        name,
        Range.exactly(Kind.SPEED, si("closing speed", closing)),
        Range.exactly(Kind.MASS, si("own mass", mass)),
        obstacle,
        USUAL_RESTITUTION);
  }

  /**
   * The same scene where the speed is not known.
   *
   * @param low the least
   * @param high the most
   * @return the scene
   */
  public Scene closing(Quantity<Speed> low, Quantity<Speed> high) {
    Range speed = new Range(Kind.SPEED, si("least speed", low), si("highest speed", high));
    return new Scene(name, speed, mass, obstacle, restitution);
  }

  /**
   * The same scene where the mass is not known.
   *
   * @param low the least
   * @param high the most
   * @return the scene
   */
  public Scene mass(Quantity<Mass> low, Quantity<Mass> high) {
    Range masses = new Range(Kind.MASS, si("least mass", low), si("most mass", high));
    return new Scene(name, closing, masses, obstacle, restitution);
  }

  /**
   * The same scene with another restitution.
   *
   * @param low the least, not below 0
   * @param high the most, not above 1
   * @return the scene
   */
  public Scene restitution(double low, double high) {
    return new Scene(name, closing, mass, obstacle, new Range(Kind.RATIO, low, high));
  }

  /**
   * How much the own vehicle's speed changes, rebound included.
   *
   * @return Δv [m/s]
   */
  public Range velocityChange() {
    return over(
        Kind.SPEED,
        (own, other, speed, e) ->
            SceneFormulas.VELOCITY_CHANGE.with(e, speed, reduced(own, other), own).result());
  }

  /**
   * What has to go into crush, of both together, until nothing closes any more. Part of it comes
   * back as rebound.
   *
   * @return E [J]
   */
  public Range energy() {
    return over(
        Kind.ENERGY,
        (own, other, speed, e) -> SceneFormulas.ENERGY.with(reduced(own, other), speed).result());
  }

  /**
   * The own mean deceleration over a distance of crush; the mean over time is another number.
   *
   * @param crush by how much both come together after they touch, above zero
   * @return v²/(2·d) at a wall [m/s²]
   */
  public Range meanDeceleration(Quantity<Length> crush) {
    double distance = Guard.positive("crush", si("crush", crush), Scale.MM);
    return over(
        Kind.ACCELERATION,
        (own, other, speed, e) ->
            SceneFormulas.MEAN_DECELERATION
                .with(reduced(own, other), speed, distance, own)
                .result());
  }

  /**
   * The crush that a mean deceleration over the distance needs.
   *
   * @param mean of the own vehicle, above zero
   * @return by how much both come together after they touch [m]
   */
  public Range crushFor(Quantity<Acceleration> mean) {
    double a = Guard.positive("mean deceleration", si("mean deceleration", mean), Scale.G);
    return over(
        Kind.LENGTH,
        (own, other, speed, e) ->
            SceneFormulas.CRUSH.with(reduced(own, other), speed, a, own).result());
  }

  /**
   * What linear springs in both fronts would give: the force at their shortest. A real front is no
   * spring; this shows who crushes whom.
   *
   * @param own stiffness of the own front, above zero
   * @return force, crush and deceleration of both
   */
  public LinearCrush springs(Quantity<Stiffness> own) {
    return LinearCrush.of(this, si("stiffness of the own front", own));
  }

  /**
   * The calculation with the numbers of the low and of the high end.
   *
   * @return the steps in order
   */
  public List<Step> working() {
    List<Step> steps = new ArrayList<>();
    addEnd(steps, new double[] {mass.low(), other().low(), closing.low(), restitution.low()});
    if (!(mass.exact() && other().exact() && closing.exact() && restitution.exact())) {
      addEnd(steps, new double[] {mass.high(), other().high(), closing.high(), restitution.high()});
    }
    return steps;
  }

  private void addEnd(List<Step> steps, double[] in) {
    double mu = reduced(in[0], in[1]);
    if (obstacle instanceof Obstacle.OtherVehicle) {
      steps.add(SceneFormulas.REDUCED_MASS.with(in[0], in[1]));
    }
    steps.add(SceneFormulas.VELOCITY_CHANGE.with(in[3], in[2], mu, in[0]));
    steps.add(SceneFormulas.ENERGY.with(mu, in[2]));
  }

  /**
   * Which rail tips stand in the way of what is hit; between them there may be nothing.
   *
   * @param ladder the frame
   * @return none, one or both sides
   */
  public Set<Side> railTipsMet(Ladder ladder) {
    Set<Side> met = EnumSet.noneOf(Side.class);
    for (Side side : Side.values()) {
      Rail rail = ladder.rail(side);
      double half =
          rail.reaches().get(0).stock().section().points().stream()
              .mapToDouble(point -> Math.abs(point.y()))
              .max()
              .orElse(0);
      if (obstacle.meets(rail.y() - half, rail.y() + half)) {
        met.add(side);
      }
    }
    return met;
  }

  /**
   * Inputs that look mistyped.
   *
   * @param units the reader's units
   * @return sentences; none when nothing does
   */
  public List<String> warnings(Units units) {
    Stream<String> own =
        Stream.of(
                Sane.CLOSING_SPEED.warning(closing, units), Sane.VEHICLE_MASS.warning(mass, units))
            .flatMap(Optional::stream);
    return Stream.concat(own, obstacle.warnings(units).stream()).toList();
  }

  /**
   * What was assumed.
   *
   * @return sentences
   */
  public List<String> assumptions() {
    List<String> lines = new ArrayList<>();
    lines.add("The hit is in line and level; tyres, brakes and the ground take nothing.");
    lines.add("Restitution " + restitution + "; 0 to 0.2 is common practice, no source.");
    if (!obstacle.central()) {
      lines.add(
          "An off-centre hit also turns the vehicle. What goes into turning is not taken off: the"
              + " energy is an upper bound, and the seats do not see the same deceleration.");
    }
    if (obstacle instanceof Obstacle.OtherVehicle) {
      lines.add("The other vehicle's front is taken as one linear spring.");
    }
    return lines;
  }

  @Override
  public String toString() {
    return name
        + ": "
        + mass
        + " closing at "
        + closing
        + " with "
        + obstacle.words(Units.METRIC)
        + ", energy "
        + energy();
  }

  /** Mass of what is hit; for what cannot move, so large that it does not count. */
  Range other() {
    return obstacle instanceof Obstacle.OtherVehicle vehicle
        ? vehicle.mass()
        : Range.exactly(Kind.MASS, IMMOVABLE);
  }

  static double reduced(double own, double other) {
    return other == IMMOVABLE ? own : SceneFormulas.REDUCED_MASS.with(own, other).result();
  }

  /** What is computed of own mass, other mass, closing speed and restitution. */
  private interface OfScene {
    double at(double own, double other, double speed, double restitution);
  }

  private Range over(Kind kind, OfScene value) {
    return Range.over(
        kind, in -> value.at(in[0], in[1], in[2], in[3]), mass, other(), closing, restitution);
  }

  /**
   * Two masses that meet on linear springs, at their shortest.
   *
   * @param force between them [N]
   * @param ownCrush of the own front [m]
   * @param otherCrush of the other front [m]; 0 at a wall
   * @param ownDeceleration of the own vehicle [m/s²]
   * @param otherAcceleration of the other vehicle [m/s²]; 0 of a wall
   */
  public record LinearCrush(
      Range force,
      Range ownCrush,
      Range otherCrush,
      Range ownDeceleration,
      Range otherAcceleration) {

    static LinearCrush of(Scene scene, double own) {
      Guard.positive("stiffness of the own front", own, new Scale("N/mm", 1e3));
      Range mass = scene.mass;
      Range speed = scene.closing;
      if (!(scene.obstacle instanceof Obstacle.OtherVehicle other)) {
        Formula force = SceneFormulas.SPRING_FORCE;
        return new LinearCrush(
            Range.over(Kind.FORCE, in -> force.with(in[0], in[1], own).result(), speed, mass),
            Range.over(
                Kind.LENGTH, in -> force.with(in[0], in[1], own).result() / own, speed, mass),
            Range.exactly(Kind.LENGTH, 0),
            Range.over(
                Kind.ACCELERATION,
                in -> force.with(in[0], in[1], own).result() / in[1],
                speed,
                mass),
            Range.exactly(Kind.ACCELERATION, 0));
      }
      Range[] inputs = {speed, mass, other.mass(), other.stiffness()};
      return new LinearCrush(
          Range.over(Kind.FORCE, in -> pair(in, own), inputs),
          Range.over(Kind.LENGTH, in -> pair(in, own) / own, inputs),
          Range.over(Kind.LENGTH, in -> pair(in, own) / in[3], inputs),
          Range.over(Kind.ACCELERATION, in -> pair(in, own) / in[1], inputs),
          Range.over(Kind.ACCELERATION, in -> pair(in, own) / in[2], inputs));
    }

    private static double pair(double[] in, double own) {
      double stiffness = SceneFormulas.SERIES.with(own, in[3]).result();
      return SceneFormulas.SPRING_FORCE.with(in[0], reduced(in[1], in[2]), stiffness).result();
    }
  }
}
