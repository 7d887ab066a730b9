package rungwork.study;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * How measures scatter when the inputs do. Only the spreads that were stated and only the checks
 * that were made are in it: no share here is a probability of survival. Immutable.
 */
public final class Scatter {
  /** What goes with every share. */
  public static final String NOT_SURVIVAL =
      "of the spreads stated and the checks made only; not a probability of survival";

  private final String name;
  private final List<Input> inputs;
  private final Sampling sampling;
  private final Answers answers;

  Scatter(String name, List<Input> inputs, Sampling sampling, Answers answers) {
    this.name = name;
    this.inputs = inputs;
    this.sampling = sampling;
    this.answers = answers;
  }

  /**
   * How settings are drawn; the same seed gives the same settings.
   *
   * @param method independently or evenly
   * @param count how many, at least 1
   * @param seed any number
   */
  public record Sampling(Method method, int count, long seed) {
    /** Ways to draw. */
    public enum Method {
      /** Each setting by itself (Monte Carlo). */
      RANDOM("drawn independently"),
      /**
       * Each input's range cut into as many parts of equal probability as there are settings, one
       * value from each, in random order (Latin hypercube; McKay, Beckman and Conover 1979, from
       * memory).
       */
      LATIN_HYPERCUBE("drawn by Latin hypercube");

      private final String words;

      Method(String words) {
        this.words = words;
      }
    }

    /** Settings whose values and answers some hundred megabytes hold [1]. */
    private static final int MOST = 5_000_000;

    /** Refuses no setting, and more than the memory holds. */
    public Sampling {
      if (count < 1) {
        throw new ModelException("a scatter needs 1 setting at least, not " + count);
      }
      if (count > MOST) {
        throw new ModelException(
            "a scatter of %,d settings does not fit the memory; %,d are the most"
                .formatted(count, MOST));
      }
    }

    /**
     * Settings drawn independently.
     *
     * @param count how many
     * @param seed any number
     * @return the sampling
     */
    public static Sampling random(int count, long seed) {
      return new Sampling(Method.RANDOM, count, seed);
    }

    /**
     * Settings drawn evenly.
     *
     * @param count how many
     * @param seed any number
     * @return the sampling
     */
    public static Sampling latinHypercube(int count, long seed) {
      return new Sampling(Method.LATIN_HYPERCUBE, count, seed);
    }

    /** For each input and setting a number above 0 and below 1, evenly spread. */
    double[][] parts(int inputs) {
      return new Draw(count, seed).parts(inputs, method == Method.LATIN_HYPERCUBE);
    }
  }

  /**
   * A share of the settings, with the bounds of its 95 % confidence interval (Clopper and Pearson,
   * exact for settings drawn independently, wide for a Latin hypercube).
   *
   * @param met how many settings
   * @param of of how many
   * @param low lower bound [1]
   * @param high upper bound [1]
   */
  public record Share(int met, int of, double low, double high) {
    /** Refuses a share outside nothing to all. */
    public Share {
      Guard.finite("low end of a share", low);
      Guard.finite("high end of a share", high);
      if (met < 0 || met > of || of < 1) {
        throw new ModelException("%d of %d settings is no share".formatted(met, of));
      }
    }

    private static final double CONFIDENCE = 0.95;

    static Share of(int met, int of) {
      double tail = (1 - CONFIDENCE) / 2;
      double low = met == 0 ? 0 : quantile(met, of - met + 1.0, tail);
      double high = met == of ? 1 : quantile(met + 1.0, (double) of - met, 1 - tail);
      return new Share(met, of, low, high);
    }

    private static double quantile(double alpha, double beta, double part) {
      return new BetaDistribution(alpha, beta).inverseCumulativeProbability(part);
    }

    /**
     * The share itself.
     *
     * @return met over all [1]
     */
    public double part() {
      return (double) met / of;
    }

    @Override
    public String toString() {
      return "%d of %d, %s %% (95 %% confidence %s to %s %%)"
          .formatted(met, of, percent(part()), percent(low), percent(high));
    }

    private static String percent(double part) {
      return Scale.NUMBER.number(100 * part, 2);
    }
  }

  /**
   * The study's name.
   *
   * @return what it is about
   */
  public String name() {
    return name;
  }

  /**
   * What scatters.
   *
   * @return the inputs
   */
  public List<Input> inputs() {
    return inputs;
  }

  /**
   * How the settings were drawn.
   *
   * @return the sampling
   */
  public Sampling sampling() {
    return sampling;
  }

  /**
   * What a measure's numbers measure.
   *
   * @param measure its name
   * @return the kind
   */
  public Kind kind(String measure) {
    return answers.asked().get(answers.measure(measure)).kind();
  }

  /**
   * What was measured.
   *
   * @return the measures' names
   */
  public List<String> measures() {
    return answers.asked().stream().map(Asked::name).toList();
  }

  /**
   * How many settings were reached; fewer than were asked for when the study was interrupted.
   *
   * @return the count
   */
  public int reached() {
    return answers.reached();
  }

  /**
   * A measure of all settings that have one, in the order they were drawn.
   *
   * @param measure its name
   * @return the numbers [SI]
   */
  public double[] values(String measure) {
    return answers.numbers(answers.measure(measure));
  }

  /**
   * The mean of a measure.
   *
   * @param measure its name
   * @return the mean [SI]
   */
  public double mean(String measure) {
    return StatUtils.mean(some(measure));
  }

  /**
   * The standard deviation of a measure.
   *
   * @param measure its name
   * @return the deviation, from n − 1 [SI]
   */
  public double deviation(String measure) {
    return Math.sqrt(StatUtils.variance(some(measure)));
  }

  /**
   * The value below which a part of the settings lies.
   *
   * @param measure its name
   * @param part above 0, at most 1 [1]
   * @return the quantile [SI]
   */
  public double quantile(String measure, double part) {
    if (!(part > 0 && part <= 1)) {
      throw new ModelException("part %s is outside 0 to 1".formatted(Scale.NUMBER.show(part)));
    }
    return new Percentile().evaluate(some(measure), 100 * part);
  }

  /**
   * The share of settings in which a measure is over a limit.
   *
   * @param measure its name
   * @param limit the limit [SI]
   * @return the share
   */
  public Share over(String measure, double limit) {
    double[] values = some(measure);
    return Share.of((int) Arrays.stream(values).filter(v -> v > limit).count(), values.length);
  }

  /**
   * How often each of a measure's words came out, such as the place that governs.
   *
   * @param measure its name
   * @return a share for each, the largest first
   */
  public Map<String, Share> shares(String measure) {
    int m = answers.measure(measure);
    Map<String, Integer> counts = new LinkedHashMap<>();
    IntStream.range(0, answers.count())
        .filter(answers::answered)
        .forEach(i -> counts.merge(answers.words(m, i), 1, Integer::sum));
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    Map<String, Share> shares = new LinkedHashMap<>();
    counts.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder()))
        .forEach(entry -> shares.put(entry.getKey(), Share.of(entry.getValue(), all)));
    return shares;
  }

  /**
   * What the model refused.
   *
   * @return each refusal, with how many settings met it
   */
  public Map<String, Integer> refusals() {
    return answers.refusals();
  }

  /**
   * A number of a measure with its unit.
   *
   * @param measure its name
   * @param value the number [SI]
   * @param units the reader's units
   * @return for example {@code 0.81}
   */
  public String show(String measure, double value, Units units) {
    return answers.asked().get(answers.measure(measure)).show(value, units);
  }

  /**
   * A measure against a limit, in one line.
   *
   * @param measure its name
   * @param limit the limit [SI]
   * @param units the reader's units
   * @return its middle nine tenths and the share over the limit, with what that share is not
   */
  public String line(String measure, double limit, Units units) {
    return "%s: nine tenths between %s and %s; over %s in %s, %s"
        .formatted(
            measure,
            show(measure, quantile(measure, 0.05), units),
            show(measure, quantile(measure, 0.95), units),
            show(measure, limit, units),
            over(measure, limit),
            NOT_SURVIVAL);
  }

  /**
   * How the settings were drawn.
   *
   * @return in words
   */
  public String drawn() {
    String settings =
        "%d settings %s, seed %d"
            .formatted(sampling.count(), sampling.method().words, sampling.seed());
    return reached() == sampling.count() ? settings : settings + "; interrupted after " + reached();
  }

  private double[] some(String measure) {
    double[] values = values(measure);
    if (values.length == 0) {
      throw new ModelException(
          "no setting of %s has a number for %s; %s"
              .formatted(
                  name,
                  measure,
                  refusals().isEmpty()
                      ? "none was reached"
                      : refusals().keySet().iterator().next()));
    }
    return values;
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder("Scatter of " + name + ": " + drawn());
    for (String measure : measures()) {
      if (values(measure).length > 0) {
        out.append("\n- ")
            .append(measure)
            .append(": mean ")
            .append(show(measure, mean(measure), Units.METRIC));
        out.append(", nine tenths between ")
            .append(show(measure, quantile(measure, 0.05), Units.METRIC));
        out.append(" and ").append(show(measure, quantile(measure, 0.95), Units.METRIC));
      }
    }
    refusals()
        .forEach(
            (reason, count) ->
                out.append("\n- refused ").append(count).append(" times: ").append(reason));
    return out.append("\n- ").append(NOT_SURVIVAL).toString();
  }
}
