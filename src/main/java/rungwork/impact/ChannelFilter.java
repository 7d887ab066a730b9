package rungwork.impact;

/**
 * The low-pass filter of a channel class: Butterworth's of two poles, run forwards and backwards.
 *
 * @param number of the class, such as 60
 */
record ChannelFilter(double number) {
  /** The designed corner over the class number [1]; ISO 6487 rounds it to 2.0833. */
  private static final double CORNER = 2.0775;

  /** Samples are taken this often [s]. */
  private static final double STEP = 1e-4;

  /** Rest before and after a pulse, in periods of the corner: what the filter rings on is gone. */
  private static final double REST = 3;

  /** What is left of a steady wave of a frequency [Hz] after both runs [1]. */
  double gain(double frequency) {
    double ratio = Math.tan(Math.PI * frequency * STEP) / warped();
    return 1 / (1 + Math.pow(ratio, 4));
  }

  /** tan(ω·T/2) of the corner. */
  private double warped() {
    return Math.tan(2 * Math.PI * number * CORNER * STEP / 2);
  }

  /** a₀, a₁, a₂, b₁, b₂ of y(t) = a₀·x(t) + a₁·x(t−1) + a₂·x(t−2) + b₁·y(t−1) + b₂·y(t−2). */
  double[] coefficients() {
    double wa = warped();
    double divisor = 1 + Math.sqrt(2) * wa + wa * wa;
    double a0 = wa * wa / divisor;
    double b1 = -2 * (wa * wa - 1) / divisor;
    double b2 = (-1 + Math.sqrt(2) * wa - wa * wa) / divisor;
    return new double[] {a0, 2 * a0, a0, b1, b2};
  }

  /** The pulse as this channel would show it, with the rest that it needs before and after. */
  Pulse shown(Pulse pulse) {
    double rest = REST / (number * CORNER);
    double start = pulse.times()[0] - rest;
    int count = (int) Math.ceil((pulse.duration() + 2 * rest) / STEP) + 1;
    double[] times = new double[count];
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = start + i * STEP;
      values[i] = meanAround(pulse, times[i]);
    }
    double[] back = reversed(run(reversed(run(values))));
    return Pulse.through(pulse.name(), times, back);
  }

  /** A step inside a sampling interval counts by the part of it that lies there. */
  private static double meanAround(Pulse pulse, double time) {
    int pieces = 8;
    double sum = 0;
    for (int i = 0; i < pieces; i++) {
      sum += pulse.at(time + STEP * ((i + 0.5) / pieces - 0.5));
    }
    return sum / pieces;
  }

  private double[] run(double[] x) {
    double[] c = coefficients();
    double[] y = new double[x.length];
    for (int i = 2; i < x.length; i++) {
      y[i] = c[0] * x[i] + c[1] * x[i - 1] + c[2] * x[i - 2] + c[3] * y[i - 1] + c[4] * y[i - 2];
    }
    return y;
  }

  private static double[] reversed(double[] values) {
    double[] back = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      back[i] = values[values.length - 1 - i];
    }
    return back;
  }
}
