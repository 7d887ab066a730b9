package rungwork.impact;

/**
 * Channel frequency classes of crash measurements: SAE J211-1 and ISO 6487, a low-pass Butterworth
 * filter of two poles that runs forwards and backwards, so four poles and no delay. Coefficients as
 * the appendix of SAE J211-1 prints them (from memory, compared with their closed form).
 */
public enum ChannelClass {
  /** The vehicle's structure, for comparing pulses: 3 dB less at 100 Hz. */
  CFC_60(60),
  /** Parts of the structure and the chest, for integrating: 3 dB less at 300 Hz. */
  CFC_180(180);

  /** The designed corner over the class number [1]; ISO 6487 rounds it to 2.0833. */
  private static final double CORNER = 2.0775;

  /** Samples are taken this often [s]. */
  private static final double STEP = 1e-4;

  /** Rest before and after a pulse, in periods of the corner: what the filter rings on is gone. */
  private static final double REST = 3;

  private final double number;

  ChannelClass(double number) {
    this.number = number;
  }

  /**
   * What is left of a steady wave after both runs.
   *
   * @param frequency [Hz], from 0 to half the samples a second
   * @return amplitude after over amplitude before [1]
   */
  public double gain(double frequency) {
    double ratio = Math.tan(Math.PI * frequency * STEP) / warped();
    return 1 / (1 + Math.pow(ratio, 4));
  }

  /** tan(ω·T/2) of the corner. */
  private double warped() {
    return Math.tan(2 * Math.PI * number * CORNER * STEP / 2);
  }

  /**
   * The coefficients of one run: y(t) = a₀·x(t) + a₁·x(t−1) + a₂·x(t−2) + b₁·y(t−1) + b₂·y(t−2).
   *
   * @return a₀, a₁, a₂, b₁, b₂ at 10 000 samples a second
   */
  public double[] coefficients() {
    double wa = warped();
    double divisor = 1 + Math.sqrt(2) * wa + wa * wa;
    double a0 = wa * wa / divisor;
    double b1 = -2 * (wa * wa - 1) / divisor;
    double b2 = (-1 + Math.sqrt(2) * wa - wa * wa) / divisor;
    return new double[] {a0, 2 * a0, a0, b1, b2};
  }

  /** The pulse as this channel would show it, with the rest that it needs before and after. */
  Pulse filter(Pulse pulse) {
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
    return Pulse.through(pulse.name() + ", filtered " + label(), times, back);
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

  /**
   * The class as test reports write it.
   *
   * @return for example {@code CFC 60}
   */
  public String label() {
    return "CFC " + Math.round(number);
  }
}
