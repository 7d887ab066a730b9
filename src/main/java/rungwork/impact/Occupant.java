package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import rungwork.check.Step;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Stiffness;
import rungwork.quantity.Units;

/**
 * A person on a belt, as one mass on one spring: what the belt and its anchorages must carry, and
 * how far the chest comes forward. It knows no head, no neck, no knees and no injury.
 *
 * @param name what the reader calls the person
 * @param mass [kg], above zero
 * @param belt what holds them
 * @param clearances what is in front of them
 * @param anchorages what the belt is fastened to
 */
public record Occupant(
    String name, double mass, Belt belt, List<Clearance> clearances, List<Anchorage> anchorages) {
  private static final Scale STIFFNESS = new Scale("N/mm", 1e3);

  /** Copies the lists and refuses a person of nothing. */
  public Occupant {
    name = Guard.name("person", name);
    Guard.positive("mass of " + name, mass, Scale.KG);
    clearances = List.copyOf(clearances);
    anchorages = List.copyOf(anchorages);
  }

  /**
   * A belt as a spring, all its straps together, along the vehicle.
   *
   * @param stiffness of webbing, anchorages and body together [N/m], above zero
   * @param slack before it takes hold [m], not negative
   * @param limit force at which it pays out webbing [N]; nothing where there is no limiter
   * @param damping force for its speed [N·s/m], not negative
   */
  public record Belt(Range stiffness, Range slack, Optional<Range> limit, double damping) {
    /** Refuses a belt that could not hold. */
    public Belt {
      Guard.positive("stiffness of a belt", stiffness.low(), STIFFNESS);
      Guard.notNegative("slack of a belt", slack.low(), Scale.MM);
      limit.ifPresent(force -> Guard.positive("load limit of a belt", force.low(), Scale.KN));
      Guard.notNegative("damping of a belt", damping, new Scale("N·s/m", 1));
    }

    /**
     * A belt whose figures are known.
     *
     * @param stiffness of webbing, anchorages and body together
     * @param slack before it takes hold
     * @return the belt
     */
    public static Belt of(Quantity<Stiffness> stiffness, Quantity<Length> slack) {
      return between(stiffness, stiffness).slack(slack, slack);
    }

    /**
     * A belt whose stiffness is guessed, without slack so far. 40 to 100 N/mm is seen of whole
     * belts (from memory).
     *
     * @param low the least
     * @param high the most
     * @return the belt
     */
    public static Belt between(Quantity<Stiffness> low, Quantity<Stiffness> high) {
      return new Belt(
          new Range(
              Kind.STIFFNESS, si("least belt stiffness", low), si("most belt stiffness", high)),
          Range.exactly(Kind.LENGTH, 0),
          Optional.empty(),
          0);
    }

    /**
     * The same belt with slack.
     *
     * @param low the least
     * @param high the most
     * @return the belt
     */
    public Belt slack(Quantity<Length> low, Quantity<Length> high) {
      Range loose = new Range(Kind.LENGTH, si("least slack", low), si("most slack", high));
      return new Belt(stiffness, loose, limit, damping);
    }

    /**
     * The same belt with a load limiter.
     *
     * @param low the least force at which it pays out
     * @param high the most
     * @return the belt
     */
    public Belt limited(Quantity<Force> low, Quantity<Force> high) {
      Range force = new Range(Kind.FORCE, si("least load limit", low), si("most load limit", high));
      return new Belt(stiffness, slack, Optional.of(force), damping);
    }

    /**
     * The same belt with a damper beside it.
     *
     * @param newtonSecondsPerMetre force for its speed [N·s/m]
     * @return the belt
     */
    public Belt damped(double newtonSecondsPerMetre) {
      return new Belt(stiffness, slack, limit, newtonSecondsPerMetre);
    }
  }

  /**
   * Free room in front of the person.
   *
   * @param what such as {@code chest to wheel}
   * @param distance [m]
   */
  public record Clearance(String what, Range distance) {
    /** Refuses one without a name. */
    public Clearance {
      what = Guard.name("clearance", what);
      Guard.positive(what, distance.low(), Scale.MM);
    }
  }

  /**
   * A place that the belt is fastened to.
   *
   * @param feature its name on the ladder, such as {@code seat left}
   * @param share of the whole belt force along the vehicle [1], above 0 to 1
   * @param factor what the straps' geometry makes of it [1]: 1 for a strap along the vehicle, up to
   *     2 where a loop runs through
   * @param rise of its pull above the level [rad]
   */
  public record Anchorage(String feature, double share, Range factor, double rise) {
    /** Refuses shares and factors that carry nothing. */
    public Anchorage {
      feature = Guard.name("anchorage", feature);
      Guard.finite("rise of " + feature, rise);
      if (!(share > 0 && share <= 1)) {
        throw new ModelException(
            "share "
                + Scale.NUMBER.show(share)
                + " of anchorage "
                + feature
                + " is outside 0 to 1");
      }
      if (factor.low() < 1 || factor.high() > 3) {
        throw new ModelException(
            "geometry factor "
                + factor
                + " of anchorage "
                + feature
                + " is outside 1 to 3: 1 is a strap along the vehicle, 2 a loop");
      }
    }
  }

  /**
   * A person.
   *
   * @param name what the reader calls them
   * @param mass with clothes
   * @param belt what holds them
   * @return the person
   */
  public static Occupant of(String name, Quantity<Mass> mass, Belt belt) {
    return new Occupant(name, si("mass of " + name, mass), belt, List.of(), List.of());
  }

  /**
   * The same person with something in front.
   *
   * @param what such as {@code chest to wheel}
   * @param low the least free room
   * @param high the most
   * @return the person
   */
  public Occupant clearance(String what, Quantity<Length> low, Quantity<Length> high) {
    List<Clearance> more = new ArrayList<>(clearances);
    more.add(new Clearance(what, new Range(Kind.LENGTH, si(what, low), si(what, high))));
    return new Occupant(name, mass, belt, more, anchorages);
  }

  /**
   * The same person with the belt fastened to one more place.
   *
   * @param feature its name on the ladder
   * @param share of the whole belt force along the vehicle, above 0 to 1
   * @param factor what the straps' geometry makes of it; its least and its most
   * @param rise of its pull above the level
   * @return the person
   */
  public Occupant anchorage(String feature, double share, Range factor, Quantity<Angle> rise) {
    List<Anchorage> more = new ArrayList<>(anchorages);
    more.add(new Anchorage(feature, share, factor, si("rise of " + feature, rise)));
    return new Occupant(name, mass, belt, clearances, more);
  }

  /**
   * What the person does under pulses; integrated for every combination of the belt's ends.
   *
   * @param speed of the vehicle when the pulse begins
   * @param pulses such as those of a low and a high strength, at least one
   * @return all runs together, as ranges
   */
  public Ride in(Quantity<Speed> speed, Pulse... pulses) {
    double v = Guard.positive("speed", si("speed", speed), new Scale("km/h", 1 / 3.6));
    double[] speeds = new double[pulses.length];
    Arrays.fill(speeds, v);
    return in(speeds, List.of(pulses));
  }

  /** The same where each pulse began at a speed of its own. */
  Ride in(double[] speeds, List<Pulse> pulses) {
    if (pulses.isEmpty()) {
      throw new ModelException("there is no pulse for " + name + "; give at least one");
    }
    List<Ride.Run> runs = new ArrayList<>();
    for (int i = 0; i < speeds.length; i++) {
      for (BeltRun.Ends ends : ends()) {
        runs.add(new BeltRun(this, ends, pulses.get(i)).run(speeds[i]));
      }
    }
    return new Ride(this, pulses, runs);
  }

  private Set<BeltRun.Ends> ends() {
    Set<BeltRun.Ends> all = new LinkedHashSet<>();
    double[] limits = belt.limit().map(Occupant::both).orElse(new double[] {Double.MAX_VALUE});
    for (double stiffness : both(belt.stiffness())) {
      for (double slack : both(belt.slack())) {
        for (double limit : limits) {
          all.add(new BeltRun.Ends(stiffness, slack, limit));
        }
      }
    }
    return all;
  }

  private static double[] both(Range range) {
    return new double[] {range.low(), range.high()};
  }

  /**
   * The closed forms for a constant deceleration, at each end of the belt's figures; a damper and a
   * load limiter are no part of them.
   *
   * @param deceleration of the vehicle, constant
   * @param speed of the vehicle when it begins
   * @return one for each combination, each with whether it holds
   */
  public List<ClosedForm> closedForms(Quantity<Acceleration> deceleration, Quantity<Speed> speed) {
    double a = Guard.positive("deceleration", si("deceleration", deceleration), Scale.G);
    double v = Guard.positive("speed", si("speed", speed), new Scale("km/h", 1 / 3.6));
    return ends().stream()
        .map(ends -> ClosedForm.of(a, v, mass, ends.stiffness(), ends.slack()))
        .distinct()
        .toList();
  }

  /**
   * The person's peak in closed form.
   *
   * @param peak under a constant deceleration
   * @param timeToPeak when it comes
   * @param stops how long the vehicle decelerates, v/a [s]
   * @param most what no belt of this stiffness passes
   */
  public record ClosedForm(Step peak, Step timeToPeak, double stops, Step most) {
    /** Refuses what is not finite. */
    public ClosedForm {
      Guard.solved("where the person stops", stops);
    }

    static ClosedForm of(double a, double v, double mass, double stiffness, double slack) {
      return new ClosedForm(
          BeltFormulas.PEAK_UNDER_CONSTANT.with(a, slack, stiffness, mass),
          BeltFormulas.TIME_TO_PEAK.with(slack, a, stiffness, mass),
          v / a,
          BeltFormulas.RIGID_STOP.with(v, stiffness, mass));
    }

    /**
     * Whether the vehicle still decelerates when the peak comes.
     *
     * @return false when the number must not be used: integrate instead
     */
    public boolean holds() {
      return timeToPeak.result() <= stops;
    }
  }

  /**
   * Inputs that look mistyped.
   *
   * @param units the reader's units
   * @return sentences; none when nothing does
   */
  public List<String> warnings(Units units) {
    return Stream.of(
            Sane.PERSON.warning(Range.exactly(Kind.MASS, mass), units),
            Sane.BELT_STIFFNESS.warning(belt.stiffness(), units),
            Sane.BELT_SLACK.warning(belt.slack(), units))
        .flatMap(Optional::stream)
        .toList();
  }

  @Override
  public String toString() {
    return name
        + ": "
        + Scale.KG.show(mass, 3)
        + ", belt "
        + belt.stiffness()
        + ", slack "
        + belt.slack()
        + belt.limit().map(force -> ", limited to " + force).orElse("");
  }
}
