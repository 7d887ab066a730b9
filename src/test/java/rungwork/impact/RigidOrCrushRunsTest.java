package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.quantity.Units;

class RigidOrCrushRunsTest {
  private static final CrushCurve TUBE =
      CrushCurve.named("tube")
          .to(mm(6), kN(60))
          .to(mm(230), kN(80), "used up")
          .to(mm(240), kN(1500))
          .end();
  private static final CrushElement ELEMENT =
      CrushElement.measured("tube", mm(80), kg(2)).between(TUBE, TUBE.times(1.25), "invented");
  private static final RigidOrCrush CHOICE =
      RigidOrCrush.of(
          Scene.of("wall", kmh(36), kg(700), Obstacle.rigidWall()),
          Fronts.rails(),
          Occupant.of("driver", kg(80), Occupant.Belt.of(Npmm(50), mm(20))),
          RigidOrCrush.Design.bare("bare"),
          RigidOrCrush.Design.with("two", ELEMENT, mm(350)).and(mm(-350)));

  /** 300 over twice 100 and 480 over twice 80. */
  @Test
  void the_order_compares_ends_crosswise() {
    Range ratio = CHOICE.outcomes().get(1).behindOverFront();
    assertEquals(1.5, ratio.low(), 1e-9);
    assertEquals(3, ratio.high(), 1e-9);
    assertEquals(Range.ratio(0, 0), CHOICE.outcomes().get(0).behindOverFront());
    assertEquals(RigidOrCrush.Order.NOT_SHOWN, CHOICE.outcomes().get(1).order());
  }

  @Test
  void a_motor_joins_every_crash_of_every_design() {
    CrashModel.Motor motor = CrashModel.Motor.of("motor", kg(58)).on(Npmm(600), mm(12), kNpmm(8));
    RigidOrCrush with = CHOICE.with(motor);
    assertEquals(2, with.outcomes().size());
    for (RigidOrCrush.Outcome outcome : with.outcomes()) {
      for (Crash crash : outcome.crashes()) {
        assertEquals(58, crash.body("motor").mass());
      }
    }
    RigidOrCrush faster = with.at(kmh(54));
    assertEquals(15, faster.outcomes().get(0).crashes().get(0).model().speed(), 1e-12);
    assertEquals(58, faster.outcomes().get(1).crashes().get(0).body("motor").mass());
    assertEquals(
        List.of("bare", "two"), faster.outcomes().stream().map(o -> o.design().name()).toList());
  }

  /** 10 m/s at 10 g: 0.51 m; of a tube 0.70 to 0.75 folds. */
  @Test
  void the_shortest_tube_is_the_crush_over_its_stroke() {
    double crush = 100 / (20 * 9.80665);
    assertEquals(crush, CHOICE.shortestCrush(g(10)).high(), 1e-12);
    assertEquals(crush / 0.75, CHOICE.shortestTube(g(10)).low(), 1e-12);
    assertEquals(crush / 0.7, CHOICE.shortestTube(g(10)).high(), 1e-12);
  }

  @Test
  void assumptions_are_told_once_each() {
    List<String> lines = CHOICE.assumptions(Units.METRIC);
    assertEquals(lines.size(), new HashSet<>(lines).size());
    assertTrue(lines.contains("Masses on one line; no pitch, no yaw, no ride up or under."));
    assertTrue(
        lines.contains(
            "Force of tube: invented; at the speed of its test, not at that of the hit."));
    assertTrue(lines.contains("The person does not act back on the vehicle."));
    String turning = "The hit is off centre; turning in plan is left out, and so is what it takes.";
    assertFalse(lines.contains(turning));
    RigidOrCrush off =
        RigidOrCrush.of(
            Scene.of("post", kmh(36), kg(700), Obstacle.post(mm(350), mm(200))),
            Fronts.rails(),
            CHOICE.occupant(),
            RigidOrCrush.Design.with("two", ELEMENT, mm(350)).and(mm(-350)));
    List<String> turned = off.assumptions(Units.METRIC);
    assertEquals(turning, turned.get(turned.size() - 1));
    assertEquals(3, off.outcomes().get(0).behindOverFront().low(), 1e-9, "one tube alone");
  }

  @Test
  void warnings_of_scene_and_ride_stand_together() {
    assertEquals(List.of(), CHOICE.warnings(Units.METRIC));
    RigidOrCrush odd =
        RigidOrCrush.of(
            Scene.of("wall", kmh(36), kg(90), Obstacle.rigidWall()),
            Fronts.rails(),
            Occupant.of("heavy", kg(170), Occupant.Belt.of(Npmm(50), mm(20))),
            RigidOrCrush.Design.bare("bare"),
            RigidOrCrush.Design.bare("same"));
    List<String> lines = odd.warnings(Units.METRIC);
    assertTrue(lines.get(0).startsWith("mass of a vehicle 90.0 kg is outside "), lines.toString());
    assertTrue(lines.get(1).startsWith("mass of a person 170 kg is outside "), lines.toString());
    assertEquals(
        1, lines.stream().filter(line -> line.startsWith("mass of a person")).count(), "once");
  }

  @Test
  void a_comparison_prints_a_line_a_design() {
    RigidOrCrush.Outcome bare = CHOICE.outcomes().get(0);
    String[] lines = CHOICE.toString().split("\n");
    assertEquals(CHOICE.scene().toString(), lines[0]);
    assertEquals(
        "  bare: vehicle " + bare.peak() + ", person " + bare.ride().peak() + "; nothing in front",
        lines[1]);
    assertTrue(lines[2].startsWith("  two: vehicle "), lines[2]);
    assertTrue(lines[2].endsWith("; not shown to hold"), lines[2]);
  }

  @Test
  void words_of_the_orders() {
    assertEquals("holds by these figures", RigidOrCrush.Order.HOLDS.words());
    assertEquals("does not hold", RigidOrCrush.Order.DOES_NOT_HOLD.words());
  }
}
