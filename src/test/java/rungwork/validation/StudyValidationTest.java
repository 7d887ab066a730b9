package rungwork.validation;

import static rungwork.quantity.Quantities.deg;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Kind;
import rungwork.study.Family;
import rungwork.study.Input;
import rungwork.study.Measure;
import rungwork.study.Scatter;
import rungwork.study.Scatter.Sampling;
import rungwork.study.Spread;
import rungwork.study.Study;

/** Optima, scatter and sampling against closed forms. */
class StudyValidationTest {
  private static final String LATIN =
      "Latin hypercube of 20 000 settings, whose error falls faster than 1/√n";

  private static Study<Double> sum(Spread first, Spread second) {
    return Study.of(
        "a sum",
        List.of(
            new Input("a", Kind.NUMBER, 3, first, Input.ASSUMED),
            new Input("b", Kind.NUMBER, 2, second, Input.ASSUMED)),
        setting -> 2 * setting.number("a") - setting.number("b"),
        List.of(Measure.least("sum", Kind.NUMBER, value -> value)));
  }

  /** 2a − b of independent normal numbers is normal: mean 4, variance 4·0.3² + 0.8² = 1. */
  @Test
  void a_linear_sum_of_normal_numbers_is_normal() {
    Scatter scatter =
        sum(new Spread.Normal(3, 0.3), new Spread.Normal(2, 0.8))
            .scatter(Sampling.latinHypercube(20_000, 5));
    NormalDistribution exact = new NormalDistribution(4, 1);
    Published.derived("sum of normal numbers", "2a − b, a = 3 ± 0.3, b = 2 ± 0.8")
        .allowing(0.01, LATIN)
        .value("mean", "", "4", scatter.mean("sum"))
        .value("standard deviation", "", "1", scatter.deviation("sum"))
        .value("5 % quantile", "", show(exact, 0.05), scatter.quantile("sum", 0.05))
        .value("median", "", show(exact, 0.5), scatter.quantile("sum", 0.5))
        .value("95 % quantile", "", show(exact, 0.95), scatter.quantile("sum", 0.95));
  }

  private static String show(NormalDistribution exact, double part) {
    return "%.5f".formatted(exact.inverseCumulativeProbability(part));
  }

  @Test
  void the_share_over_a_limit_is_the_normal_tail() {
    Scatter scatter =
        sum(new Spread.Normal(3, 0.3), new Spread.Normal(2, 0.8))
            .scatter(Sampling.random(200_000, 11));
    double tail = 1 - new NormalDistribution(4, 1).cumulativeProbability(5.5);
    Published.derived("normal tail above 1.5 deviations", "2a − b over 5.5")
        .allowing(0.02, "200 000 settings: three standard errors are 2.5 %")
        .value("share", "", "%.5f".formatted(tail), scatter.over("sum", 5.5).part());
  }

  /** Even numbers: one value from each of n parts leaves the mean a variance of 1/12n³. */
  @Test
  void a_latin_hypercube_leaves_the_mean_the_variance_of_its_parts() {
    int n = 10;
    Study<Double> study =
        Study.of(
            "a number",
            List.of(new Input("x", Kind.NUMBER, 0.5, new Spread.Even(0, 1), Input.ASSUMED)),
            setting -> setting.number("x"),
            List.of(Measure.least("x", Kind.NUMBER, value -> value)));
    Published.derived("stratified sampling: 1/12n³; independent: 1/12n", "mean of 10 even numbers")
        .allowing(0.1, "4000 repetitions: four standard errors are 9 %")
        .value(
            "Latin hypercube",
            "",
            "8.3333e-5",
            spreadOfMean(study, Sampling.Method.LATIN_HYPERCUBE, n))
        .value("independent", "", "8.3333e-3", spreadOfMean(study, Sampling.Method.RANDOM, n));
  }

  private static double spreadOfMean(Study<Double> study, Sampling.Method method, int n) {
    double[] means =
        LongStream.range(0, 4000)
            .mapToDouble(
                seed -> study.onThreads(1).scatter(new Sampling(method, n, seed)).mean("x") - 0.5)
            .toArray();
    return Arrays.stream(means).map(m -> m * m).average().orElseThrow();
  }

  /** Two bars of equal strength carry F between supports: mass ~ 1/(sin α cos α), least at 45°. */
  @Test
  void two_bars_are_lightest_at_45_degrees() {
    Family family =
        Study.of(
                "two bars",
                List.of(Input.of("slope", deg(40)).between(deg(20), deg(70), "free to choose")),
                setting -> 1 / (Math.sin(setting.si("slope")) * Math.cos(setting.si("slope"))),
                List.of(Measure.<Double>least("mass over FLρ/σ", Kind.NUMBER, mass -> mass)))
            .family("slope", 501);
    double[] mass = family.values("mass over FLρ/σ", "as designed");
    int best = 0;
    for (int i = 0; i < mass.length; i++) {
      best = mass[i] < mass[best] ? i : best;
    }
    Published.identity("least of 1/(sin α cos α)", "two-bar frame under one force")
        .value("slope", "°", "45.0", Math.toDegrees(family.steps()[best]))
        .value("mass over FLρ/σ", "", "2.00", mass[best]);
  }

  /** Clopper and Pearson: with none of n the upper bound is 1 − 0.025^(1/n). */
  @Test
  void confidence_of_a_share() {
    Published.identity("Clopper and Pearson: 1 − 0.025^(1/n)", "none of 10")
        .value("upper bound", "", "0.3085", share(0, 10).high());
    Published.memory(
            "Clopper and Pearson (1934), 95 % table, recomputed with the beta distribution",
            "5 of 10")
        .value("lower bound", "", "0.187", share(5, 10).low())
        .value("upper bound", "", "0.813", share(5, 10).high());
  }

  private static Scatter.Share share(int met, int of) {
    double limit = 1 - (double) met / of;
    return Study.of(
            "a share",
            List.of(new Input("x", Kind.NUMBER, 0.5, new Spread.Even(0, 1), Input.ASSUMED)),
            setting -> setting.number("x"),
            List.of(Measure.<Double>least("x", Kind.NUMBER, value -> value)))
        .scatter(Sampling.latinHypercube(of, 1))
        .over("x", limit);
  }

  @Test
  void quantiles_of_spreads() {
    Published.memory("tables of the normal distribution", "z")
        .value("95 %", "", "1.645", new Spread.Normal(0, 1).quantile(0.95))
        .value("97.5 %", "", "1.960", new Spread.Normal(0, 1).quantile(0.975));
    Published.identity("lognormal: median = mean/√(1 + V²)", "mean 100, V = 0.2")
        .value("median", "", "98.06", new Spread.Lognormal(100, 0.2).quantile(0.5));
    Published.identity("triangle: √(p (b − a)(c − a)) above a", "0, 2, 8")
        .value("quarter", "", "2.00", new Spread.Triangle(0, 2, 8).quantile(0.25));
  }
}
