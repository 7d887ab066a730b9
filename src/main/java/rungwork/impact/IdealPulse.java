package rungwork.impact;

import java.util.function.DoubleUnaryOperator;
import rungwork.fault.Guard;
import rungwork.fault.Scale;

/**
 * A pulse of a textbook shape that begins at time zero.
 *
 * @param peak its highest value [m/s²]
 * @param duration how long [s]
 */
record IdealPulse(double peak, double duration) {
  /** Points of a curved pulse: its area is right to a millionth. */
  private static final int STEPS = 2000;

  IdealPulse {
    Guard.positive("peak of a pulse", peak, Scale.G);
    Guard.positive("duration of a pulse", duration, Pulse.MS);
  }

  Pulse square() {
    return Pulse.through(
        "square", new double[] {0, 0, duration, duration}, new double[] {0, peak, peak, 0});
  }

  Pulse triangle() {
    return Pulse.through(
        "triangle", new double[] {0, duration / 2, duration}, new double[] {0, peak, 0});
  }

  /** A pulse whose value over its peak is a function of the part of the time that has passed. */
  Pulse curved(String name, DoubleUnaryOperator shape) {
    double[] times = new double[STEPS + 1];
    double[] values = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double part = (double) i / STEPS;
      times[i] = part * duration;
      values[i] = i == STEPS ? 0 : peak * shape.applyAsDouble(part);
    }
    return Pulse.through(name, times, values);
  }
}
