package rungwork.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.mps2;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.study.Scatter.Sampling;
import tech.tablesaw.api.Table;

/**
 * A cantilever bar under a force at its tip: stress 6FL/bh², the model that everybody can check.
 */
class StudyTest {
  private static final Input FORCE = Input.of("force", 1000.0).normal(0.1, Input.ASSUMED);
  private static final Input HEIGHT = Input.of("height", mm(40)).within(0.05, "rolling tolerance");
  private static final Input WIDTH = Input.of("width", mm(20)).within(0.01, "rolling tolerance");
  private static final Measure<Bar> STRESS =
      Measure.<Bar>least("stress", Kind.STRESS, Bar::stress)
          .telling(bar -> bar.stress() > 100e6 ? "high" : "low");
  private static final Measure<Bar> STIFFNESS =
      Measure.most("stiffness", Kind.STIFFNESS, Bar::stiffness);

  private record Bar(double force, double height, double width) {
    static Bar of(Setting setting) {
      double height = setting.si("height");
      if (height < 0.0385) {
        throw new ModelException("a bar this low is not sold");
      }
      return new Bar(setting.number("force"), height, setting.si("width"));
    }

    double stress() {
      return 6 * force * 0.5 / (width * height * height);
    }

    double stiffness() {
      return 210e9 * width * Math.pow(height, 3) / (4 * 0.125);
    }
  }

  private static Study<Bar> study(Input... inputs) {
    return Study.of("the bar", List.of(inputs), Bar::of, List.of(STRESS, STIFFNESS));
  }

  private static Input height(double within) {
    return Input.of("height", mm(40)).within(within, "rolling tolerance");
  }

  @Test
  void the_input_that_moves_the_measure_most_comes_first() {
    Sensitivity sensitivity = study(FORCE, height(0.03), WIDTH).sensitivity();
    assertEquals(
        List.of("force", "height", "width"),
        sensitivity.swings("stress").stream().map(swing -> swing.input().name()).toList());
    assertEquals(
        List.of("height", "width", "force"),
        sensitivity.swings("stiffness").stream().map(swing -> swing.input().name()).toList());
    assertEquals(93.75e6, sensitivity.designed("stress"), 1);
    Sensitivity.Swing height = sensitivity.swings("stress").get(1);
    assertEquals(93.75e6 / (0.97 * 0.97), height.low(), 1);
    assertEquals(93.75e6 / (1.03 * 1.03), height.high(), 1);
    assertEquals(
        "What matters in the bar:\n"
            + "- stress: force matters most, 78.3 MPa to 109 MPa (93.7 MPa as designed)\n"
            + "- stiffness: height matters most, 491 N/mm to 587 N/mm (538 N/mm as designed)",
        sensitivity.toString());
    Table table = sensitivity.table("stress", Units.METRIC);
    assertEquals(
        List.of("input", "from", "to", "stress [MPa] at low", "stress [MPa] at high", "source"),
        table.columnNames());
    assertEquals("rolling tolerance", table.stringColumn("source").get(1));
  }

  @Test
  void a_value_that_the_model_refuses_is_kept_with_its_reason() {
    Sensitivity sensitivity = study(FORCE, HEIGHT, WIDTH).sensitivity();
    assertEquals(List.of("height 38.00 mm: a bar this low is not sold"), sensitivity.refusals());
    Sensitivity.Swing height = sensitivity.swings("stress").get(2);
    assertEquals("height", height.input().name());
    assertTrue(Double.isNaN(height.low()));
    assertEquals(0, height.size());
    assertTrue(sensitivity.toString().endsWith("a bar this low is not sold"));
  }

  @Test
  void an_input_that_moves_nothing_says_so() {
    Study<Double> study =
        Study.of(
            "nothing",
            List.of(Input.of("idle", 3.0).within(0.1, Input.ASSUMED)),
            setting -> 1.0,
            List.of(Measure.counted("price", "crowns", one -> one)));
    assertEquals("price: no input moves it", study.sensitivity().line("price", Units.METRIC));
    assertEquals("1.00 crowns", study.sensitivity().show("price", 1, Units.METRIC));
    assertEquals("no number", study.sensitivity().show("price", Double.NaN, Units.METRIC));
  }

  @Test
  void the_same_seed_gives_the_same_numbers_on_any_number_of_threads() {
    for (Sampling sampling : List.of(Sampling.random(500, 7), Sampling.latinHypercube(500, 7))) {
      Study<Bar> study = study(FORCE, height(0.03), WIDTH);
      double[] one = study.onThreads(1).scatter(sampling).values("stress");
      double[] five = study.onThreads(5).scatter(sampling).values("stress");
      assertArrayEquals(one, five);
      double[] other = study.scatter(new Sampling(sampling.method(), 500, 8)).values("stress");
      assertFalse(java.util.Arrays.equals(one, other));
    }
  }

  @Test
  void a_scatter_tells_shares_with_their_confidence_and_what_they_are_not() {
    Scatter scatter = study(FORCE, height(0.03), WIDTH).scatter(Sampling.latinHypercube(2000, 1));
    Scatter.Share over = scatter.over("stress", 100e6);
    assertEquals(over.part(), scatter.shares("stress").get("high").part());
    assertEquals(2000, over.of());
    assertTrue(over.low() < over.part() && over.part() < over.high());
    assertEquals(
        "%s: nine tenths between %s and %s; over 100 MPa in %s, of the spreads stated and the checks made only; not a probability of survival"
            .formatted(
                "stress",
                scatter.show("stress", scatter.quantile("stress", 0.05), Units.METRIC),
                scatter.show("stress", scatter.quantile("stress", 0.95), Units.METRIC),
                over),
        scatter.line("stress", 100e6, Units.METRIC));
    assertTrue(scatter.toString().endsWith(Scatter.NOT_SURVIVAL));
    assertTrue(
        scatter
            .toString()
            .startsWith(
                "Scatter of the bar: 2000 settings drawn by Latin hypercube, seed 1\n"
                    + "- stress: mean "));
    assertEquals("2000 settings drawn by Latin hypercube, seed 1", scatter.drawn());
    assertEquals(List.of("stress", "stiffness"), scatter.measures());
    assertEquals(3, scatter.inputs().size());
  }

  @Test
  void what_a_scatter_refuses_is_counted() {
    Scatter scatter = study(FORCE, HEIGHT, WIDTH).scatter(Sampling.latinHypercube(400, 1));
    int refused = scatter.refusals().get("a bar this low is not sold");
    assertEquals(400, refused + scatter.values("stress").length);
    assertTrue(refused > 30 && refused < 70, "refused: " + refused);
    assertTrue(scatter.toString().contains("- refused " + refused + " times: a bar this low"));
  }

  @Test
  void an_interruption_keeps_what_is_done() {
    AtomicInteger count = new AtomicInteger();
    Thread waiting = Thread.currentThread();
    Study<Double> study =
        Study.of(
            "long work",
            List.of(FORCE),
            setting -> {
              if (count.incrementAndGet() == 50) {
                waiting.interrupt();
              }
              pause();
              return setting.number("force");
            },
            List.of(Measure.least("force", Kind.FORCE, force -> force)));
    Scatter scatter = study.onThreads(2).scatter(Sampling.random(100_000, 3));
    assertTrue(Thread.interrupted(), "the interruption stays marked");
    assertTrue(scatter.reached() >= 50 && scatter.reached() < 5000, scatter.drawn());
    assertEquals(scatter.reached(), scatter.values("force").length);
    assertEquals(
        "100000 settings drawn independently, seed 3; interrupted after " + scatter.reached(),
        scatter.drawn());
  }

  private static void pause() {
    try {
      Thread.sleep(1);
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void a_fault_in_the_model_is_not_taken_for_a_refusal() {
    Study<Double> study =
        Study.of(
            "faulty",
            List.of(FORCE),
            setting -> {
              throw new IllegalStateException("a mistake in the model");
            },
            List.of(Measure.least("force", Kind.FORCE, (Double force) -> force)));
    assertEquals(
        "a mistake in the model",
        assertThrows(IllegalStateException.class, study::sensitivity).getMessage());
  }

  @Test
  void progress_is_told_to_the_end() {
    AtomicInteger last = new AtomicInteger();
    study(FORCE, WIDTH, height(0.03))
        .watchedBy((done, total, left) -> last.set(done == total ? total : 0))
        .scatter(Sampling.random(30, 1));
    assertEquals(30, last.get());
  }

  @Test
  void a_family_of_curves_along_one_input() {
    Family family = study(FORCE, height(0.03), WIDTH).family("height", 7);
    assertArrayEquals(
        new double[] {38.8, 39.2, 39.6, 40, 40.4, 40.8, 41.2},
        java.util.Arrays.stream(family.steps()).map(x -> 1000 * x).toArray(),
        1e-9);
    assertEquals(
        "the bar along height:\n"
            + "- stress: best 88.4 MPa at height 41.2 mm, worst 99.6 MPa at 38.8 mm\n"
            + "- stiffness: best 587 N/mm at height 41.2 mm, worst 491 N/mm at 38.8 mm",
        family.toString().replace("41.20 mm", "41.2 mm").replace("38.80 mm", "38.8 mm"));
    Family many = study(FORCE, height(0.03), WIDTH).family("height", 3, "width", 0.018, 0.022);
    assertEquals(List.of("width 18.00 mm", "width 22.00 mm"), many.curves());
    assertEquals(
        6 * 1000 * 0.5 / (0.018 * 0.04 * 0.04), many.values("stress", "width 18.00 mm")[1], 1);
    assertEquals(
        List.of("height [mm]", "width 18.00 mm", "width 22.00 mm"),
        many.table("stress", Units.METRIC).columnNames());
    assertEquals(
        List.of("as designed, height 38.00 mm: a bar this low is not sold"),
        study(FORCE, HEIGHT, WIDTH).family("height", 5).refusals());
  }

  @Test
  void inputs_are_typed() {
    Setting setting =
        Setting.of(
            List.of(
                Input.of("length", mm(5)).within(0.1, "s"),
                Input.of("mass", kg(7)).within(0.1, "s"),
                Input.of("yield", MPa(235)).lognormal(0.07, "s"),
                Input.of("speed", kmh(36)).within(0.1, "s"),
                Input.of("pull", mps2(3)).within(0.1, "s"),
                Input.of("factor", 2.0).within(0.1, "s")));
    assertEquals(mm(5), setting.length("length"));
    assertEquals(kg(7), setting.mass("mass"));
    assertEquals(MPa(235), setting.stress("yield"));
    assertEquals(10, setting.si("speed"), 1e-12);
    assertEquals(kmh(36), setting.speed("speed"));
    assertEquals(mps2(3), setting.acceleration("pull"));
    assertEquals(2, setting.number("factor"));
    assertTrue(setting.toString().startsWith("length 5.000 mm, mass 7.000 kg"), setting.toString());
    assertEquals(
        "input mass is a mass, not a length",
        assertThrows(ModelException.class, () -> setting.length("mass")).getMessage());
    assertEquals(
        "there is no input named wall; there are length, mass, yield, speed, pull, factor",
        assertThrows(ModelException.class, () -> setting.si("wall")).getMessage());
  }

  @Test
  void spreads_have_ends_or_quantiles() {
    assertEquals(2, new Spread.Triangle(0, 2, 8).quantile(0.25), 1e-12);
    assertEquals(9, new Spread.Even(5, 10).quantile(0.8), 1e-12);
    assertEquals(-1.644854, new Spread.Normal(0, 1).low(), 1e-6);
    assertEquals(1.644854, new Spread.Normal(0, 1).high(), 1e-6);
    Spread lognormal = new Spread.Lognormal(100, 0.2);
    assertEquals(100 / Math.sqrt(1.04), lognormal.quantile(0.5), 1e-9);
    assertEquals("lognormal", lognormal.words());
    assertEquals("triangular between its ends", new Spread.Triangle(0, 2, 8).words());
    assertEquals(
        "height: 40.00 mm, even between its ends, 38.00 mm to 42.00 mm (rolling tolerance)",
        HEIGHT.toString());
  }

  @Test
  void bad_input_is_named() {
    refused(
        "input height of 40.00 mm lies outside its spread from 41.00 mm to 42.00 mm",
        () -> Input.of("height", mm(40)).between(mm(41), mm(42), "s"));
    refused(
        "input height is a length; its end 3 kN is not",
        () -> Input.of("height", mm(40)).between(mm(39), kN(3), "s"));
    refused(
        "a spread's lower end 3.000 is not below its upper end 2.000", () -> new Spread.Even(3, 2));
    refused(
        "the peak of a triangular spread lies outside its ends",
        () -> new Spread.Triangle(1, 3, 2));
    refused("two inputs are named force; rename one", () -> study(FORCE, FORCE));
    refused("study the bar has no input; give one at least", () -> study());
    refused(
        "two measures are named stress; rename one",
        () -> Study.of("x", List.of(FORCE), Bar::of, List.of(STRESS, STRESS)));
    refused(
        "study x measures nothing; give one measure at least",
        () -> Study.of("x", List.of(FORCE), Bar::of, List.of()));
    refused("a scatter needs 1 setting at least, not 0", () -> Sampling.random(0, 1));
    refused("a study runs on 1 thread at least, not on 0", () -> study(FORCE).onThreads(0));
    refused(
        "a curve along force needs 2 steps at least, not 1",
        () -> study(FORCE, WIDTH, height(0.03)).family("force", 1));
    refused(
        "there is no measure named price; there are stress, stiffness",
        () -> study(FORCE, WIDTH, height(0.03)).sensitivity().swings("price"));
    refused(
        "there is no curve named thick; there are as designed",
        () -> study(FORCE, WIDTH, height(0.03)).family("force", 2).values("stress", "thick"));
    Scatter scatter = study(FORCE, WIDTH, height(0.03)).scatter(Sampling.random(3, 1));
    refused("part 1.500 is outside 0 to 1", () -> scatter.quantile("stress", 1.5));
    Study<Bar> never =
        Study.of(
            "never",
            List.of(FORCE),
            setting -> {
              throw new ModelException("cannot be");
            },
            List.of(STRESS));
    refused(
        "no setting of never has a number for stress; cannot be",
        () -> never.scatter(Sampling.random(3, 1)).mean("stress"));
  }

  private static void refused(String message, org.junit.jupiter.api.function.Executable bad) {
    assertEquals(message, assertThrows(ModelException.class, bad).getMessage());
  }
}
