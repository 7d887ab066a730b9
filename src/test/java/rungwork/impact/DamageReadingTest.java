package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.quantity.Kind;
import rungwork.solve.Displacement;
import rungwork.solve.Pushover;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

class DamageReadingTest {
  private static final Ladder LADDER = Runabout.ladder(Runabout.steel(235));
  private static final Collapse LEFT = Collapse.of(Runabout.vehicle(), LADDER, Event.Hit.LEFT_TIP);
  private static final List<String> CORNERS =
      List.of("front left", "rear right", "front right", "rear left");

  /** Let go at a corner of the path: what the load moved less what it would move elastically. */
  private static double atCorner(Pushover pushover, int corner) {
    double factor = pushover.corners().get(corner).factor();
    return diagonals(
        node -> pushover.atCorner(corner, node).plus(pushover.elastic(node).times(-factor)));
  }

  private static double diagonals(Function<String, Displacement> moves) {
    PermanentSet.Bent bent = new PermanentSet.Bent(LADDER, LADDER.frame(Joints.RIGID), moves);
    return PermanentSet.DIAGONALS.of(CORNERS, bent);
  }

  private static Optional<SeenDamage.Reading> found(Collapse.Path path, double set) {
    return SeenDamage.named("corner")
        .diagonals("front", "rear", mm(set * 1e3), mm(1e-4))
        .under(LEFT)
        .scenes()
        .get(0)
        .runs()
        .stream()
        .filter(one -> one.path().equals(path))
        .findFirst();
  }

  private static void found(Collapse.Path path, double set, double crush) {
    SeenDamage.Reading reading = found(path, set).orElseThrow();
    assertEquals(crush, reading.load().crush().low(), 1e-5);
    assertEquals(crush, reading.load().crush().high(), 1e-5);
    assertEquals(path.force(crush), reading.load().force().low(), 1e-3 * path.force(crush));
    assertEquals(crush > path.crush(), reading.mechanism());
  }

  /** Between two corners both the crush and the set go straight. */
  @ParameterizedTest
  @ValueSource(doubles = {0.35, 0.8})
  void a_set_between_two_corners_is_found_at_its_crush(double part) {
    Collapse.Path path = LEFT.rigid(CrushTube.Strength.LOW);
    Pushover pushover = path.pushed().pushover();
    int last = pushover.corners().size() - 1;
    double start = atCorner(pushover, last - 1);
    double end = atCorner(pushover, last);
    double from = pushover.corners().get(last - 1).travel() / path.pushed().unit();
    double to = pushover.corners().get(last).travel() / path.pushed().unit();
    assertTrue(Math.abs(end - start) > 1e-4, start + " to " + end);
    found(path, start + part * (end - start), from + part * (to - from));
  }

  /** Beyond the mechanism it grows as the mechanism moves, by nothing else. */
  @Test
  void a_set_beyond_the_mechanism_is_found_as_far_on_as_the_mechanism_brings_it() {
    Collapse.Path path = LEFT.rigid(CrushTube.Strength.LOW);
    Pushover pushover = path.pushed().pushover();
    int last = pushover.corners().size() - 1;
    double on = 0.0437;
    double set = atCorner(pushover, last) + on * diagonals(path::movesOn);
    double crush = path.last().reached().crush() + on;
    found(path, set, crush);
    SeenDamage.Reading reading = found(path, set).orElseThrow();
    assertTrue(reading.mechanism());
    List<String> all =
        path.stages().stream()
            .flatMap(stage -> stage.opened().stream())
            .map(Collapse.Hinge::words)
            .distinct()
            .toList();
    assertEquals(all, reading.passed());
    assertEquals(all, reading.perhaps());
  }

  /** 300 mm of crush are looked at, not more. */
  @Test
  void a_set_farther_out_than_a_mechanism_is_followed_is_not_found() {
    Collapse.Path path = LEFT.rigid(CrushTube.Strength.LOW);
    Pushover pushover = path.pushed().pushover();
    int last = pushover.corners().size() - 1;
    double each = diagonals(path::movesOn);
    double left = atCorner(pushover, last);
    double rest = 0.3 - path.last().reached().crush();
    assertTrue(found(path, left + each * (rest - 1e-4)).isPresent());
    assertFalse(found(path, left + each * (rest + 1e-4)).isPresent());
  }

  private static SeenDamage.Reading reading(
      double low, double high, boolean mechanism, List<String> passed, List<String> perhaps) {
    SeenDamage.Loads loads =
        new SeenDamage.Loads(
            new Range(Kind.ACCELERATION, low, high),
            new Range(Kind.FORCE, 10 * low, 10 * high),
            new Range(Kind.LENGTH, low / 1000, high / 1000),
            new Range(Kind.ENERGY, 2 * low, 2 * high));
    return new SeenDamage.Reading(
        LEFT.rigid(CrushTube.Strength.LOW), loads, mechanism, passed, perhaps);
  }

  private static SeenDamage.Explanation explained(SeenDamage.Reading... readings) {
    return new SeenDamage.Explanation(LEFT, List.of(readings), "no run");
  }

  @Test
  void an_explanation_spans_its_runs() {
    SeenDamage.Explanation explained =
        explained(
            reading(30, 50, false, List.of(), List.of()),
            reading(20, 40, false, List.of(), List.of()));
    assertEquals(Optional.of(new Range(Kind.ACCELERATION, 20, 50)), explained.deceleration());
    assertEquals(Optional.of(new Range(Kind.FORCE, 200, 500)), explained.force());
    assertEquals(Optional.of(new Range(Kind.ENERGY, 40, 100)), explained.energy());
    assertFalse(explained.beyondMechanism());
    assertTrue(explained(reading(1, 2, true, List.of(), List.of())).beyondMechanism());
    assertEquals(
        "left tip: 2 of " + LEFT.paths().size() + " runs, 2.04 to 5.10 g", explained.toString());
    assertEquals("left tip: no run", explained().toString());
  }

  @Test
  void what_yielded_in_every_run_is_sure_and_the_rest_is_counted() {
    SeenDamage.Explanation explained =
        explained(
            reading(1, 2, false, List.of("a", "b"), List.of("a", "b", "d")),
            reading(1, 2, false, List.of("b", "c"), List.of("b", "c", "d", "e")),
            reading(1, 2, false, List.of("b"), List.of("b", "d", "c")));
    assertEquals(List.of("b"), explained.yieldedSurely());
    assertEquals(
        List.of("d (3 of 3)", "c (2 of 3)", "a (1 of 3)", "e (1 of 3)"),
        explained.yieldedPerhaps());
    assertEquals(List.of(), explained().yieldedSurely());
    assertEquals(List.of(), explained().yieldedPerhaps());
  }

  @Test
  void measurements_say_what_they_are() {
    SeenDamage seen =
        SeenDamage.named("fence")
            .shorter("front left", "rear left", mm(6), mm(2))
            .diagonals("front", "rear", mm(-9), mm(3))
            .sag("middle left", List.of("front left", "rear left"), mm(3), mm(3));
    assertEquals(
        List.of(
            "front left to rear left shorter",
            "diagonal from front left to rear right, over the other",
            "sag of middle left below front left and rear left"),
        seen.measured().stream().map(SeenDamage.Measured::what).toList());
    assertEquals(CORNERS, seen.measured().get(1).features());
    assertEquals(
        List.of(true, true, false),
        seen.measured().stream().map(SeenDamage.Measured::shows).toList(),
        "just its tolerance shows nothing");
    assertEquals(-0.009, seen.measured().get(1).value(), 1e-12);
    assertEquals(
        "fence: front left to rear left shorter 6.00 mm ± 2.00 mm; diagonal from front left to rear"
            + " right, over the other -9.00 mm ± 3.00 mm; sag of middle left below front left and"
            + " rear left 3.00 mm ± 3.00 mm",
        seen.toString());
    SeenDamage.Explanations all = new SeenDamage.Explanations(seen, List.of(explained()));
    assertEquals(3, all.notChecked().size());
    assertTrue(
        Stream.of(all.notChecked().get(0), all.notChecked().get(1))
            .allMatch(line -> line.startsWith("Not checked: ")));
    assertTrue(all.notChecked().get(2).startsWith("Left out: walls that folded"));
    assertTrue(all.toString().startsWith("Damage seen: fence\n  left tip: no run\n"));
  }
}
