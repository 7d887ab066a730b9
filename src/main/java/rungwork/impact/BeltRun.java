package rungwork.impact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;

/** One person on one belt under one pulse, integrated in the frame of the vehicle. */
final class BeltRun {
  /** Long enough for any belt [m]; what pays out farther has left the vehicle. */
  private static final double LONGEST = 3;

  /**
   * One combination of the belt's figures.
   *
   * @param stiffness [N/m]
   * @param slack [m]
   * @param limit [N]; {@link Double#MAX_VALUE} for none
   */
  record Ends(double stiffness, double slack, double limit) {
    /** The belt as a curve: linear, then level at its limit. */
    CrushCurve curve() {
      if (limit / stiffness >= LONGEST) {
        return CrushCurve.linear("belt", stiffness, LONGEST);
      }
      return new CrushCurve(
          "belt",
          List.of(
              new CrushCurve.Point(0, 0, ""),
              new CrushCurve.Point(limit / stiffness, limit, "limiter pays out"),
              new CrushCurve.Point(limit / stiffness + LONGEST, limit, "")),
          stiffness);
    }

    boolean limited() {
      return limit != Double.MAX_VALUE;
    }
  }

  private final Occupant occupant;
  private final Ends ends;
  private final Pulse pulse;

  BeltRun(Occupant occupant, Ends ends, Pulse pulse) {
    this.occupant = occupant;
    this.ends = ends;
    this.pulse = pulse;
  }

  Ride.Run run(double speed) {
    Link belt =
        new Link.Crush(Link.GROUND, 0, ends.curve(), ends.slack(), occupant.belt().damping());
    LumpedMasses masses =
        new LumpedMasses(new double[] {occupant.mass()}, List.of(belt), pulse::at);
    List<LumpedMasses.Sample> samples = masses.through(jumps());
    int count = samples.size();
    double[] times = new double[count];
    double[] vehicle = new double[count];
    double[] decelerations = new double[count];
    double[] excursions = new double[count];
    for (int i = 0; i < count; i++) {
      LumpedMasses.Sample sample = samples.get(i);
      times[i] = sample.time();
      vehicle[i] = pulse.at(sample.time());
      decelerations[i] = sample.decelerations()[0];
      excursions[i] = sample.state()[0];
    }
    refuseTorn(excursions);
    return new Ride.Run(
        pulse.name(),
        speed,
        ends.stiffness(),
        ends.slack(),
        ends.limited(),
        new Ride.Series(times, vehicle, decelerations, excursions, ways(speed, times)));
  }

  private void refuseTorn(double[] excursions) {
    double most = Arrays.stream(excursions).max().orElseThrow();
    if (most > ends.slack() + LONGEST) {
      throw new SolveException(
          "%s would come forward by %s on the belt; no belt is that long: pulse %s changes the speed by %s"
              .formatted(
                  occupant.name(),
                  Scale.MM.show(most, 3),
                  pulse.name(),
                  new Scale("km/h", 1 / 3.6).show(pulse.velocityChange(), 3)));
    }
  }

  /** Where the pulse jumps, and an end after which the belt can only let go. */
  private double[] jumps() {
    List<Double> times = new ArrayList<>();
    double[] all = pulse.times();
    times.add(all[0]);
    for (int i = 1; i < all.length - 1; i++) {
      if (all[i] == all[i - 1] && all[i] > times.get(times.size() - 1)) {
        times.add(all[i]);
      }
    }
    double end = all[all.length - 1];
    times.add(end);
    double halfWave = Math.PI * Math.sqrt(occupant.mass() / ends.stiffness());
    double takingUp = ends.slack() / pulse.velocityChange();
    double paying = ends.limited() ? occupant.mass() * pulse.velocityChange() / ends.limit() : 0;
    times.add(end + takingUp + halfWave + paying);
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** The vehicle's way over the ground. */
  private double[] ways(double speed, double[] times) {
    double[] ways = new double[times.length];
    double v = speed;
    for (int i = 1; i < times.length; i++) {
      double step = times[i] - times[i - 1];
      double middle = pulse.at((times[i] + times[i - 1]) / 2);
      ways[i] = ways[i - 1] + step * (v - middle * step / 2);
      v -= middle * step;
    }
    return ways;
  }
}
