package rungwork.impact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rungwork.check.Caution;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.frame.Load;
import rungwork.loadpath.Anchorages;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * What a belted person went through in every combination of the inputs, as ranges. A comparison of
 * designs; never a statement about injury.
 *
 * @param occupant who
 * @param pulses what the vehicle went through
 * @param runs one a combination, at least one
 */
public record Ride(Occupant occupant, List<Pulse> pulses, List<Run> runs) {
  private static final double THREE_MILLISECONDS = 3e-3;

  /** Copies the lists. */
  public Ride {
    if (pulses.isEmpty() || runs.isEmpty()) {
      throw new ModelException(
          "nothing happened to " + occupant.name() + ": a ride needs a pulse and a run at least");
    }
    pulses = List.copyOf(pulses);
    runs = List.copyOf(runs);
  }

  /**
   * Series over the same times.
   *
   * @param times [s]
   * @param vehicle its deceleration [m/s²]
   * @param person their deceleration [m/s²]
   * @param excursions the person forward in the vehicle [m]
   * @param ways the vehicle over the ground [m]
   */
  public record Series(
      double[] times, double[] vehicle, double[] person, double[] excursions, double[] ways) {
    /** Copies the series. */
    public Series {
      for (double[] series : new double[][] {times, vehicle, person, excursions, ways}) {
        Guard.solved("ride", Arrays.stream(series).sum());
      }
      times = times.clone();
      vehicle = vehicle.clone();
      person = person.clone();
      excursions = excursions.clone();
      ways = ways.clone();
    }

    @Override
    public double[] times() {
      return times.clone();
    }

    @Override
    public double[] vehicle() {
      return vehicle.clone();
    }

    @Override
    public double[] person() {
      return person.clone();
    }

    @Override
    public double[] excursions() {
      return excursions.clone();
    }

    @Override
    public double[] ways() {
      return ways.clone();
    }

    private static double highest(double[] values) {
      double most = 0;
      for (double value : values) {
        most = Math.max(most, value);
      }
      return most;
    }

    /** The work that the belt does over the vehicle's way, for each kilogram [J/kg]. */
    private double workUntil(double farthest) {
      double work = 0;
      for (int i = 1; i < times.length && ways[i - 1] < farthest; i++) {
        double step = ways[i] - ways[i - 1];
        work += step * (person[i] + person[i - 1]) / 2;
      }
      return work;
    }
  }

  /**
   * One combination.
   *
   * @param pulse its name
   * @param speed of the vehicle when it began [m/s]
   * @param stiffness of the belt [N/m]
   * @param slack of the belt [m]
   * @param limited whether the belt has a load limiter
   * @param series over time
   */
  public record Run(
      String pulse, double speed, double stiffness, double slack, boolean limited, Series series) {
    /** Refuses what is not finite. */
    public Run {
      Guard.solved("state of a ride", speed + stiffness + slack);
    }

    /**
     * The person's highest deceleration.
     *
     * @return [m/s²]
     */
    public double peak() {
      return Series.highest(series.person);
    }

    /**
     * What the person's deceleration passes for 3 ms in all.
     *
     * @return [m/s²]
     */
    public double clip() {
      return Clip.level(series.times, series.person, THREE_MILLISECONDS);
    }

    /**
     * How far the person comes forward in the vehicle.
     *
     * @return [m]
     */
    public double excursion() {
      return Series.highest(series.excursions);
    }

    /** The vehicle's way while the person's energy is taken: to its farthest point [m]. */
    double vehicleWay() {
      return Series.highest(series.ways);
    }

    /** The work that the belt does while the vehicle goes forward, for each kilogram [J/kg]. */
    double riddenDown() {
      return series.workUntil(vehicleWay());
    }
  }

  private Range over(Kind kind, ToDoubleFunction<Run> value) {
    return Range.spanning(kind, runs.stream().mapToDouble(value));
  }

  /**
   * The person's highest deceleration.
   *
   * @return [m/s²]
   */
  public Range peak() {
    return over(Kind.ACCELERATION, Run::peak);
  }

  /**
   * What the person's deceleration passes for 3 ms in all.
   *
   * @return [m/s²]
   */
  public Range clip() {
    return over(Kind.ACCELERATION, Run::clip);
  }

  /**
   * How far the chest comes forward in the vehicle, slack included.
   *
   * @return [m]
   */
  public Range excursion() {
    return over(Kind.LENGTH, Run::excursion);
  }

  /**
   * All straps together, along the vehicle, at their highest.
   *
   * @return mass times deceleration [N]
   */
  public Range beltForce() {
    return peak().kindOf(Kind.FORCE).times(occupant.mass());
  }

  /**
   * The part of the person's energy that is taken while the vehicle itself still moves forward: the
   * more, the earlier the belt takes hold. The rest goes into the belt alone.
   *
   * @return part of ½·m·v² [1]
   */
  public Range rideDown() {
    return over(Kind.RATIO, run -> run.riddenDown() / (run.speed() * run.speed() / 2));
  }

  /**
   * The constant deceleration over the vehicle's way and the person's own way together: no
   * restraint could do with less on these distances.
   *
   * @return [m/s²]
   */
  public Range bestCase() {
    return over(
        Kind.ACCELERATION,
        run ->
            BeltFormulas.BEST_CASE.with(run.speed(), run.vehicleWay(), run.excursion()).result());
  }

  /**
   * What a regulation prints, as context only.
   *
   * @param what of what
   * @param kind what it measures
   * @param value [SI unit of the kind]
   * @param source regulation and how it reached this project
   */
  public record Published(String what, Kind kind, double value, String source) {
    /** Refuses what is not finite. */
    public Published {
      Guard.finite(what, value);
    }
  }

  /**
   * Limits and test pulses of instrumented dummies and seats. This calculation cannot claim them.
   *
   * @return as printed
   */
  public static List<Published> publishedLimits() {
    return Stream.concat(PublishedFigures.DUMMY.stream(), PublishedFigures.SEAT_TEST.stream())
        .toList();
  }

  /**
   * Static test loads of anchorages. Passing one is not adequacy in a harder hit: the larger of
   * both demands counts.
   *
   * @return as printed
   */
  public static List<Published> publishedTestLoads() {
    return PublishedFigures.ANCHORAGES;
  }

  /**
   * Static ultimate loads of heavy items near people, such as a motor.
   *
   * @return as printed
   */
  public static List<Published> publishedItemLoads() {
    return PublishedFigures.HEAVY_ITEMS;
  }

  /** How a clearance compares with the excursion. */
  public enum Reach {
    /** Even the least excursion is more than the most room. */
    REACHED("reached"),
    /** Some combinations come there. */
    MAY_BE_REACHED("may be reached"),
    /** No combination of these inputs comes there. */
    NOT_REACHED("not reached in this model");

    private final String words;

    Reach(String words) {
      this.words = words;
    }

    /**
     * In words.
     *
     * @return for example {@code may be reached}
     */
    public String words() {
      return words;
    }
  }

  /**
   * How a clearance compares with the excursion of the chest.
   *
   * @param clearance the free room
   * @return the comparison
   */
  public Reach reach(Occupant.Clearance clearance) {
    if (excursion().low() >= clearance.distance().high()) {
      return Reach.REACHED;
    }
    return excursion().high() < clearance.distance().low()
        ? Reach.NOT_REACHED
        : Reach.MAY_BE_REACHED;
  }

  /**
   * What pulls at an anchorage.
   *
   * @param anchorage the place
   * @return the strap's force there [N]
   */
  public Range pull(Occupant.Anchorage anchorage) {
    return new BeltPulls(this).at(anchorage);
  }

  /**
   * The pulls as loads on the ladder's features, at the high end: forwards and, where a strap
   * rises, upwards.
   *
   * @return one load an anchorage, its node named as the anchorage's feature
   */
  public List<Load> anchorageLoads() {
    return new BeltPulls(this).loads();
  }

  /**
   * What this scene asks of belts and seat, at the high end, to stand beside the published test
   * loads: the belt's force on hips and torso, the seat at the vehicle's highest peak.
   *
   * @param onShoulder the part of the belt's force that the shoulder strap takes [1], 0 to 1
   * @return the case for {@link Anchorages#under}
   */
  public Anchorages.Pull pull(double onShoulder) {
    return new BeltPulls(this).asTested(onShoulder);
  }

  /**
   * What was assumed.
   *
   * @return sentences
   */
  public List<String> assumptions() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "The person is one mass on one spring, held from the beginning; head, neck, arms and legs"
            + " are not modelled.");
    lines.add(
        "All straps act together along the vehicle; seat friction, wheel, dash and airbag take"
            + " nothing.");
    lines.add("The person does not act back on the vehicle.");
    if (runs.stream().noneMatch(Run::limited)) {
      lines.add("The belt is elastic; real webbing gives back less and stretches for good.");
    }
    return lines;
  }

  /**
   * What its reader must not read into it.
   *
   * @return questions that were not asked
   */
  public List<String> notChecked() {
    return List.of(
        "head and neck",
        "chest compression",
        "knees and legs",
        "sliding under the lap belt",
        "the seat and its fixings",
        "rebound",
        "small, old or pregnant people");
  }

  /**
   * Inputs that look mistyped, and pulses that do not end.
   *
   * @param units the reader's units
   * @return sentences; none when nothing stands out
   */
  public List<String> warnings(Units units) {
    List<String> lines = new ArrayList<>(occupant.warnings(units));
    pulses.forEach(pulse -> lines.addAll(pulse.warnings()));
    return lines;
  }

  @Override
  public String toString() {
    return occupant.name()
        + ": peak "
        + peak()
        + ", 3 ms "
        + clip()
        + ", forward "
        + excursion()
        + ", belt "
        + beltForce()
        + ". "
        + Caution.IMPACT.inBrief();
  }
}
