package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Time;
import rungwork.csv.CsvFile;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A vehicle's deceleration over time, straight between its points.
 *
 * <p>Peak, mean over time and mean over distance are three numbers. The two means agree only for
 * pulses that are symmetric in time.
 */
public final class Pulse {
  /** A pulse whose last value is above this part of its peak does not end: common practice. */
  private static final double ENDED = 0.05;

  private static final int MOST_POINTS = 2_000_000;
  static final Scale MS = new Scale("ms", 1e-3);

  private final String name;
  private final double[] times;
  private final double[] values;

  private Pulse(String name, double[] times, double[] values) {
    this.name = Guard.name("pulse", name);
    this.times = times.clone();
    this.values = values.clone();
    refuseNonsense();
  }

  /**
   * A pulse through points.
   *
   * @param name what the reader calls it
   * @param times [s], none before the one before it; two alike make a step
   * @param decelerations [m/s²], a deceleration is positive; as many as times
   * @return the pulse
   */
  public static Pulse through(String name, double[] times, double[] decelerations) {
    return new Pulse(name, times, decelerations);
  }

  /**
   * A constant deceleration that begins and ends at once.
   *
   * @param peak its value, above zero
   * @param duration how long, above zero
   * @return the pulse
   */
  public static Pulse square(Quantity<Acceleration> peak, Quantity<Time> duration) {
    return ideal(peak, duration).square();
  }

  /**
   * Half a wave of a sine.
   *
   * @param peak its highest value, above zero
   * @param duration how long, above zero
   * @return the pulse
   */
  public static Pulse halfSine(Quantity<Acceleration> peak, Quantity<Time> duration) {
    return ideal(peak, duration).curved("half-sine", part -> Math.sin(Math.PI * part));
  }

  /**
   * The haversine: one wave of a cosine on its foot, soft at both ends.
   *
   * @param peak its highest value, above zero
   * @param duration how long, above zero
   * @return the pulse
   */
  public static Pulse haversine(Quantity<Acceleration> peak, Quantity<Time> duration) {
    return ideal(peak, duration)
        .curved("haversine", part -> (1 - Math.cos(2 * Math.PI * part)) / 2);
  }

  /**
   * A symmetric triangle.
   *
   * @param peak its highest value, above zero
   * @param duration how long, above zero
   * @return the pulse
   */
  public static Pulse triangle(Quantity<Acceleration> peak, Quantity<Time> duration) {
    return ideal(peak, duration).triangle();
  }

  /**
   * A pulse from a CSV file with the columns {@code time_ms} (or {@code time_s}) and {@code
   * deceleration_g} (or {@code deceleration_m_s2}).
   *
   * @param file the file
   * @return the pulse, named like the file
   */
  public static Pulse read(Path file) {
    return new PulseTable(CsvFile.read("pulse file", file)).read();
  }

  private static IdealPulse ideal(Quantity<Acceleration> peak, Quantity<Time> duration) {
    return new IdealPulse(si("peak of a pulse", peak), si("duration of a pulse", duration));
  }

  private void refuseNonsense() {
    if (times.length != values.length || times.length < 2 || times.length > MOST_POINTS) {
      throw new ModelException(
          "pulse %s has %d times and %d values; give 2 to %d of both"
              .formatted(name, times.length, values.length, MOST_POINTS));
    }
    for (int i = 0; i < times.length; i++) {
      Guard.finite("time of pulse " + name, times[i]);
      Guard.finite("deceleration of pulse " + name, values[i]);
      if (i > 0 && times[i] < times[i - 1]) {
        throw new ModelException(
            "pulse %s goes back from %s to %s; times must not fall"
                .formatted(name, MS.show(times[i - 1]), MS.show(times[i])));
      }
    }
    if (duration() <= 0) {
      throw new ModelException("pulse " + name + " lasts no time; give it a duration");
    }
    if (velocityChange() <= 0) {
      throw new ModelException(
          "pulse "
              + name
              + " speeds the vehicle up by "
              + new Scale("km/h", 1 / 3.6).show(-velocityChange())
              + "; a deceleration is positive here: change the sign");
    }
  }

  /**
   * What the reader calls it.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The same pulse under another name.
   *
   * @param other the name
   * @return the pulse
   */
  public Pulse named(String other) {
    return new Pulse(other, times, values);
  }

  /**
   * Its times.
   *
   * @return [s], in order
   */
  public double[] times() {
    return times.clone();
  }

  /**
   * Its values.
   *
   * @return decelerations at its times [m/s²]
   */
  public double[] decelerations() {
    return values.clone();
  }

  /**
   * From its first to its last point.
   *
   * @return T [s]
   */
  public double duration() {
    return times[times.length - 1] - times[0];
  }

  /**
   * Its highest value.
   *
   * @return [m/s²]
   */
  public double peak() {
    return values[peakIndex()];
  }

  /**
   * When it is highest, for the first time.
   *
   * @return [s]
   */
  public double peakTime() {
    return times[peakIndex()];
  }

  private int peakIndex() {
    int at = 0;
    for (int i = 1; i < values.length; i++) {
      at = values[i] > values[at] ? i : at;
    }
    return at;
  }

  /**
   * The deceleration at a time; nothing before its first and after its last point.
   *
   * @param time [s]
   * @return [m/s²]
   */
  public double at(double time) {
    Guard.finite("time", time);
    if (time < times[0] || time >= times[times.length - 1]) {
      return 0;
    }
    int low = 0;
    int high = times.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (times[middle] <= time) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double part = (time - times[low]) / (times[high] - times[low]);
    return values[low] + part * (values[high] - values[low]);
  }

  /**
   * The area under it.
   *
   * @return Δv [m/s]
   */
  public double velocityChange() {
    double sum = 0;
    for (int i = 1; i < times.length; i++) {
      sum += (times[i] - times[i - 1]) * (values[i] + values[i - 1]) / 2;
    }
    return sum;
  }

  /**
   * The mean over time, Δv/T.
   *
   * @return [m/s²]
   */
  public double meanOverTime() {
    return velocityChange() / duration();
  }

  /**
   * How far a vehicle goes that meets it at a speed, until it stands or the pulse is over.
   *
   * @param speed at its beginning [m/s], above zero
   * @return [m]
   */
  public double stopDistance(double speed) {
    return new Travel(this, speed).distance();
  }

  /**
   * The mean over the distance, (v² − v'²)/(2·d), v' the speed that is left at its end.
   *
   * @param speed at its beginning [m/s], above zero
   * @return [m/s²]
   */
  public double meanOverDistance(double speed) {
    Guard.positive("speed before " + name, speed, Scale.NUMBER);
    Travel travel = new Travel(this, speed);
    double left = travel.speedLeft();
    double mean = (speed * speed - left * left) / (2 * travel.distance());
    return Guard.solved("mean deceleration over distance", mean);
  }

  /**
   * The highest level that is passed for so long in all, whether at once or in pieces.
   *
   * @param duration [s], above zero, such as 3 ms
   * @return [m/s²]; nothing is held that long by a pulse that is shorter
   */
  public double clip(double duration) {
    return Clip.level(times, values, duration);
  }

  /**
   * The pulse as a measuring channel of this class would show it.
   *
   * @param channel the channel class
   * @return the filtered pulse, a little longer at both ends
   */
  public Pulse filtered(ChannelClass channel) {
    return channel.filter().shown(this).named(name + ", filtered " + channel.label());
  }

  /**
   * What its reader must know of it.
   *
   * @return sentences; none when nothing stands out
   */
  public List<String> warnings() {
    List<String> lines = new ArrayList<>();
    double last = values[values.length - 1];
    if (Math.abs(last) > ENDED * peak()) {
      lines.add(
          "Pulse %s does not end: it still is %s at its last point, %s. What follows is missing from every figure."
              .formatted(name, Scale.G.show(last, 3), MS.show(times[times.length - 1], 3)));
    }
    return lines;
  }

  @Override
  public String toString() {
    return name
        + ": peak "
        + Scale.G.show(peak(), 3)
        + ", mean over time "
        + Scale.G.show(meanOverTime(), 3)
        + ", "
        + MS.show(duration(), 3)
        + ", Δv "
        + new Scale("km/h", 1 / 3.6).show(velocityChange(), 3);
  }

  /**
   * Channel frequency classes of crash measurements: SAE J211-1 and ISO 6487, a low-pass
   * Butterworth filter of two poles that runs forwards and backwards, so four poles and no delay.
   * Coefficients as the appendix of SAE J211-1 prints them (from memory, compared with their closed
   * form).
   */
  public enum ChannelClass {
    /** The vehicle's structure, for comparing pulses: 3 dB less at 100 Hz. */
    CFC_60(60),
    /** Parts of the structure and the chest, for integrating: 3 dB less at 300 Hz. */
    CFC_180(180);

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
      Guard.notNegative("frequency", frequency, Scale.NUMBER);
      return filter().gain(frequency);
    }

    /**
     * The coefficients of one run: y(t) = a₀·x(t) + a₁·x(t−1) + a₂·x(t−2) + b₁·y(t−1) + b₂·y(t−2).
     *
     * @return a₀, a₁, a₂, b₁, b₂ at 10 000 samples a second
     */
    public double[] coefficients() {
      return filter().coefficients();
    }

    private ChannelFilter filter() {
      return new ChannelFilter(number);
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
}
