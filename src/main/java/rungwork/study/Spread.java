package rungwork.study;

import org.apache.commons.math3.distribution.AbstractRealDistribution;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TriangularDistribution;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/** How an uncertain number spreads. All parameters in SI units. */
public sealed interface Spread {
  /** Part of all values below {@link #low} of a spread without an end, and above its high [1]. */
  double TAIL = 0.05;

  /**
   * The value below which a part of all values lies.
   *
   * @param part above 0, below 1 [1]
   * @return the quantile [SI]
   */
  double quantile(double part);

  /**
   * The low value to try: its end, or the 5 % quantile where it has none.
   *
   * @return the value [SI]
   */
  default double low() {
    return quantile(TAIL);
  }

  /**
   * The high value to try: its end, or the 95 % quantile where it has none.
   *
   * @return the value [SI]
   */
  default double high() {
    return quantile(1 - TAIL);
  }

  /**
   * The spread in words.
   *
   * @return for example {@code even}
   */
  String words();

  /**
   * All values between two ends alike, as for a tolerance of which nothing else is known.
   *
   * @param low lower end [SI]
   * @param high upper end, above the lower [SI]
   */
  record Even(double low, double high) implements Spread {
    /** Refuses ends that do not follow each other. */
    public Even {
      refuseOrder(low, high);
    }

    @Override
    public double quantile(double part) {
      refusePart(part);
      return low + part * (high - low);
    }

    @Override
    public String words() {
      return "even between its ends";
    }
  }

  /**
   * Between two ends, most often at a peak.
   *
   * @param low lower end [SI]
   * @param peak the most likely value, from the lower to the upper end [SI]
   * @param high upper end, above the lower [SI]
   */
  record Triangle(double low, double peak, double high) implements Spread {
    /** Refuses ends that do not follow each other. */
    public Triangle {
      refuseOrder(low, high);
      if (!(peak >= low && peak <= high)) {
        throw new ModelException("the peak of a triangular spread lies outside its ends");
      }
    }

    @Override
    public double quantile(double part) {
      return quantileOf(new TriangularDistribution(low, peak, high), part);
    }

    @Override
    public String words() {
      return "triangular between its ends";
    }
  }

  /**
   * Normal (Gauss). It has no ends: a value can come out of any size, and below zero.
   *
   * @param mean middle [SI]
   * @param deviation standard deviation, above zero [SI]
   */
  record Normal(double mean, double deviation) implements Spread {
    /** Refuses a deviation that is not above zero. */
    public Normal {
      Guard.finite("mean", mean);
      Guard.positive("standard deviation", deviation, Scale.NUMBER);
    }

    @Override
    public double quantile(double part) {
      return quantileOf(new NormalDistribution(mean, deviation), part);
    }

    @Override
    public String words() {
      return "normal";
    }
  }

  /**
   * Lognormal: the logarithm is normal, so no value is below zero.
   *
   * @param mean its mean, above zero [SI]
   * @param variation standard deviation over mean, above zero [1]
   */
  record Lognormal(double mean, double variation) implements Spread {
    /** Refuses a mean or variation that is not above zero. */
    public Lognormal {
      Guard.positive("mean", mean, Scale.NUMBER);
      Guard.positive("coefficient of variation", variation, Scale.NUMBER);
    }

    /** With V the variation: σ² = ln(1 + V²), μ = ln mean − σ²/2. */
    @Override
    public double quantile(double part) {
      double square = Math.log1p(variation * variation);
      return quantileOf(
          new LogNormalDistribution(Math.log(mean) - square / 2, Math.sqrt(square)), part);
    }

    @Override
    public String words() {
      return "lognormal";
    }
  }

  /** A part strictly between nothing and all; the ends of an open curve lie nowhere. */
  private static void refusePart(double part) {
    if (!(part > 0 && part < 1)) {
      throw new ModelException(
          "the part %s of a spread does not lie between 0 and 1"
              .formatted(Scale.NUMBER.show(part)));
    }
  }

  private static double quantileOf(AbstractRealDistribution distribution, double part) {
    refusePart(part);
    return Guard.solved("a spread's value", distribution.inverseCumulativeProbability(part));
  }

  private static void refuseOrder(double low, double high) {
    if (!(Guard.finite("lower end of a spread", low)
        < Guard.finite("upper end of a spread", high))) {
      throw new ModelException(
          "a spread's lower end %s is not below its upper end %s"
              .formatted(Scale.NUMBER.show(low), Scale.NUMBER.show(high)));
    }
  }
}
