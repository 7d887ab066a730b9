package rungwork.impact;

import rungwork.fault.Guard;
import rungwork.fault.Scale;

/** The way of a vehicle under a pulse: exact between the pulse's points, where it is straight. */
final class Travel {
  private static final double NOTHING = 1e-12;

  private final double distance;
  private final double speedLeft;

  Travel(Pulse pulse, double speed) {
    Guard.positive("speed at the beginning of a pulse", speed, new Scale("km/h", 1 / 3.6));
    double[] times = pulse.times();
    double[] values = pulse.decelerations();
    double v = speed;
    double way = 0;
    for (int i = 1; i < times.length && v > NOTHING * speed; i++) {
      double step = times[i] - times[i - 1];
      double slope = step == 0 ? 0 : (values[i] - values[i - 1]) / step;
      double until = untilRest(v, values[i - 1], slope, step);
      way += until * (v - until * (values[i - 1] / 2 + slope * until / 6));
      v -= until * (values[i - 1] + slope * until / 2);
    }
    distance = way;
    speedLeft = Math.max(0, v);
  }

  /** How far it goes until it stands or the pulse is over [m]. */
  double distance() {
    return distance;
  }

  /** What is left of the speed then [m/s]. */
  double speedLeft() {
    return speedLeft;
  }

  /** First root of v − a·t − j·t²/2 inside the step, or the whole step. */
  private static double untilRest(double v, double a, double jerk, double step) {
    double end = v - step * (a + jerk * step / 2);
    if (end > 0) {
      return step;
    }
    double root = a + Math.sqrt(Math.max(0, a * a + 2 * jerk * v));
    return Math.min(step, 2 * v / root);
  }
}
